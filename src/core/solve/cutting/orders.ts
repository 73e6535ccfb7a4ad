import type { Draw } from '../draw.ts';
import { turnedBlank, type Blank } from './pieces.ts';

/** Orders in which to lay blanks, good ones first: the large and awkward before the small. */
export function goodOrders(blanks: readonly Blank[]): Blank[][] {
  const keys: ((blank: Blank) => number)[] = [
    ({ width, height }) => width * height,
    ({ height }) => height,
    ({ width }) => width,
    ({ width, height }) => Math.max(width, height),
    ({ width, height }) => width + height,
  ];
  const freely = keys.map((key) => sorted(blanks, key));
  if (!blanks.some(({ turn }) => turn)) return freely;
  return [...freely, ...freely.map((order) => order.map((blank) => ({ ...blank, turn: false })))];
}

function sorted(blanks: readonly Blank[], key: (blank: Blank) => number): Blank[] {
  return [...blanks].sort((a, b) => key(b) - key(a) || b.width - a.width || a.kind - b.kind);
}

/** The order with two blanks swapped, one moved, or one laid another way: a neighbour for the search. */
export function neighbour(order: readonly Blank[], mayTurn: readonly boolean[], draw: Draw): Blank[] {
  const next = [...order];
  const [from, to] = [draw(order.length), draw(order.length)];
  const blank = order[from]!;
  const change = draw(4);
  if (change === 0 && mayTurn[blank.kind]) next[from] = layAnotherWay(blank);
  else if (change === 1) next.splice(to, 0, ...next.splice(from, 1));
  else [next[from], next[to]] = [next[to]!, next[from]!];
  return next;
}

/** Either way as it fits -> upright -> turned -> either way. */
function layAnotherWay(blank: Blank): Blank {
  if (blank.turn) return { ...blank, turn: false };
  return blank.turned ? { ...turnedBlank(blank), turn: true } : turnedBlank(blank);
}
