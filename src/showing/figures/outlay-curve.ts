import type { CurveDrawing } from '../shown-what-if.ts';
import { type Tree, percent, picture, tree } from './tree.ts';

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
      ...curve.points.filter(({ up }) => up <= 1000).flatMap(marksOf),
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

function marksOf({ at, up, full, current, label }: CurveDrawing['points'][number]): readonly Tree[] {
  const [x, y] = [percent(at), percent(1000 - up)];
  const size = { class: 'curve-size', x, y, dy: '1.55em', 'text-anchor': 'middle' };
  return [
    ...(current ? [diamond(x, y)] : []),
    ...(full ? [dot(x, y)] : []),
    ...(label.text === '' ? [] : [tree('text', size, [label.text])]),
  ];
}

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
