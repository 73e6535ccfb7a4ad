import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { beforeAll, expect, it } from 'vitest';
import { showSession } from '../../src/showing/session/show-session.ts';
import { sessionQuestion } from '../../src/core/plan/cohort/session-question.ts';
import { demoSite, readDemo, today } from '../publishing/demo-site.ts';
import { inChromium } from './chromium.ts';
import { onceARun } from './once-a-run.ts';

const module = 'emergency-procedures-day';

await inChromium('the page of a session', (browser) => {
  let folder = '';
  beforeAll(async () => {
    folder = await onceARun('demo', () => demoSite());
  }, 240_000);
  const address = (path: string): string => `${pathToFileURL(folder).href}/staff/modules/${module}/${path}`;

  async function opened(path = 'session/index.html'): Promise<Page> {
    const page = await browser().newPage();
    page.on('pageerror', (fault) => expect.fail(fault.message));
    await page.goto(address(path));
    return page;
  }

  /** Fills a field and waits for the one sentence that tells of it. */
  async function set(page: Page, field: string, value: string): Promise<string> {
    const says = page.locator('.planner-says');
    const before = await says.textContent();
    await page.fill(field, value);
    await expect.poll(() => says.textContent(), { timeout: 30_000 }).not.toBe(before);
    return (await says.textContent())!;
  }

  const textsOf = (page: Page, selector: string): Promise<readonly string[]> =>
    page.locator(selector).allTextContents();

  it('has, for other people, the letters that the command line prints', async () => {
    const page = await opened();
    await set(page, '#set-people-trainees', '21');
    const { workspace } = await readDemo();
    const of = workspace!.modules[module]!;
    const people = { people: { trainees: 21 } };
    const { cohort } = sessionQuestion(of, workspace!, people, { today });
    const shown = showSession(of, cohort, workspace!);
    expect(await textsOf(page, '.rotation:not(.by-group) tbody td:not(.clock)')).toEqual(
      shown.circuits[0]!.rounds.flatMap(({ cells }) => cells.map(({ text }) => text)),
    );
    expect(await textsOf(page, '.needs .total')).toEqual(shown.models.map(({ count }) => count.text));
    expect(await textsOf(page, '.session-notes li')).toEqual(shown.notes.map(({ text }) => text));
    expect(shown.notes.length).toBeGreaterThan(0);
    await page.close();
  });

  it('has clock times and a plan that is ready once it is known when the session begins', async () => {
    const page = await opened();
    await set(page, '#set-ready-by', '2027-03-01T13:00');
    expect((await textsOf(page, '.agenda .clock'))[0]).toBe('13:00–13:05');
    expect(await page.locator('#to-buy .purchases tbody tr').count()).toBeGreaterThan(5);
    expect(await page.locator('#when .days').textContent()).toContain('February');
    await page.close();
  });

  it('keeps its numbers and says what is wrong where a field means nothing', async () => {
    const page = await opened();
    const before = await textsOf(page, '.needs .total');
    const sentence = await set(page, '#set-people-trainees', 'many');
    expect(sentence).toContain('Trainees: A whole number');
    expect(await page.getAttribute('#set-people-trainees', 'aria-invalid')).toBe('true');
    expect(await textsOf(page, '.needs .total')).toEqual(before);
    await page.close();
  });

  it('leads to sheets that follow it, and its address makes the same page again', async () => {
    const page = await opened();
    await set(page, '#set-people-trainees', '9');
    const query = new URL(page.url()).search;
    const grid = await textsOf(page, '.rotation tbody');
    await page.click('a[href^="../timetable/"]');
    await page.waitForURL(/timetable/);
    await expect.poll(() => textsOf(page, '.rotation tbody')).toEqual(grid);
    await page.goto(address(`session/index.html${query}`));
    await expect.poll(() => textsOf(page, '.rotation tbody')).toEqual(grid);
    expect(await page.inputValue('#set-people-trainees')).toBe('9');
    await page.close();
  });

  it('is whole without scripts', async () => {
    const context = await browser().newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(address('session/index.html'));
    expect(await page.locator('.rotation tbody tr').count()).toBeGreaterThan(4);
    expect(await page.locator('form').first().isVisible()).toBe(false);
    await context.close();
  });
});
