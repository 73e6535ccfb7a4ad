import type { ElementContent } from 'hast';
import type { StepProse } from '../../src/rendering/step-prose.ts';
import type { ShownCheck } from '../../src/showing/library/show-guide.ts';
import type { Shown } from '../../src/showing/shown/shown.ts';
import type { ShownStep, ShownTake } from '../../src/showing/shown/shown-plan.ts';
import { pageWords } from '../../src/words/pages.ts';
import { cautionPanel } from '../page/caution.tsx';
import { benchTick } from './bench.tsx';
import { textList } from '../page/lists.tsx';
import type { Content, Markup } from '../page/markup.ts';
import { blank, blanks, isSaid, rowsOf, said, shows, where } from '../page/place.ts';
import { proseBlock } from '../page/prose-section.tsx';

const { guide: words } = pageWords;

/**
 * One step: beside it the ruler that carries its time; in it what can hurt, what to take and set, then the acts, then
 * how to tell that it is right.
 *
 * @param defers  Who has the last word, in one line.
 */
export function guideStep(
  step: ShownStep,
  prose: StepProse | undefined,
  checks: readonly ShownCheck[],
  defers: Shown,
): Markup {
  const key = `lines[0].steps.${step.id}`;
  return (
    <li class="step" id={`step-${step.id}`} {...where(key, true)}>
      {rail(step, key)}
      <div class="step-body">
        {heading(step)}
        {dangers(step, key, prose, defers)}
        {tray(step, key)}
        {textList([step.limit, ...step.also], 'remarks')}
        {work(prose, checks)}
        {benchTick(step)}
      </div>
    </li>
  );
}

/** The ruler beside the step: when it begins, how long hands are on, how long it waits. */
function rail({ begins, times, notBefore }: ShownStep, key: string): Markup {
  return (
    <div class="rail">
      <p class="begins" {...shows(begins)} />
      <div class="stretches" {...rowsOf(`${key}.times`, times, stretch, blankTime)} />
      <p class="not-before" {...shows(notBefore)} />
    </div>
  );
}

type Time = ShownStep['times'][number];

function stretch({ kind, time, note }: Time): Markup {
  return (
    <p class={`stretch ${kind}`}>
      <strong {...shows(time)} />
      <span {...shows(note)} />
    </p>
  );
}

function blankTime(key: string): Time {
  return { kind: '{kind}' as Time['kind'], ...blanks('time', 'note')(key) };
}

function heading({ number, heading: name, runs }: ShownStep): Markup {
  return (
    <div class="step-head">
      <span class="number" aria-hidden="true" {...shows(number)} />
      <div>
        <h3>
          <span class="unseen">{said(words.step, { number: number.text })}</span>
          <span {...shows(name)} />
        </h3>
        <p class="runs" {...shows(runs)} />
      </div>
    </div>
  );
}

/** All that can hurt stands before what to take and before the first act; and who has the last word on it. */
function dangers(
  { cautions, hazards, controls }: ShownStep,
  key: string,
  prose: StepProse | undefined,
  defers: Shown,
): Content {
  const careful = prose?.careful ?? [];
  if (cautions.length + hazards.length + controls.length + careful.length === 0) return null;
  return (
    <div class="dangers">
      {cautions.length > 0 ? (
        <ul class="cautions">{cautions.map((caution) => cautionPanel(caution))}</ul>
      ) : null}
      {careful.length > 0 ? (
        <div class="named-list be-careful">
          <h4>{words.careful}</h4>
          {proseBlock(careful)}
        </div>
      ) : null}
      {list(words.meets, 'meets', `${key}.hazards`, hazards)}
      {list(words.wear, 'wear', `${key}.controls`, controls)}
      <p class="defers-here">
        <a href="#careful" {...shows(defers)} />
      </p>
    </div>
  );
}

function list(name: string, kind: string, key: string, items: readonly Shown[]): Content {
  if (items.length === 0) return null;
  return (
    <div class={`named-list ${kind}`} {...where(key, true)}>
      <h4>{name}</h4>
      <ul {...rowsOf(key, items, (item) => <li {...shows(item)} />, blank)} />
    </div>
  );
}

/** The acts and how to tell that they went right, with the pictures beside them. */
function work(prose: StepProse | undefined, checks: readonly ShownCheck[]): Markup {
  const figures = prose?.figures ?? [];
  return (
    <div class={figures.length > 0 ? 'step-work with-figures' : 'step-work'}>
      <div class="acts prose">{[...(prose?.acts ?? [])]}</div>
      {figures.length > 0 ? <div class="step-figures">{[...figures]}</div> : null}
      <div class="outcomes">
        {outcome(words.rightWhen, 'right-when', prose?.rightWhen)}
        {outcome(words.ifNot, 'if-not', prose?.ifNot)}
        {checks.map(stepCheck)}
      </div>
    </div>
  );
}

/** What one run takes, the numbers large; then what to set. */
function tray({ takes, settings }: ShownStep, key: string): Content {
  if (takes.length + settings.length === 0) return null;
  return (
    <div class="tray">
      {takes.length > 0 ? (
        <ul aria-label={words.takes} {...rowsOf(`${key}.takes`, takes, take, blankTake)} />
      ) : null}
      {settings.length > 0 ? (
        <ul class="settings" aria-label={words.set}>
          {settings.map(({ name, value }) => (
            <li>
              <b {...shows(value)} />
              <span class="name" {...shows(name)} />
            </li>
          ))}
        </ul>
      ) : null}
    </div>
  );
}

function take({ amount, unit, name, note }: ShownTake): Markup {
  return (
    <li>
      <b>
        <span {...shows(amount)} /> <span class="unit" {...shows(unit)} />
      </b>
      <span class="name" {...shows(name)} />
      <span class="note" {...shows(note)} />
    </li>
  );
}

function blankTake(key: string): ShownTake {
  return { use: '{use}', ...blanks('amount', 'unit', 'name', 'note', 'total')(key) };
}

function outcome(name: string, kind: string, content: readonly ElementContent[] = []): Content {
  if (content.length === 0) return null;
  return (
    <div class={`outcome ${kind}`}>
      <h4>{name}</h4>
      {proseBlock(content)}
    </div>
  );
}

function stepCheck({ what, target, of, ifNot, id }: ShownCheck): Markup {
  return (
    <div class="outcome check">
      <h4>
        {words.check} <span class="of" {...shows(of)} />
      </h4>
      <p>
        <a href={`#check-${id}`} {...shows(what)} />
        {isSaid(target) ? <strong class="target" {...shows(target)} /> : null}
      </p>
      <p class="note">
        {words.ifNot}: <span {...shows(ifNot)} />
      </p>
    </div>
  );
}
