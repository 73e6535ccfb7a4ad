import type { ProseLink } from '../../core/model/prose.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { PlannedLine, StepNeed, StepTake } from '../../core/plan/result.ts';
import { compare, measure } from '../../core/quantity/quantity.ts';
import { type Leading, readLeading } from '../../core/quantity/read.ts';
import { dimensionOf } from '../../core/quantity/units.ts';
import { showFor, showSizeIn } from './amounts-of-uses.ts';
import { properly } from '../text/author-text.ts';
import { showCount } from '../text/numbers.ts';
import { needOf, takenOf } from './shares.ts';
import { type Shown, shown } from '../shown/shown.ts';
import { showSetting } from '../text/temperatures.ts';

/**
 * Texts of the links of the prose that begin with an amount, at the batch of the plan. Counts, masses, volumes and
 * lengths of stock scale: inside a step to one full run, elsewhere to one model. Sizes stay as they are.
 *
 * @returns By index into `prose.links`; a link that is not there keeps the text of its author.
 */
export function showLinks(
  key: string,
  line: PlannedLine,
  workspace: Workspace,
): Readonly<Record<number, Shown>> {
  const texts = line.at.prose.links.map((link, i) => [i, linkText(link, line, workspace)] as const);
  return Object.fromEntries(
    texts.flatMap(([i, text]) => (text === undefined ? [] : [[i, shown(`${key}[${i}]`, text)] as const])),
  );
}

function linkText(link: ProseLink, line: PlannedLine, workspace: Workspace): string | undefined {
  if (link.kind === 'set') return settingText(link, line, workspace);
  const leading = readLeading(link.text);
  if (!leading) return undefined;
  if (link.kind !== 'material') return properly(link.text);
  const { amount, rest } = leading;
  if ('sides' in amount) return withRest(showSizeIn(workspace.program.units, amount), rest);
  const scaled = isSideOfPiece(amount, link.target, line) ? undefined : scaledText(link, line, workspace);
  return scaled === undefined ? properly(link.text) : withRest(scaled, rest);
}

/** "700 mm of film", where film is cut in pieces of that length: a size, which does not scale. */
function isSideOfPiece(amount: Leading['amount'], target: string, { at }: PlannedLine): boolean {
  if (!('unit' in amount) || dimensionOf(amount.unit) !== 'length') return false;
  const pieces = at.materials
    .filter(({ id, use }) => id === target || use === target)
    .flatMap((row) => row.pieces);
  const said = measure({ value: amount.most, unit: amount.unit });
  return pieces.some(({ size }) => size.sides.length === 1 && compare(measure(size.sides[0]!), said) === 0);
}

/** A setting stands as its step gives it at this level. */
function settingText(
  { section, target }: ProseLink,
  line: PlannedLine,
  workspace: Workspace,
): string | undefined {
  const step = stepOfSection(line, section);
  const steps = line.at.steps.filter(({ id }) => step === undefined || id === step);
  const setting = steps.map(({ set }) => set[target]).find((found) => found !== undefined);
  return setting && showSetting(setting.text, workspace);
}

function scaledText(link: ProseLink, line: PlannedLine, workspace: Workspace): string | undefined {
  const step = line.steps.find((need) => need.step === stepOfSection(line, link.section));
  if (!step) return oneModelText(link.target, line, workspace);
  const take =
    step.takes.find(({ use }) => use === link.target) ??
    step.takes.find(({ material }) => material === link.target);
  return take && takeText(take, step, line, workspace);
}

function takeText(take: StepTake, step: StepNeed, line: PlannedLine, workspace: Workspace): string {
  if (take.pieces.length > 0) return showCount(take.pieces.reduce((sum, { run }) => sum + run, 0));
  return showFor(line, take.use, takenOf(line, step, take).run, workspace);
}

function oneModelText(target: string, line: PlannedLine, workspace: Workspace): string | undefined {
  const row = line.at.materials.find(({ id, use }) => id === target || use === target);
  if (row && row.pieces.length > 0) return showCount(row.pieces.reduce((sum, { count }) => sum + count, 0));
  const use = row?.id ?? target;
  const need = needOf(line, use);
  return need && showFor(line, use, need.one, workspace);
}

function stepOfSection({ at }: PlannedLine, section: number): string | undefined {
  return at.prose.sections[section]?.step;
}

function withRest(amount: string, rest: string): string {
  const after = properly(rest.trim());
  return after === '' ? amount : `${amount} ${after}`;
}
