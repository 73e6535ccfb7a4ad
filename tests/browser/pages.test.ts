import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { inChromium } from './chromium.ts';
import { demoGuides } from './demo-guides.ts';
import { printer } from './printer.ts';
import { kindsOfPage, publishedDemo } from './published.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const widths = [320, 390, 1280] as const;
const themes = ['light', 'dark'] as const;
const screens = { narrow: 320, phone: 390, tablet: 768, desk: 1280 };
const pageOf = (guide: string): string => `trainees/guides/${guide}/index.html`;

await inChromium('pages in a browser', (browser) => {
  const demo = publishedDemo();
  const print = printer(browser);

  /** A page opened from the disk, and the context closed when the work on it is done. */
  async function open<T>(
    path: string,
    options: BrowserContextOptions,
    work: (page: Page) => Promise<T>,
  ): Promise<T> {
    const context = await browser().newContext(options);
    try {
      const page = await context.newPage();
      await page.goto(demo.address(path));
      return await work(page);
    } finally {
      await context.close();
    }
  }

  it.each([kindsOfPage.guide, kindsOfPage['guide that cuts']])(
    'what is drawn keeps WCAG 2.2 AA at every width, in light and dark, its tables unfolded: %s',
    async (path) => {
      const broken = await open(path, { bypassCSP: true }, async (page) => {
        const found: Record<string, readonly string[]> = {};
        await unfold(page);
        for (const colorScheme of themes) {
          for (const width of widths) {
            await page.emulateMedia({ colorScheme });
            await page.setViewportSize({ width, height: 900 });
            found[`${colorScheme} ${width}`] = await violations(page, ['#when', '#cutting', '#costs']);
          }
        }
        return found;
      });
      expect(Object.keys(broken)).toHaveLength(6);
      expect(Object.entries(broken).filter(([, found]) => found.length > 0)).toEqual([]);
    },
    120_000,
  );

  it.each([kindsOfPage['guide that cuts'], kindsOfPage['cutting plan']])(
    'every piece that is cut is drawn, and stands in a table or a sentence beside its picture: %s',
    async (path) => {
      const layouts = await open(path, {}, (page) =>
        page.evaluate(() =>
          [...document.querySelectorAll('.cut-layout')].map((layout) => ({
            isFlat: layout.querySelector('.cut-flat') !== null,
            drawn: layout.querySelectorAll('.cut-piece').length,
            isHidden: layout.querySelector('.cut')!.getAttribute('aria-hidden'),
            rows: [...layout.querySelectorAll('tbody tr')].map((row) =>
              [...row.querySelectorAll('th, td')].map((cell) => cell.textContent),
            ),
            rest: layout.querySelector('.cut-rest')?.textContent ?? '',
          })),
        ),
      );
      expect(layouts.length).toBeGreaterThan(5);
      for (const { isFlat, drawn, isHidden, rows, rest } of layouts) {
        expect(drawn).toBeGreaterThan(0);
        expect(isHidden).toBe('true');
        if (isFlat) expect(rows).toHaveLength(drawn);
        else expect(rows.length > 0 || rest.startsWith(String(drawn))).toBe(true);
      }
    },
  );

  it('the schedule and the curve are drawn for the eye alone, and each has its table', async () => {
    await open(kindsOfPage.guide, {}, async (page) => {
      for (const picture of ['.strip', '.curve'])
        expect(await page.locator(picture).getAttribute('aria-hidden')).toBe('true');
      expect(await page.locator('#when .days td.what').count()).toBeGreaterThan(5);
      const sizes = await page.locator('#costs .sizes tbody tr').count();
      const drawn = await page.locator('.curve-tooth').getAttribute('d');
      expect(drawn!.match(/[ML]/g)).toHaveLength(sizes);
      const full = await page.locator('#costs .sizes td').allTextContents();
      expect(full.filter((text) => text.startsWith('full'))).toHaveLength(
        await page.locator('.curve-marks .curve-full').count(),
      );
    });
  });

  it('a phone has the table of the schedule without its picture, and picture and table of what is cut', async () => {
    await open(kindsOfPage['guide that cuts'], { viewport: { width: 390, height: 800 } }, async (page) => {
      expect(await page.locator('.strip').isVisible()).toBe(false);
      expect(await page.locator('.days').isVisible()).toBe(true);
      expect(await page.locator('.cut-flat').first().isVisible()).toBe(true);
      expect(await page.locator('.pieces').first().isVisible()).toBe(true);
      expect(await page.locator('.curve').isVisible()).toBe(true);
    });
  });

  it.each(demoGuides)(
    'letters on what is drawn run over no other letters and no edge of their piece, on screens and paper: %s',
    async (guide) => {
      for (const path of [pageOf(guide), `trainees/guides/${guide}/cutting-plan/index.html`]) {
        const found = await open(path, {}, async (page) => {
          const faults: Record<string, readonly string[]> = {};
          for (const [where, width] of Object.entries(screens)) {
            await page.setViewportSize({ width, height: 800 });
            faults[where] = await page.evaluate(lettersInTheWay);
          }
          await layOnPaper(page);
          faults['paper'] = await page.evaluate(lettersInTheWay);
          return faults;
        });
        expect(Object.entries(found).filter(([, faults]) => faults.length > 0)).toEqual([]);
      }
    },
    60_000,
  );

  it('has all its pictures once it is there, so that paper has them too', async () => {
    const pictures = await open(pageOf('abscess-pouch'), {}, async (page) => {
      const all = page.locator('.step img');
      await expect
        .poll(
          () =>
            all.evaluateAll((found) =>
              found.every((picture) => (picture as HTMLImageElement).naturalWidth > 0),
            ),
          { timeout: 20_000 },
        )
        .toBe(true);
      return all.count();
    });
    expect(pictures).toBeGreaterThan(3);
  });

  it('what is pressed is large enough for a gloved finger', async () => {
    const small = await open(kindsOfPage.guide, { viewport: { width: 390, height: 800 } }, (page) =>
      page.evaluate(() =>
        [...document.querySelectorAll('.levels a, .button, .find input, .find button, .ways a, .places a')]
          .map((element) => ({ text: element.textContent, height: element.getBoundingClientRect().height }))
          .filter(({ height }) => height < 40),
      ),
    );
    expect(small).toEqual([]);
  });

  it('the keyboard reaches the content first by a link to skip the head, and sees where it is', async () => {
    await open(kindsOfPage.guide, {}, async (page) => {
      await page.keyboard.press('Tab');
      expect(await page.evaluate(() => document.activeElement?.className)).toBe('skip');
      expect(
        await page.evaluate(() => document.activeElement!.getBoundingClientRect().left),
      ).toBeGreaterThanOrEqual(0);
      await page.keyboard.press('Enter');
      expect(await page.evaluate(() => document.activeElement?.id)).toBe('content');
      await page.keyboard.press('Tab');
      const outline = await page.evaluate(() => getComputedStyle(document.activeElement!).outlineWidth);
      expect(outline).toBe('3px');
    });
  });

  it('what is folded away on the screen stands on paper all the same', async () => {
    const { pdf } = print;
    for (const path of [kindsOfPage.guide, kindsOfPage['guide that cuts']]) {
      const folded = await open(path, {}, (page) => page.evaluate(foldedTexts));
      const { pages } = await pdf(demo.address(path), { paper: 'A4' });
      const printed = plain(pages.map(({ text }) => text).join(' '));
      expect(folded.length).toBeGreaterThan(10);
      expect([path, folded.filter((text) => !printed.includes(plain(text)))]).toEqual([path, []]);
    }
  }, 60_000);
});

/** Texts in closed parts of a page, but for those of controls, which do nothing on paper. */
function foldedTexts(): readonly string[] {
  const cells = [...document.querySelectorAll('details:not([open]) :is(td, th, dt, dd, p, li)')];
  return cells
    .filter((cell) => !cell.closest('.planner, [hidden], summary') && !cell.querySelector('p, li, td'))
    .map((cell) => cell.textContent ?? '')
    .filter((text) => text.trim() !== '');
}

/** Letters and digits alone: a PDF has its own blanks, and hyphens where a line ends. */
function plain(text: string): string {
  return text.replace(/[^\p{L}\p{N}]+/gu, '');
}

/** Everything that is folded away, opened. */
async function unfold(page: Page): Promise<void> {
  await page.evaluate(() => document.querySelectorAll('details').forEach((part) => (part.open = true)));
}

/** As A4 is printed: rules ask how wide the paper is, and what is printed lies between its margins. */
async function layOnPaper(page: Page): Promise<void> {
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: 794, height: 1123 });
  await page.evaluate(() => document.body.style.setProperty('inline-size', '182mm'));
}

/** Texts of one drawing that touch, and texts that stick out of the piece they stand on. */
function lettersInTheWay(): readonly string[] {
  const seen = (text: Element): boolean => text.getClientRects().length > 0 && text.textContent !== '';
  const touch = (a: DOMRect, b: DOMRect): boolean =>
    a.left < b.right && b.left < a.right && a.top + 3 < b.bottom - 3 && b.top + 3 < a.bottom - 3;
  return [...document.querySelectorAll('.cut-drawing, .curve-marks, .scale')].flatMap((drawing) => {
    const texts = [...drawing.querySelectorAll('text')].filter(seen);
    const boxes = texts.map((text) => text.getBoundingClientRect());
    const pairs = texts.flatMap((a, i) =>
      texts
        .slice(i + 1)
        .flatMap((b, j) =>
          touch(boxes[i]!, boxes[i + 1 + j]!) ? [`${a.textContent} | ${b.textContent}`] : [],
        ),
    );
    const pieces = [...drawing.querySelectorAll('.cut-piece')].map((piece) => piece.getBoundingClientRect());
    const out = texts.filter((text, i) => {
      if (!/cut-(number|name)/.test(text.getAttribute('class') ?? '')) return false;
      const { left, right, top, bottom } = boxes[i]!;
      const middle = { x: (left + right) / 2, y: (top + bottom) / 2 };
      const on = pieces.find(
        (piece) =>
          piece.left <= middle.x &&
          piece.right >= middle.x &&
          piece.top <= middle.y &&
          piece.bottom >= middle.y,
      );
      return !on || left < on.left || right > on.right;
    });
    return [...pairs, ...out.map((text) => `${text.textContent} on its piece`)];
  });
}

async function violations(page: Page, within?: readonly string[]): Promise<readonly string[]> {
  await page.evaluate(axe);
  return page.evaluate(async (parts) => {
    type Found = { violations: { id: string; nodes: { html: string }[] }[] };
    const { axe } = globalThis as unknown as {
      axe: { run: (context: object, options: object) => Promise<Found> };
    };
    const run = {
      type: 'tag',
      values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
    };
    const there = parts?.filter((part) => document.querySelector(part) !== null);
    const found = await axe.run(there ? { include: there } : document, { runOnly: run });
    return found.violations.map(
      ({ id, nodes }) =>
        `${id}: ${nodes
          .slice(0, 3)
          .map(({ html }) => html.slice(0, 140))
          .join(' | ')}`,
    );
  }, within);
}
