import type { Element } from 'hast';
import { s } from 'hastscript';

/** A stretch of the strip, in thousandths of its width. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}
export interface Bar extends Stretch {
  readonly kind: 'hands-on' | 'wait';
}
export interface Tick {
  readonly at: number;
  readonly day: boolean;
}

/**
 * One row of the picture of a schedule: closed time shaded, a line at each tick, a bar for each stretch of work; waits
 * are hatched, so that they differ without colour; a rule under those that decide the end. It fills whatever box it
 * stands in.
 *
 *     |####////////|         |##|
 *     -------------          ----
 */
export function stripRow(
  bars: readonly Bar[],
  closed: readonly Stretch[],
  ticks: readonly Tick[],
  decides: readonly Stretch[] = [],
): Element {
  return s('svg', { className: ['bars'], ariaHidden: 'true', focusable: 'false' }, [
    ...closed.map((stretch) =>
      s('rect', { className: ['bar-closed'], y: '-2%', height: '104%', ...across(stretch) }),
    ),
    ...ticks.map(({ at, day }) =>
      s('line', {
        className: [day ? 'tick-day' : 'tick-hour'],
        x1: percent(at),
        x2: percent(at),
        y1: '0',
        y2: '100%',
      }),
    ),
    ...bars.map(barOf),
    ...decides.map((stretch) =>
      s('rect', { className: ['bar-decides'], y: '84%', height: '3', ...across(stretch) }),
    ),
  ]);
}

function barOf({ kind, ...stretch }: Bar): Element {
  const fill = kind === 'wait' ? { fill: `url(#${hatchId})` } : {};
  return s('rect', { className: [`bar-${kind}`], y: '24%', height: '52%', ...fill, ...across(stretch) });
}

/** The key of the picture: a small box as each kind of bar is drawn. */
export function stripKey(kind: Bar['kind'] | 'closed' | 'decides'): Element {
  const fill = kind === 'wait' ? { fill: `url(#${hatchId})` } : {};
  return s('svg', { className: ['key-box'], ariaHidden: 'true', focusable: 'false' }, [
    s('rect', {
      className: [`bar-${kind}`],
      width: '100%',
      ...(kind === 'decides' ? { y: '40%', height: '3' } : { height: '100%' }),
      ...fill,
    }),
  ]);
}

const hatchId = 'hatch';

/** The hatching that all rows of a page share. */
export function hatching(): Element {
  return s('svg', { className: ['defs'], width: '0', height: '0', ariaHidden: 'true', focusable: 'false' }, [
    s('defs', [
      s(
        'pattern',
        {
          id: hatchId,
          width: '6',
          height: '6',
          patternUnits: 'userSpaceOnUse',
          patternTransform: 'rotate(45)',
        },
        [
          s('rect', { className: ['hatch-ground'], width: '6', height: '6' }),
          s('rect', { className: ['hatch-line'], width: '2', height: '6' }),
        ],
      ),
    ]),
  ]);
}

function across({ from, to }: Stretch): { readonly x: string; readonly width: string } {
  return { x: percent(from), width: percent(to - from) };
}

/** Thousandths as a percentage: 125 -> "12.5%". Whole thousandths, so one digit is exact. */
export function percent(thousandths: number): string {
  return `${Math.round(thousandths) / 10}%`;
}

/** From here on a label ends at its tick, so that it does not run out of the picture. */
const nearTheEnd = 930;

/** A label that begins at its tick and the one that ends at the next need so much between them. */
const twoLabels = 160;

/** Whether no label that ends at the next tick runs over this one. */
function hasRoom({ at }: Tick, index: number, ticks: readonly Tick[]): boolean {
  const next = ticks[index + 1]?.at ?? 0;
  return next <= nearTheEnd || next - at >= twoLabels;
}

/** The labels below the strip, each at its tick. */
export function stripScale(
  ticks: readonly (Tick & { readonly label: { readonly key: string; readonly text: string } })[],
): Element {
  return s(
    'svg',
    { className: ['scale'], ariaHidden: 'true', focusable: 'false' },
    ticks.filter(hasRoom).map(({ at, day, label }) =>
      s(
        'text',
        {
          className: [day ? 'scale-day' : 'scale-hour'],
          x: percent(at),
          y: '1em',
          textAnchor: at > nearTheEnd ? 'end' : 'start',
          dataShows: label.key,
        },
        label.text,
      ),
    ),
  );
}
