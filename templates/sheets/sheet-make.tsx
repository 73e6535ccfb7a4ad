import type { StepProse } from '../../src/rendering/step-prose.ts';
import type { ShownCaution, ShownStep, ShownTake } from '../../src/showing/shown/shown-plan.ts';
import { pageWords } from '../../src/words/pages.ts';
import { sheetWords as words } from '../../src/words/sheets.ts';
import type { BenchSheetView } from './bench-view.ts';
import { benchTick } from '../guide/bench.tsx';
import { alertSymbol } from '../page/caution.tsx';
import { textList } from '../page/lists.tsx';
import type { Content, Markup } from '../page/markup.ts';
import { blanks, isSaid, rowsOf, said, shows, where } from '../page/place.ts';
import { sheetChecks } from './sheet-checks.tsx';
import { box, headingThatSays } from './sheet-frame.tsx';

/**
 * The steps in two columns, each with room for reading and times below it, then the checks. What can hurt stands above the acts of its
 * step: signal word, hazard and how to avoid it; in full it stands at the head of the sheet, under the same number.
 */
export function sheetMake(view: BenchSheetView): Markup {
  const { line, steps } = view;
  return (
    <section class="make">
      {headingThatSays(words.make, words.makeSay)}
      <div class="steps">
        {line.steps.map((step) => stepBlock(step, steps[step.id], view))}
        {sheetChecks(view)}
      </div>
    </section>
  );
}

function stepBlock(step: ShownStep, prose: StepProse | undefined, view: BenchSheetView): Markup {
  const { number, heading, runs } = step;
  return (
    <article class="step" {...where(`lines[0].steps.${step.id}`, true)}>
      <h3>
        <span class="n" {...shows(number)} /> <span {...shows(heading)} />{' '}
        <span class="runs" {...shows(runs)} {...where(runs.key, isSaid(runs))} />
      </h3>
      {cautionGroup(step, view)}
      {careful(step, prose)}
      {takes(step)}
      <div class="acts">{[...(prose?.acts ?? [])]}</div>
      {settings(step)}
      {rightWhen(prose)}
      {wait(step)}
      {written(step)}
      {benchTick(step)}
    </article>
  );
}

/** All cautions of a step in one group; behind the last, who has the last word. */
function cautionGroup({ cautions }: ShownStep, view: BenchSheetView): Content {
  if (cautions.length === 0) return null;
  return (
    <ul class="caution-lines">
      {cautions.map((caution, i) => cautionLine(caution, i === cautions.length - 1, view))}
    </ul>
  );
}

function cautionLine(caution: ShownCaution, isLast: boolean, view: BenchSheetView): Markup {
  const { id, signal, word, hazard, avoid } = caution;
  const number = view.cautions.numbers[id];
  return (
    <li class={`caution-line signal-${signal}`}>
      {signal === 'notice' ? null : alertSymbol()}
      <strong class="word" {...shows(word)} />
      {number ? <b class="caution-number" {...shows(number)} /> : null} <b {...shows(hazard)} />
      {avoid.map((way) => (
        <span class="way" {...shows(way)} />
      ))}
      {isLast ? <i class="policy-first">{words.policyFirst}</i> : null}
    </li>
  );
}

/** What protects, what binds in time, and what the author says of it: above the acts too. */
function careful({ controls, limit, also }: ShownStep, prose: StepProse | undefined): Content {
  const sentences = textList([...controls, limit, ...also]);
  const own = prose?.careful ?? [];
  if (!sentences && own.length === 0) return null;
  return (
    <div class="step-careful">
      {[...own]}
      {sentences}
    </div>
  );
}

function takes({ id, takes: all }: ShownStep): Content {
  if (all.length === 0) return null;
  return <ul class="takes" {...rowsOf(`lines[0].steps.${id}.takes`, all, taken, blankTaken)} />;
}

type Taken = Pick<ShownTake, 'amount' | 'unit' | 'name'>;

/** Pieces have no unit, and no space for one; whether there is one in the blank row, nobody knows yet. */
function taken({ amount, unit, name }: Taken): Markup {
  return (
    <li>
      <b>
        <span {...shows(amount)} />
        {isSaid(unit) || unit.key.includes('[]') ? '\u00a0' : null}
        <span {...shows(unit)} />
      </b>{' '}
      <span {...shows(name)} />
    </li>
  );
}

const blankTaken = blanks('amount', 'unit', 'name');

/** Exact settings, each with a box to tick. */
function settings({ settings: all }: ShownStep): Content {
  if (all.length === 0) return null;
  return (
    <ul class="settings">
      {all.map(({ name, value }) => (
        <li>
          {box()} <b {...shows(value)} /> <span {...shows(name)} />
        </li>
      ))}
    </ul>
  );
}

function rightWhen(prose: StepProse | undefined): Content {
  const content = prose?.rightWhen ?? [];
  if (content.length === 0) return null;
  return (
    <div class="right-when">
      <b>{pageWords.guide.rightWhen}</b>
      {[...content]}
    </div>
  );
}

function wait(step: ShownStep): Content {
  const { notBefore } = step;
  const waits = waitOf(step);
  if (!waits) return null;
  return (
    <p class="wait">
      <b>{said(words.wait, { time: waits.time.text })}</b>{' '}
      <span {...shows(notBefore)} {...where(notBefore.key, isSaid(notBefore))} />
    </p>
  );
}

function waitOf({ times }: ShownStep): ShownStep['times'][number] | undefined {
  return times.find(({ kind }) => kind === 'wait');
}

/** Filled in when the step is done; after a wait, also when the next one may begin. */
function written(step: ShownStep): Markup {
  const times = [words.reading, words.start, words.end, ...(waitOf(step) ? [words.notBefore] : [])];
  return (
    <ul class="written">
      <li class="done">
        {box()} {words.done}
      </li>
      {[...times, words.by].map((field) => (
        <li>{field}</li>
      ))}
    </ul>
  );
}
