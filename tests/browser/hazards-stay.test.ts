import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { inChromium } from './chromium.ts';
import { type PlannerSite, plannerSite } from './planner-site.ts';
import { sets } from './planner-page.ts';
import { printer } from './printer.ts';

const block = 'needle-block/index.html';

await inChromium('cautions in a browser', (browser) => {
  const { pdf } = printer(browser);
  let site: PlannerSite;
  beforeAll(async () => {
    site = await plannerSite(['needle-block', 'chest-drain-frame']);
  }, 300_000);
  afterAll(() => site.remove());

  it('stay above the first act of their step, whatever is set: another batch, fewer builders', async () => {
    const page = await browser().newPage();
    page.setDefaultTimeout(90_000);
    await page.goto(`${site.onDisk}/${block}`);
    const before = await dangersOf(page);
    expect(before.length).toBeGreaterThan(4);
    expect(before.filter(({ isAbove }) => !isAbove)).toEqual([]);
    for (const [name, value] of [
      ['batch', '30'],
      ['builders', '1'],
    ] as const) {
      await sets(page, name, value);
      expect([name, await dangersOf(page)]).toEqual([name, before]);
    }
    await page.close();
  }, 120_000);

  it.each([block, 'chest-drain-frame/index.html'])(
    'stand on the same printed page as the first act of their step: %s',
    async (path) => {
      const address = `${site.onDisk}/${path}`;
      const page = await browser().newPage();
      await page.goto(address);
      const steps = await dangersOf(page);
      await page.close();
      const { pages } = await pdf(address, { paper: 'A4' });
      const texts = pages.map(({ text }) => bare(text));
      const apart = steps.filter(
        ({ cautions, act }) =>
          !texts.some(
            (text) => text.includes(bare(act)) && cautions.every((said) => text.includes(bare(said))),
          ),
      );
      expect(apart).toEqual([]);
    },
    120_000,
  );
});

/** A reader of PDFs guesses blanks, and letters that the face joins. */
const bare = (text: string): string => text.replace(/\s+/g, '').normalize('NFKC');

/** Of each step with cautions: their words as they are seen, its first act, and whether all stand above that. */
function dangersOf(page: Page) {
  return page.locator('.step:visible').evaluateAll((steps) =>
    steps.flatMap((step) => {
      const cautions = [...step.querySelectorAll<HTMLElement>('.caution')].filter(
        (caution) => caution.offsetHeight > 0,
      );
      const act = step.querySelector<HTMLElement>('.acts li, .acts p');
      if (cautions.length === 0 || !act) return [];
      const top = act.getBoundingClientRect().top;
      return [
        {
          id: step.id,
          cautions: cautions.map((caution) => caution.querySelector('.hazard strong')?.textContent ?? ''),
          act: act.textContent ?? '',
          isAbove: cautions.every((caution) => caution.getBoundingClientRect().bottom <= top),
        },
      ];
    }),
  );
}
