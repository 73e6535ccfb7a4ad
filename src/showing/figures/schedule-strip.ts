import { scheduleWords } from '../../words/schedule.ts';
import type { ShownStrip } from '../shown/shown-schedule.ts';
import { type Tree, definitions, percent, picture, tree } from './tree.ts';

type Row = ShownStrip['rows'][number];
type Tick = ShownStrip['ticks'][number];
/** A stretch of the strip, in thousandths of its width. */
type Stretch = Row['decides'][number];
type BarKind = Row['bars'][number]['kind'];

/**
 * The picture of a schedule, one row a step, with its key above and its scale below. The table beside it says the same,
 * so it is hidden from readers that speak.
 */
export function scheduleStrip({ rows, closed, ticks }: ShownStrip): Tree {
  return tree('div', { class: 'strip', 'aria-hidden': 'true' }, [
    stripKeys(),
    ...rows.map((row) => tree('div', { class: 'strip-row' }, [label(row), stripRow(row, closed, ticks)])),
    tree('div', { class: 'strip-row' }, [stripScale(ticks)]),
  ]);
}

function label({ number, label: name }: Row): Tree {
  return tree('span', { class: 'strip-label' }, [
    tree('b', {}, [number.text]),
    tree('span', {}, [name.text]),
  ]);
}

/**
 * One row: closed time shaded, a line at each tick, a bar for each stretch of work; waits are hatched, so that they
 * differ without colour; a rule under those that decide the end. It fills whatever box it stands in.
 *
 *     |####////////|         |##|
 *     -------------          ----
 */
export function stripRow(
  { bars, decides }: Pick<Row, 'bars' | 'decides'>,
  closed: readonly Stretch[],
  ticks: readonly Pick<Tick, 'at' | 'day'>[],
): Tree {
  return picture('bars', {}, [
    ...closed.map((stretch) =>
      tree('rect', { class: 'bar-closed', y: '-2%', height: '104%', ...across(stretch) }),
    ),
    ...ticks.map(lineAt),
    ...bars.map(({ kind, ...stretch }) =>
      tree('rect', { class: `bar-${kind}`, y: '24%', height: '52%', ...filled(kind), ...across(stretch) }),
    ),
    ...decides.map((stretch) =>
      tree('rect', { class: 'bar-decides', y: '84%', height: '3', ...across(stretch) }),
    ),
  ]);
}

function lineAt({ at, day }: Pick<Tick, 'at' | 'day'>): Tree {
  const x = percent(at);
  return tree('line', { class: day ? 'tick-day' : 'tick-hour', x1: x, x2: x, y1: '0', y2: '100%' });
}

function filled(kind: BarKind | 'closed' | 'decides'): Tree['attributes'] {
  return kind === 'wait' ? { fill: `url(#${hatchId})` } : {};
}

function across({ from, to }: Stretch): Tree['attributes'] {
  return { x: percent(from), width: percent(to - from) };
}

const keys = [
  ['hands-on', scheduleWords.keys['hands-on']],
  ['wait', scheduleWords.keys.wait],
  ['closed', scheduleWords.keys.closed],
  ['decides', scheduleWords.chain.heading],
] as const;

/** The key: a small box as each kind of bar is drawn. */
function stripKeys(): Tree {
  const boxes = keys.map(([kind, name]) => {
    const box = kind === 'decides' ? { y: '40%', height: '3' } : { height: '100%' };
    const bar = tree('rect', { class: `bar-${kind}`, width: '100%', ...box, ...filled(kind) });
    return tree('span', {}, [picture('key-box', {}, [bar]), name]);
  });
  return tree('p', { class: 'key' }, boxes);
}

const hatchId = 'hatch';

/** The hatching of waits, which all rows of a page share. */
export const hatching: Tree = definitions([
  tree(
    'pattern',
    { id: hatchId, width: '6', height: '6', patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)' },
    [
      tree('rect', { class: 'hatch-ground', width: '6', height: '6' }),
      tree('rect', { class: 'hatch-line', width: '2', height: '6' }),
    ],
  ),
]);

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
export function stripScale(ticks: readonly Tick[]): Tree {
  return picture('scale', {}, ticks.filter(hasRoom).map(scaleLabel));
}

function scaleLabel({ at, day, label: { text } }: Tick): Tree {
  const place = { x: percent(at), y: '1em', 'text-anchor': at > nearTheEnd ? 'end' : 'start' };
  return tree('text', { class: day ? 'scale-day' : 'scale-hour', ...place }, [text]);
}
