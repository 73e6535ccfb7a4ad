import type { Place } from '../core/diagnostic.ts';
import { Bug } from '../core/diagnostic.ts';
import type { Origins } from '../core/model/origins.ts';
import { prosePlace } from './prose/prose-place.ts';
import type { Path, Sheet } from './sheet/sheet.ts';

/**
 * The table of origins of all sheets that were read, by the name that paths begin with: `program`,
 * `materials/felt`, `guides/needle-block`. A place is looked up when asked for: few ever are.
 */
export function makeOrigins(sheets: ReadonlyMap<string, Sheet>): Origins {
  const find = (path: string): { readonly sheet: Sheet; readonly inside: Path } => {
    const [first = '', second, ...rest] = path.split('/');
    const top = first === 'program' ? first : `${first}/${second}`;
    const sheet = sheets.get(top);
    if (!sheet) throw new Bug('nothing of this path was read', { path });
    return { sheet, inside: first === 'program' && second !== undefined ? [second, ...rest] : rest };
  };
  return {
    at: (path) => placeIn(find(path), 'valueAt'),
    key: (path) => placeIn(find(path), 'keyAt'),
    prose: (of, at) => prosePlace(find(of).sheet.source, at),
  };
}

function placeIn(
  { sheet, inside }: { readonly sheet: Sheet; readonly inside: Path },
  which: 'valueAt' | 'keyAt',
): Place {
  return sheet[which](inside);
}
