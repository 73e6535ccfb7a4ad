import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { inChromium } from './chromium.ts';
import { demoGuides } from './demo-guides.ts';
import { type PlannerSite, plannerSite } from './planner-site.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

await inChromium('the catalogue', (browser) => {
  let demo: PlannerSite;
  beforeAll(async () => {
    demo = await plannerSite(demoGuides);
  }, 240_000);
  afterAll(() => demo.remove());

  async function open<T>(
    query: string,
    work: (page: Page) => Promise<T>,
    options: BrowserContextOptions = {},
    where: 'onServer' | 'onDisk' = 'onDisk',
  ): Promise<T> {
    const context = await browser().newContext({ viewport: { width: 1280, height: 900 }, ...options });
    try {
      const page = await context.newPage();
      await page.goto(`${demo[where]}/../index.html${query}`);
      return await work(page);
    } finally {
      await context.close();
    }
  }

  const shown = (page: Page) => page.locator('.guide-row:visible .guide-name').allTextContents();
  const sentence = (page: Page) => page.locator('.match').textContent();

  describe.each(['onServer', 'onDisk'] as const)('%s', (where) => {
    it('narrows the list as boxes are ticked, says how many match, and keeps the choices in the address', async () => {
      await open(
        '',
        async (page) => {
          expect(await sentence(page)).toBe('6 guides');
          await page.locator('#by-hazard summary').click();
          await page.locator('#by-hazard input[value=h222]').check();
          const some = await shown(page);
          expect(some.length).toBeGreaterThan(0);
          expect(some.length).toBeLessThan(6);
          expect(await sentence(page)).toBe(
            `${some.length} of 6 guides match${some.length === 1 ? 'es' : ''}`,
          );
          expect(new URL(page.url()).search).toBe('?hazard=h222');
          const address = page.url();
          await page.locator('.clear').click();
          expect(await shown(page)).toHaveLength(6);
          expect(new URL(page.url()).search).toBe('');
          await page.goto(address);
          expect(await shown(page)).toEqual(some);
          expect(await page.locator('#by-hazard').getAttribute('open')).not.toBeNull();
        },
        {},
        where,
      );
    });
  });

  it('takes any of a facet and wants every facet; the counts beside follow', async () => {
    await open('', async (page) => {
      const costs = page.locator('#by-cost input');
      await costs.nth(0).check();
      const first = await shown(page);
      await costs.nth(1).check();
      const both = await shown(page);
      expect(both).toEqual(expect.arrayContaining(first));
      expect(both.length).toBeGreaterThan(first.length);
      const counts = await page.locator('#by-build .count').allTextContents();
      expect(counts.reduce((sum, count) => sum + Number(count), 0)).toBe(both.length);
    });
  });

  it('sorts by title, cost and build time', async () => {
    await open('?sort=cost', async (page) => {
      const figures = (kind: string) => page.locator(`.of-${kind} dd`).allTextContents();
      const costs = (await figures('cost')).map((text) => Number(text.replace(/[^\d.]/g, '')));
      expect(costs).toEqual([...costs].sort((a, b) => a - b));
      await page.getByLabel('Build time', { exact: true }).check();
      expect(page.url()).toMatch(/\?sort=build$/);
      const widths = await page
        .locator('.guide-row .waits')
        .evaluateAll((bars) => bars.map((bar) => Number(bar.getAttribute('width'))));
      expect(widths).toEqual([...widths].sort((a, b) => a - b));
      await page.getByLabel('Title', { exact: true }).check();
      const titles = await shown(page);
      expect(titles).toEqual([...titles].sort());
    });
  });

  it('says so when no guide has all of it, and offers what to take away', async () => {
    await open('?status=draft&hazard=h222', async (page) => {
      expect(await shown(page)).toEqual([]);
      expect(await sentence(page)).toBe('No guide has all of this.');
      const ways = page.locator('.no-match button');
      expect(await ways.allTextContents()).toContain('Without “Draft”');
      await ways.first().click();
      expect((await shown(page)).length).toBeGreaterThan(0);
      expect(await page.evaluate(() => document.activeElement?.className)).toBe('guide-name');
    });
  });

  it('is worked by the keyboard alone', async () => {
    await open('', async (page) => {
      await page.locator('#by-status summary').focus();
      await page.keyboard.press('Enter');
      await page.keyboard.press('Tab');
      await page.keyboard.press('Space');
      await page.waitForURL(/\?status=/);
      await page.keyboard.press('Tab');
      await page.locator('.clear').focus();
      await page.keyboard.press('Enter');
      await page.waitForURL(/index\.html$/);
    });
  });

  it('is a plain full list without scripts, and offers no choice that would do nothing', async () => {
    const work = async (page: Page) => {
      expect(await shown(page)).toHaveLength(6);
      expect(await page.locator('[data-choices]').isVisible()).toBe(false);
      expect(await page.locator('.order').isVisible()).toBe(false);
    };
    await open('', work, { javaScriptEnabled: false });
  });

  it('folds its choices away on a phone, and unfolds them by a button', async () => {
    const work = async (page: Page) => {
      expect(await page.locator('.choice').first().isVisible()).toBe(false);
      await page.locator('.choices-toggle').click();
      expect(await page.locator('.choice').first().isVisible()).toBe(true);
      const heights = await page
        .locator('#by-cost label')
        .evaluateAll((labels) => labels.map((label) => label.getBoundingClientRect().height));
      expect(heights.filter((height) => height < 44)).toEqual([]);
    };
    await open('', work, { viewport: { width: 390, height: 844 } });
  });

  it('stays within the page at 320 px and with text twice as large', async () => {
    for (const width of [320, 768, 1280]) {
      const work = async (page: Page) => {
        await page.addStyleTag({ content: 'html { font-size: 200% }' });
        await page
          .locator('details')
          .evaluateAll((all) => all.forEach((one) => one.setAttribute('open', '')));
        return page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        );
      };
      const over = await open('', work, { viewport: { width, height: 900 }, bypassCSP: true });
      expect([width, over]).toEqual([width, 0]);
    }
  });

  it('keeps WCAG 2.2 AA with all its groups open, at every width, in light and dark', async () => {
    for (const width of [320, 1280]) {
      for (const colorScheme of ['light', 'dark'] as const) {
        const work = async (page: Page) => {
          if (width === 320) await page.locator('.choices-toggle').click();
          await page
            .locator('details')
            .evaluateAll((all) => all.forEach((one) => one.setAttribute('open', '')));
          await page.evaluate(axe);
          return page.evaluate(async () => {
            const { axe: known } = globalThis as unknown as {
              axe: {
                run: (
                  options: object,
                ) => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
              };
            };
            const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
            const { violations } = await known.run({ runOnly: { type: 'tag', values: tags } });
            return violations.map(({ id, nodes }) => `${id}: ${nodes[0]!.html}`);
          });
        };
        const options = { colorScheme, bypassCSP: true, viewport: { width, height: 900 } };
        expect(await open('', work, options)).toEqual([]);
      }
    }
  }, 120_000);

  it('nothing of a guide’s data for other programs is run or refused, and no page asks for anything elsewhere', async () => {
    const context = await browser().newContext();
    const page = await context.newPage();
    const said: string[] = [];
    const elsewhere: string[] = [];
    page.on('console', (message) => said.push(message.text()));
    page.on('request', (request) => {
      if (!request.url().startsWith(new URL(demo.onServer).origin)) elsewhere.push(request.url());
    });
    await page.goto(`${demo.onServer}/needle-block/index.html`);
    const name = await page.evaluate(
      () =>
        (
          JSON.parse(document.querySelector('script[type="application/ld+json"]')!.textContent!) as {
            name: string;
          }
        ).name,
    );
    await context.close();
    expect(name).toBe('Ultrasound needle block, Shallow vessels');
    expect([said, elsewhere]).toEqual([[], []]);
  });
});
