import type { Program } from '../model/program.ts';
import type { Duration } from '../model/values.ts';
import type { Workspace } from '../model/workspace.ts';
import { minutesUp, secondsOf } from '../time/duration.ts';
import { addWorkingDays } from '../time/working-hours.ts';
import type { Clock } from './clock.ts';
import type { Delivery, Purchase } from './result.ts';

/** When bought materials are there, in minutes on the plan's clock; what is at hand is not listed. */
export type Arrivals = ReadonlyMap<string, number>;

/**
 * Orders go out at the start; all chosen packs of a material are there with the slowest. In the reference week all
 * materials are at hand.
 */
export function arrivalsOf(purchases: readonly Purchase[], workspace: Workspace, clock: Clock): Arrivals {
  if (clock.kind === 'reference-week') return new Map();
  const ordered = orderedAt(workspace.program, clock);
  const times = purchases.flatMap(({ material, packs }) => {
    const arrivals = packs.flatMap(({ pack }) => {
      const time = deliveryTime(workspace, material, pack);
      return time ? [arrival(time, ordered, workspace.program)] : [];
    });
    return arrivals.length > 0 ? [[material, Math.max(...arrivals)] as const] : [];
  });
  return new Map(times);
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
