import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import type { Paper } from '../../src/core/model/paper.ts';
import { inChromium } from './chromium.ts';
import { kindsOfPage, publishedDemo } from './published.ts';

const guides = [
  'needle-block',
  'needle-block/deep',
  'abscess-pouch',
  'chest-drain-frame',
  'knot-board',
  'neck-airway-trainer',
  'suture-pad',
];
const cutPlans = guides.map((guide) => `trainees/guides/${guide}/cutting-plan/index.html`);

/** What poppler says of a PDF; undefined where the system has no poppler. */
function poppler(program: string, ...args: readonly string[]): string | undefined {
  try {
    return execFileSync(program, args, {
      encoding: 'latin1',
      maxBuffer: 1e9,
      stdio: ['ignore', 'pipe', 'ignore'],
    });
  } catch (trouble) {
    if ((trouble as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
    throw trouble;
  }
}

const hasPoppler = poppler('pdftotext', '-v') !== undefined;
if (!hasPoppler)
  console.warn('skipped, since pdftotext and pdftoppm are not here: what printed sheets say, and their ink');

await inChromium('printed cutting plans', (browser) => {
  const demo = publishedDemo();
  const folder = mkdtempSync(join(tmpdir(), 'benchwright-cutting-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  /** Printed as a browser prints by itself: no backgrounds, and a reader who likes it dark. */
  async function print(path: string, format: Paper, name = 'sheet'): Promise<string> {
    const context = await browser().newContext({ colorScheme: 'dark' });
    const page = await context.newPage();
    await page.goto(demo.address(path));
    const file = join(folder, `${name}-${format}.pdf`);
    await page.pdf({ path: file, format, tagged: true, printBackground: false });
    await context.close();
    return file;
  }

  const pagesIn = (file: string, order: '-layout' | '-raw' = '-layout'): readonly string[] =>
    poppler('pdftotext', '-enc', 'UTF-8', order, file, '-')!.split('\f').slice(0, -1);
  const utf8 = (text: string): string => Buffer.from(text, 'latin1').toString('utf8');

  it.each(cutPlans)(
    '%s: nothing is wider than the paper, so nothing is printed smaller than it is',
    async (path) => {
      const context = await browser().newContext({ viewport: { width: 688, height: 900 } });
      const page = await context.newPage();
      await page.emulateMedia({ media: 'print' });
      await page.goto(demo.address(path));
      const { wide, page: width } = await page.evaluate(() => ({
        wide: [...document.querySelectorAll('main *')]
          .filter((e) => e.getBoundingClientRect().right > document.documentElement.clientWidth + 1)
          .map((e) => e.className),
        page: document.documentElement.scrollWidth,
      }));
      await context.close();
      expect(wide).toEqual([]);
      expect(width).toBeLessThanOrEqual(688);
    },
  );

  // The frame of the fields to fill in is as wide as the sheet, 182 mm; at 254 dots an inch that is 1820 dots.
  it.runIf(hasPoppler).each(cutPlans)(
    '%s: prints its 182 mm as 182 mm, on A4 and on Letter',
    async (path) => {
      for (const format of ['A4', 'Letter'] as const) {
        const file = await print(path, format);
        const first = poppler('pdftoppm', '-gray', '-r', '254', '-f', '1', '-l', '1', file)!;
        const dots = longestLine(Buffer.from(first, 'latin1'));
        expect([format, Math.abs(dots - 1820) <= 3]).toEqual([format, true]);
      }
    },
    60_000,
  );

  it.runIf(hasPoppler).each(cutPlans)(
    '%s: splits no layout over pages, has as many on A4 as on Letter, and cautions before the first cut',
    async (path) => {
      const [a4, letter] = [
        pagesIn(await print(path, 'A4'), '-raw'),
        pagesIn(await print(path, 'Letter'), '-raw'),
      ].map((pages) => pages.map((page) => plain(utf8(page))));
      expect(letter!.length).toBe(a4!.length);
      const layouts = await layoutsOf(path);
      expect(layouts.length).toBeGreaterThan(0);
      for (const pages of [a4!, letter!]) {
        const split = layouts.filter(
          (texts) => !pages.some((page) => texts.every((text) => page.includes(text))),
        );
        expect(split).toEqual([]);
        const all = pages.join(' ');
        expect(all.search(/DANGER|WARNING|CAUTION|NOTICE/)).toBeGreaterThan(0);
        expect(all.search(/DANGER|WARNING|CAUTION|NOTICE/)).toBeLessThan(all.indexOf(layouts[0]![0]!));
        for (const [i, page] of pages.entries()) {
          expect(page).toMatch(/·cuttingplan·(version[\d.]+·)?\d+models?/);
          expect(page).toContain(`Page${i + 1}of${pages.length}`);
        }
      }
    },
    60_000,
  );

  /** Of each layout its heading, and its first and last row as they read. */
  async function layoutsOf(path: string): Promise<readonly (readonly string[])[]> {
    const context = await browser().newContext();
    const page = await context.newPage();
    await page.goto(demo.address(path));
    await page.emulateMedia({ media: 'print' });
    const texts = await page.evaluate(() =>
      [...document.querySelectorAll('.cut-layout')].map((layout) => {
        const rows = [...layout.querySelectorAll('tbody tr')].map((row) =>
          [...row.querySelectorAll<HTMLElement>('td, th')]
            .filter((cell) => cell.getClientRects().length > 0)
            .map((cell) => cell.innerText)
            .join(' '),
        );
        return [layout.querySelector('h4')!.innerText, rows[0]!, rows.at(-1)!];
      }),
    );
    await context.close();
    return texts.map((of) => of.map(plain));
  }

  it.runIf(hasPoppler)(
    'prints the drawings in black and greys alone, with little ink',
    async () => {
      for (const path of cutPlans) {
        const file = await print(path, 'A4');
        expect(colouredDots(Buffer.from(poppler('pdftoppm', '-r', '50', file)!, 'latin1'))).toBe(0);
        for (const ink of inkOf(Buffer.from(poppler('pdftoppm', '-gray', '-r', '100', file)!, 'latin1')))
          expect(ink).toBeLessThan(0.08);
      }
    },
    120_000,
  );

  it('tells pieces from what is left over, and work from waiting, without colour: by hatching', async () => {
    for (const [path, plainPart, hatched] of [
      [cutPlans[2]!, '.cut-flat .cut-piece', '.cut-flat .cut-left'],
      [kindsOfPage.guide, '#when .bar-hands-on', '#when .bar-wait'],
    ] as const) {
      const spread = async (selector: string): Promise<number> => (await greysOf(path, selector)).spread;
      expect(await spread(plainPart)).toBeLessThan(30);
      expect(await spread(hatched)).toBeGreaterThan(45);
    }
  }, 60_000);

  /** How much the greys of the widest element of a kind vary, as it prints: 0 is one flat grey. */
  async function greysOf(path: string, selector: string): Promise<{ readonly spread: number }> {
    const context = await browser().newContext({
      viewport: { width: 1000, height: 900 },
      colorScheme: 'dark',
    });
    const page = await context.newPage();
    await page.emulateMedia({ media: 'print' });
    await page.goto(demo.address(path));
    const all = await page.locator(selector).all();
    const widths = await Promise.all(all.map(async (one) => (await one.boundingBox())!.width));
    const widest = all[widths.indexOf(Math.max(...widths))]!;
    await widest.scrollIntoViewIfNeeded();
    const { x, y, width, height } = (await widest.boundingBox())!;
    // Beside its number and inside its edge.
    const clip = {
      x: x + 3,
      y: y + 3,
      width: Math.max(4, Math.min(width - 6, 60)),
      height: Math.min(height - 6, 14),
    };
    const picture = (await page.screenshot({ clip })).toString('base64');
    const blank = await context.newPage();
    const spread = await blank.evaluate(spreadOfGreys, picture);
    await context.close();
    return { spread };
  }
});

/** Text without blanks: poppler guesses them from the gaps between letters, which in a narrow face are too small. */
function plain(text: string): string {
  return text.replace(/\s+/g, '');
}

/** The standard deviation of the greys of a PNG; black and white in equal parts give 127. */
async function spreadOfGreys(picture: string): Promise<number> {
  const image = new Image();
  image.src = `data:image/png;base64,${picture}`;
  await image.decode();
  const canvas = Object.assign(document.createElement('canvas'), {
    width: image.width,
    height: image.height,
  });
  const pen = canvas.getContext('2d')!;
  pen.drawImage(image, 0, 0);
  const { data } = pen.getImageData(0, 0, image.width, image.height);
  const greys = Array.from(
    { length: data.length / 4 },
    (_, i) => 0.3 * data[4 * i]! + 0.59 * data[4 * i + 1]! + 0.11 * data[4 * i + 2]!,
  );
  const mean = greys.reduce((sum, grey) => sum + grey, 0) / greys.length;
  return Math.sqrt(greys.reduce((sum, grey) => sum + (grey - mean) ** 2, 0) / greys.length);
}

/** The longest dark line in a row of the first image of a stream of binary PGM, in dots. */
function longestLine(stream: Buffer): number {
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(stream.subarray(0, 64).toString('latin1'))!;
  const width = Number(head[1]);
  let [longest, run] = [0, 0];
  for (let i = 0; i < width * Number(head[2]); i++) {
    run = i % width !== 0 && stream[head[0].length + i]! < 128 ? run + 1 : 0;
    longest = Math.max(longest, run);
  }
  return longest;
}

/** Dots of a stream of binary PPM (Netpbm) that are no grey. */
function colouredDots(stream: Buffer): number {
  let coloured = 0;
  for (let at = 0; at < stream.length;) {
    const head = /^P6\s+(\d+)\s+(\d+)\s+255\s/.exec(stream.subarray(at, at + 64).toString('latin1'))!;
    const end = at + head[0].length + 3 * Number(head[1]) * Number(head[2]);
    for (let i = at + head[0].length; i < end; i += 3) {
      const [r, g, b] = [stream[i]!, stream[i + 1]!, stream[i + 2]!];
      if (Math.max(r, g, b) - Math.min(r, g, b) > 8) coloured++;
    }
    at = end;
  }
  return coloured;
}

/** Ink on each image in a stream of binary PGM (Netpbm): 0 is white paper, 1 all black. */
function inkOf(stream: Buffer): readonly number[] {
  const ink = [];
  for (let at = 0; at < stream.length;) {
    const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(stream.subarray(at, at + 64).toString('latin1'))!;
    const points = stream.subarray(
      at + head[0].length,
      at + head[0].length + Number(head[1]) * Number(head[2]),
    );
    ink.push(1 - points.reduce((sum, point) => sum + point, 0) / points.length / 255);
    at += head[0].length + points.length;
  }
  return ink;
}
