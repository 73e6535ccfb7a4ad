import type { Program } from '../model/program.ts';
import type { Duration } from '../model/values.ts';
import type { Workspace } from '../model/workspace.ts';
import { minutesUp, secondsOf } from '../time/duration.ts';
import { addWorkingDays } from '../time/working-hours.ts';
import type { Clock } from './clock.ts';
import { modelsFromStock } from './from-stock.ts';
import type { Line } from './line.ts';
import type { Delivery, Purchase } from './result.ts';

/** When a bought material is there, and what is made without it meanwhile. */
export interface Arrival {
  /** In minutes on the plan's clock. */
  readonly at: number;
  /** Of each line so many of the first models, for which the stock on hand is enough. */
  readonly modelsBefore: readonly number[];
}

/** By material; what is at hand is not listed. */
export type Arrivals = ReadonlyMap<string, Arrival>;

/**
 * Orders go out at the start; all chosen packs of a material are there with the slowest. In the reference week all
 * materials are at hand.
 */
export function arrivalsOf(
  purchases: readonly Purchase[],
  lines: readonly Line[],
  workspace: Workspace,
  clock: Clock,
): Arrivals {
  if (clock.kind === 'reference-week') return new Map();
  const ordered = orderedAt(workspace.program, clock);
  const found = purchases.flatMap((purchase): [string, Arrival][] => {
    const { material, packs } = purchase;
    const times = packs.flatMap(({ pack }) => deliveryTime(workspace, material, pack) ?? []);
    if (times.length === 0) return [];
    const at = Math.max(...times.map((time) => arrival(time, ordered, workspace.program)));
    return [[material, { at, modelsBefore: modelsFromStock(purchase, lines, workspace) }]];
  });
  return new Map(found);
}

/** At the start, if that is before closing of a working day; else at the next opening. */
export function orderedAt({ work, zone }: Program, clock: Clock): number {
  return clock.kind === 'dated' ? addWorkingDays(work, zone, clock.start, 0) : clock.start;
}

/** What a pack itself says comes before what its supplier says; `undefined`: nobody says. */
export function deliveryTime(
  { materials, program }: Workspace,
  material: string,
  index: number,
): Duration | undefined {
  const pack = materials[material]!.packs[index]!;
  return pack.arrivesIn ?? (pack.from === undefined ? undefined : program.suppliers[pack.from]?.arrivesIn);
}

function arrival(time: Duration, ordered: number, { work, zone }: Program): number {
  if ('workingDays' in time) return addWorkingDays(work, zone, ordered, time.workingDays);
  return ordered + minutesUp(secondsOf(time));
}

/** The deliveries with the days on which they are ordered and there, in a plan with dates. */
export function datedDeliveries(
  deliveries: readonly Delivery[],
  purchases: readonly Purchase[],
  workspace: Workspace,
  clock: Clock,
): readonly Delivery[] {
  if (clock.kind === 'reference-week') return deliveries;
  const ordered = orderedAt(workspace.program, clock);
  return deliveries.map((delivery) => {
    const times = purchases.flatMap(({ material, packs }) =>
      packs
        .filter(({ pack }) => workspace.materials[material]!.packs[pack]!.from === delivery.supplier)
        .flatMap(({ pack }) => deliveryTime(workspace, material, pack) ?? []),
    );
    const arrivals = times.map((time) => arrival(time, ordered, workspace.program));
    return { ...delivery, ordered, ...(arrivals.length > 0 ? { arrives: Math.max(...arrivals) } : {}) };
  });
}
