import type { InPieces } from '../../in-pieces.ts';
import { choices } from './choices.ts';
import type { Question } from './lighter-stock.ts';
import { sheetsOf, sumOver, weigh, type Filled, type Sheet, type Stock } from './stock.ts';

/**
 * As many sheets of the same value, laid so that one of them keeps more in one piece: one is offered ever shorter, as
 * long as all pieces still find room.
 */
export function* withLargeOffcut(
  { pieces, stock, needs, fill, work }: Question,
  filled: readonly Filled[],
): InPieces<readonly Filled[]> {
  const values = stock.map(({ value }) => value);
  const most = sumOver(filled, values);
  let best = withOffcutLast(filled, stock);
  for (const { counts, weight } of choices(
    stock,
    needs,
    stock.map(() => 1),
  )) {
    if (weight > filled.length || work.left <= 0) break;
    if (weight < filled.length || weigh(counts, values) > most) continue;
    for (let kind = 0; kind < stock.length;) {
      const shorter = oneShorter(sheetsOf(counts, stock), kind, offcutOf(best.at(-1)!, stock));
      const found = shorter && work.left > 0 ? yield* fill(pieces, shorter, work) : 'unknown';
      if (typeof found === 'object') best = withOffcutLast(found, stock);
      else kind++;
    }
  }
  return best;
}

/** The sheets with one of that kind last, cut so short that what is cut off is larger than this. */
function oneShorter(sheets: readonly Sheet[], kind: number, than: number): Sheet[] | undefined {
  const one = sheets.find((sheet) => sheet.kind === kind);
  const height = one ? Math.min(one.height, one.full.height - Math.floor(than / one.full.width) - 1) : 0;
  return one && height > 0 ? [...sheets.filter((sheet) => sheet !== one), { ...one, height }] : undefined;
}

function withOffcutLast(filled: readonly Filled[], stock: readonly Stock[]): readonly Filled[] {
  const last = filled.reduce((a, b) => (offcutOf(b, stock) > offcutOf(a, stock) ? b : a));
  return [...filled.filter((one) => one !== last), last];
}

function offcutOf({ kind, layout }: Filled, stock: readonly Stock[]): number {
  const { width, height } = stock[kind]!.full;
  return width * (height - layout.top);
}
