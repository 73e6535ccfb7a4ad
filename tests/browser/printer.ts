import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll } from 'vitest';
import type { Paper } from '../../src/core/model/paper.ts';
import { type Pdf, readPdf } from './pdf.ts';

export const papers: readonly Paper[] = ['A4', 'Letter'];

interface Printing {
  readonly paper: Paper;
  /** In the size that the page itself says: labels. */
  readonly ownSize?: boolean;
  readonly background?: boolean;
  /** What a reader does on the page before printing it. */
  readonly before?: (page: Page) => Promise<void>;
}

export interface Printer {
  /** The file of the PDF, printed as a browser prints by itself: without backgrounds, for a reader who likes it dark. */
  readonly file: (address: string, printing: Printing) => Promise<string>;
  readonly pdf: (address: string, printing: Printing) => Promise<Pdf>;
}

/** Prints pages; the same page on the same paper only once. */
export function printer(browser: () => Browser): Printer {
  const folder = mkdtempSync(join(tmpdir(), 'benchwright-pdf-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const made = new Map<string, Promise<string>>();
  const print = async (path: string, address: string, { paper, ownSize, background, before }: Printing) => {
    const context = await browser().newContext({ colorScheme: 'dark' });
    const page = await context.newPage();
    await page.goto(address);
    await before?.(page);
    await page.pdf({
      path,
      format: paper,
      tagged: true,
      printBackground: background === true,
      preferCSSPageSize: ownSize === true,
    });
    await context.close();
    return path;
  };
  const file: Printer['file'] = (address, printing) => {
    const key = `${address} ${printing.paper} ${printing.background === true} ${printing.before?.toString()}`;
    const known = made.get(key) ?? print(join(folder, `${made.size}.pdf`), address, printing);
    made.set(key, known);
    return known;
  };
  return { file, pdf: async (address, printing) => readPdf(await file(address, printing)) };
}

/** What poppler makes of a PDF, as bytes; undefined where the system has no poppler. */
export function poppler(program: 'pdftoppm', ...args: readonly string[]): Buffer | undefined {
  try {
    return execFileSync(program, args, { maxBuffer: 1e9, stdio: ['ignore', 'pipe', 'ignore'] });
  } catch (trouble) {
    if ((trouble as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
    throw trouble;
  }
}

export interface Raster {
  readonly width: number;
  readonly height: number;
  /** 0 is black, 255 white; row by row. */
  readonly greys: Uint8Array;
}

/** The images of a stream of binary PGM (Netpbm). */
export function rastersIn(stream: Buffer): readonly Raster[] {
  const rasters: Raster[] = [];
  for (let at = 0; at < stream.length;) {
    const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(stream.subarray(at, at + 64).toString('latin1'))!;
    const [width, height] = [Number(head[1]), Number(head[2])];
    const from = at + head[0].length;
    rasters.push({ width, height, greys: stream.subarray(from, from + width * height) });
    at = from + width * height;
  }
  return rasters;
}

/** The share of dark dots: 0 is white paper. */
export function inkOf({ greys }: Raster): number {
  return greys.reduce((dark, grey) => dark + (grey < 128 ? 1 : 0), 0) / greys.length;
}
