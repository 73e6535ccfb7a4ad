import type { CurveDrawing } from '../shown/shown-what-if.ts';
import { type Tree, percent, picture, tree } from './tree.ts';
import { withRoom } from '../text/with-room.ts';

/**
 * Outlay each by the size of the batch: a saw-tooth, a dot at each size that fills its packs, a diamond at the batch
 * that is planned. The shapes differ, so that they are told apart without colour.
 *
 *     £8 |\
 *        | \   |\
 *     £4 |  \__| \_o|\_o
 *        +------------<>---
 *          2   4   6
 */
export function outlayCurve(curve: CurveDrawing): Tree {
  return tree('div', { class: 'curve', 'aria-hidden': 'true' }, [
    tree(
      'svg',
      {
        class: 'curve-line',
        viewBox: '0 0 1000 1000',
        preserveAspectRatio: 'none',
        focusable: 'false',
      },
      [
        ...curve.up.map(({ at }) => tree('path', { class: 'curve-grid', d: `M0 ${1000 - at}H1000` })),
        tree('path', { class: 'curve-tooth', d: pathOf(curve) }),
      ],
    ),
    tree('svg', { class: 'curve-marks', focusable: 'false' }, [
      ...curve.up.map(sumBeside),
      tree('g', { class: 'curve-across' }, curve.across.map(sizeBelow)),
      ...marksOf(curve.points.filter(({ up }) => up <= 1000)),
    ]),
  ]);
}

function sumBeside({ at, label }: CurveDrawing['up'][number]): Tree {
  const place = { x: '0', y: percent(1000 - at), dx: '-0.5em', dy: '0.35em', 'text-anchor': 'end' };
  return tree('text', { class: 'curve-label', ...place }, [label.text]);
}

function sizeBelow({ at, label }: CurveDrawing['across'][number]): Tree {
  const place = { x: percent(at), y: '100%', dy: '1.35em', 'text-anchor': 'middle' };
  return tree('text', { class: 'curve-label', ...place }, [label.text]);
}

function pathOf({ points }: CurveDrawing): string {
  return points.map(({ at, up }, i) => `${i === 0 ? 'M' : 'L'}${at} ${1000 - up}`).join('');
}

/** A dot where packs are full, a diamond where the plan is; below it the number, which a phone leaves out where it is crowded. */
function marksOf(points: readonly Point[]): readonly Tree[] {
  const roomy = roomyOnPhone(points);
  return points.flatMap((point) => {
    const [x, y] = [percent(point.at), percent(1000 - point.up)];
    const name = roomy.has(point) ? 'curve-size' : 'curve-size is-crowded';
    const place = { x, y, dy: '1.55em', 'text-anchor': 'middle' };
    return [
      ...(point.current ? [diamond(x, y)] : []),
      ...(point.full ? [dot(x, y)] : []),
      ...(isNamed(point) ? [tree('text', { class: name, ...place }, [point.label.text])] : []),
    ];
  });
}

type Point = CurveDrawing['points'][number];

function isNamed({ label }: Point): boolean {
  return label.text !== '';
}

/** The batch that is planned, then those from the left that have room beside those before them. */
function roomyOnPhone(points: readonly Point[]): ReadonlySet<Point> {
  const named = points.filter(isNamed);
  const isNear = (a: Point, b: Point): boolean => Math.abs(a.at - b.at) < roomOnPhone;
  return new Set(withRoom([...named.filter(({ current }) => current), ...named], isNear));
}

/** Thousandths of the width that a number needs on a phone. */
const roomOnPhone = 90;

function dot(cx: string, cy: string): Tree {
  return tree('circle', { class: 'curve-full', cx, cy, r: '4.5' });
}

/** A square on its corner; in a picture of its own, since shares and turns do not go together. */
function diamond(x: string, y: string): Tree {
  return tree('svg', { class: 'curve-current', x, y }, [tree('path', { d: 'M0-9 9 0 0 9-9 0Z' })]);
}

/** The key of the picture: a mark as the curve has it. */
export function curveKey(kind: 'full' | 'current'): Tree {
  const mark = kind === 'full' ? dot : diamond;
  return picture('key-mark', {}, [mark('50%', '50%')]);
}
