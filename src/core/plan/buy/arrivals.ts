import type { Program } from '../../model/program.ts';
import type { Duration } from '../../model/values.ts';
import type { Workspace } from '../../model/workspace.ts';
import { minutesOf } from '../../time/minutes.ts';
import { addWorkingDays } from '../../time/working-hours.ts';
import type { Bought } from './buy.ts';
import type { Clock } from '../time/clock.ts';
import { modelsFromStock } from './from-stock.ts';
import type { Line } from '../demand/line.ts';
import type { Delivery, Purchase } from '../result.ts';

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
  { purchases, cutting }: Bought,
  lines: readonly Line[],
  workspace: Workspace,
  clock: Clock,
): Arrivals {
  if (clock.kind === 'reference-week') return new Map();
  const ordered = orderedAt(workspace.program, clock.start);
  const found = purchases.flatMap((purchase): [string, Arrival][] => {
    const at = slowest(purchase, ordered, workspace);
    if (at === undefined) return [];
    const cut = cutting.find(({ material }) => material === purchase.material);
    return [[purchase.material, { at, modelsBefore: modelsFromStock(purchase, cut, lines, workspace) }]];
  });
  return new Map(found);
}

/** When the last pack of a material is there; `undefined` where nobody says how long any of them takes. */
function slowest(
  { material, packs }: Pick<Purchase, 'material' | 'packs'>,
  ordered: number,
  workspace: Workspace,
): number | undefined {
  const times = packs.flatMap(({ pack }) => arrivalOf(workspace, material, pack, ordered) ?? []);
  return times.length > 0 ? Math.max(...times) : undefined;
}

/** At that minute, if it is before closing of a working day; else at the next opening. */
export function orderedAt({ work, zone }: Program, minute: number): number {
  return addWorkingDays(work, zone, minute, 0);
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

/** When a pack that is ordered at a minute is there. */
export function arrivalOf(
  workspace: Workspace,
  material: string,
  pack: number,
  ordered: number,
): number | undefined {
  const time = deliveryTime(workspace, material, pack);
  const { work, zone } = workspace.program;
  if (!time) return undefined;
  if ('workingDays' in time) return addWorkingDays(work, zone, ordered, time.workingDays);
  return ordered + minutesOf(time);
}

/** By which minute something of each material must be there. */
export type NeededBy = ReadonlyMap<string, number>;

/**
 * The deliveries with the days on which they are ordered and there, in a plan with dates.
 *
 * @param neededBy  Planned backwards: orders go out on the latest working day that is early enough.
 */
export function datedDeliveries(
  { deliveries, purchases }: Bought,
  workspace: Workspace,
  clock: Clock,
  neededBy?: NeededBy,
): readonly Delivery[] {
  if (clock.kind === 'reference-week') return deliveries;
  const first = orderedAt(workspace.program, clock.start);
  return deliveries.map((delivery) => {
    const own = purchases
      .map(({ material, packs }) => ({
        material,
        packs: packs.filter(
          ({ pack }) => workspace.materials[material]!.packs[pack]!.from === delivery.supplier,
        ),
      }))
      .filter(({ packs }) => packs.length > 0);
    const ordered = neededBy ? latestOrder(own, first, workspace, neededBy) : first;
    const arrivals = own.flatMap((purchase) => slowest(purchase, ordered, workspace) ?? []);
    return { ...delivery, ordered, ...(arrivals.length > 0 ? { arrives: Math.max(...arrivals) } : {}) };
  });
}

/** The opening of the last working day, not before the first, on which all is still in time. */
function latestOrder(
  packs: readonly Pick<Purchase, 'material' | 'packs'>[],
  first: number,
  workspace: Workspace,
  neededBy: NeededBy,
): number {
  const { work, zone } = workspace.program;
  const needed = packs.filter(({ material }) => neededBy.has(material));
  const isInTime = (ordered: number): boolean =>
    needed.every(
      (purchase) => (slowest(purchase, ordered, workspace) ?? ordered) <= neededBy.get(purchase.material)!,
    );
  let latest = first;
  if (needed.length === 0) return latest;
  for (let next = first; isInTime(next); next = addWorkingDays(work, zone, next, 1)) latest = next;
  return latest;
}
