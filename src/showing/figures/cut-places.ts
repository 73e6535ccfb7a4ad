import type { Box, CutDrawing } from '../shown/shown-cutting.ts';

/** A box as shares of the picture, from its upper left corner. */
export function placed(box: Box, sheet: CutDrawing): Record<'x' | 'y' | 'width' | 'height', string> {
  return {
    x: share(box.x, sheet.width),
    y: fromTop(box.y + box.height, sheet),
    width: share(box.width, sheet.width),
    height: share(box.height, sheet.height),
  };
}

export function fromTop(y: number, { height }: CutDrawing): string {
  return share(height - y, height);
}

/** A part of a whole as a percentage, to a thousandth: the gap of a saw is still seen on a long sheet. */
export function share(part: number, whole: number): string {
  return `${Math.round((100_000 * part) / whole) / 1000}%`;
}
