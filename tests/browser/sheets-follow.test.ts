import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { advised } from '../../src/core/plan/compare/advised.ts';
import { questionOf } from '../../src/core/plan/own/question-of.ts';
import { makePlan } from '../../src/core/plan/plan.ts';
import { settingsFrom } from '../../src/exports/plan-address.ts';
import { printFiles } from '../../src/publishing/print-files.ts';
import type { SheetId } from '../../src/publishing/sheets/sheet-pages.ts';
import { sheetFollowWords as words } from '../../src/words/sheet-follow.ts';
import { readDemo } from '../publishing/demo-site.ts';
import { inChromium } from './chromium.ts';
import { type PlannerSite, plannerSite } from './planner-site.ts';

await inChromium('sheets of a guide that was planned for a program of one’s own', (browser) => {
  let site: PlannerSite;
  let folder = '';
  beforeAll(async () => {
    site = await plannerSite(['needle-block', 'knot-board']);
    folder = mkdtempSync(join(tmpdir(), 'benchwright-follow-'));
  }, 120_000);
  afterAll(() => {
    site.remove();
    rmSync(folder, { recursive: true, force: true });
  });

  async function open(address: string): Promise<Page> {
    const context = await browser().newContext({ viewport: { width: 900, height: 900 } });
    const page = await context.newPage();
    await page.goto(address);
    return page;
  }

  /** What the command line prints for the same settings, as a page. */
  async function printed(
    guide: string,
    level: string | undefined,
    sheet: SheetId,
    query: string,
  ): Promise<string> {
    const data = site.data(guide, level);
    const question = questionOf(data, settingsFrom(query, data).settings);
    const made = makePlan(question.workspace, question.demand, question.settings);
    if ('refused' in made) throw new Error(JSON.stringify(made.refused));
    const read = { ...(await readDemo()), workspace: question.workspace };
    const plan = advised(question, made);
    const { files, sheets } = printFiles(read, [{ plan, query: '' }], 'A4', [sheet]);
    const file = join(folder, `${guide}-${sheet}.html`);
    writeFileSync(file, files.get(sheets[0]!.path)!);
    return pathToFileURL(file).href;
  }

  /** Without pauses between letters, which a style makes. */
  async function lettersOf(page: Page): Promise<string> {
    const texts = page.locator('.sheet').evaluate((main) => {
      for (const gone of main.querySelectorAll('.sheet-says, .code, .tick, template, [hidden]'))
        gone.remove();
      return main.textContent;
    });
    return (await texts).replace(/\s+/g, '');
  }

  const settings = 'batch=11&builders=3&units=both&stock:cling-film=1+m';
  it.each([
    ['needle-block', 'shallow', 'bench-sheet'],
    ['needle-block', 'shallow', 'shopping-list'],
    ['needle-block', 'shallow', 'cutting-plan'],
    ['needle-block', 'shallow', 'batch-record'],
    ['knot-board', undefined, 'bench-sheet'],
    ['knot-board', undefined, 'shopping-list'],
  ] as const)(
    '%s %s: the %s is to the letter what the command line prints',
    async (guide, level, sheet) => {
      const page = await open(`${site.onServer}/${guide}/${sheet}/index.html?${settings}`);
      await page.waitForSelector('.sheet:not([data-old]) > .sheet-says:not([hidden])', { timeout: 60_000 });
      expect(await page.locator('.sheet-says').innerText()).toContain('batch 11; builders 3; units both');
      const back = await page.locator('nav a').first().getAttribute('href');
      expect(back).toBe(`../index.html?${settings}`);
      const reference = await open(await printed(guide, level, sheet, settings));
      expect(await lettersOf(page)).toBe(await lettersOf(reference));
      await page.context().close();
      await reference.context().close();
    },
    120_000,
  );

  it('from a disk too; the head of each printed page names the batch', async () => {
    const page = await open(`${site.onDisk}/needle-block/batch-record/index.html?batch=3`);
    await page.waitForSelector('.sheet:not([data-old]) > .sheet-says:not([hidden])', { timeout: 60_000 });
    expect(await page.locator('table.made tbody tr').count()).toBe(3);
    const rules = await page.evaluate(() =>
      [...document.adoptedStyleSheets].map((one) => one.cssRules[0]!.cssText),
    );
    expect(rules.join()).toMatch(/@page.*3.models/s);
    await page.context().close();
  }, 60_000);

  it('is reached from the guide’s page with what is set there', async () => {
    const page = await open(`${site.onServer}/needle-block/index.html?batch=3`);
    await page.waitForFunction(
      () => document.querySelector('.planner [role=status]')?.textContent !== '',
      undefined,
      { timeout: 60_000 },
    );
    const ways = page.locator('a[data-to-sheet]');
    const all = await ways.evaluateAll((links) => links.map((link) => link.getAttribute('href')));
    expect(all).toContain('bench-sheet/index.html?batch=3');
    expect(all.filter((href) => !href?.endsWith('/index.html?batch=3'))).toEqual([]);
    await page.context().close();
  }, 90_000);

  it('says on paper too that a sheet is as published, where it does not follow', async () => {
    const page = await open(`${site.onServer}/needle-block/labels/index.html?batch=3`);
    await page.emulateMedia({ media: 'print' });
    const says = page.locator('.sheet-says');
    expect(await says.innerText()).toBe(`${words.never} ${words.asPublished}`);
    expect(await says.isVisible()).toBe(true);
    await page.goto(`${site.onServer}/knot-board/bench-sheet/index.html?batch=3&start=2026-11-20T09:00`);
    await page.waitForFunction(
      (gone) => document.querySelector('.sheet-says')?.textContent?.includes(gone),
      'has gone by',
      { timeout: 60_000 },
    );
    expect(await says.innerText()).toContain(words.asPublished);
    await page.context().close();
  }, 90_000);

  it('is as it was published, and says nothing, where nothing is set', async () => {
    const page = await open(`${site.onServer}/knot-board/bench-sheet/index.html`);
    expect(await page.locator('.sheet-says:visible').count()).toBe(0);
    await page.context().close();
  }, 60_000);
});
