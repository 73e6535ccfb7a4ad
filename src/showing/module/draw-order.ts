import type { Module } from '../../core/model/module.ts';
import { moduleDepths } from '../../core/model/module-depths.ts';
import { wrapped } from '../text/wrapped.ts';

/** Which module comes before which, ready to be drawn: boxes in columns, each right of all that come before it. */
export interface OrderDrawing {
  readonly columns: number;
  /** Boxes in the fullest column. */
  readonly rows: number;
  readonly boxes: readonly OrderBox[];
  /** From the right of one box to the left of another, by their indexes. */
  readonly lines: readonly (readonly [from: number, to: number])[];
}

export interface OrderBox {
  readonly id: string;
  readonly column: number;
  readonly row: number;
  /** The title, broken into lines that fit the box. */
  readonly title: readonly string[];
}

/** Letters that fit on a line of a box. */
const lettersALine = 24;

/**
 * @param modules  Without a circle: a check has seen to that. What comes before and is not there is passed over.
 */
export function drawOrder(modules: readonly Pick<Module, 'id' | 'title' | 'after'>[]): OrderDrawing {
  const depths = moduleDepths(modules);
  const taken: number[] = [];
  const boxes = modules.map(({ id, title }): OrderBox => {
    const column = depths.get(id)!;
    const row = taken[column] ?? 0;
    taken[column] = row + 1;
    return { id, column, row, title: wrapped(title, lettersALine) };
  });
  const index = (id: string): number => boxes.findIndex((box) => box.id === id);
  return {
    columns: taken.length,
    rows: Math.max(0, ...taken),
    boxes,
    lines: modules.flatMap(({ id, after }) =>
      after.filter((other) => depths.has(other)).map((other) => [index(other), index(id)] as const),
    ),
  };
}
