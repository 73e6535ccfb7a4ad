import type { CutDrawing, Mark } from '../shown/shown-cutting.ts';
import { fromTop, share } from './cut-places.ts';
import { type Tree, tree } from './tree.ts';
import { withRoom } from '../text/with-room.ts';

/** Where a rule is read along the lower edge: a graduation and its figure, which on a phone is left out where it is crowded. */
export function marksAcross({ across, width, by }: CutDrawing): readonly Tree[] {
  const roomy = roomyOnPhone(across, width);
  return across.flatMap((mark) => {
    const [x, y] = [share(mark.at, width), '100%'];
    const side = by === 'lengths' ? sideOf(mark, width) : [];
    const names = ['cut-edge', ...side, ...(roomy.has(mark) ? [] : ['is-crowded'])];
    return [
      tree('rect', { class: 'cut-tick', x, y, width: '1', height: '6' }),
      tree('text', { class: names.join(' '), x, y, dy: '1.45em' }, [mark.label.text]),
    ];
  });
}

/** Along the left edge. */
export function marksUp(sheet: CutDrawing): readonly Tree[] {
  return sheet.up.flatMap(({ at, label }) => {
    const y = fromTop(at, sheet);
    const text = { class: 'cut-edge is-up', x: '0', y, dx: '-0.6em', dy: '0.35em' };
    return [
      tree('rect', { class: 'cut-tick', x: '-6', y, width: '6', height: '1' }),
      tree('text', text, [label.text]),
    ];
  });
}

/** Figures of a length are long: one ends at its end, and begins at a graduation that is hardly away from its start. */
function sideOf({ at }: Mark, width: number): readonly string[] {
  if (at === width) return ['is-last'];
  return at < nearTheCorner * width ? ['is-first'] : [];
}

const nearTheCorner = 0.06;

/** A figure on a phone takes so much of the width: for each letter, and around it. */
const letterOnPhone = 0.034;
const aroundOnPhone = 0.06;

/** The last figure, then those from the left that have room before the next. */
function roomyOnPhone(marks: readonly Mark[], width: number): ReadonlySet<Mark> {
  const room = ({ label }: Mark): number => (label.text.length * letterOnPhone + aroundOnPhone) * width;
  const isNear = (a: Mark, b: Mark): boolean => Math.abs(a.at - b.at) < (room(a) + room(b)) / 2;
  return new Set(withRoom([...marks.slice(-1), ...marks], isNear));
}
