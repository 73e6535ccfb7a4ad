import type { Element } from 'hast';
import { h, s } from 'hastscript';

/** Places in thousandths: `at` of the width, `up` of the height; above 1000 is above the picture. */
export interface CurvePoints {
  readonly points: readonly {
    readonly at: number;
    readonly up: number;
    readonly full: boolean;
    readonly current: boolean;
    readonly label: Text;
  }[];
  readonly across: readonly { readonly at: number; readonly label: Text }[];
  readonly up: readonly { readonly at: number; readonly label: Text }[];
}
interface Text {
  readonly key: string;
  readonly text: string;
}

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
export function curvePicture(curve: CurvePoints): Element {
  return h('div', { className: ['curve'], ariaHidden: 'true' }, [
    s(
      'svg',
      {
        className: ['curve-line'],
        viewBox: '0 0 1000 1000',
        preserveAspectRatio: 'none',
        focusable: 'false',
      },
      [
        ...curve.up.map(({ at }) => s('path', { className: ['curve-grid'], d: `M0 ${1000 - at}H1000` })),
        s('path', { className: ['curve-tooth'], d: pathOf(curve) }),
      ],
    ),
    s('svg', { className: ['curve-marks'], focusable: 'false' }, [
      ...curve.up.map(({ at, label }) =>
        s(
          'text',
          {
            className: ['curve-label'],
            x: '0',
            y: percent(1000 - at),
            dx: '-0.5em',
            dy: '0.35em',
            textAnchor: 'end',
          },
          label.text,
        ),
      ),
      s('g', { className: ['curve-across'] }, curve.across.map(sizeBelow)),
      ...curve.points.filter(({ up }) => up <= 1000).flatMap(marksOf),
    ]),
  ]);
}

function sizeBelow({ at, label }: CurvePoints['across'][number]): Element {
  const place = { x: percent(at), y: '100%', dy: '1.35em', textAnchor: 'middle' };
  return s('text', { className: ['curve-label'], ...place }, label.text);
}

function pathOf({ points }: CurvePoints): string {
  return points.map(({ at, up }, i) => `${i === 0 ? 'M' : 'L'}${at} ${1000 - up}`).join('');
}

function marksOf({ at, up, full, current, label }: CurvePoints['points'][number]): readonly Element[] {
  const [x, y] = [percent(at), percent(1000 - up)];
  return [
    ...(current ? [diamond(x, y)] : []),
    ...(full ? [s('circle', { className: ['curve-full'], cx: x, cy: y, r: '4.5' })] : []),
    ...(label.text === ''
      ? []
      : [s('text', { className: ['curve-size'], x, y, dy: '1.55em', textAnchor: 'middle' }, label.text)]),
  ];
}

/** A square on its corner; in a picture of its own, since shares and turns do not go together. */
function diamond(x: string, y: string): Element {
  return s('svg', { className: ['curve-current'], x, y }, [s('path', { d: 'M0-9 9 0 0 9-9 0Z' })]);
}

function percent(thousandths: number): string {
  return `${Math.round(thousandths) / 10}%`;
}

/** The key of the picture: a mark as the curve has it. */
export function curveKey(kind: 'full' | 'current'): Element {
  const mark =
    kind === 'full'
      ? s('circle', { className: ['curve-full'], cx: '50%', cy: '50%', r: '4.5' })
      : diamond('50%', '50%');
  return s('svg', { className: ['key-mark'], ariaHidden: 'true', focusable: 'false' }, [mark]);
}
