import type { Exact } from '../../core/quantity/exact.ts';
import type { Measure } from '../../core/quantity/quantity.ts';
import { cuttingWords } from '../../words/cutting.ts';
import { nearestMark, showExactly } from '../text/amounts.ts';
import { nearestSixteenth } from '../text/customary.ts';
import { fill } from '../text/fill.ts';
import { millimetreNumber, showLengthInMetres, showMillimetres } from '../text/millimetres.ts';
import { type System, type Units, inSystems } from '../text/systems.ts';

/** "1220 mm", "48 1/16 in": as a rule reads it. */
export function showRule(length: Exact, units: Units): string {
  return inSystems(units, (system) => (system === 'US' && inInches(length)) || showMillimetres(length));
}

/** How long a rod, tube or tape is: "6.64 m", "21 ft 9 7/16 in". */
export function showLength(length: Exact, units: Units): string {
  return inSystems(units, (system) => (system === 'US' && inInches(length)) || showLengthInMetres(length));
}

/** "600 mm × 450 mm" */
export function showArea(width: Exact, length: Exact, units: Units): string {
  return inSystems(units, (system) =>
    fill(cuttingWords.area, { width: showRule(width, system), length: showRule(length, system) }),
  );
}

/** "152.4", "6", "152.4 (6)": where a head says the unit. */
export function ruleNumber(length: Exact, units: Units): string {
  return inSystems(units, (system) => numberIn(length, system));
}

/** "600 × 450": where a head says the unit. */
export function areaNumbers(width: Exact, length: Exact, units: Units): string {
  return inSystems(units, (system) =>
    fill(cuttingWords.area, { width: numberIn(width, system), length: numberIn(length, system) }),
  );
}

function numberIn(length: Exact, system: System): string {
  return system === 'US' ? nearestSixteenth(inMillimetres(length)) : millimetreNumber(length);
}

function inInches(length: Exact): string | undefined {
  const mark = nearestMark(inMillimetres(length));
  return mark && showExactly(mark, 'US');
}

function inMillimetres(value: Exact): Measure {
  return { value, unit: 'mm' };
}
