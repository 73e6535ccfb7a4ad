import type { Place } from '../../core/diagnostic.ts';
import type { Setting, WaitTime } from '../../core/model/guide.ts';
import type { ProseLink } from '../../core/model/prose.ts';
import type { Amount, Duration, Size } from '../../core/model/values.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import { meaningOf, usesOf, type StepAt } from '../../core/plan/scale/step-uses.ts';
import { exact, zero } from '../../core/quantity/exact.ts';
import { printAmount, printSize } from '../../core/quantity/print.ts';
import { readLeading, type Leading } from '../../core/quantity/read.ts';
import type { GuideAtLevel, Way } from './context.ts';
import { type Density, densityOf } from './convertible.ts';
import { amountOfRow, sizeOfPiece } from './row-keys.ts';
import { placeOfUse } from './step-uses.ts';
import { usesInLife } from './usage.ts';
import { durationText } from './written.ts';

/** A number of the front matter that the text of a link may repeat. */
export interface StatedNumber {
  readonly is: Leading['amount'];
  /** As it would stand in the text: "150 mm x 100 mm". */
  readonly text: string;
  readonly place: Place;
  readonly density?: Density;
}

/** What the text of a link of each kind may say; of other kinds nothing is compared. */
export const statedNumbers: Readonly<
  Partial<
    Record<
      ProseLink['kind'],
      (link: ProseLink, read: GuideAtLevel, workspace: Workspace) => readonly StatedNumber[]
    >
  >
> = {
  material: ofMaterial,
  step: ofStep,
  set: ofSetting,
  tool: ({ target }, read) =>
    read.at.tools.flatMap(({ use, count }, i) =>
      use === target ? [counted(count, read.place('tools', i, 'count'))] : [],
    ),
  guide: ({ target }, read) => ofRows(read, `guide:${target}`, undefined),
};

/** The step that a section tells; `undefined` outside the steps. */
function stepOf(link: ProseLink, { at }: GuideAtLevel): StepAt | undefined {
  const id = at.prose.sections[link.section]?.step;
  return at.steps.find((step) => step.id === id);
}

/** Its rows, its share in the step that the text stands in, ingredients, pieces, and what the life of a model takes. */
function ofMaterial(link: ProseLink, read: GuideAtLevel, { materials }: Workspace): readonly StatedNumber[] {
  const { target } = link;
  const row = read.at.materials.find(({ id }) => id === target);
  const density = densityOf(materials[row?.use ?? target]);
  const own = stepOf(link, read);
  const steps = read.at.steps.map((_, i) => i).filter((i) => !own || read.at.steps[i] === own);
  return [
    ...steps.flatMap((step) => sharesIn(read, step, target, density)),
    ...ofRows(read, target, density),
    ...ofMixes(read, target, density),
    ...usesInLife(read.at).flatMap(({ used, way }) =>
      used.material === target ? [amounted(used.amount, read.place(...way, 'amount'), density)] : [],
    ),
  ];
}

function sharesIn(
  read: GuideAtLevel,
  step: number,
  target: string,
  density: Density,
): readonly StatedNumber[] {
  const meant = meaningOf(read.at, target);
  return usesOf(read.at, read.at.steps[step]!).flatMap(({ material, amount }, i) => {
    const isIt =
      material === target || meaningOf(read.at, material).rows.some((row) => meant.rows.includes(row));
    return amount && isIt ? [amounted(amount, placeOfUse(read, step, i, 'amount'), density)] : [];
  });
}

function ofRows(read: GuideAtLevel, target: string, density: Density): readonly StatedNumber[] {
  return read.at.materials.flatMap(({ id, use, amount, pieces }, i) => {
    if (id !== target && use !== target) return [];
    if (amount) return [amounted(amount, amountOfRow(read, i).place, density)];
    const sizes = pieces.map(({ size }, piece) => sized(size, sizeOfPiece(read, i, piece).place));
    const placeOf = (piece: number) => read.place('materials', i, 'pieces', piece, 'count');
    const counts = pieces.map(({ count }, piece) => counted(count, placeOf(piece)));
    const all = pieces.reduce((sum, { count }) => sum + count, 0);
    return [...sizes, ...counts, counted(all, read.place('materials', i, 'pieces'))];
  });
}

function ofMixes(read: GuideAtLevel, target: string, density: Density): readonly StatedNumber[] {
  return read.at.mixes.flatMap(({ id, makes, of }, mix) => {
    const whole: Amount = { least: makes.value, usual: makes.value, most: makes.value, unit: makes.unit };
    const made = id === target ? [amounted(whole, read.place('mixes', mix, 'makes'))] : [];
    const ingredients = of.flatMap(({ use, amount }, i) =>
      use === target ? [amounted(amount, read.place('mixes', mix, 'of', i, 'amount'), density)] : [],
    );
    return [...made, ...ingredients];
  });
}

/** The times of a step: its hands-on, its wait, how soon the next must be done, how long its vapour clears. */
function ofStep({ target }: ProseLink, read: GuideAtLevel, workspace: Workspace): readonly StatedNumber[] {
  const index = read.at.steps.findIndex(({ id }) => id === target);
  const step = read.at.steps[index];
  if (!step) return [];
  const at = (...way: Way): Place => read.place('steps', index, ...way);
  const limits = Object.entries(step.useWithin.byStep).map(
    ([next, time]) => [time, at('use-within', next)] as const,
  );
  const times: readonly (readonly [Duration | undefined, Place])[] = [
    [step.handsOn.once, at('hands-on')],
    [step.handsOn.each, at('hands-on')],
    [waitTime(step.wait?.usual, workspace), at('wait')],
    ...Object.values(step.wait?.ifRoom ?? {}).map((time) => [waitTime(time, workspace), at('wait')] as const),
    [step.useWithin.any, at('use-within')],
    ...limits,
    [step.clearsIn, at('clears-in')],
  ];
  return times.flatMap(([time, place]) =>
    time && 'seconds' in time && time.seconds !== '0' ? [timed(time, place)] : [],
  );
}

function waitTime(time: WaitTime | undefined, { materials }: Workspace): Duration | undefined {
  return time && 'material' in time ? materials[time.material]?.times[time.time] : time;
}

/** Inside a step its own setting; elsewhere that of any step. */
function ofSetting(link: ProseLink, read: GuideAtLevel): readonly StatedNumber[] {
  const own = stepOf(link, read);
  return read.at.steps.flatMap((step, i) => {
    const setting: Setting | undefined = own && step !== own ? undefined : step.set[link.target];
    const is = setting && readLeading(setting.text)?.amount;
    return is ? [{ is, text: setting.text, place: read.place('steps', i, 'set', link.target) }] : [];
  });
}

function amounted(is: Amount, place: Place, density?: Density): StatedNumber {
  return { is, text: printAmount(is), place, density };
}

function sized(is: Size, place: Place): StatedNumber {
  return { is, text: printSize(is), place };
}

function counted(count: number, place: Place): StatedNumber {
  return { is: { count }, text: String(count), place };
}

function timed(
  { seconds, least = seconds }: { readonly seconds: string; readonly least?: string },
  place: Place,
): StatedNumber {
  const is = { least, usual: seconds, most: seconds, unit: 's' };
  const from =
    exact(least).compare(exact(seconds)) < 0 && exact(least).compare(zero) > 0
      ? `${durationText(least)}–`
      : '';
  return { is, text: from + durationText(seconds), place };
}
