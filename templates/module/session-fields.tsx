import { sessionFieldWords as words } from '../../src/words/session-fields.ts';
import type { Markup } from '../page/markup.ts';
import { stepper } from '../page/planner-fields.tsx';
import { settingsPanel } from '../page/settings-panel.tsx';

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
  return settingsPanel({
    id: 'fields-head',
    heading: words.heading,
    says: words.says,
    data: { 'data-session': module, 'data-file': data },
    fields: (
      <>
        {people.map(({ id, name, count }) => stepper(`people:${id}`, name, count, words.peopleHelp))}
        {stepper('instructors', words.instructors, instructors, words.peopleHelp)}
        {begins()}
      </>
    ),
  });
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
