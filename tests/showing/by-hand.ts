import { planAt } from '../../src/core/model/plan-at.ts';
import { lineOf } from '../../src/core/plan/demand/line.ts';
import { plannedLine } from '../../src/core/plan/demand/planned-line.ts';
import type {
  ChainLink,
  CutLayout,
  CutPiece,
  CuttingPlan,
  NoSchedule,
  Plan,
  PlannedJob,
  PlannedSchedule,
} from '../../src/core/plan/result.ts';
import { exact, zero } from '../../src/core/quantity/exact.ts';
import { bench, gelBlock } from './bench.ts';

/** Plans made by hand, so that what is shown does not hang on how a schedule or a cutting plan is found. */
export const at = (day: number, time: string): number => {
  const [hours = 0, minutes = 0] = time.split(':').map(Number);
  return (day - 1) * 1440 + hours * 60 + minutes;
};

export function job(step: string, run: number, from: number, rest: Partial<PlannedJob> = {}): PlannedJob {
  const end = from + 10;
  return {
    line: 0,
    step,
    run,
    models: [run],
    start: from,
    end,
    waitEnd: end,
    people: 1,
    builders: [1],
    places: {},
    tools: {},
    ...rest,
  };
}

export function scheduleOf(
  jobs: readonly PlannedJob[],
  chain: readonly ChainLink[],
  rest: Partial<PlannedSchedule> = {},
): PlannedSchedule {
  const firstHandsOn = Math.min(...jobs.map(({ start }) => start));
  const ready = Math.max(...jobs.map(({ waitEnd }) => waitEnd));
  return {
    clock: 'reference-week',
    start: at(1, '09:00'),
    firstHandsOn,
    ready,
    makespan: ready - firstHandsOn,
    lowerBound: ready - firstHandsOn,
    optimal: true,
    buildTime: ready - firstHandsOn,
    handsOn: jobs.length * 10,
    jobs,
    lines: [{ ready, models: [{ ready }] }],
    chain,
    loads: [],
    ...rest,
  };
}

export const noSchedule: NoSchedule = { code: 'schedule-impossible', facts: {}, helps: [] };

/** So many gel blocks, with nothing bought and no schedule but what is given. */
export function planOf(wanted: number, rest: Partial<Plan> = {}): Plan {
  const line = plannedLine(lineOf({ at: planAt(gelBlock), wanted, forOthers: 0 }, bench, zero, []));
  const cost = { used: zero, outlay: zero, withTools: zero, withLabour: zero, handsOn: 0 };
  return {
    lines: [line],
    requirements: [],
    cutting: [],
    purchases: [],
    deliveries: [],
    tools: [],
    cost: {
      currency: 'GBP',
      complete: true,
      toolsComplete: true,
      outlay: exact(40),
      cashToStart: exact(50),
      each: [cost],
      handsOn: 0,
    },
    schedule: { none: noSchedule },
    warnings: [],
    ...rest,
  };
}

const mm = (length: number) => exact(String(length));

/** A skin of 150 mm x 100 mm for a model, its lower left corner there. */
export function skin(
  model: number | undefined,
  x: number,
  y: number,
  rest: Partial<CutPiece> = {},
): CutPiece {
  const of = { line: 0, row: 1, piece: 'skin', ...(model === undefined ? {} : { model }) };
  return { ...of, x: mm(x), y: mm(y), width: mm(150), height: mm(100), turned: false, ...rest };
}

/** A sheet of 450 mm x 300 mm. */
export function sheet(pieces: readonly CutPiece[], rest: Partial<CutLayout> = {}): CutLayout {
  const used = pieces.reduce(
    (most, { y, height }) => (y.add(height).compare(most) > 0 ? y.add(height) : most),
    zero,
  );
  return { ...offcut(pieces, { used, ...rest }), pack: 0 };
}

/** A sheet of that size from stock, used to its end. */
export function offcut(pieces: readonly CutPiece[], rest: Partial<CutLayout> = {}): CutLayout {
  return { width: mm(450), length: mm(300), used: mm(300), pieces, ...rest };
}

/** A length of 1 m. */
export function rod(pieces: readonly (readonly [model: number, from: number, length: number])[]): CutLayout {
  const lengths = pieces.map(([model, from, length]) =>
    skin(model, 0, from, { piece: 'rib', width: zero, height: mm(length) }),
  );
  return sheet(lengths, { width: zero, length: mm(1000) });
}

export function cuttingOf(layouts: readonly CutLayout[], rest: Partial<CuttingPlan> = {}): CuttingPlan {
  return {
    material: 'felt-3mm',
    by: 'sheets',
    layouts,
    bound: { of: 'cost', value: exact(4) },
    reached: exact(4),
    usedFraction: exact('5/6'),
    ...rest,
  };
}

/** Text with plain blanks, as people type it. */
export const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
