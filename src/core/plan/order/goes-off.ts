import type { Diagnostic } from '../../diagnostic.ts';
import type { Material } from '../../model/material.ts';
import type { Keeping } from '../../model/values.ts';
import type { Workspace } from '../../model/workspace.ts';
import { type Exact, zero } from '../../quantity/exact.ts';
import { convert } from '../../quantity/quantity.ts';
import type { Line } from '../demand/line.ts';
import { type Clock, limitMinutes } from '../time/clock.ts';
import { goodUntil } from '../time/keeping.ts';
import { minutesFact, momentFact, monthsFact, warning } from '../refusal.ts';
import { densityOf, packContent } from '../scale/requirements.ts';
import type { Plan, Purchase } from '../result.ts';
import { type Use, amountIn, usesOf } from './uses.ts';

/** What is bought, and when it is used. */
export interface InUse {
  readonly plan: Pick<Plan, 'schedule' | 'purchases' | 'deliveries'>;
  readonly lines: readonly Line[];
  readonly workspace: Workspace;
  readonly clock: Clock;
}

/**
 * Packs that go off before the last of them is used: opened at their first use, or closed since they came. The packs
 * of a material are used one after the other, what is in stock first. And what is left over must be used in time.
 */
export function goesOff({ plan, lines, workspace, clock }: InUse): readonly Diagnostic[] {
  const { schedule } = plan;
  if ('none' in schedule) return [];
  const uses = usesOf(schedule.jobs, lines, workspace);
  return plan.purchases.flatMap((purchase) => {
    const material = workspace.materials[purchase.material]!;
    const { opened, closed } = material.keeps;
    const own = uses.get(material.id);
    if (!own || (!opened && !closed)) return [];
    const packs = packsInUse(purchase, material, own);
    const arrives = arrivalOf(purchase, material, plan) ?? schedule.start;
    const until = (from: number, keeps: Keeping): number => goodUntil(from, keeps, clock, workspace.program);
    const stale = opened && packs.find(({ first, last }) => until(first, opened) < last);
    const old = closed && packs.find(({ first }) => until(arrives, closed) < first);
    const facts = (from: number, keeps: Keeping, last: number) => ({
      material: material.name,
      from: momentFact(from),
      until: momentFact(until(from, keeps)),
      last: momentFact(last),
    });
    return [
      ...(stale ? [warning('opened-goes-off', facts(stale.first, opened, stale.last))] : []),
      ...(old ? [warning('opened-goes-off', facts(arrives, closed, old.first), 'closed')] : []),
      ...(opened && purchase.left.value.compare(zero) > 0 ? [restGoesOff(material, opened)] : []),
    ];
  });
}

function restGoesOff({ name }: Material, keeps: Keeping): Diagnostic {
  const within = 'months' in keeps ? monthsFact(keeps.months) : minutesFact(limitMinutes(keeps));
  return { ...warning('rest-goes-off', { material: name, within }), severity: 'note' };
}

/** When the first goods of its suppliers are there, in a plan with dates. */
function arrivalOf(
  { packs }: Purchase,
  material: Material,
  { deliveries }: Pick<Plan, 'deliveries'>,
): number | undefined {
  const suppliers = packs.map(({ pack }) => material.packs[pack]!.from);
  const times = deliveries.flatMap(({ supplier, arrives }) =>
    suppliers.includes(supplier) ? (arrives ?? []) : [],
  );
  return times.length > 0 ? Math.min(...times) : undefined;
}

/** From when until when each bought pack is drawn on. */
function packsInUse(
  { needed: { unit }, fromStock, packs }: Purchase,
  material: Material,
  uses: readonly Use[],
): readonly { readonly first: number; readonly last: number }[] {
  const found: { first: number; last: number }[] = [];
  let [drawn, at] = [zero, 0];
  let begins = fromStock.value;
  const isDrawnBeyond = (amount: Exact): boolean => drawn.compare(amount) > 0;
  for (const { pack, count } of packs) {
    const holds = convert(packContent(material.packs[pack]!), unit, densityOf(material)).value;
    for (let i = 0; i < count && at < uses.length; i++) {
      while (at < uses.length && !isDrawnBeyond(begins))
        drawn = drawn.add(amountIn(unit, uses[at++]!, material));
      if (!isDrawnBeyond(begins)) break;
      const first = uses[at - 1]!.start;
      begins = begins.add(holds);
      while (at < uses.length && drawn.compare(begins) < 0)
        drawn = drawn.add(amountIn(unit, uses[at++]!, material));
      found.push({ first, last: uses[at - 1]!.end });
    }
  }
  return found;
}
