import type { Page } from 'playwright-core';
import jsQR from 'jsqr';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { labelStocks } from '../../src/core/model/label-stock.ts';
import { inChromium } from './chromium.ts';
import { demoGuides as guides } from './demo-guides.ts';
import { type Drawn, type Pdf, type PdfPage, bare } from './pdf.ts';
import { type Raster, inkOf, papers, poppler, printer, rastersIn } from './printer.ts';
import { printedDemo } from './printed-demo.ts';
import { type SmallSite, smallSite } from './small-site.ts';

/** Those with eight steps at most, one of them invented here. */
const short = ['abscess-pouch', 'eight-steps', 'knot-board', 'neck-airway-trainer'];
const sheets = ['bench-sheet', 'shopping-list', 'cutting-plan', 'batch-record', 'patterns', 'labels'];
const withMargins = sheets.filter((sheet) => sheet !== 'labels');
const hasPoppler = poppler('pdftoppm', '-v') !== undefined;
if (!hasPoppler) console.warn('skipped, since pdftoppm is not here: ink, white in the dark, codes');

await inChromium('printed sheets', (browser) => {
  const { address: at } = printedDemo([
    ...guides.map((guide) => ({ guide })),
    { guide: 'suture-pad', wanted: 60 },
  ]);
  const { file, pdf } = printer(browser);
  let invented: SmallSite;
  beforeAll(async () => {
    invented = await smallSite({ 'eight-steps': eightSteps });
  }, 120_000);
  afterAll(() => invented.remove());
  const sheetOf = (guide: string): string =>
    guide === 'eight-steps'
      ? invented.address(`guides/${guide}/bench-sheet/index.html`)
      : at(guide, 'bench-sheet');

  it.each(guides)(
    '%s: nothing on a sheet is wider than the paper, so nothing is printed smaller than it is',
    async (guide) => {
      const context = await browser().newContext({ viewport: { width: 688, height: 900 } });
      const page = await context.newPage();
      await page.emulateMedia({ media: 'print' });
      for (const sheet of withMargins) {
        const answer = await page.goto(at(guide, sheet)).catch(() => null);
        if (!answer) continue;
        const width = await page.evaluate(() => document.documentElement.scrollWidth);
        expect([sheet, width]).toEqual([sheet, 688]);
      }
      await context.close();
    },
    60_000,
  );

  it.each(['knot-board', 'needle-block'])(
    '%s: every sheet has as many pages on A4 as on Letter; each says guide, sheet, batch, and page of pages',
    async (guide) => {
      for (const sheet of ['bench-sheet', 'shopping-list', 'batch-record']) {
        const [a4, letter] = await Promise.all(papers.map((paper) => pdf(at(guide, sheet), { paper })));
        expect([sheet, letter!.pages.length]).toEqual([sheet, a4!.pages.length]);
        for (const { pages } of [a4!, letter!]) {
          for (const [i, { text }] of pages.entries()) {
            expect(text).toMatch(/· (bench sheet|shopping list|batch record) · version [\d.]+ · \d+ models/);
            expect(text).toContain('Batch no. ___');
            expect(text).toContain(`Page ${i + 1} of ${pages.length}`);
          }
        }
      }
    },
    60_000,
  );

  it.each(papers)(
    'a bench sheet of up to eight steps is one leaf of paper, on %s',
    async (paper) => {
      const taken = await Promise.all(
        short.map(async (guide) => [guide, (await pdf(sheetOf(guide), { paper })).pages.length] as const),
      );
      expect(short.length).toBeGreaterThan(3);
      expect(taken.filter(([, pages]) => pages > 2)).toEqual([]);
    },
    120_000,
  );

  it('no letter on a bench sheet is smaller than 9 pt, and there is room to write', async () => {
    const page = await browser().newPage();
    await page.emulateMedia({ media: 'print' });
    for (const guide of short) {
      await page.goto(sheetOf(guide));
      const found = await page.evaluate(lettersAndRoom);
      expect([guide, found.small]).toEqual([guide, []]);
      expect([guide, found.lowest >= 6]).toEqual([guide, true]);
    }
    await page.close();
  }, 60_000);

  it.each([
    ['needle-block', 'Letter', 10, 2],
    ['abscess-pouch', 'A4', 8, 3],
    ['abscess-pouch', 'Letter', 8, 3],
  ] as const)(
    'splits no step of %s over pages of %s, and warns in a step before its acts',
    async (guide, paper, count, most) => {
      const { pages } = await pdf(at(guide, 'bench-sheet'), { paper });
      const steps = await stepsOf(at(guide, 'bench-sheet'));
      expect(steps.length).toBe(count);
      expect(Math.max(...steps.map(({ cautions }) => cautions.length))).toBe(most);
      const texts = pages.map(({ text }) => bare(text));
      const split = steps.filter(
        ({ heading, cautions, acts }) => !texts.some((text) => follow(text, [heading, ...cautions, ...acts])),
      );
      expect(split).toEqual([]);
    },
    60_000,
  );

  /** Heading, cautions and acts of each step of a bench sheet. */
  async function stepsOf(address: string) {
    const context = await browser().newContext();
    const page = await context.newPage();
    await page.goto(address);
    const steps = await page.evaluate(() => {
      const textsOf = (element: Element, selector: string): readonly string[] =>
        [...element.querySelectorAll(selector)].map((one) =>
          (one.textContent ?? '').replace(/\s+/g, ' ').trim(),
        );
      return [...document.querySelectorAll('.step')].map((step) => ({
        heading: textsOf(step, 'h3')[0]!,
        cautions: textsOf(step, '.caution-line > b:last-of-type'),
        acts: textsOf(step, '.acts li').map((act) => act.slice(0, 25)),
      }));
    });
    await context.close();
    return steps;
  }

  it('repeats the head of a table on every page that sixty models take', async () => {
    const { pages } = await pdf(at('suture-pad/60', 'batch-record'), { paper: 'A4' });
    const withRows = pages.filter(({ text }) => /\b(10|30|50|60)\b/.test(text) && text.includes('Made on'));
    expect(withRows.length).toBeGreaterThanOrEqual(2);
    for (const { text } of withRows) expect(text).toMatch(/No\. Made on By Thickness/);
  }, 60_000);

  // The bar of 100 mm is a path: its ends are measured in the PDF, not in dots.
  it.each(papers)(
    'prints 100 mm as 100 mm on every tile of every pattern, on %s',
    async (paper) => {
      for (const guide of ['suture-pad', 'chest-drain-frame']) {
        const { pages } = await pdf(at(guide, 'patterns'), { paper });
        expect(pages.length).toBeGreaterThan(3);
        for (const [i, { drawn, text, width, height }] of pages.entries()) {
          expect(text).toContain('100 %');
          expect([i, drawn.filter(isBar).length]).toEqual([i, 1]);
          const [bar] = drawn.filter(isBar);
          expect(Math.abs(bar!.width - 100)).toBeLessThan(0.2);
          for (const { x, y, width: across, height: down } of drawn.filter(isNoClip(width))) {
            expect(x).toBeGreaterThan(5);
            expect(x + across).toBeLessThan(width - 5);
            expect(y + down).toBeLessThan(height - 5);
          }
        }
      }
    },
    60_000,
  );

  it('prints an outline in its size, and where its tiles join leaves 10 mm on both', async () => {
    const { pages } = await pdf(at('suture-pad', 'patterns'), { paper: 'Letter' });
    const base = pages.find(({ text }) => text.includes(' Base ') && text.includes('whole on this page'))!;
    expect(base.drawn.some((drawn) => isAbout(drawn.width, 150) && isAbout(drawn.height, 100))).toBe(true);
    const together = ({ text }: PdfPage): string => text.replaceAll(' ', '');
    const fat = pages.filter((page) => /Fat460mm×210mm.*A\dofA1–A3/.test(together(page)));
    expect(fat.map((page) => /(A\d)ofA1–A3/.exec(together(page))?.[1])).toEqual(['A1', 'A2', 'A3']);
    const joins = fat.slice(0, 2).map(({ drawn }) => drawn.find(isUpright)!);
    // A tile shows 180 mm; its neighbour begins 170 mm from its left edge.
    expect(joins.map(({ height }) => Math.round(height))).toEqual([210, 210]);
    expect(Math.abs(middleOf(fat[0]!.drawn.find(isUpright)!) - leftEdge(fat[0]!.drawn) - 170)).toBeLessThan(
      0.3,
    );
  }, 60_000);

  it.each(labelStocks.map((stock) => [stock.id, stock] as const))(
    '%s: labels lie where the paper has them, within 0.3 mm, and all that stands on one fits',
    async (id, stock) => {
      const choose = async (page: Page): Promise<void> => {
        await page.selectOption('[name=stock]', id);
        await page.waitForTimeout(20);
      };
      const { pages } = await pdf(at('abscess-pouch', 'labels'), {
        paper: stock.paper,
        ownSize: true,
        before: Object.assign(choose, { toString: () => id }),
      });
      expect(pages.length).toBe(Math.ceil(12 / (stock.across * stock.down)));
      const boxes = pages[0]!.drawn.filter(
        ({ width, height }) => Math.abs(width - stock.width) < 0.3 && Math.abs(height - stock.height) < 0.3,
      );
      expect(boxes.length).toBe(Math.min(12, stock.across * stock.down));
      for (const [i, { x, y }] of boxes.entries()) {
        const [column, row] = [i % stock.across, Math.floor(i / stock.across)];
        expect(Math.abs(x - stock.left - column * stock.pitchAcross)).toBeLessThan(0.3);
        expect(Math.abs(y - stock.top - row * stock.pitchDown)).toBeLessThan(0.3);
      }
      expect(await cutOff(id)).toEqual([]);
    },
    60_000,
  );

  /** Labels on which something is cut off. */
  async function cutOff(stock: string): Promise<readonly string[]> {
    const found: string[] = [];
    for (const guide of guides) {
      const page = await browser().newPage();
      await page.goto(at(guide, 'labels'));
      await page.selectOption('[name=stock]', stock);
      await page.emulateMedia({ media: 'print' });
      const over = await page.evaluate(() =>
        [...document.querySelectorAll('.label')]
          .filter((label) => label.scrollHeight > label.clientHeight || label.scrollWidth > label.clientWidth)
          .map((label) => label.textContent ?? ''),
      );
      found.push(...over.slice(0, 1).map((text) => `${guide}: ${text}`));
      await page.close();
    }
    return found;
  }

  it('nudges every label by as much as is set', async () => {
    const nudge = async (page: Page): Promise<void> => {
      await page.fill('[name=nudge-across]', '2');
      await page.fill('[name=nudge-down]', '-1.5');
    };
    const address = at('abscess-pouch', 'labels');
    const [plain, nudged] = await Promise.all([
      pdf(address, { paper: 'A4', ownSize: true }),
      pdf(address, { paper: 'A4', ownSize: true, before: nudge }),
    ]);
    const first = ({ pages }: Pdf): Drawn => pages[0]!.drawn.find(({ width }) => isAbout(width, 63.5))!;
    expect(first(nudged).x - first(plain).x).toBeCloseTo(2, 0);
    expect(Math.abs(first(nudged).x - first(plain).x - 2)).toBeLessThan(0.3);
    expect(Math.abs(first(nudged).y - first(plain).y + 1.5)).toBeLessThan(0.3);
  }, 60_000);

  it.runIf(hasPoppler)(
    'the codes on bench sheet and labels lead to the guide; that of the sheet is 22 mm or more',
    async () => {
      const address = 'https://skills.example.org/guides/trainees/guides/needle-block/index.html';
      for (const sheet of ['bench-sheet', 'labels']) {
        const made = await file(at('needle-block', sheet), { paper: 'A4', ownSize: true });
        const [page] = rastersIn(poppler('pdftoppm', '-gray', '-r', '200', '-l', '1', made)!);
        const { greys, width, height } = sheet === 'labels' ? firstOf(page!) : page!;
        const { data } = jsQR(colours(greys), width, height) ?? {};
        expect([sheet, data]).toEqual([sheet, address]);
      }
      const page = await browser().newPage();
      await page.goto(at('needle-block', 'bench-sheet'));
      const box = (await page.locator('.code .qr').boundingBox())!;
      await page.close();
      expect((box.width * 25.4) / 96).toBeGreaterThanOrEqual(22);
    },
    60_000,
  );

  it.runIf(hasPoppler)(
    'prints black on white in a dark room with little ink, and means nothing by a background',
    async () => {
      for (const sheet of ['bench-sheet', 'cutting-plan', 'labels']) {
        const plain = await file(at('knot-board', sheet), { paper: 'A4' });
        const inks = rastersIn(poppler('pdftoppm', '-gray', '-r', '100', plain)!).map(inkOf);
        expect([sheet, inks.filter((ink) => ink >= 0.08)]).toEqual([sheet, []]);
        const coloured = await file(at('knot-board', sheet), { paper: 'A4', background: true });
        const others = rastersIn(poppler('pdftoppm', '-gray', '-r', '100', coloured)!).map(inkOf);
        others.forEach((ink, i) => expect(Math.abs(ink - inks[i]!)).toBeLessThan(0.005));
      }
    },
    120_000,
  );

  it('is a tagged PDF with a heading of level 1, and holds no text that only a screen shows', async () => {
    for (const sheet of withMargins) {
      const { isTagged, roles, pages } = await pdf(at('knot-board', sheet), { paper: 'A4' });
      expect([sheet, isTagged, roles.has('H1')]).toEqual([sheet, true, true]);
      expect(pages.map(({ text }) => text).join(' ')).toContain('For training only, never for patient care.');
      expect(pages.map(({ text }) => text).join(' ')).not.toContain('Back to the guide');
    }
  }, 60_000);

  it('says on every label what it is for, its number, and what is in it', async () => {
    const { pages } = await pdf(at('abscess-pouch', 'labels'), { paper: 'A4', ownSize: true });
    const text = pages.map((page) => page.text).join(' ');
    expect(text.match(/For training only, never for patient care\./g)).toHaveLength(12);
    expect(text.match(/Contains Custard powder \(food allergen\)\./g)).toHaveLength(12);
    for (let n = 1; n <= 12; n++) expect(text).toContain(`No. ${n} of 12`);
  }, 60_000);
});

/** Whether a text has these, one behind the other. */
function follow(text: string, said: readonly string[]): boolean {
  let from = 0;
  return said.map(bare).every((one) => {
    const at = text.indexOf(one, from);
    from = at + one.length;
    return at >= 0;
  });
}

/** Eight steps of the usual length: each warns and has four acts; two of them wait. */
const eight = [1, 2, 3, 4, 5, 6, 7, 8];
const eightSteps = `---
title: Lacing board
version: 1.0.0
status: draft
states:
  for: 6 models
materials: []
steps:
${eight.map(stepFacts).join('')}checks:
  - id: runs
    ask: Does the lace run freely?
    after: part-8
    each: model
cautions:
${eight.map(caution).join('')}---
${eight.map(stepText).join('')}`;

function stepFacts(n: number): string {
  return `  - id: part-${n}
    for: each model
    hands-on: 10 min
${n % 4 === 0 ? '    wait: 2 h\n' : ''}`;
}

function caution(n: number): string {
  return `  - id: edge-${n}
    signal: caution
    steps: [part-${n}]
    hazard: the edge of part ${n} is sharp
    harm: cut fingers
    avoid:
      - hold it in the clamp
`;
}

function stepText(n: number): string {
  return `
## Part ${n}

1. Lay part ${n} on the board, its marked side up.
2. Clamp it at both ends, and look along its edge.
3. Lace it through the second row of holes, from below.
4. Pull the lace tight, and trim what is left over.

### Right when
The lace holds the part when you turn the board over.
`;
}

/** Texts in letters of less than 9 pt, and the height in mm of the lowest row to write in. */
function lettersAndRoom(): { readonly small: readonly string[]; readonly lowest: number } {
  const seen = [...document.querySelectorAll('body *')].filter(
    (element) => element.getClientRects().length > 0 && !element.closest('svg'),
  );
  const small = seen.filter(
    (element) =>
      [...element.childNodes].some(({ nodeType, nodeValue }) => nodeType === 3 && nodeValue!.trim() !== '') &&
      parseFloat(getComputedStyle(element).fontSize) < 11.99,
  );
  const rows = [...document.querySelectorAll('.weigh tbody tr, .changes tbody tr, .written, .sign li')];
  const heights = rows.map((row) => (row.getBoundingClientRect().height * 25.4) / 96);
  return {
    small: small.map((element) => `${element.className}: ${element.textContent}`),
    lowest: Math.min(...heights),
  };
}

const isAbout = (length: number, of: number): boolean => Math.abs(length - of) < 0.3;

/** The bar itself: no height, and 100 mm give or take what a bad printer would do. */
function isBar({ width, height }: Drawn): boolean {
  return height < 0.1 && width > 90 && width < 110;
}

/** A dashed line down a tile, where its neighbour is laid. */
function isUpright({ width, height }: Drawn): boolean {
  return width < 0.5 && height > 150;
}

function middleOf({ x, width }: Drawn): number {
  return x + width / 2;
}

function leftEdge(drawn: readonly Drawn[]): number {
  return Math.min(...drawn.filter(({ width }) => width > 300).map(({ x }) => x));
}

/** What is cut to is as large as the page, or larger. */
function isNoClip(paper: number): (drawn: Drawn) => boolean {
  return ({ width, height }) => width > 0 && width < paper - 30 && height < 230;
}

/** The first of three labels across, seven down: a reader looks at one code at a time. */
function firstOf({ greys, width, height }: Raster): Raster {
  const [across, down] = [Math.floor(width / 3), Math.floor(height / 5)];
  const rows = Array.from({ length: down }, (_, y) => greys.subarray(y * width, y * width + across));
  return { width: across, height: down, greys: Uint8Array.from(rows.flatMap((row) => [...row])) };
}

/** Greys as the red, green, blue and opacity that the reader of codes takes. */
function colours(greys: Uint8Array): Uint8ClampedArray {
  const data = new Uint8ClampedArray(greys.length * 4);
  greys.forEach((grey, i) => data.set([grey, grey, grey, 255], i * 4));
  return data;
}
