import { units } from '../core/quantity/units.ts';
import { noBreak } from './fill.ts';

const symbols = units
  .map(({ symbol }) => symbol)
  .filter((symbol) => symbol !== '')
  .sort((a, b) => b.length - a.length)
  .map((symbol) => symbol.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
const beforeUnit = new RegExp(`(?<=\\d) ?(?=(?:${symbols.join('|')})(?![\\p{L}\\d]))`, 'gu');

/**
 * What an author wrote, printed properly: a no-break space between number and unit, a real multiplication sign.
 *
 *     60 °C -> 60 °C      15mm x 30 mm -> 15 mm × 30 mm
 */
export function properly(text: string): string {
  return text.replace(beforeUnit, noBreak).replace(/(?<=\d[^\d]{0,4}) x (?=\d)/g, ' × ');
}

/** As a sentence: with a full stop, unless the author set one. */
export function asSentence(text: string): string {
  const trimmed = properly(text.trim());
  return trimmed === '' || /[.!?…]["”’)]?$/.test(trimmed) ? trimmed : `${trimmed}.`;
}
