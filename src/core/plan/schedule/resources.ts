import type { Program } from '../../model/program.ts';
import type { Line } from '../demand/line.ts';
import { modelsServed, sharedRuns } from '../scale/runs.ts';
import { type StepAt, type ToolRowAt, isHeldOver, isInHand } from '../scale/step-uses.ts';

/** What runs compete for: builders, listed places, and tools of which the program says how many it has. */
export interface Resources {
  readonly capacities: readonly number[];
  /** Names by index, for what is said of them. */
  readonly names: readonly { readonly kind: 'builders' | 'place' | 'tool'; readonly id: string }[];
  /** Index of a place or tool; `undefined`: unlimited. */
  readonly placeOf: (id: string) => number | undefined;
  readonly toolOf: (id: string) => number | undefined;
}

/** Builders are always the first resource. */
export const buildersAt = 0;

export function resourcesOf(lines: readonly Line[], program: Program, builders: number): Resources {
  const places = placesNamed(lines).filter((id) => program.stations[id] !== undefined);
  const tools = toolsNamed(lines).filter((id) => program.owned[id] !== undefined);
  const atOnce = (id: string): number => Math.max(program.owned[id]!, mostByOne(lines, id));
  const index = (ids: readonly string[], first: number) => (id: string) => {
    const found = ids.indexOf(id);
    return found < 0 ? undefined : first + found;
  };
  return {
    capacities: [builders, ...places.map((id) => program.stations[id]!), ...tools.map(atOnce)],
    names: [
      { kind: 'builders', id: '' },
      ...places.map((id) => ({ kind: 'place', id }) as const),
      ...tools.map((id) => ({ kind: 'tool', id }) as const),
    ],
    placeOf: index(places, 1),
    toolOf: index(tools, 1 + places.length),
  };
}

/** Places that steps hold, with hands on or while they wait, in the order of the guides. */
export function placesNamed(lines: readonly Pick<Line, 'at'>[]): readonly string[] {
  const steps = lines.flatMap(({ at }) => at.steps);
  return [...new Set(steps.flatMap((step) => [...Object.keys(step.at), ...Object.keys(step.waitsAt)]))];
}

export function toolsNamed(lines: readonly Pick<Line, 'at'>[]): readonly string[] {
  return [...new Set(lines.flatMap(({ at }) => at.tools.map(({ use }) => use)))];
}

/**
 * The most of a tool that a single run takes at once. A program that owns fewer buys as many: with less nothing could
 * be built.
 *
 *     4 models poured in one run, each into a tin of its own -> 4 tins
 */
export function mostByOne(lines: readonly Pick<Line, 'at' | 'made'>[], tool: string): number {
  const takes = lines.flatMap(({ at, made }) => {
    if (made === 0) return [];
    const rows = at.tools.filter(({ use }) => use === tool);
    const perStep = at.steps.map((step) => {
      const served = modelsServed(at, step.for, made);
      return rows.reduce((sum, row) => sum + takenByRun(at, row, step, { served, made }), 0);
    });
    return [...rows.map(({ count }) => count), ...perStep];
  });
  return Math.max(0, ...takes);
}

function takenByRun(
  at: Line['at'],
  row: ToolRowAt,
  step: StepAt,
  { served, made }: { readonly served: number; readonly made: number },
): number {
  if (isInHand(at, row, step)) return row.count;
  return isHeldOver(at, row, step) ? row.count * mostShared(served, row.holds, made) : 0;
}

/** The most groups that one run touches. */
function mostShared(served: number, holds: number, made: number): number {
  const touched = new Map<number, number>();
  for (const [run] of sharedRuns(served, holds, made)) touched.set(run, (touched.get(run) ?? 0) + 1);
  return Math.max(0, ...touched.values());
}
