import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { beforeAll, expect, it } from 'vitest';
import { inChromium } from './chromium.ts';
import { pageOfEachKind, pagesIn } from './kinds-of-page.ts';
import { publishedDemo } from './published.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const minute = 60_000;

/*
 * What holds for every page: one of each kind is looked at, whatever kinds there are. Each is opened once for all that
 * only looks, as a phone opens it from a disk; what needs another browser opens it again.
 */
await inChromium('every kind of page', (browser) => {
  const demo = publishedDemo();
  const kinds = () => pageOfEachKind(demo.folder());

  /** What is wrong, by kind. */
  type Wrong = Readonly<Record<string, readonly string[]>>;

  /** Runs over one page of each kind; what is wrong is listed by kind. */
  async function wrongOn(
    options: BrowserContextOptions,
    look: (page: Page, kind: string) => Promise<readonly string[]>,
  ): Promise<Wrong> {
    const wrong: Record<string, readonly string[]> = {};
    const context = await browser().newContext(options);
    for (const [kind, path] of kinds()) {
      const page = await context.newPage();
      await page.goto(demo.address(path));
      const found = await look(page, kind);
      if (found.length > 0) wrong[kind] = found;
      await page.close();
    }
    await context.close();
    return wrong;
  }

  /** What each look finds, by its name and by kind of page: all of them on one visit. */
  const seen: Record<keyof typeof looks, Record<string, readonly string[]>> = {
    axe: {},
    wide: {},
    turned: {},
    moving: {},
    signals: {},
    numbers: {},
    loading: {},
  };
  beforeAll(async () => {
    for (const [kind, path] of kinds()) {
      const context = await browser().newContext({
        viewport: { width: 390, height: 800 },
        bypassCSP: true,
        reducedMotion: 'reduce',
      });
      const page = await context.newPage();
      const troubles = troublesOf(page);
      // Faces arrive late, so that what they would move is seen.
      await page.route('**/*.woff2', (route) => setTimeout(() => void route.continue(), 200));
      await page.goto(demo.address(path));
      for (const [name, look] of Object.entries(looks) as [keyof typeof looks, Look][]) {
        const found = await look(page, kind, troubles);
        if (found.length > 0) seen[name][kind] = found;
      }
      await context.close();
    }
  }, 5 * minute);

  it('is among those that are looked at', () => {
    const names = kinds().map(([kind]) => kind);
    expect(names).toEqual(
      expect.arrayContaining([
        'bench-sheet',
        'catalogue',
        'cutting-plan',
        'door',
        'guides/*',
        'guides/*/*',
        'manual/*',
      ]),
    );
    expect(names).toEqual(
      expect.arrayContaining(['guides/*, a draft', 'materials', 'modules/*', 'safety', 'search', 'tools']),
    );
  });

  it('asks nothing of another place, fails at nothing, and moves nothing while it loads, from a disk', () => {
    expect(seen.loading).toEqual({});
  });

  it('keeps WCAG 2.2 AA as far as a machine can tell, in light and dark, on a phone and at a desk', () => {
    expect(seen.axe).toEqual({});
  });

  it('is no wider than its window, with text twice as large and with two fifths more of it too', () => {
    expect(seen.wide).toEqual({});
  });

  it('reads from right to left without a thing out of place, numbers and ranges from left to right', () => {
    expect(seen.turned).toEqual({});
  });

  it('moves nothing for who wants less motion', () => {
    expect(seen.moving).toEqual({});
  });

  it('shows signal colours on safety panels alone, in light and dark', () => {
    expect(seen.signals).toEqual({});
    expect(withSignals).toEqual(expect.arrayContaining(['guides/*', 'guides/*, a draft']));
  });

  it('writes numbers so that nobody reads tenfold, and keeps each with its unit', () => {
    expect(seen.numbers).toEqual({});
  });

  it(
    'lets the keyboard reach every control and every frame that scrolls, and hides none that has it',
    async () => {
      const wrong = await wrongOn(
        { viewport: { width: 390, height: 700 }, reducedMotion: 'reduce' },
        async (page) => {
          await unfold(page);
          await page.evaluate(watchFocus);
          const many = await page.evaluate(() => window.stops().length);
          // A field for a day and a time has a stop for each of its parts, and one for its calendar.
          const inDays = 6 * (await page.locator('input[type=datetime-local]').count());
          for (let i = 0; i < many + inDays + 2; i++) await page.keyboard.press('Tab');
          return page.evaluate(() => [
            ...window
              .controls()
              .flatMap((one) => (window.reached.has(one) ? [] : [`not reached: ${window.nameOf(one)}`])),
            ...window.hiddenOnes.map((one) => `hidden: ${one}`),
          ]);
        },
      );
      expect(wrong).toEqual({});
    },
    4 * minute,
  );

  it(
    'is complete without scripts',
    async () => {
      const wrong = await wrongOn(
        { javaScriptEnabled: false, viewport: { width: 1280, height: 900 } },
        async (page, kind) => {
          for (const summary of await page.locator('summary:visible').all()) await summary.click();
          const read = plain(await page.locator('body').innerText());
          // What a label has no room for is left out by its style, with scripts and without.
          const texts = await page
            .locator('[data-shows]')
            .evaluateAll((all) =>
              all
                .filter((one) => !one.closest('[hidden], .label-made-of'))
                .map((one) => one.textContent ?? ''),
            );
          const controls = await page.locator('button:visible, input:visible, select:visible').count();
          return [
            ...(texts.length < fewest(kind) ? [`${texts.length} texts`] : []),
            ...texts.filter((text) => !read.includes(plain(text))).map((text) => `not seen: ${text}`),
            ...(controls > 0 ? [`${controls} controls that do nothing`] : []),
          ];
        },
      );
      expect(wrong).toEqual({});
    },
    2 * minute,
  );

  it(
    'shows in forced colours what is ticked, what is switched on and where one is',
    async () => {
      const context = await browser().newContext({
        forcedColors: 'active',
        viewport: { width: 390, height: 800 },
      });
      const page = await context.newPage();
      await page.goto(demo.address(kinds().find(([kind]) => kind === 'guides/*')![1]));
      const box = page.locator('.tick label').first();
      await box.scrollIntoViewIfNeeded();
      const unticked = await box.screenshot();
      await box.locator('input').click();
      expect(Buffer.compare(await box.screenshot(), unticked)).not.toBe(0);
      const marks = await box.locator('input').evaluate((input) => {
        const [own, mark] = [getComputedStyle(input.parentElement!), getComputedStyle(input, '::before')];
        return {
          edge: own.borderTopColor,
          mark: mark.borderBottomColor,
          ground: getComputedStyle(document.body).backgroundColor,
        };
      });
      expect(marks.edge).not.toBe(marks.ground);
      expect(marks.mark).not.toBe(marks.ground);
      await context.close();
    },
    minute,
  );

  it('is light enough for a phone in a cellar: 25 kB a page, 12 kB of style, 80 kB of faces', () => {
    const weight = (path: string) => gzipSync(readFileSync(join(demo.folder(), path)), { level: 9 }).length;
    const heavy = pagesIn(demo.folder())
      .map((path) => [path, weight(path)] as const)
      .filter(([, bytes]) => bytes > 25_000);
    expect(heavy).toEqual([]);
    for (const style of ['site', 'sheet'])
      expect(weight(`trainees/styles/${style}.css`)).toBeLessThan(12_000);
    const faces = ['atkinson-hyperlegible-next', 'sofia-sans-condensed'].map((name) =>
      weight(`trainees/fonts/${name}.woff2`),
    );
    expect(faces.reduce((sum, bytes) => sum + bytes, 0)).toBeLessThan(80_000);
  });
});

declare global {
  interface Window {
    stops: () => Element[];
    controls: () => Element[];
    reached: Set<Element>;
    hiddenOnes: string[];
    nameOf: (element: Element) => string;
  }
}

/** Finds what is wrong on a page of this kind that has just been opened, or that other looks have left as it was. */
type Look = (page: Page, kind: string, troubles: readonly string[]) => Promise<readonly string[]>;

/** In this order: the first sees the page load, the last may change it for good. */
const looks = {
  loading: async (page, _kind, troubles) => {
    const moved = await page.evaluate(movedWhileLoading);
    const field = page.locator('input[type=search]');
    if ((await field.count()) > 0) await field.focus();
    await page.waitForLoadState('networkidle');
    return [...troubles, ...(moved >= 0.05 ? [`moves ${moved}`] : [])];
  },
  moving: (page) => page.evaluate(whatMoves),
  signals: async (page, kind) => {
    const found: string[] = [];
    for (const colorScheme of ['dark', 'light'] as const) {
      await page.emulateMedia({ colorScheme });
      const { onPanels, elsewhere } = await page.evaluate(signalColours);
      if (onPanels > 0) withSignals.push(kind);
      found.push(...elsewhere.map((one) => `${colorScheme}: ${one}`));
    }
    return found;
  },
  numbers: async (page, kind) => (kind.startsWith('manual') ? [] : await page.evaluate(misreadNumbers)),
  axe: async (page) => {
    await unfold(page);
    await page.evaluate(axe);
    const all = [
      ['light', 390, everyRule],
      ['dark', 1280, ofColour],
      ['light', 320, ofLayout],
    ] as const;
    const found: string[] = [];
    for (const [colorScheme, width, rules] of all) {
      await page.emulateMedia({ colorScheme });
      await page.setViewportSize({ width, height: 900 });
      found.push(...(await violations(page, rules)).map((one) => `${colorScheme} ${width}: ${one}`));
    }
    return found;
  },
  turned: async (page) => {
    await page.evaluate(() => document.documentElement.setAttribute('dir', 'rtl'));
    const found = await tooWideAt(page, [390, 1280]);
    found.push(...(await page.evaluate(rangesTurnedRound)));
    await page.evaluate(() => document.documentElement.removeAttribute('dir'));
    return found;
  },
  wide: async (page) => {
    const found = await tooWideAt(page, [1280, 390, 320]);
    await page.evaluate(() => document.documentElement.style.setProperty('font-size', '200%'));
    found.push(...(await tooWideAt(page, [640])).map((one) => `large text: ${one}`));
    await page.evaluate(() => document.documentElement.style.removeProperty('font-size'));
    await page.evaluate(lengthen);
    for (const width of [1280, 390]) {
      const longer = [...(await tooWideAt(page, [width])), ...(await page.evaluate(cutOff))];
      found.push(...longer.map((one) => `longer words, ${width} px: ${one}`));
    }
    return found;
  },
} satisfies Record<string, Look>;

/** What a page asks of other places, what it fails to load, and what it complains of: filled as it happens. */
function troublesOf(page: Page): readonly string[] {
  const troubles: string[] = [];
  page.on('request', (request) => {
    if (!request.url().startsWith('file:')) troubles.push(`asks ${request.url()}`);
  });
  page.on('requestfailed', (request) => troubles.push(`fails ${request.url()}`));
  page.on('console', (message) => troubles.push(`says ${message.text()}`));
  page.on('pageerror', (error) => troubles.push(`stumbles ${error.message}`));
  return troubles;
}

async function tooWideAt(page: Page, widths: readonly number[]): Promise<string[]> {
  const found: string[] = [];
  for (const width of widths) {
    await page.setViewportSize({ width, height: 800 });
    found.push(...(await widerThanPage(page)).map((one) => `${width} px: ${one}`));
  }
  return found;
}

/** Texts that a page of a guide has at least: a draft without cautions and costs has fewer than a long guide. */
function fewest(kind: string): number {
  if (!kind.startsWith('guides/')) return 0;
  return kind.endsWith('a draft') ? 100 : 200;
}

/** Kinds of page on which a signal colour was seen where it belongs: else the look would have seen nothing. */
const withSignals: string[] = [];

/** Where the colours of danger, warning, caution and notice stand, whatever a theme makes of them. */
function signalColours(): { readonly onPanels: number; readonly elsewhere: readonly string[] } {
  const probe = document.body.appendChild(document.createElement('i'));
  const signals = ['danger', 'warning', 'caution', 'notice'].map((name) => {
    probe.style.color = `var(--${name})`;
    return getComputedStyle(probe).color;
  });
  probe.remove();
  const sides = ['Top', 'Right', 'Bottom', 'Left'] as const;
  const uses = (element: Element): boolean => {
    const style = getComputedStyle(element);
    const edges = sides.flatMap((side) =>
      style[`border${side}Width`] === '0px' ? [] : [style[`border${side}Color`]],
    );
    const drawn = element.closest('svg') ? [style.fill, style.stroke] : [];
    const all = [style.color, style.backgroundColor, style.backgroundImage, ...drawn, ...edges];
    return all.some((used) => signals.some((signal) => used.includes(signal)));
  };
  const using = [...document.querySelectorAll('body, body *')].filter(uses);
  const elsewhere = using.filter((element) => !element.closest('.caution'));
  return {
    onPanels: using.length - elsewhere.length,
    elsewhere: elsewhere.map((element) => `${element.tagName}.${element.getAttribute('class')}`),
  };
}

function whatMoves(): readonly string[] {
  const moving = [...document.querySelectorAll('*')].filter((element) => {
    const { transitionDuration, animationName, animationDuration, scrollBehavior } =
      getComputedStyle(element);
    const isStill = /^(0s(, )?)+$/.test(transitionDuration);
    const isAnimated = animationName !== 'none' && animationDuration !== '0s';
    return !isStill || isAnimated || scrollBehavior === 'smooth';
  });
  return moving.map((element) => `${element.tagName}.${element.className}`);
}

/**
 * Texts with a number that begins with its point, ends in a needless zero, or is parted from its unit. Money has its
 * minor digits always (ISO 4217), and versions and licences are names.
 */
function misreadNumbers(): readonly string[] {
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const texts: string[] = [];
  while (walker.nextNode())
    if (!walker.currentNode.parentElement!.closest('script, code, pre'))
      texts.push(walker.currentNode.textContent ?? '');
  const units = 'g|kg|mg|mL|L|mm|cm|m|°C|min|h|s|N';
  const faults = [/(^|[^\d.])\.\d/, /\d\.0+(?![\d.])\b/, new RegExp(`\\d (${units})\\b(?!\\w)`)];
  const amounts = (text: string): string =>
    text.replace(/[£€$]\d[\d,.]*|\d[\d,.]*\u00a0GBP|CC-[A-Z-]+\d\.\d/g, '');
  return texts
    .filter((text) => !/version|\d\.\d+\.\d/i.test(text))
    .filter((text) => faults.some((fault) => fault.test(amounts(text))));
}

const everyRule = {
  type: 'tag',
  values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
} as const;
const ofLayout = {
  type: 'rule',
  values: ['target-size', 'scrollable-region-focusable', 'color-contrast'],
} as const;
const ofColour = { type: 'rule', values: ['color-contrast'] } as const;

async function violations(
  page: Page,
  rules: typeof everyRule | typeof ofLayout | typeof ofColour,
): Promise<readonly string[]> {
  return page.evaluate(async (runOnly) => {
    type Found = { violations: { id: string; nodes: { html: string }[] }[] };
    const { axe } = globalThis as unknown as {
      axe: { run: (context: object, options: object) => Promise<Found> };
    };
    const found = await axe.run(document, { runOnly, resultTypes: ['violations'] });
    return found.violations.map(
      ({ id, nodes }) =>
        `${id}: ${nodes
          .slice(0, 3)
          .map(({ html }) => html.slice(0, 140))
          .join(' | ')}`,
    );
  }, rules);
}

/** Elements that stick out of the page, but for what scrolls by itself. Nothing where the page is no wider than its window. */
async function widerThanPage(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth <= clientWidth) return [];
    const out = [...document.querySelectorAll('body *')].filter((element) => {
      const { left, right, width } = element.getBoundingClientRect();
      return (
        width > 1 && (left < -1 || right > clientWidth + 1) && !element.closest('.scroll, pre, svg, .skip')
      );
    });
    const names = out.slice(0, 6).map((element) => `${element.tagName}.${element.getAttribute('class')}`);
    return [`page ${scrollWidth} > ${clientWidth}`, ...names];
  });
}

/** Everything that is folded away, opened. */
async function unfold(page: Page): Promise<void> {
  await page.evaluate(() => document.querySelectorAll('details').forEach((part) => (part.open = true)));
}

/** Every text two fifths longer, as a translation may be: its own letters again, so that words stay words. */
function lengthen(): void {
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const texts: Text[] = [];
  while (walker.nextNode()) texts.push(walker.currentNode as Text);
  for (const text of texts.filter(({ parentElement }) => !parentElement!.closest('svg, script, style'))) {
    const letters = text.data.trim();
    if (/\p{L}{3}/u.test(letters))
      text.data += ` ${letters.slice(0, Math.ceil(letters.length * 0.4)).trim()}`;
  }
}

/** Texts of which a part is not seen. */
function cutOff(): readonly string[] {
  return [...document.querySelectorAll('body *')]
    .filter(
      (element) => !element.closest('.unseen, svg, .scroll, [hidden], .skip') && element.textContent?.trim(),
    )
    .filter((element) => {
      const { overflowX, overflowY, display } = getComputedStyle(element);
      if (display === 'inline' || element.clientWidth <= 1) return false;
      const isClipped = [overflowX, overflowY].some(
        (overflow) => overflow === 'hidden' || overflow === 'clip',
      );
      return (
        isClipped &&
        (element.scrollWidth > element.clientWidth + 1 || element.scrollHeight > element.clientHeight + 1)
      );
    })
    .map((element) => `${element.tagName}.${element.getAttribute('class')}`)
    .slice(0, 6);
}

/** Ranges, sizes and times whose end stands left of their beginning. */
function rangesTurnedRound(): readonly string[] {
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const wrong: string[] = [];
  while (walker.nextNode()) {
    const text = walker.currentNode as Text;
    if (text.parentElement!.closest('svg, script, style, .unseen')) continue;
    for (const { index, 0: range } of text.data.matchAll(/\d+(?:[.,]\d+)*[  ]?(?:[–×±]|to)[  ]?\d+/g)) {
      const at = (i: number): DOMRect => {
        const one = document.createRange();
        one.setStart(text, i);
        one.setEnd(text, i + 1);
        return one.getBoundingClientRect();
      };
      const [first, last] = [at(index), at(index + range.length - 1)];
      if (first.width > 0 && first.top === last.top && first.left > last.left)
        wrong.push(
          `turned round: ${range} in ${text.parentElement!.tagName}.${text.parentElement!.className}`,
        );
    }
  }
  return wrong;
}

/** Writes down which controls get the focus, and which of them lie under something when they have it. */
function watchFocus(): void {
  const isSeen = (element: Element): boolean =>
    element.getClientRects().length > 0 && getComputedStyle(element).visibility !== 'hidden';
  const scrolls = (element: Element): boolean =>
    element.scrollWidth > element.clientWidth + 1 && /auto|scroll/.test(getComputedStyle(element).overflowX);
  const isInRow = (element: Element): boolean =>
    !(element as HTMLInputElement).disabled && !element.matches('input[type=radio]:not(:checked)');
  // A frame whose table fits has no need of the keyboard, but may stand in its row.
  window.stops = () =>
    [
      ...document.querySelectorAll(
        'a[href], button, input, select, textarea, summary, [tabindex="0"], .scroll',
      ),
    ].filter((element) => isSeen(element) && isInRow(element));
  window.controls = () => window.stops().filter((element) => !element.matches('.scroll') || scrolls(element));
  window.nameOf = (element) =>
    `${element.tagName}.${element.className} ${element.textContent?.trim().slice(0, 40)}`;
  window.reached = new Set();
  window.hiddenOnes = [];
  document.addEventListener('focusin', ({ target }) => {
    const element = target as Element;
    window.reached.add(element);
    const box = element.getClientRects()[0]!;
    const [left, right] = [Math.max(box.left, 0), Math.min(box.right, innerWidth)];
    const [top, bottom] = [Math.max(box.top, 0), Math.min(box.bottom, innerHeight)];
    const hit = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
    const isMine = hit !== null && (element.contains(hit) || hit.contains(element));
    if (left >= right || top >= bottom || !isMine) window.hiddenOnes.push(window.nameOf(element));
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
    setTimeout(() => done(sum), 500);
  });
}

/** Text with single blanks, in small letters. */
function plain(text: string): string {
  return text.replace(/\s+/g, ' ').trim().toLowerCase();
}
