import fc from 'fast-check';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { type Answer, answering } from '../../src/browser/planner/answer.ts';
import { isThere, textOf, valueAt } from '../../src/browser/refresh/values-at.ts';
import { atOnce } from '../../src/core/in-pieces.ts';
import type { PageData } from '../../src/core/plan/own/page-data.ts';
import { addressOf, settingsFrom } from '../../src/exports/plan-address.ts';
import { plannerWords } from '../../src/words/planner.ts';
import { leavesOf } from '../showing/leaves.ts';
import { inChromium } from './chromium.ts';
import { anySettings } from './planner/any-settings.ts';
import { field, lettersOf, says, saysAnother, sets, textsByKey } from './planner-page.ts';
import { type PlannerSite, plannerSite } from './planner-site.ts';

const block = 'needle-block/index.html';
const deep = 'needle-block/deep/index.html';
const frame = 'chest-drain-frame/index.html';

await inChromium('a guide planned for a program of one’s own', (browser) => {
  let site: PlannerSite;
  let context: BrowserContext;
  beforeAll(async () => {
    site = await plannerSite(['needle-block', 'chest-drain-frame']);
  }, 300_000);
  afterAll(() => site.remove());
  afterEach(() => context.close());

  /** Opens a page in a browser of its own; whatever goes wrong in it fails the test that opened it. */
  async function open(path: string, at: 'onDisk' | 'onServer' = 'onDisk'): Promise<Page> {
    context = await browser().newContext({ viewport: { width: 390, height: 800 } });
    return another(path, at);
  }
  async function another(path: string, at: 'onDisk' | 'onServer' = 'onDisk'): Promise<Page> {
    const page = await context.newPage();
    page.on('pageerror', (error) => faults.push(error.message));
    page.on('requestfailed', (request) => faults.push(request.url()));
    page.on('console', (message) => faults.push(message.text()));
    page.setDefaultTimeout(90_000);
    await page.goto(`${site[at]}/${path}`);
    return page;
  }
  const faults: string[] = [];
  afterEach(() => expect(faults.splice(0)).toEqual([]));

  const planOf = (data: PageData, query: string): Answer =>
    atOnce(answering(data, settingsFrom(query, data).settings));

  describe.each(['onDisk', 'onServer'] as const)('%s', (at) => {
    it('follows another number of models: figures, amounts, packs, costs, days, cutting', async () => {
      const page = await open(block, at);
      expect(await sets(page, 'batch', '8')).toMatch(/^8.models: £\d+\.\d\d to buy, ready day \d/);
      expectPage(await textsByKey(page), planOf(site.data('needle-block', 'shallow'), 'batch=8'));
      expect(page.url()).toMatch(/\?batch=8$/);
      expect(await page.locator('.figures').innerText()).toContain('8');
    }, 300_000);
  });

  it('is to the letter what the command line says, whatever is set', async () => {
    const cases = [
      { path: block, data: site.data('needle-block', 'shallow') },
      { path: deep, data: site.data('needle-block', 'deep') },
      { path: frame, data: site.data('chest-drain-frame') },
    ];
    const any = fc
      .constantFrom(...cases)
      .chain((one) => anySettings(one.data).map((own) => ({ ...one, own })));
    for (const { path, data, own } of fc.sample(any, { numRuns: 8, seed: 29 })) {
      const query = addressOf(own, data);
      const page = await open(query === '' ? path : `${path}?${query}`);
      const answer = planOf(data, query);
      if (query !== '') await saysAnother(page, '');
      if ('refused' in answer) expect(await says(page)).toContain(answer.refused[0]);
      else if (query !== '') expectPage(await textsByKey(page), answer);
      await context.close();
    }
  }, 600_000);

  it('hides the steps that a part alone does not need, and the cautions of others', async () => {
    const page = await open(`${frame}?part=skin`);
    await saysAnother(page, '');
    const answer = planOf(site.data('chest-drain-frame'), 'part=skin');
    if ('refused' in answer) throw new Error(answer.refused.join());
    const steps = await page.locator('.step:visible').evaluateAll((all) => all.map(({ id }) => id));
    expect(steps).toEqual(answer.plan.lines[0]!.steps.map(({ id }) => `step-${id}`));
    expect(steps.length).toBeLessThan(await page.locator('.step').count());
    const cautions = await page.locator('#careful .caution:visible').count();
    expect(cautions).toBe(answer.plan.lines[0]!.cautions.length);
  }, 120_000);

  it('draws the schedule with the rows and the ends of its table', async () => {
    const page = await open(`${block}?batch=6`);
    await saysAnother(page, '');
    const answer = planOf(site.data('needle-block', 'shallow'), 'batch=6');
    if ('refused' in answer) throw new Error(answer.refused.join());
    const { strip } = answer.plan.schedule;
    const drawn = await page
      .locator('.strip .bars')
      .evaluateAll((rows) =>
        rows.map((row) =>
          [...row.querySelectorAll('.bar-hands-on, .bar-wait')].map((bar) => [
            bar.getAttribute('class'),
            bar.getAttribute('x'),
            bar.getAttribute('width'),
          ]),
        ),
      );
    const percent = (share: number) => `${share / 10}%`;
    expect(drawn).toEqual(
      strip.rows.map(({ bars }) =>
        bars.map(({ kind, from, to }) => [`bar-${kind}`, percent(from), percent(Math.round(to - from))]),
      ),
    );
    const days = await page.locator('.days tbody tr:not(.day)').count();
    expect(days).toBe(answer.plan.schedule.days.flatMap(({ rows }) => rows).length);
    // The picture has a bar for a step exactly where the table has a row of it.
    const inTable = await page.locator('.days .what > span:first-child').allTextContents();
    for (const [i, { label }] of strip.rows.entries())
      expect(inTable.some((text) => text.startsWith(label.text))).toBe((drawn[i] ?? []).length > 0);
  }, 120_000);

  it('says once what came of several key presses in a row', async () => {
    const page = await open(block);
    await sets(page, 'batch', '5');
    await page.evaluate(() => {
      const said: string[] = [];
      Object.assign(globalThis, { said });
      const status = document.querySelector('.planner [role=status]')!;
      new MutationObserver(() => said.push(status.textContent ?? '')).observe(status, {
        childList: true,
        characterData: true,
        subtree: true,
      });
    });
    const before = await says(page);
    await field(page, 'batch').press('Backspace');
    await field(page, 'batch').pressSequentially('6754', { delay: 40 });
    for (let i = 0; i < 3; i++) await field(page, 'batch').press('Backspace');
    expect(await saysAnother(page, before)).toMatch(/^6.models/);
    await page.waitForTimeout(600);
    expect(await page.evaluate(() => (globalThis as unknown as { said: string[] }).said)).toHaveLength(1);
  }, 120_000);

  it.each(['0', '1.5', '10001', 'abc', ''])(
    'explains why “%s” is no number of models, and keeps the last good ones, marked as old',
    async (typed) => {
      const page = await open(block);
      await sets(page, 'batch', '3');
      const good = await textsByKey(page);
      const sentence = await sets(page, 'batch', typed);
      expect(sentence).toContain(plannerWords.batchHelp);
      expect(sentence).toContain(plannerWords.old);
      const batch = field(page, 'batch');
      expect(await batch.getAttribute('aria-invalid')).toBe('true');
      const help = page.locator(`#${await batch.getAttribute('aria-describedby')}`);
      expect(await help.innerText()).toContain('1 to 10,000');
      expect(await help.isVisible()).toBe(true);
      expect(await textsByKey(page)).toEqual(good);
      expect(await page.locator('html[data-old]').count()).toBe(1);
      expect(page.url()).toContain('batch=3');
      await sets(page, 'batch', '2');
      expect(await batch.getAttribute('aria-invalid')).toBe(null);
      expect(await page.locator('html[data-old]').count()).toBe(0);
    },
    120_000,
  );

  it('says why a plan is refused, and keeps the last good numbers, marked as old', async () => {
    const page = await open(block);
    await sets(page, 'batch', '3');
    const good = await textsByKey(page);
    // No vessel of 180 mm is cut from tube that comes in lengths of 100 mm.
    const tooShort = '100 mm at 1 GBP';
    const sentence = await sets(page, 'pack:silicone-tube', tooShort);
    const query = new URLSearchParams({ batch: '3', 'pack:silicone-tube': tooShort }).toString();
    const answer = planOf(site.data('needle-block', 'shallow'), query);
    if (!('refused' in answer)) throw new Error('the plan is made');
    expect(sentence).toBe([...answer.refused, plannerWords.old].join(' '));
    expect(await textsByKey(page)).toEqual(good);
    expect(await page.locator('html[data-old]').count()).toBe(1);
  }, 120_000);

  it('says why there is no schedule, and what would help, in place of the days', async () => {
    const page = await open(`${block}?ready-by=2026-11-26T10:00`);
    const sentence = await saysAnother(page, '');
    const answer = planOf(site.data('needle-block', 'shallow'), 'ready-by=2026-11-26T10:00');
    if ('refused' in answer) throw new Error(answer.refused.join());
    const { none, helps } = answer.plan.schedule;
    expect(none.text).not.toBe('');
    expect(sentence).toContain(none.text);
    expect(await page.locator('#when').innerText()).toContain(none.text);
    expect(await page.locator('#when li:visible').count()).toBe(helps.length);
    expect(await page.locator('#when :is(.days, .strip):visible').count()).toBe(0);
    expect(await page.locator('.planner [type=datetime-local]').inputValue()).toBe('2026-11-26T10:00');
    const before = await says(page);
    await page.getByRole('button', { name: plannerWords.backToWeek }).click();
    expect(await saysAnother(page, before)).toMatch(/^As published/);
    expect(await page.locator('#when .days:visible').count()).toBe(1);
  }, 120_000);

  it('takes its settings from the address, in another browser too', async () => {
    const page = await open(block);
    await sets(page, 'batch', '7');
    await sets(page, 'stock:gelatin-powder', '900 g');
    const address = page.url();
    const [texts, letters] = [await textsByKey(page), await lettersOf(page)];
    await context.close();
    context = await browser().newContext({ viewport: { width: 390, height: 800 } });
    const other = await another(`${block}?${address.split('?')[1]}`);
    await saysAnother(other, '');
    expect(await textsByKey(other)).toEqual(texts);
    expect(await lettersOf(other)).toBe(letters);
    expect(await field(other, 'batch').inputValue()).toBe('7');
    expect(await field(other, 'stock:gelatin-powder').inputValue()).toBe('900 g');
  }, 120_000);

  it('keeps them for the other level of the guide, and forgets them when it is set back', async () => {
    const page = await open(block, 'onServer');
    const published = await lettersOf(page);
    await sets(page, 'batch', '6');
    await sets(page, 'batch:deep', '2');
    const other = await another(deep, 'onServer');
    await saysAnother(other, '');
    expect(await field(other, 'batch').inputValue()).toBe('2');
    expect(await field(other, 'batch:shallow').inputValue()).toBe('6');
    const before = await says(page);
    await page.getByRole('button', { name: plannerWords.reset }).click();
    expect(await saysAnother(page, before)).toMatch(/^As published: 4.models/);
    expect(await lettersOf(page)).toBe(published);
    expect(page.url()).not.toContain('?');
    const again = await another(deep, 'onServer');
    expect(await field(again, 'batch').inputValue()).toBe('4');
    expect(again.url()).not.toContain('?');
  }, 180_000);

  it('does no harm where a browser keeps nothing', async () => {
    context = await browser().newContext();
    await context.addInitScript(() => {
      Object.defineProperty(globalThis, 'localStorage', {
        get: () => {
          throw new Error('no storage here');
        },
      });
    });
    const page = await another(block);
    expect(await sets(page, 'batch', '5')).toMatch(/^5.models/);
  }, 120_000);

  it('adds up: what the steps take of a material is what the table has of it', async () => {
    const answer = planOf(site.data('needle-block', 'shallow'), 'batch=7');
    if ('refused' in answer) throw new Error(answer.refused.join());
    const page = await open(`${block}?batch=7`);
    await saysAnother(page, '');
    const grams = (text: string) =>
      Number(/^([\d.,]+).(kg|g)/.exec(text)?.[1]) * (text.includes('kg') ? 1000 : 1);
    const rows = await page
      .locator('.amounts tbody tr')
      .evaluateAll((all) =>
        all.map(
          (row) =>
            [
              row.querySelector('th > :first-child')!.textContent!,
              row.querySelector('.total')!.textContent!,
            ] as const,
        ),
      );
    for (const [name, total] of rows.filter(([, amount]) => /\d.(kg|g)$/.test(amount))) {
      const taken = answer.plan.lines[0]!.steps.flatMap(({ takes }) => takes)
        .filter((take) => take.name.text === name)
        .map((take) => grams(take.total.text));
      if (taken.length > 0)
        expect(taken.reduce((sum, amount) => sum + amount, 0)).toBeCloseTo(grams(total), 6);
    }
    expect(rows.length).toBe(answer.plan.lines[0]!.materials.length);
  }, 120_000);

  it('has controls that a gloved finger hits, each with a name of its own', async () => {
    const page = await open(block);
    await page.locator('.planner summary').click();
    const controls = await page.locator('.planner :is(button, input, select):visible').evaluateAll((all) =>
      all.map((control) => {
        const { width, height } = control.getBoundingClientRect();
        const labels = [...((control as HTMLInputElement).labels ?? [])];
        const seen = labels.map((label) => label.textContent).join(' ') || control.textContent;
        return { name: control.getAttribute('aria-label') ?? seen ?? '', width, height };
      }),
    );
    expect(controls.length).toBeGreaterThan(30);
    expect(controls.filter(({ width, height }) => width < 44 || height < 44)).toEqual([]);
    const steppers = controls.filter(({ name }) => /^(Fewer|More): /.test(name));
    expect(steppers.map(({ width, height }) => Math.min(width, height) >= 48)).toEqual([
      true,
      true,
      true,
      true,
    ]);
    expect(controls.filter(({ name }) => name.trim() === '')).toEqual([]);
    expect(new Set(controls.map(({ name }) => name.trim())).size).toBe(controls.length);
  }, 60_000);

  it('is complete without scripts, and has no panel there', async () => {
    context = await browser().newContext({ javaScriptEnabled: false });
    const page = await another(block);
    expect(await page.locator('.planner').isVisible()).toBe(false);
    const answer = planOf(site.data('needle-block', 'shallow'), '');
    if ('refused' in answer) throw new Error(answer.refused.join());
    for (const summary of await page.locator('main summary').all()) await summary.click();
    const letters = plain(await page.locator('body').innerText());
    const { lines, shopping, costs, schedule } = answer.plan;
    const missing = leavesOf({ materials: lines[0]!.materials, shopping, costs, days: schedule.days })
      .filter(({ key }) => !/fromStock|goods$/.test(key))
      .map(({ text }) => plain(text))
      .filter((text) => !letters.includes(text));
    expect(missing).toEqual([]);
  }, 60_000);

  it('says that it is at work on 9,999 models, and lets a newer setting overtake them', async () => {
    const page = await open(block);
    await sets(page, 'batch', '2');
    await page.evaluate(() => {
      const shownOnce: string[] = [];
      Object.assign(globalThis, { shownOnce });
      const working = document.querySelector('.planner-working')!;
      new MutationObserver(() => {
        if (!working.hasAttribute('hidden')) shownOnce.push(working.textContent!);
      }).observe(working, { attributes: true });
    });
    const said = (): Promise<string[]> =>
      page.evaluate(() => (globalThis as unknown as { shownOnce: string[] }).shownOnce);
    expect(await sets(page, 'batch', '9999')).toMatch(/^9999.models/);
    expect(await said()).toContain(plannerWords.working);
    // its curve is still being worked out
    const before = await says(page);
    await field(page, 'batch').fill('3');
    expect(await saysAnother(page, before)).toMatch(/^3.models/);
    expect(await page.locator('.sizes tbody > tr').count()).toBeGreaterThan(0);
  }, 180_000);

  it('is not held up by the work: keys that are pressed meanwhile are there at once', async () => {
    const page = await open(block);
    await sets(page, 'batch', '5');
    await field(page, 'batch').fill('24');
    await page.waitForTimeout(260);
    // The longest that anything waited for its turn while 24 models were worked out.
    const longest = await page.evaluate(
      () =>
        new Promise<number>((done) => {
          let last = performance.now();
          let most = 0;
          const look = (): void => {
            const now = performance.now();
            most = Math.max(most, now - last);
            last = now;
            const said = document.querySelector('.planner [role=status]')!.textContent!;
            if (said.startsWith('24')) done(most);
            else setTimeout(look);
          };
          look();
        }),
    );
    console.info(`24 models: the page waited at most ${longest.toFixed(0)} ms for its turn`);
    expect(longest).toBeGreaterThan(0);
    const before = await says(page);
    await field(page, 'batch').fill('23');
    await page.waitForTimeout(300);
    await field(page, 'batch').press('End');
    await field(page, 'batch').press('Backspace');
    expect(await field(page, 'batch').inputValue()).toBe('2');
    await page.waitForFunction(
      () => /^2.models/.test(document.querySelector('.planner [role=status]')!.textContent!),
      undefined,
      { timeout: 90_000 },
    );
    expect(await says(page)).not.toBe(before);
  }, 180_000);
});

const plain = (text: string): string => text.replace(/\s+/g, ' ').toLowerCase();

/** Every place shows what the plan says at its key, every list has its rows, and what is said of the main lists is there. */
function expectPage(texts: Readonly<Record<string, string>>, answer: Answer): void {
  if ('refused' in answer) throw new Error(answer.refused.join());
  const plan = { ...answer.plan, curve: answer.curve };
  const shown = Object.entries(texts).filter(([key]) => isThere(plan, key));
  expect(shown.length).toBeGreaterThan(200);
  expect(Object.fromEntries(shown)).toEqual(
    Object.fromEntries(shown.map(([key]) => [key, textOf(valueAt(plan, key))])),
  );
  const { lines, shopping, costs, schedule, warnings, facts, tools, cutting } = answer.plan;
  const { materials, count, models, steps } = lines[0]!;
  const listed = leavesOf([
    [
      materials,
      count,
      models,
      steps.flatMap(({ takes, times, begins, runs }) => [takes, times, begins, runs]),
    ],
    [shopping, costs.map(({ each }) => each), warnings, tools, answer.curve?.rows ?? []],
    [schedule.days, schedule.decides, schedule.loads, schedule.models, schedule.ready, schedule.says],
    cutting.flatMap(({ name, says, layouts }) => [name, says, layouts.map(({ pieces }) => pieces)]),
  ]).filter(({ key }) => !notOnPage.test(key));
  expect(listed.filter(({ key, text }) => texts[key] !== text)).toEqual([]);
  for (const [i, { value }] of facts.entries()) expect(texts[`facts[${i}].value`]).toBe(value.text);
}

/** Texts of the plan that other sheets show. */
const notOnPage = /fromStock|goods|takes\[\d+\]\.total|rows\[\d+\]\.of$/;
