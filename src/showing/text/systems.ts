import type { Program } from '../../core/model/program.ts';
import { unitOf } from '../../core/quantity/units.ts';
import { systemWords } from '../../words/units.ts';
import { fill } from './fill.ts';

/** What amounts are read in: metric, US customary, or the one with the other behind it. */
export type Units = Program['units'];
export type System = 'metric' | 'US';

/**
 * A text as each of the systems has it; one text where they say the same.
 *
 *     metric  350 g        US  12 3/8 oz        both  350 g (12 3/8 oz)
 */
export function inSystems(units: Units, say: (system: System) => string): string {
  if (units !== 'both') return say(units);
  const [metric, us] = [say('metric'), say('US')];
  return metric === us ? metric : fill(systemWords.both, { metric, us });
}

/** The one that stands where there is room for one alone. */
export function firstSystem(units: Units): System {
  return units === 'US' ? 'US' : 'metric';
}

export function isCustomary(unit: string): boolean {
  return unitOf(unit).system === 'US';
}
