import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { lettersOf } from '../publishing/html.ts';
import { inChromium } from './chromium.ts';
import { kindsOfPage, publishedDemo } from './published.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const kinds = Object.entries(kindsOfPage);
const widths = [320, 390, 1280] as const;
const themes = ['light', 'dark'] as const;

await inChromium('pages in a browser', (browser) => {
  const demo = publishedDemo();

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

  it.each(kinds)(
    '%s: fits a phone and a desk, in light and dark, and at 200 %% text',
    async (_, path) => {
      const wide = await open(path, {}, async (page) => {
        await unfold(page);
        const found: Record<string, readonly string[]> = {};
        for (const colorScheme of themes) {
          await page.emulateMedia({ colorScheme });
          for (const width of widths) {
            await page.setViewportSize({ width, height: 800 });
            found[`${colorScheme} ${width}`] = await widerThanPage(page);
          }
        }
        await page.evaluate(() => document.documentElement.style.setProperty('font-size', '200%'));
        await page.setViewportSize({ width: 640, height: 800 });
        return { ...found, 'large text': await widerThanPage(page) };
      });
      expect(Object.entries(wide).filter(([, out]) => out.length > 0)).toEqual([]);
    },
    120_000,
  );

  it.each(kinds)(
    '%s: keeps WCAG 2.2 AA as far as a machine can tell, in light and dark',
    async (_, path) => {
      const broken = await open(path, { bypassCSP: true }, async (page) => {
        await page.emulateMedia({ colorScheme: 'dark' });
        await page.setViewportSize({ width: 390, height: 900 });
        const onPhone = await violations(page);
        await page.emulateMedia({ colorScheme: 'light' });
        await page.setViewportSize({ width: 1280, height: 900 });
        return { 'on a phone, dark': onPhone, 'at a desk, light': await violations(page) };
      });
      expect(broken).toEqual({ 'on a phone, dark': [], 'at a desk, light': [] });
    },
    120_000,
  );

  it.each(kinds)(
    '%s: asks nothing of another place, nothing fails, and nothing moves while it loads',
    async (_, path) => {
      const context = await browser().newContext({ viewport: { width: 390, height: 800 } });
      const page = await context.newPage();
      const asked: string[] = [];
      const failed: string[] = [];
      page.on('request', (request) => asked.push(request.url()));
      page.on('requestfailed', (request) => failed.push(request.url()));
      page.on('console', (message) => failed.push(message.text()));
      page.on('pageerror', (error) => failed.push(error.message));
      await page.route('**/*.woff2', (route) => setTimeout(() => void route.continue(), 300));
      await page.goto(demo.address(path));
      const moved = await page.evaluate(movedWhileLoading);
      const field = page.locator('input[type=search]');
      if ((await field.count()) > 0) await field.focus();
      await page.waitForLoadState('networkidle');
      await context.close();
      expect(asked.length).toBeGreaterThan(1);
      expect(asked.filter((url) => !url.startsWith('file:'))).toEqual([]);
      expect(failed).toEqual([]);
      expect(moved).toBeLessThan(0.05);
    },
    60_000,
  );

  it('a guide is complete without scripts: every amount, time, cost and caution', async () => {
    const path = kindsOfPage.guide;
    const shown = (page: Page) =>
      page.evaluate(() =>
        [...document.querySelectorAll('[data-shows]')].map(
          (e) => `${e.getAttribute('data-shows')}: ${e.textContent}`,
        ),
      );
    const without = await open(path, { javaScriptEnabled: true }, shown);
    expect(without.length).toBeGreaterThan(300);
    expect(without.filter((line) => /: $/.test(line))).toEqual([]);
    const letters = lettersOf(readFileSync(new URL(demo.address(path)), 'utf8'));
    const missing = await open(path, { javaScriptEnabled: false }, async (page) => {
      for (const summary of await page.locator('summary').all()) await summary.click();
      const visible = (await page.locator('body').innerText()).replace(/\s+/g, ' ').toLowerCase();
      const texts = without.map((line) =>
        line
          .slice(line.indexOf(': ') + 2)
          .replace(/\s+/g, ' ')
          .toLowerCase(),
      );
      return texts.filter((text) => !visible.includes(text));
    });
    expect(missing).toEqual([]);
    expect(letters).toContain('WARNING');
  }, 60_000);

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

  it.each(widths)(
    'letters on what is drawn run over no other letters and over no edge of their piece, at %i px',
    async (width) => {
      for (const path of [kindsOfPage['guide that cuts'], kindsOfPage.guide, kindsOfPage['cutting plan']]) {
        const found = await open(path, { viewport: { width, height: 800 } }, (page) =>
          page.evaluate(lettersInTheWay),
        );
        expect([path, found]).toEqual([path, []]);
      }
    },
    60_000,
  );

  it('without scripts there is no search field that does nothing', async () => {
    await open(kindsOfPage.guide, { javaScriptEnabled: false }, async (page) => {
      expect(await page.locator('input[type=search]').isVisible()).toBe(false);
    });
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

  it('signal colours stand on safety panels alone', async () => {
    const elsewhere = await open(kindsOfPage.guide, {}, (page) =>
      page.evaluate(() => {
        const signal = ['rgb(200, 16, 46)', 'rgb(255, 121, 0)', 'rgb(255, 209, 0)', 'rgb(0, 83, 155)'];
        return [...document.querySelectorAll('body *')]
          .filter((element) => !element.closest('.caution'))
          .filter((element) => {
            const { color, backgroundColor, fill, borderTopColor } = getComputedStyle(element);
            return [color, backgroundColor, fill, borderTopColor].some((used) => signal.includes(used));
          })
          .map((element) => element.className);
      }),
    );
    expect(elsewhere).toEqual([]);
  });

  it('who wants less motion gets none', async () => {
    const moving = await open(kindsOfPage.guide, { reducedMotion: 'reduce' }, (page) =>
      page.evaluate(() => [
        getComputedStyle(document.documentElement).scrollBehavior,
        ...[...document.querySelectorAll('*')]
          .map((element) => getComputedStyle(element).transitionDuration)
          .filter((time) => time !== '0s'),
      ]),
    );
    expect(moving).toEqual(['auto']);
  });

  it('reads from right to left without a thing out of place', async () => {
    for (const width of [390, 1280]) {
      const wide = await open(kindsOfPage.guide, { viewport: { width, height: 800 } }, async (page) => {
        await page.evaluate(() => document.documentElement.setAttribute('dir', 'rtl'));
        return widerThanPage(page);
      });
      expect(wide).toEqual([]);
    }
  });
});

/** Elements that stick out of the page, but for what scrolls by itself. Nothing where the page is no wider than its window. */
async function widerThanPage(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    const inside = (element: Element): boolean => {
      const { left, right, width } = element.getBoundingClientRect();
      return width <= 1 || (left >= -1 && right <= clientWidth + 1);
    };
    const out = [...document.querySelectorAll('body *')]
      .filter(
        (element) => !element.closest('.scroll, pre, svg, .skip, section:has(> table)') && !inside(element),
      )
      .map((element) => `${element.tagName}.${element.className}`);
    return scrollWidth > clientWidth ? [`page ${scrollWidth} > ${clientWidth}`, ...out] : out;
  });
}

/** How far things on the page have moved, as the browser reckons it (Layout Instability, WICG), faces arriving late. */
function movedWhileLoading(): Promise<number> {
  return new Promise((done) => {
    let sum = 0;
    const add = (list: PerformanceObserverEntryList): void => {
      for (const entry of list.getEntries()) sum += (entry as PerformanceEntry & { value: number }).value;
    };
    new PerformanceObserver(add).observe({ type: 'layout-shift', buffered: true });
    setTimeout(() => done(sum), 700);
  });
}

/** Everything that is folded away, opened. */
async function unfold(page: Page): Promise<void> {
  await page.evaluate(() => document.querySelectorAll('details').forEach((part) => (part.open = true)));
}

/** Texts of one drawing that touch, and texts that stick out of the piece they stand on. */
function lettersInTheWay(): readonly string[] {
  const seen = (text: Element): boolean => text.getClientRects().length > 0 && text.textContent !== '';
  const touch = (a: DOMRect, b: DOMRect): boolean =>
    a.left < b.right && b.left < a.right && a.top + 3 < b.bottom - 3 && b.top + 3 < a.bottom - 3;
  return [...document.querySelectorAll('.cut-drawing, .curve-marks')].flatMap((drawing) => {
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
