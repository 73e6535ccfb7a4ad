import type { Amount, Size } from '../model/values.ts';
import { floor } from './exact.ts';
import { rangeOf, readTarget } from './read-amount.ts';
import { readSize } from './read-size.ts';
import type { Expression } from './scan.ts';
import { leadingExpression } from './scan.ts';
import { tidy } from './tidy.ts';

/** What the text of a link begins with: `{ count }` for a bare whole number, as in `12 pins`. */
export interface Leading {
  readonly amount: Amount | Size | { readonly count: number };
  /** The words that follow, without the space before them. */
  readonly rest: string;
}

/**
 * The amount that a phrase begins with, and the rest: `300 mm x 200 mm of felt`, `12 pins`, `40–60 s`. `undefined`
 * where it begins with none, so that a name such as `3D print` stays one.
 */
export function readLeading(text: string): Leading | undefined {
  const tidied = tidy(text);
  const size = leadingSize(tidied);
  if (size) return size;
  const scanned = leadingExpression(tidied);
  if (!scanned.ok) return undefined;
  const { found, rest } = scanned.value;
  const endsWord = !/^[\p{L}\d%°²³.,:/_-]/u.test(rest) || /^[.,:](?: |$)/.test(rest);
  return endsWord ? leading(found, rest) : undefined;
}

/** Two or three sides; but `12 x 180 mm` is a count, of one length. */
function leadingSize(text: string): Leading | undefined {
  const found = new RegExp(`^${side} ?[x×] ?${side}(?: ?[x×] ?${side})?`, 'u').exec(text);
  if (!found || /^[\d./ ]+[x×][\d./ ]+(?![x×])\p{L}/u.test(text)) return undefined;
  const size = readSize(found[0]);
  return size.ok ? { amount: size.value, rest: text.slice(found[0].length).trim() } : undefined;
}
const side = String.raw`\d[\d./]*(?: \d+/\d+)?(?: ?[a-wyzµ"]{1,2}(?![\p{L}]))?`;

function leading(found: Expression, rest: string): Leading | undefined {
  const amount = amountOf(found);
  return amount && { amount, rest: rest.trim() };
}

function amountOf(found: Expression): Leading['amount'] | undefined {
  const { first, second, join } = found;
  if (!join && !first.unit && first.value.d === 1n) return { count: floor(first.value) };
  if (join === 'tolerance') return aroundTarget(`${first.written} ± ${second!.written}`);
  const range = rangeOf('', found);
  return range.ok ? range.value : undefined;
}

function aroundTarget(text: string): Amount | undefined {
  const target = readTarget(text);
  if (!target.ok) return undefined;
  const { is, least, most } = target.value;
  return { least: least.value, usual: is.value, most: most.value, unit: is.unit };
}
