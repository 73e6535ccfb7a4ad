import { plannerWords as words } from '../../src/words/planner.ts';
import type { Content, Markup } from '../page/markup.ts';
import { choice, stepper, written } from '../page/planner-fields.tsx';
import { said } from '../page/place.ts';
import { settingsPanel } from '../page/settings-panel.tsx';

/** What the panel begins with: the settings of the published page, each as it stands in an address. */
export interface PlannerView {
  readonly guide: string;
  readonly level?: string;
  /** The way from the page to its data. */
  readonly data: string;
  readonly batch: string;
  readonly builders: string;
  readonly units: keyof typeof words.allUnits;
  readonly paper: keyof typeof words.allPaper;
  readonly labour: string;
  readonly otherLevels: readonly Named[];
  readonly parts: readonly Named[];
  readonly materials: readonly (Named & { readonly packs: string })[];
  readonly tools: readonly (Named & { readonly owned: string })[];
}
interface Named {
  readonly id: string;
  readonly name: string;
}

/**
 * What a reader may set: the few usual things in a row, the rest behind a press. Every field has the name that its
 * setting has in an address. Shown where scripts run.
 */
export function guidePlanner(view: PlannerView): Markup {
  return settingsPanel({
    id: 'planner-head',
    heading: words.heading,
    says: words.says,
    data: { 'data-planner': view.guide, 'data-level': view.level, 'data-file': view.data },
    fields: (
      <>
        {stepper('batch', words.batch, view.batch, words.batchHelp)}
        {stepper('builders', words.builders, view.builders, words.buildersHelp)}
        {times()}
        {choice('units', words.units, view.units, Object.entries(words.allUnits))}
      </>
    ),
    working: (
      <p class="planner-working" hidden>
        {words.working}
      </p>
    ),
    more: (
      <details class="planner-more">
        <summary>{words.other}</summary>
        {more(view)}
      </details>
    ),
    acts: (
      <button type="button" data-copy="">
        {words.copy}
      </button>
    ),
  });
}

/** The reference week, or a day: a field for it comes with the choice, and goes with it. */
function times(): Markup {
  return (
    <div class="field times">
      <label for="set-times">{words.times}</label>
      <select id="set-times" data-times="">
        {Object.entries(words.allTimes).map(([id, name]) => (
          <option value={id === 'reference' ? '' : id}>{name}</option>
        ))}
      </select>
      <div class="moment" data-moment="" hidden>
        <label class="unseen" for="set-moment">
          {words.moment}
        </label>
        <input id="set-moment" type="datetime-local" aria-describedby="set-moment-help" />
        <button type="button" data-back="">
          {words.backToWeek}
        </button>
        <span class="help" id="set-moment-help">
          {words.momentHelp}
        </span>
      </div>
    </div>
  );
}

function more(view: PlannerView): Markup {
  return (
    <div class="planner-rest">
      <div class="planner-row">
        {view.otherLevels.map(({ id, name }) =>
          written({
            name: `batch:${id}`,
            label: said(words.along, { level: name }),
            value: '',
            help: words.alongHelp,
            isNumber: true,
          }),
        )}
        {parts(view)}
        {written({ name: 'labour', label: words.labour, value: view.labour, help: words.labourHelp })}
        {choice('paper', words.paper, view.paper, Object.entries(words.allPaper))}
      </div>
      {shop(view)}
      {tools(view)}
    </div>
  );
}

function parts({ parts: all }: PlannerView): Content {
  if (all.length === 0) return null;
  const alone = all.map(({ id, name }) => [id, said(words.partAlone, { part: name })] as const);
  return choice('part', words.part, '', [['', words.wholeModel], ...alone]);
}

/** One row a material: what its packs hold and cost, and what is there already. */
function shop({ materials }: PlannerView): Content {
  if (materials.length === 0) return null;
  return (
    <fieldset class="planner-shop">
      <legend>{words.shop}</legend>
      <p class="remark">{words.shopSays}</p>
      <ul>
        <li class="shop-head" aria-hidden="true">
          <span>{words.material}</span>
          <span>{words.packs}</span>
          <span>{words.stock}</span>
        </li>
        {materials.map(({ id, name, packs }) => (
          <li>
            <b>{name}</b>
            {packs === '' ? null : ofMaterial(`pack:${id}`, name, words.packs, packs, words.packsHelp)}
            {ofMaterial(`stock:${id}`, name, words.stock, '', words.stockHelp)}
          </li>
        ))}
      </ul>
    </fieldset>
  );
}

function ofMaterial(name: string, of: string, label: string, value: string, help: string): Markup {
  return written({ name, label, of, value, help });
}

function tools({ tools: all }: PlannerView): Content {
  if (all.length === 0) return null;
  return (
    <fieldset class="planner-tools">
      <legend>{words.tools}</legend>
      <ul>
        {all.map(({ id, name, owned }) => (
          <li>
            {written({
              name: `owned:${id}`,
              label: name,
              value: owned,
              help: words.toolsHelp,
              isNumber: true,
            })}
          </li>
        ))}
      </ul>
    </fieldset>
  );
}
