import { sessionFieldWords as words } from '../src/words/session-fields.ts';
import { plannerWords } from '../src/words/planner.ts';
import type { Markup } from './page.tsx';
import { stepper } from './planner-fields.tsx';

/** What the reader of a session's page may set, as it stands in the module. */
export interface SessionFields {
  readonly module: string;
  /** The way from the page to its data. */
  readonly data: string;
  readonly people: readonly { readonly id: string; readonly name: string; readonly count: string }[];
  readonly instructors: string;
}

/** The people who come, the instructors, when it begins. Shown where scripts run. */
export function sessionFields({ module, data, people, instructors }: SessionFields): Markup {
  return (
    <section class="planner" aria-labelledby="fields-head" data-session={module} data-file={data}>
      <form class="wrap" autocomplete="off" novalidate>
        <div class="planner-head">
          <h2 id="fields-head">{words.heading}</h2>
          <p class="remark">{words.says}</p>
        </div>
        <div class="planner-body">
          <div class="planner-row">
            {people.map(({ id, name, count }) => stepper(`people:${id}`, name, count, words.peopleHelp))}
            {stepper('instructors', words.instructors, instructors, words.peopleHelp)}
            {begins()}
          </div>
          <p class="planner-says" role="status" />
          <div class="planner-foot">
            <p class="planner-acts">
              <button type="button" data-reset="" disabled>
                {plannerWords.reset}
              </button>
            </p>
          </div>
        </div>
      </form>
    </section>
  );
}

function begins(): Markup {
  return (
    <div class="field">
      <label for="set-ready-by">{words.begins}</label>
      <input id="set-ready-by" name="ready-by" type="datetime-local" aria-describedby="set-ready-by-help" />
      <span class="help" id="set-ready-by-help">
        {words.beginsHelp}
      </span>
    </div>
  );
}
