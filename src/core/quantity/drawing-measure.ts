import { type Exact, exact } from './exact.ts';

/** How large a drawing is when it is printed at 100 %, in mm. */
export interface DrawingMeasure {
  readonly width: Exact;
  readonly height: Exact;
  /** Both sides have the same scale; a stretched drawing has no one size. */
  readonly isEven: boolean;
}

/** Millimetres in the units that a drawing may state its size in. */
const millimetres: Readonly<Record<string, string>> = { mm: '1', cm: '10', in: '127/5' };

/**
 * The size that a drawing (SVG) states in mm, cm or in. Undefined where it states none: in pixels, in percent, or not
 * at all, since then nobody knows how large it is to be printed.
 *
 * @param drawing  The text of its file; the beginning is enough.
 * @source Scalable Vector Graphics (SVG) 2, sections 8.2 (width, height, viewBox); an inch is 25.4 mm exactly.
 */
export function drawingMeasure(drawing: string): DrawingMeasure | undefined {
  const head = /<svg\b[^>]*>/.exec(drawing)?.[0] ?? '';
  const width = lengthOf('width', head);
  const height = lengthOf('height', head);
  return width && height && { width, height, isEven: isEven(width, height, head) };
}

function lengthOf(side: 'width' | 'height', head: string): Exact | undefined {
  const written = new RegExp(`\\s${side}\\s*=\\s*["']\\s*(\\d+(?:\\.\\d+)?)(mm|cm|in)\\s*["']`).exec(head);
  const length = written && exact(written[1]!).mul(exact(millimetres[written[2]!]!));
  return length && length.n > 0n ? length : undefined;
}

/** Without a `viewBox` the drawing is in the units of its size, and even. */
function isEven(width: Exact, height: Exact, head: string): boolean {
  const box = /\sviewBox\s*=\s*["']([^"']*)/.exec(head)?.[1] ?? '';
  const [, , across, up] = box.trim().split(/[\s,]+/);
  if (!isPlain(across) || !isPlain(up)) return true;
  return width.mul(exact(up)).equals(height.mul(exact(across)));
}

function isPlain(number: string | undefined): number is string {
  return number !== undefined && /^\d+(\.\d+)?$/.test(number);
}
