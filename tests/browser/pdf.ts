import { readFileSync } from 'node:fs';
import { OPS, getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** Something drawn on a page: its bounds in mm from the upper left corner of the paper. */
export interface Drawn {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface PdfPage {
  /** In mm. */
  readonly width: number;
  readonly height: number;
  /** Words in the order of the file, single blanks between them. */
  readonly text: string;
  readonly drawn: readonly Drawn[];
}

export interface Pdf {
  readonly pages: readonly PdfPage[];
  /** A tagged PDF says of each text what it is. */
  readonly isTagged: boolean;
  /** Roles of its structure: `Document`, `H1`, `Table`. */
  readonly roles: ReadonlySet<string>;
}

/** Text without what a reader of PDFs guesses: blanks, and letters that the face joins. */
export function bare(text: string): string {
  return text.replace(/\s+/g, '').normalize('NFKC');
}

const mm = 25.4 / 72;

/** A PDF as text and as lines measured in millimetres, read by a program that has nothing to do with the browser's. */
export async function readPdf(file: string): Promise<Pdf> {
  const pdf = await getDocument({ data: new Uint8Array(readFileSync(file)), verbosity: 0 }).promise;
  const pages: PdfPage[] = [];
  const roles = new Set<string>();
  for (let n = 1; n <= pdf.numPages; n++) {
    const page = await pdf.getPage(n);
    const [, , width, height] = page.view as [number, number, number, number];
    const { items } = await page.getTextContent();
    const texts = items.map((item) => ('str' in item ? item.str + (item.hasEOL ? ' ' : '') : ''));
    const operators = await page.getOperatorList();
    collectRoles(await page.getStructTree(), roles);
    pages.push({
      width: width * mm,
      height: height * mm,
      text: texts.join('').replace(/\s+/g, ' ').trim(),
      drawn: drawnBy(operators.fnArray, operators.argsArray as readonly unknown[][], height),
    });
  }
  const marked = (await pdf.getMarkInfo()) as { Marked?: boolean } | null;
  await pdf.destroy();
  return { pages, isTagged: marked?.Marked === true, roles };
}

function collectRoles(node: unknown, roles: Set<string>): void {
  if (typeof node !== 'object' || node === null) return;
  const { role, children = [] } = node as { role?: string; children?: readonly unknown[] };
  if (role !== undefined) roles.add(role);
  for (const child of children) collectRoles(child, roles);
}

type Matrix = readonly [number, number, number, number, number, number];
const asItIs: Matrix = [1, 0, 0, 1, 0, 0];

/** Bounds of every path, through the transformations that hold where it is painted. */
function drawnBy(
  operators: readonly number[],
  all: readonly (readonly unknown[])[],
  height: number,
): readonly Drawn[] {
  const drawn: Drawn[] = [];
  const kept: Matrix[] = [];
  let now = asItIs;
  operators.forEach((operator, i) => {
    const args = all[i] ?? [];
    if (operator === OPS.save) kept.push(now);
    if (operator === OPS.restore || operator === OPS.paintFormXObjectEnd) now = kept.pop() ?? asItIs;
    if (operator === OPS.transform) now = times(now, args as unknown as Matrix);
    if (operator === OPS.paintFormXObjectBegin) {
      kept.push(now);
      if (args[0]) now = times(now, args[0] as Matrix);
    }
    const bounds = operator === OPS.constructPath ? (args[2] as ArrayLike<number> | null) : null;
    if (bounds) drawn.push(inMillimetres(bounds, now, height));
  });
  return drawn;
}

function times([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix {
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}

function inMillimetres(bounds: ArrayLike<number>, [a, b, c, d, e, f]: Matrix, height: number): Drawn {
  const [x0, y0, x1, y1] = [bounds[0]!, bounds[1]!, bounds[2]!, bounds[3]!];
  const corners = [
    [x0, y0],
    [x1, y0],
    [x0, y1],
    [x1, y1],
  ].map(([x, y]) => [a * x! + c * y! + e, b * x! + d * y! + f] as const);
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => height - y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  return {
    x: left * mm,
    y: top * mm,
    width: (Math.max(...xs) - left) * mm,
    height: (Math.max(...ys) - top) * mm,
  };
}
