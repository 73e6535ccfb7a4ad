import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { planAt } from '../../src/core/model/plan-at.ts';
import { showCautions, showStepCautions } from '../../src/showing/safety/show-cautions.ts';
import type { ShownCaution } from '../../src/showing/shown/shown-plan.ts';
import { inChromium } from './chromium.ts';
import { type PlannerSite, plannerSite } from './planner-site.ts';
import { field, saysAnother, sets } from './planner-page.ts';
import { bare } from './pdf.ts';
import { printer } from './printer.ts';

const block = 'needle-block/index.html';

/** What a page says of its dangers to those who see it. */
interface Seen {
  /** "warning: Hot gel sticks to skin." of the group at the top, in its order. */
  readonly group: readonly string[];
  readonly steps: Readonly<
    Record<
      string,
      {
        readonly cautions: readonly string[];
        /** All of them stand above what to take and above the first act, in the text and on the screen. */
        readonly isAbove: boolean;
      }
    >
  >;
  /** Cautions, dangers and who has the last word, that are there and not to be seen. */
  readonly hidden: readonly string[];
}

await inChromium('cautions in a browser', (browser) => {
  const { pdf } = printer(browser);
  let site: PlannerSite;
  beforeAll(async () => {
    site = await plannerSite(['needle-block', 'chest-drain-frame', 'abscess-pouch']);
  }, 300_000);
  afterAll(() => site.remove());

  async function open(path: string): Promise<Page> {
    const page = await browser().newPage();
    page.setDefaultTimeout(90_000);
    await page.goto(`${site.onDisk}/${path}`);
    return page;
  }

  /** All that the guide's author wrote, worked out without any page. */
  function written(guide: string, level?: string): Seen {
    const at = planAt(site.data(guide).workspace.guides[guide]!, level);
    const says = (cautions: readonly ShownCaution[]): readonly string[] =>
      cautions.map(({ signal, hazard }) => `${signal}: ${hazard.text}`);
    const steps = at.steps.flatMap(({ id }) => {
      const cautions = says(showStepCautions('', at, id));
      return cautions.length > 0 ? [[`step-${id}`, { cautions, isAbove: true }] as const] : [];
    });
    return { group: says(showCautions('', at)), steps: Object.fromEntries(steps), hidden: [] };
  }

  // A value each that differs from the demo's own.
  it.each([
    ['another batch', 'batch', '30'],
    ['fewer builders', 'builders', '1'],
    ['stock on hand', 'stock:gelatin-powder', '900 g'],
    ['packs and prices of one’s own', 'pack:gelatin-powder', '250 g at 12.50 GBP'],
    ['tools owned', 'owned:loaf-tin', '1'],
    ['another level beside it', 'batch:deep', '2'],
  ])(
    'all stay, most severe first and above what is to be done: %s',
    async (_, name, value) => {
      const page = await open(block);
      const all = written('needle-block', 'shallow');
      expect(Object.keys(all.steps).length).toBeGreaterThan(4);
      expect(await page.evaluate(seen)).toEqual(all);
      await sets(page, name, value);
      expect(await field(page, name).getAttribute('aria-invalid')).not.toBe('true');
      expect(await page.evaluate(seen)).toEqual(all);
      await page.close();
    },
    120_000,
  );

  it('all stay on the page of another level, with all of that set at once', async () => {
    const query = new URLSearchParams({ batch: '9', 'stock:gelatin-powder': '900 g', 'owned:loaf-tin': '2' });
    for (const [path, level] of [
      ['needle-block/index.html', 'shallow'],
      ['needle-block/deep/index.html', 'deep'],
    ] as const) {
      const page = await open(`${path}?${query.toString()}`);
      await saysAnother(page, '');
      expect([path, await page.evaluate(seen)]).toEqual([path, written('needle-block', level)]);
      await page.close();
    }
  }, 120_000);

  it('all stay whatever is folded away or ticked off, on the screen and on paper', async () => {
    const page = await open('abscess-pouch/index.html');
    const all = written('abscess-pouch');
    for (const isOpen of [true, false]) {
      await page.evaluate((open) => {
        for (const details of document.querySelectorAll('details')) details.open = open;
      }, isOpen);
      expect([isOpen, await page.evaluate(seen)]).toEqual([isOpen, all]);
    }
    for (const tick of await page.locator('[data-tick] input').all()) await tick.check();
    expect(await page.evaluate(seen)).toEqual(all);
    await page.emulateMedia({ media: 'print' });
    expect(await page.evaluate(seen)).toEqual(all);
    await page.close();
  }, 120_000);

  it('all stay on a bench sheet that follows other settings, and is ticked off', async () => {
    const query = new URLSearchParams({
      batch: '24',
      'stock:custard-powder': '200 g',
      'owned:saucepan': '2',
    });
    const page = await open(`abscess-pouch/bench-sheet/index.html?${query.toString()}`);
    await page.locator('.sheet-says').filter({ hasText: '24' }).waitFor();
    const all = written('abscess-pouch');
    const steps = Object.values(all.steps);
    expect(await page.evaluate(seen)).toEqual({ ...all, steps: expect.anything() as Seen['steps'] });
    expect(Object.values((await page.evaluate(seen)).steps)).toEqual(steps);
    for (const tick of await page.locator('[data-tick] input').all()) await tick.check();
    await page.emulateMedia({ media: 'print' });
    const printed = await page.evaluate(seen);
    expect([printed.group, Object.values(printed.steps), printed.hidden]).toEqual([all.group, steps, []]);
    await page.close();
  }, 120_000);

  it('would be missed: one that is folded away or faded out counts as hidden', async () => {
    const page = await open('abscess-pouch/index.html');
    await page.evaluate(() => {
      const fold = document.createElement('details');
      const caution = document.querySelector('#step-fill-the-pouches .caution')!;
      caution.replaceWith(fold);
      fold.append(caution);
      document.querySelector<HTMLElement>('#careful .defers')!.style.setProperty('opacity', '0');
    });
    const { hidden, steps } = await page.evaluate(seen);
    expect(hidden).toHaveLength(2);
    expect(steps['step-fill-the-pouches']!.cautions).toHaveLength(2);
    await page.close();
  }, 60_000);

  it('all stand on a guide that is reached through a filter of the catalogue', async () => {
    const page = await open('../index.html');
    await page.locator('#by-hazard summary').click();
    await page.locator('#by-hazard input[value=h222]').check();
    const link = page.locator('.guide-row:visible .guide-name', { hasText: 'needle block' });
    await link.click();
    await page.locator('#careful').waitFor();
    expect(await page.evaluate(seen)).toEqual(written('needle-block', 'shallow'));
    await page.close();
  }, 60_000);

  it.each([
    [block, 'A4'],
    ['chest-drain-frame/index.html', 'Letter'],
    ['abscess-pouch/index.html', 'A4'],
    ['abscess-pouch/index.html', 'Letter'],
  ] as const)(
    'stand on the same printed page as all acts of their step: %s, on %s',
    async (path, paper) => {
      const page = await open(path);
      const steps = await page.evaluate(actsOfSteps);
      await page.close();
      const { pages } = await pdf(`${site.onDisk}/${path}`, { paper });
      const texts = pages.map(({ text }) => bare(text));
      const apart = steps.filter(
        ({ cautions, acts }) =>
          !texts.some((text) => [...cautions, ...acts].every((said) => text.includes(bare(said)))),
      );
      expect(steps.some(({ cautions }) => cautions.length > 2)).toBe(path.startsWith('abscess'));
      expect(apart).toEqual([]);
    },
    120_000,
  );
});

/** Runs in the page: on that of a guide and on its bench sheet, whose steps say their cautions in lines. */
function seen(): Seen {
  const isSeen = (one: Element): boolean =>
    one.checkVisibility({ checkOpacity: true, checkVisibilityCSS: true }) &&
    one.getBoundingClientRect().height > 0 &&
    !one.closest('details:not([open])');
  const all = (within: ParentNode, what: string): Element[] =>
    [...within.querySelectorAll(what)].filter((one) => !one.closest('template'));
  const says = (caution: Element): string => {
    const signal = /signal-(\w+)/.exec(caution.className)![1]!;
    const hazard = caution.querySelector('.hazard strong, b:not(.caution-number)')!;
    return `${signal}: ${hazard.textContent}`;
  };
  const cautions = '.caution, .caution-line';
  const steps = all(document, '.step')
    .filter(isSeen)
    .flatMap((step, i) => {
      const met = all(step, cautions).filter(isSeen);
      const todo = all(step, '.tray, .takes, .settings, .acts').filter(isSeen);
      const isBefore = (caution: Element): boolean =>
        todo.every(
          (act) =>
            caution.getBoundingClientRect().bottom <= act.getBoundingClientRect().top &&
            (caution.compareDocumentPosition(act) & Node.DOCUMENT_POSITION_FOLLOWING) > 0,
        );
      const found = { cautions: met.map(says), isAbove: todo.length > 0 && met.every(isBefore) };
      return met.length > 0 ? [[step.id || `step ${i}`, found] as const] : [];
    });
  return {
    group: all(document, '#careful .caution, section.careful .caution').filter(isSeen).map(says),
    steps: Object.fromEntries(steps),
    hidden: all(document, `${cautions}, .meets li, .wear li, main .defers, .defers-here`)
      .filter((one) => !isSeen(one))
      .map((one) => one.textContent ?? ''),
  };
}

/** Runs in the page: of each step with cautions their words, and its acts. */
function actsOfSteps() {
  return [...document.querySelectorAll('.step')].flatMap((step) => {
    const cautions = [...step.querySelectorAll('.caution .hazard strong')].map(
      (one) => one.textContent ?? '',
    );
    const acts = [...step.querySelectorAll('.acts li')].map((one) => one.textContent ?? '');
    return cautions.length > 0 ? [{ cautions, acts }] : [];
  });
}
