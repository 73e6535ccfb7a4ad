import type { Target } from '../../core/model/values.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import { type Exact, exact } from '../../core/quantity/exact.ts';
import { convert, measure } from '../../core/quantity/quantity.ts';
import { readTarget } from '../../core/quantity/read.ts';
import { roundTo } from '../../core/quantity/round.ts';
import { dimensionOf } from '../../core/quantity/units.ts';
import { systemWords } from '../../words/units.ts';
import { properly } from './author-text.ts';
import { fill, noBreak } from './fill.ts';
import { showNumber } from './numbers.ts';
import { type System, inSystems, isCustomary } from './systems.ts';

/** What an author wrote, printed properly; a temperature in the units of the program: "60 °C (140 °F)". */
export function showSetting(text: string, { program }: Workspace): string {
  const reading = readTarget(text);
  if (!reading.ok || dimensionOf(reading.value.is.unit) !== 'temperature') return properly(text);
  return inSystems(program.units, (system) => showTemperature(text, reading.value, system));
}

/**
 * In the scale of its author as it was written; in the other one to a whole degree, never outside of what is accepted.
 *
 *     60 °C ± 2 °C  ->  137–143 °F      (136.4 to 143.6)
 */
function showTemperature(text: string, { is, least, most }: Target, system: System): string {
  const unit = system === 'US' ? '°F' : '°C';
  if (isCustomary(is.unit) === isCustomary(unit)) return properly(text);
  const [low, middle, high] = [least, is, most].map((each) => convert(measure(each), unit).value);
  const [from, to] = [low!.ceil(), high!.floor()];
  if (from.compare(to) >= 0) return degrees(roundTo(middle!, exact(1)), unit);
  return fill(systemWords.temperatures, { least: showNumber(from), most: showNumber(to), unit });
}

function degrees(value: Exact, unit: string): string {
  return `${showNumber(value)}${noBreak}${unit}`;
}
