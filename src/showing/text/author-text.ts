import { units } from '../../core/quantity/units.ts';
import { capital, noBreak } from './fill.ts';

const symbols = units
  .map(({ symbol }) => symbol)
  .filter((symbol) => symbol !== '')
  .sort((a, b) => b.length - a.length)
  .map((symbol) => symbol.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
// No look-behind: readers' browsers of 2022 do not have it.
const numberAndUnit = new RegExp(`(\\d)(?:\\.0+)? ?(${symbols.join('|')})(?![\\p{L}\\d])`, 'gu');

/**
 * What an author wrote, printed properly: a no-break space between number and unit, no zeros after the point, a real
 * multiplication sign.
 *
 *     60 °C -> 60 °C      0.8–1.0 mm -> 0.8–1 mm      15mm x 30 mm -> 15 mm × 30 mm
 */
export function properly(text: string): string {
  return text.replace(numberAndUnit, `$1${noBreak}$2`).replace(/(\d[^\d]{0,4}) x (?=\d)/g, '$1 × ');
}

/** As a sentence: with a capital, and with a full stop unless the author set one. */
export function asSentence(text: string): string {
  const trimmed = capital(properly(text.trim()));
  return trimmed === '' || /[.!?…]["”’)]?$/.test(trimmed) ? trimmed : `${trimmed}.`;
}
