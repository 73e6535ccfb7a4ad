import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { inChromium } from './chromium.ts';
import { kindsOfPage, publishedDemo } from './published.ts';

const sheets = [
  'needle-block',
  'needle-block/deep',
  'abscess-pouch',
  'chest-drain-frame',
  'knot-board',
  'neck-airway-trainer',
  'suture-pad',
];
const sheetOf = (guide: string): string => `trainees/guides/${guide}/bench-sheet/index.html`;

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

await inChromium('printed sheets', (browser) => {
  const demo = publishedDemo();

  /** Printed as a browser prints by itself: no backgrounds, and a reader who likes it dark. */
  async function print(path: string, format: 'A4' | 'Letter', name = 'sheet'): Promise<string> {
    const context = await browser().newContext({ colorScheme: 'dark' });
    const page = await context.newPage();
    await page.goto(demo.address(path));
    const file = join(demo.folder(), `${name}-${format}.pdf`);
    await page.pdf({ path: file, format, tagged: true, printBackground: false });
    await context.close();
    return file;
  }

  const pagesIn = (file: string): readonly string[] =>
    poppler('pdftotext', '-enc', 'UTF-8', '-layout', file, '-')!.split('\f').slice(0, -1);
  const utf8 = (text: string): string => Buffer.from(text, 'latin1').toString('utf8');

  it.each(sheets)(
    '%s: nothing is wider than the paper, so nothing is printed smaller than it is',
    async (guide) => {
      const context = await browser().newContext({ viewport: { width: 688, height: 900 } });
      const page = await context.newPage();
      await page.emulateMedia({ media: 'print' });
      await page.goto(demo.address(sheetOf(guide)));
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

  it.runIf(hasPoppler).each(sheets)(
    '%s: has as many pages on A4 as on Letter; each says title, batch and page',
    async (guide) => {
      const [a4, letter] = [
        pagesIn(await print(sheetOf(guide), 'A4')),
        pagesIn(await print(sheetOf(guide), 'Letter')),
      ];
      expect(letter.length).toBe(a4.length);
      for (const [i, text] of [...a4.entries(), ...letter.entries()]) {
        expect(utf8(text)).toMatch(/· bench sheet · (version [\d.]+ · )?\d+\s+models?/);
        expect(utf8(text)).toMatch(/Batch no\. _+/);
        expect(utf8(text)).toContain(`Page ${i + 1} of ${a4.length}`);
      }
      expect(a4.length).toBeLessThanOrEqual(8);
    },
    60_000,
  );

  it.runIf(hasPoppler)(
    'repeats the head of a table on each page that it runs over, and splits no step',
    async () => {
      const pages = pagesIn(await print(sheetOf('needle-block'), 'A4')).map(utf8);
      const running = pages.filter((text) => /\bRight when\b/.test(text));
      expect(running.length).toBeGreaterThan(1);
      for (const text of running) expect(text).toMatch(/Do\s+Reading\s+Start\s+End\s+By/);
      const melt = pages.filter((text) => text.includes('Melt the gel'));
      expect(melt.some((text) => text.includes('Wait 15 min') && text.includes('WARNING'))).toBe(true);
    },
    60_000,
  );

  it.runIf(hasPoppler)(
    'prints black on white in a dark room, and with little ink',
    async () => {
      for (const path of [sheetOf('needle-block'), kindsOfPage.guide]) {
        const file = await print(path, 'A4');
        const image = Buffer.from(poppler('pdftoppm', '-gray', '-r', '100', file)!, 'latin1');
        const sheets = inkOf(image);
        expect(sheets.length).toBeGreaterThan(2);
        for (const ink of sheets) expect(ink).toBeLessThan(path === kindsOfPage.guide ? 0.15 : 0.08);
      }
    },
    60_000,
  );

  it.runIf(hasPoppler)('is a tagged PDF, so that a screen reader can follow it', async () => {
    expect(poppler('pdfinfo', await print(sheetOf('needle-block'), 'A4'))).toMatch(/Tagged:\s+yes/);
  });
});

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
