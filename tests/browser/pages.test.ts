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

async function violations(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run: (options: object) => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    const run = {
      type: 'tag',
      values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
    };
    const found = await axe.run({ runOnly: run });
    return found.violations.map(
      ({ id, nodes }) =>
        `${id}: ${nodes
          .slice(0, 3)
          .map(({ html }) => html.slice(0, 140))
          .join(' | ')}`,
    );
  });
}
