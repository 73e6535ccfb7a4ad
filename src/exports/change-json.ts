import type { Change, CurvePoint, Plan, PlannedLine, WhatIf } from '../core/plan/result.ts';
import type { Program } from '../core/model/program.ts';
import { printDuration } from '../core/time/minutes.ts';
import { lineName } from './line-name.ts';
import { inOwnCurrency } from './money-text.ts';
import { momentOn } from './moment.ts';

/** One thing changed: `{ kind: 'builders', count: 3 }`, `{ kind: 'notice', time: 'PT24H' }`. */
export function changeJson(change: Change, lines: readonly PlannedLine[]) {
  switch (change.kind) {
    case 'notice':
    case 'later':
      return { kind: change.kind, time: printDuration(change.minutes) };
    case 'fewer':
      return { kind: change.kind, ...lineName(lines[change.line]!), wanted: change.wanted };
    case 'builders':
    case 'place':
    case 'tool':
      return change;
  }
}

/** What single changes would bring, beside the plan. `ready` and `firstHandsOn` are left out where nothing can be done. */
export function whatIfJson(rows: readonly WhatIf[], { lines, schedule }: Plan, program: Program) {
  const clock = 'none' in schedule ? schedule.none.clock?.clock : schedule.clock;
  const at = momentOn(clock ?? 'reference-week', program);
  return rows.map(({ change, ready, firstHandsOn, outlay, cashToStart }) => ({
    change: changeJson(change, lines),
    ...(firstHandsOn === undefined ? {} : { firstHandsOn: at(firstHandsOn) }),
    ...(ready === undefined ? {} : { ready: at(ready) }),
    outlay: inOwnCurrency(outlay, program),
    cashToStart: inOwnCurrency(cashToStart, program),
  }));
}

/** Outlay of one good model by the size of the batch; `full` where the packs are. */
export function curveJson(points: readonly CurvePoint[], program: Program) {
  return points.map(({ models, outlay, full }) => ({ models, outlay: inOwnCurrency(outlay, program), full }));
}
