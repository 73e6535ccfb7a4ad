import type { OrderBox, OrderDrawing } from '../module/draw-order.ts';
import { type Tree, picture, tree } from './tree.ts';

const box = { width: 220, height: 76 } as const;
const gap = { across: 72, down: 20 } as const;
const line = 22;

/**
 * Which module builds on which, from left to right.
 *
 *     [ knots ]-----,
 *                    >--[ half a day ]
 *     [ needle ]----'
 */
export function moduleOrder({ columns, rows, boxes, lines }: OrderDrawing): Tree {
  const width = columns * (box.width + gap.across) - gap.across;
  const height = rows * (box.height + gap.down) - gap.down;
  return picture('module-order', { viewBox: `-2 -2 ${width + 4} ${height + 4}`, width: String(width) }, [
    ...lines.map(([from, to]) => pathBetween(boxes[from]!, boxes[to]!)),
    ...boxes.map(boxTree),
  ]);
}

function cornerOf({ column, row }: OrderBox): readonly [x: number, y: number] {
  return [column * (box.width + gap.across), row * (box.height + gap.down)];
}

function boxTree(of: OrderBox): Tree {
  const [x, y] = cornerOf(of);
  const first = box.height / 2 - ((of.title.length - 1) * line) / 2;
  return tree('g', { transform: `translate(${x} ${y})` }, [
    tree('rect', { class: 'order-box', width: String(box.width), height: String(box.height) }),
    ...of.title.map((text, i) =>
      tree('text', { class: 'order-title', x: '14', y: String(first + i * line), dy: '0.35em' }, [text]),
    ),
  ]);
}

/** Straight out, across in the gap before the later box, straight in; an arrow at its end. */
function pathBetween(from: OrderBox, to: OrderBox): Tree {
  const [x1, y1] = [cornerOf(from)[0] + box.width, cornerOf(from)[1] + box.height / 2];
  const [x2, y2] = [cornerOf(to)[0], cornerOf(to)[1] + box.height / 2];
  const turn = x2 - gap.across / 2;
  return tree('g', { class: 'order-line' }, [
    tree('path', { d: `M${x1} ${y1}H${turn}V${y2}H${x2 - 8}` }),
    tree('path', { class: 'order-tip', d: `M${x2 - 10} ${y2 - 5}L${x2} ${y2}L${x2 - 10} ${y2 + 5}Z` }),
  ]);
}
