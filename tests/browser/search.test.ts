import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { searchLibrary, searchScript } from '../../src/exports/search-library.ts';
import { inChromium } from './chromium.ts';
import { demoGuides } from './demo-guides.ts';
import { type PlannerSite, plannerSite } from './planner-site.ts';
import { manyGuides } from './many-guides.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const guide = 'needle-block/index.html';
const catalogue = '../index.html';

await inChromium('the search', (browser) => {
  let demo: PlannerSite;
  beforeAll(async () => {
    demo = await plannerSite(demoGuides);
  }, 240_000);
  afterAll(() => demo.remove());

  async function on<T>(
    address: string,
    work: (page: Page) => Promise<T>,
    options: BrowserContextOptions = {},
  ) {
    const context = await browser().newContext(options);
    try {
      const page = await context.newPage();
      await page.goto(address);
      return await work(page);
    } finally {
      await context.close();
    }
  }

  /** Types a query and waits until its sentence is said. */
  async function ask(page: Page, query: string): Promise<readonly string[]> {
    await page.locator('.find input').fill(query);
    await page.waitForFunction((asked) => {
      const place = document.querySelector('[data-search-page]') ?? document.querySelector('.find')!;
      const says = place.querySelector('.found-says')?.textContent ?? '';
      const results = place.querySelector<HTMLElement>('.found-results');
      return results?.dataset['asked'] === asked && /found|some of them/.test(says);
    }, query);
    return page.locator('.found-list .found-name').allTextContents();
  }

  describe.each(['onServer', 'onDisk'] as const)('%s', (where) => {
    const at = (path: string): string => `${demo[where]}/${path}`;

    it('finds what was meant among the first three, a letter wrong or two, a plural, or what people also say', async () => {
      const typed = [
        ['needle block', 'Ultrasound needle block'],
        ['neddle', 'Ultrasound needle block'],
        ['ultrasuond', 'Ultrasound needle block'],
        ['sonography', 'Ultrasound needle block'],
        ['sonografy', 'Ultrasound needle block'],
        ['gelatine', 'Gelatin powder'],
        ['gelatn', 'Gelatin powder'],
        ['sutur', 'Layered suture pad'],
        ['suturing pad', 'Layered suture pad'],
        ['stitch', 'Layered suture pad'],
        ['boil', 'Abscess pouch'],
        ['absess', 'Abscess pouch'],
        ['thoracostomy', 'Rib frame for chest drains'],
        ['intercostal drain', 'Rib frame for chest drains'],
        ['chest drian', 'Rib frame for chest drains'],
        ['cricothyroidotomy', 'Front-of-neck airway trainer'],
        ['crycothyroidotomy', 'Front-of-neck airway trainer'],
        ['knots', 'Knot-tying board'],
        ['knoot board', 'Knot-tying board'],
        ['KNÓT', 'Knot-tying board'],
      ] as const;
      await on(at(guide), async (page) => {
        const found = [];
        for (const [query, title] of typed) found.push([query, title, (await ask(page, query)).slice(0, 3)]);
        expect(found.filter(([, title, first]) => !first!.includes(String(title)))).toEqual([]);
      });
    }, 120_000);

    it('loads its library when the field is first used, once, and asks for nothing else', async () => {
      await on(at(catalogue), async (page) => {
        const asked: string[] = [];
        page.on('request', (request) => asked.push(request.url().split('/').slice(-2).join('/')));
        await page.waitForTimeout(200);
        expect(asked).toEqual([]);
        await ask(page, 'felt');
        await ask(page, 'foam');
        expect(asked).toEqual(['search/library.js']);
      });
    });

    it('marks the hit in name and excerpt, says what a step belongs to, and leads to the step', async () => {
      await on(at('needle-block/deep/index.html'), async (page) => {
        await ask(page, 'bloom the gelatin');
        const first = page.locator('.found-list li').first();
        expect(await first.locator('.found-name mark').allTextContents()).toEqual([
          'Bloom',
          'the',
          'gelatin',
        ]);
        expect(await first.locator('.found-of').textContent()).toBe('Ultrasound needle block · CAUTION');
        expect(await first.locator('.found-line mark').count()).toBeGreaterThan(0);
        await page.keyboard.press('Enter');
        await page.waitForURL(/guides\/needle-block\/index\.html#step-bloom-the-gelatin$/);
      });
    });

    it('leads by its button to a page of all results, whose address holds the query', async () => {
      await on(at(guide), async (page) => {
        await page.locator('.find input').fill('gelatin');
        await page.locator('.find > button').click();
        await page.waitForURL(/search\/index\.html\?q=gelatin$/);
        await page.locator('.search-page .found-list a').first().waitFor();
        expect(await page.locator('.search-page .found-name').first().textContent()).toBe('Gelatin powder');
        await ask(page, 'felt');
        expect(page.url()).toMatch(/q=felt$/);
        await page.keyboard.press('Enter');
        await page.waitForURL(/#material-/);
      });
    });

    it('says so when nothing is found, and offers words that are here, choices of the catalogue, and all guides', async () => {
      await on(at(guide), async (page) => {
        await ask(page, 'abssces');
        expect(await page.locator('.found-says').textContent()).toBe('Nothing found for “abssces”.');
        await page.locator('.found-near button', { hasText: 'abscess' }).click();
        await page.locator('.found-list .found-name', { hasText: 'Abscess pouch' }).first().waitFor();
        await ask(page, 'zzzzqqq');
        const ways = page.locator('.found-elsewhere a');
        expect(await ways.allTextContents()).toEqual(expect.arrayContaining(['Guides', 'Guides by danger']));
        await page.locator('.found-elsewhere a', { hasText: 'Guides by danger' }).click();
        await page.waitForURL(/index\.html#by-hazard$/);
        expect(await page.locator('#by-hazard').getAttribute('open')).not.toBeNull();
      });
    });
  });

  it('says which of several words it went without', async () => {
    await on(`${demo.onDisk}/${guide}`, async (page) => {
      await ask(page, 'gelatin zzzzqqq');
      expect(await page.locator('.found-says').textContent()).toMatch(
        /^Nothing has every word .* have some of them\.$/,
      );
    });
  });

  it('shows what a query says as letters, never as markup', async () => {
    await on(`${demo.onDisk}/${guide}`, async (page) => {
      await ask(page, '<img src=x>');
      expect(await page.locator('.find img').count()).toBe(0);
    });
  });

  it('is led through by arrow keys, and goes away with Escape and when the keyboard leaves it', async () => {
    await on(`${demo.onDisk}/${guide}`, async (page) => {
      const focused = () => page.evaluate(() => document.activeElement?.textContent ?? '');
      await ask(page, 'gelatin');
      const links = await page.locator('.found-results a').allTextContents();
      await page.keyboard.press('ArrowDown');
      expect(await focused()).toBe(links[0]);
      await page.keyboard.press('ArrowDown');
      expect(await focused()).toBe(links[1]);
      await page.keyboard.press('ArrowUp');
      await page.keyboard.press('ArrowUp');
      expect(await page.evaluate(() => document.activeElement?.id)).toBe('find');
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('Escape');
      expect(await page.locator('#found').isVisible()).toBe(false);
      expect(await page.evaluate(() => document.activeElement?.id)).toBe('find');
      await ask(page, 'felt');
      await page.locator('h1').click();
      expect(await page.locator('#found').isVisible()).toBe(false);
    });
  });

  it('announces once what it found, however fast the letters come', async () => {
    await on(`${demo.onDisk}/${guide}`, async (page) => {
      await ask(page, 'felt');
      await page.evaluate(() => {
        const says = document.querySelector('.find [role=status]')!;
        const heard: string[] = [];
        Object.assign(globalThis, { heard });
        new MutationObserver(() => heard.push(says.textContent ?? '')).observe(says, {
          childList: true,
          characterData: true,
          subtree: true,
        });
      });
      await page.locator('.find input').fill('');
      await page.locator('.find input').pressSequentially('gelat', { delay: 20 });
      await page.waitForTimeout(900);
      const heard = await page.evaluate(() => (globalThis as unknown as { heard: string[] }).heard);
      expect(heard).toHaveLength(1);
      expect(heard[0]).toMatch(/^\d+ found\. Enter opens “.+”\.$/);
    });
  });

  it('answers in less than 50 ms among 300 guides', async () => {
    const library = searchLibrary(manyGuides(300), {}, []);
    const context = await browser().newContext();
    const page = await context.newPage();
    await page.route('**/search/library.js', (route) =>
      route.fulfill({ contentType: 'text/javascript', body: searchScript(library) }),
    );
    await page.goto(`${demo.onServer}/${guide}`);
    await ask(page, 'gelatin');
    const times = await page.evaluate(() => {
      const field = document.querySelector<HTMLInputElement>('.find input')!;
      const results = document.querySelector<HTMLElement>('.found-results')!;
      const answered = async (query: string): Promise<number> => {
        const from = performance.now();
        field.value = query;
        field.dispatchEvent(new Event('input', { bubbles: true }));
        while (results.dataset['asked'] !== query) await Promise.resolve();
        return performance.now() - from;
      };
      const all = ['needle', 'psylium', 'ge', 'sutture pad', 'chest drain frame'];
      return all.reduce<Promise<number[]>>(async (sum, query) => {
        const before = await sum;
        const tries = [await answered(query), await answered('water'), await answered(query)];
        return [...before, Math.min(tries[0]!, tries[2]!)];
      }, Promise.resolve([]));
    });
    await context.close();
    expect(times.filter((time) => time >= 50)).toEqual([]);
  }, 60_000);

  it.each([guide, '../search/index.html?q=gelatin'])(
    'keeps WCAG 2.2 AA with results open, in light and dark: %s',
    async (path) => {
      for (const colorScheme of ['light', 'dark'] as const) {
        const work = async (page: Page) => {
          await ask(page, 'gelatin');
          await page.evaluate(axe);
          return page.evaluate(async () => {
            const { axe: known } = globalThis as unknown as {
              axe: {
                run: (
                  place: object,
                  options: object,
                ) => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
              };
            };
            const place = {
              include: [['.find'], ...(document.querySelector('.search-page') ? [['.search-page']] : [])],
            };
            const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
            const { violations } = await known.run(place, { runOnly: { type: 'tag', values: tags } });
            return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
          });
        };
        const broken = await on(`${demo.onDisk}/${path}`, work, { colorScheme, bypassCSP: true });
        expect(broken).toEqual([]);
      }
    },
    60_000,
  );
});
