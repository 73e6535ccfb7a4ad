import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { inChromium } from './chromium.ts';
import { kindsOfPage, publishedDemo } from './published.ts';

await inChromium('the search, from a disk', (browser) => {
  const demo = publishedDemo();

  async function on<T>(path: string, work: (page: Page) => Promise<T>): Promise<T> {
    const context = await browser().newContext();
    try {
      const page = await context.newPage();
      await page.goto(demo.address(path));
      return await work(page);
    } finally {
      await context.close();
    }
  }

  const titles = (page: Page) => page.locator('.find .found-list a').allTextContents();

  async function ask(page: Page, query: string): Promise<readonly string[]> {
    await page.locator('.find input').fill(query);
    await page.waitForFunction((asked) => {
      const says = document.querySelector('.find .found-says')?.textContent ?? '';
      return says.includes('found') || says.includes(asked);
    }, query);
    await page.waitForTimeout(60);
    return titles(page);
  }

  it('finds a guide and a material with a letter wrong, and by what people also say', async () => {
    await on(kindsOfPage.guide, async (page) => {
      for (const [query, title] of [
        ['needle block', 'Ultrasound needle block'],
        ['neddle', 'Ultrasound needle block'],
        ['gelatine', 'Gelatin powder'],
        ['gelatn', 'Gelatin powder'],
        ['sonography', 'Ultrasound needle block'],
        ['sutur', 'Layered suture pad'],
        ['boil', 'Abscess pouch'],
      ] as const) {
        expect([query, (await ask(page, query)).slice(0, 3)]).toEqual([
          query,
          expect.arrayContaining([title]),
        ]);
      }
    });
  }, 60_000);

  it('loads its documents when the field is first used, and not before', async () => {
    await on(kindsOfPage.catalogue, async (page) => {
      const asked: string[] = [];
      page.on('request', (request) => asked.push(request.url().split('/').slice(-2).join('/')));
      await page.waitForTimeout(200);
      expect(asked).toEqual([]);
      await ask(page, 'felt');
      expect(asked).toEqual(['search/documents.js']);
      await ask(page, 'foam');
      expect(asked).toEqual(['search/documents.js']);
    });
  });

  it('answers from every depth of the site with links that lead somewhere', async () => {
    for (const path of [
      kindsOfPage.catalogue,
      kindsOfPage.guide,
      kindsOfPage['another level'],
      kindsOfPage.manual,
    ]) {
      await on(path, async (page) => {
        await ask(page, 'needle block');
        await page.locator('.find .found-list a').first().click();
        expect(await page.locator('h1').textContent()).toContain('Ultrasound needle block');
      });
    }
  }, 60_000);

  it('leads with Enter to a page of all results, whose address holds the query', async () => {
    await on(kindsOfPage.guide, async (page) => {
      await page.locator('.find input').fill('gelatin');
      await page.keyboard.press('Enter');
      await page.waitForURL(/search\/index\.html\?q=gelatin$/);
      const list = page.locator('.search-page .found-list a');
      await list.first().waitFor();
      expect(await list.first().textContent()).toBe('Gelatin powder');
      expect(await page.locator('.search-page .found-says').textContent()).toMatch(/^\d+ pages? found$/);
      await page.locator('.find input').fill('felt');
      await page.waitForFunction(() =>
        document.querySelector('.search-page .found-list a')?.textContent?.includes('felt'),
      );
      expect(page.url()).toMatch(/q=felt$/);
    });
  });

  it('says so when nothing is found, and offers ways on', async () => {
    await on(kindsOfPage.guide, async (page) => {
      const offered = await ask(page, 'zzzzqqq');
      expect(await page.locator('.find .found-says').textContent()).toContain('Nothing found for “zzzzqqq”');
      expect(offered).toContain('Guides');
    });
  });

  it('shows what a query says as letters, never as markup', async () => {
    await on(kindsOfPage.guide, async (page) => {
      await ask(page, '<img src=x>');
      expect(await page.locator('.find img').count()).toBe(0);
    });
  });

  it('goes away with Escape and when the keyboard leaves it', async () => {
    await on(kindsOfPage.guide, async (page) => {
      await ask(page, 'gelatin');
      await page.keyboard.press('Escape');
      expect(await page.locator('#found').isVisible()).toBe(false);
      expect(await page.evaluate(() => document.activeElement?.id)).toBe('find');
      await ask(page, 'felt');
      await page.locator('h1').click();
      expect(await page.locator('#found').isVisible()).toBe(false);
    });
  });

  it('announces once what it found', async () => {
    await on(kindsOfPage.guide, async (page) => {
      await page.locator('.find input').focus();
      await ask(page, 'felt');
      expect(await page.locator('.find [role=status]').textContent()).toMatch(/found$/);
      expect(await page.locator('.find [role=status]').count()).toBe(1);
    });
  });
});
