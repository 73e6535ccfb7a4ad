import { type InPieces, atOnce } from '../../in-pieces.ts';
import type { Workspace } from '../../model/workspace.ts';
import { type Exact, zero } from '../../quantity/exact.ts';
import { buy } from '../buy/buy.ts';
import type { DemandLine, PlanSettings } from '../demand.ts';
import { demanded } from '../demand/demanded.ts';
import { forEachGood } from '../demand/line.ts';
import { outlayOf } from '../cost/outlay.ts';
import type { CurvePoint } from '../result.ts';
import { workingOut } from '../work.ts';

/** So many points at most, and without thinning them out up to twice the batch, or to so many models. */
const pointsUpTo = 60;
const modelsAtLeast = 24;
/** Of more sizes than that: so many are worked out, and as many at which packs are full. */
const samples = 20;
/** Beyond so many models a single size is much work: a few are worked out, and none is looked for. */
const searchedUpTo = 2000;
const fewSamples = 8;
/** Pieces that may be laid in search of better layouts, for each material and point. */
const cuttingBudget = 500;

/**
 * What one good model costs to buy for, at batch sizes round the one that is asked for: a saw-tooth, since packs are
 * whole. Packs and deliveries alone; nothing is scheduled.
 *
 *     250 g each, packs of 1 kg at 18.00:   1 -> 18.00    3 -> 6.00    4 -> 4.50, full    5 -> 7.20
 *
 * Of many sizes only some are worked out: evenly spread ones, and from each on the next at which the packs are full;
 * of very many a few, and where packs are full is not looked for.
 *
 * @param demand  One line.
 * @returns In order of batch size; empty where the demand cannot be planned.
 */
export function outlayCurve(
  workspace: Workspace,
  demand: DemandLine,
  settings: PlanSettings,
): readonly CurvePoint[] {
  return atOnce(curving(workspace, demand, settings));
}

/** The same, in small pieces of work. */
export function* curving(
  workspace: Workspace,
  demand: DemandLine,
  settings: PlanSettings,
): InPieces<readonly CurvePoint[]> {
  const asked = demanded(workspace, [demand]);
  if ('refused' in asked) return [];
  const { wanted } = asked.lines[0]!;
  const outlay = outlayFor(workspace, demand, settings);
  const last = Math.max(modelsAtLeast, 2 * wanted);
  const isSearched = last <= searchedUpTo;
  const sizes = isSearched ? yield* tellingSizes(last, outlay) : spread(last, Math.ceil(last / fewSamples));
  const inOrder = [...new Set([...sizes, wanted])].filter((size) => size <= last).sort((a, b) => a - b);
  const points: CurvePoint[] = [];
  for (const models of inOrder) {
    const own = yield* outlay(models);
    const next = isSearched ? yield* outlay(models + 1) : undefined;
    const full = own !== undefined && next !== undefined && own.each.compare(next.each) < 0;
    if (own) points.push({ models, outlay: own.each, full });
  }
  return points;
}

function* tellingSizes(last: number, outlay: OutlayFor): InPieces<readonly number[]> {
  if (last <= pointsUpTo) return spread(last, 1);
  const every = Math.ceil(last / samples);
  return yield* withFullOnes(spread(last, every), every, outlay);
}

/** 1, 1 + every, and so on; with the last. */
function spread(last: number, every: number): number[] {
  return [...Array.from({ length: Math.ceil(last / every) }, (_, i) => 1 + i * every), last];
}

/** Each of the sizes, and the last one short of the next that takes the same packs. */
function* withFullOnes(
  sizes: readonly number[],
  every: number,
  outlay: OutlayFor,
): InPieces<readonly number[]> {
  const all: number[] = [];
  for (const size of sizes) all.push(size, yield* fullFrom(size, every, outlay));
  return all;
}

function* fullFrom(size: number, every: number, outlay: OutlayFor): InPieces<number> {
  const own = (yield* outlay(size))?.all;
  let [same, more] = [size, size + every];
  while (more - same > 1) {
    const middle = (same + more) >> 1;
    const isSame = (yield* outlay(middle))?.all.equals(own ?? zero) ?? false;
    [same, more] = isSame ? [middle, more] : [same, middle];
  }
  return same;
}

type OutlayFor = (models: number) => InPieces<Outlay | undefined>;
interface Outlay {
  readonly all: Exact;
  readonly each: Exact;
}

/** What is bought for a batch of some size: all of it, and for each good model. Each size is worked out once. */
function outlayFor(workspace: Workspace, demand: DemandLine, settings: PlanSettings): OutlayFor {
  const known = new Map<number, Outlay | undefined>();
  function* workOut(models: number): InPieces<Outlay | undefined> {
    const work = yield* workingOut(workspace, [{ ...demand, wanted: models }], settings, cuttingBudget);
    if ('refused' in work) return undefined;
    const all = outlayOf(buy(work.wants, workspace));
    return { all, each: forEachGood(work.lines[0]!, all) };
  }
  return function* (models) {
    if (!known.has(models)) known.set(models, yield* workOut(models));
    return known.get(models);
  };
}
