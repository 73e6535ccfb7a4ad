import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { inChromium } from './chromium.ts';
import { type SmallSite, smallSite } from './small-site.ts';

/** Three steps: the first waits and has a limit, the second is done for each model, the third is free. */
function guide(title: string, version: string): string {
  return `---
title: ${title}
version: ${version}
status: draft
states:
  for: 2 models
materials: []
levels:
  - id: soft
    name: Soft
    usual: yes
  - id: firm
    name: Firm
steps:
  - id: soak-it
    for: the batch
    hands-on: 5 min
    wait: 15 min
    use-within: 45 min
  - id: tie-it
    for: each model
    hands-on: 5 min
    wait: 2 h
  - id: trim-it
    hands-on: 5 min
---

## Soak it

Soak it.

## Tie it

Tie it.

## Trim it

Trim it.
`;
}

const strap = 'guides/strap/index.html';
const nine = new Date('2026-11-25T09:00:50').getTime();

await inChromium('steps ticked off at the bench', (browser) => {
  let site: SmallSite;
  let context: BrowserContext;
  const folder = mkdtempSync(join(tmpdir(), 'benchwright-bench-'));
  beforeAll(async () => {
    site = await smallSite({ strap: guide('Strap', '1.0.0'), cord: guide('Cord', '1.0.0') }, folder);
  }, 120_000);
  afterEach(() => context?.close());
  afterAll(() => site?.remove());

  /** A page of the site in a browser of its own, where it is 9 o'clock and 50 seconds. */
  async function open(path: string, before: (page: Page) => Promise<void> = async () => {}): Promise<Page> {
    context = await browser().newContext({ viewport: { width: 390, height: 800 } });
    const page = await context.newPage();
    await page.clock.install({ time: nine });
    await before(page);
    await page.goto(site.address(path));
    return page;
  }
  async function another(path: string): Promise<Page> {
    const page = await context.newPage();
    await page.clock.install({ time: nine });
    await page.goto(site.address(path));
    return page;
  }
  const box = (page: Page, step: string) => page.locator(`[data-tick=${step}] input`);
  const says = async (page: Page, step: string): Promise<readonly string[]> => {
    const lines = await page.locator(`[data-tick=${step}] .tick-says p:visible`).allInnerTexts();
    return lines.map((line) => line.replace(/\s+/g, ' '));
  };
  const progress = (page: Page) => page.locator('.bench [role=status]').textContent();
  const ticked = (page: Page) =>
    page
      .locator('[data-tick] input')
      .evaluateAll((all) => all.map((one) => (one as HTMLInputElement).checked));

  it('count up, and are still ticked when the page is opened again', async () => {
    const page = await open(strap);
    expect(await progress(page)).toBe('0 of 3 steps done');
    await box(page, 'soak-it').click();
    expect(await progress(page)).toBe('1 of 3 steps done');
    await page.reload();
    expect(await ticked(page)).toEqual([true, false, false]);
    await box(page, 'soak-it').click();
    await page.reload();
    expect(await ticked(page)).toEqual([false, false, false]);
  });

  it('say when the next may begin and end, rounded so that nothing is too early or too late', async () => {
    const page = await open(strap);
    expect(await says(page, 'soak-it')).toEqual([]);
    await box(page, 'soak-it').click();
    expect(await says(page, 'soak-it')).toEqual([
      'Ticked 09:00, by the clock of this device.',
      'Next step not before 09:16.',
      'Hands off the next step by 09:45.',
      expect.stringContaining('if your hands came off earlier, a limit ends earlier too'),
    ]);
    await box(page, 'trim-it').click();
    expect(await says(page, 'trim-it')).toEqual(['Ticked 09:00, by the clock of this device.']);
  });

  it('give no time for a step of several runs, but send to the sheet', async () => {
    const page = await open(strap);
    expect(await page.locator('#step-tie-it .runs').textContent()).not.toBe('');
    await box(page, 'tie-it').click();
    expect(await says(page, 'tie-it')).toEqual([
      'Ticked 09:00, by the clock of this device.',
      expect.stringContaining('several runs'),
    ]);
  });

  it('name the day of what was ticked yesterday', async () => {
    const page = await open(strap);
    await box(page, 'soak-it').click();
    await page.clock.setFixedTime(nine + 24 * 3_600_000);
    await page.reload();
    expect((await says(page, 'soak-it'))[0]).toBe(
      'Ticked Wed 25 November, 09:00, by the clock of this device.',
    );
  });

  it('stay with their guide, level and version', async () => {
    const page = await open(strap);
    await box(page, 'soak-it').click();
    const elsewhere = ['guides/cord/index.html', 'guides/strap/firm/index.html'];
    for (const path of elsewhere) expect(await ticked(await another(path))).toEqual([false, false, false]);
    expect(await ticked(await another(strap))).toEqual([true, false, false]);
    await smallSite({ strap: guide('Strap', '1.1.0') }, folder);
    expect(await ticked(await another(strap))).toEqual([false, false, false]);
    await smallSite({ strap: guide('Strap', '1.0.0') }, folder);
    expect(await ticked(await another(strap))).toEqual([true, false, false]);
  }, 60_000);

  it('stay with their batch, and come back with it', async () => {
    const page = await open(strap);
    await box(page, 'soak-it').click();
    const batch = page.locator('[data-bench-batch]');
    const usual = await batch.textContent();
    await batch.evaluate((element) => (element.textContent = '7 to make, no spares'));
    await page.waitForFunction(() =>
      document.querySelector('.bench [role=status]')?.textContent?.startsWith('0'),
    );
    expect(await ticked(page)).toEqual([false, false, false]);
    await batch.evaluate((element, text) => (element.textContent = text), usual);
    await page.waitForFunction(() =>
      document.querySelector('.bench [role=status]')?.textContent?.startsWith('1'),
    );
  });

  it('are the same on the page and on its bench sheet, at once', async () => {
    const page = await open(strap);
    const sheet = await another('guides/strap/bench-sheet/index.html');
    await box(page, 'soak-it').click();
    await sheet.waitForFunction(() => document.querySelector<HTMLInputElement>('[data-tick] input')!.checked);
    expect(await progress(sheet)).toBe('1 of 3 steps done');
    expect((await says(sheet, 'soak-it'))[1]).toBe('Next step not before 09:16.');
  });

  it('are cleared all at once, and come back if that was a slip', async () => {
    const page = await open(strap);
    const clear = page.locator('[data-clear]');
    expect(await clear.isEnabled()).toBe(false);
    await box(page, 'soak-it').click();
    await box(page, 'trim-it').click();
    await clear.click();
    expect(await ticked(page)).toEqual([false, false, false]);
    expect(await clear.textContent()).toBe('Bring the ticks back');
    await clear.click();
    expect(await ticked(page)).toEqual([true, false, true]);
    await clear.click();
    await page.reload();
    expect(await ticked(page)).toEqual([false, false, false]);
    expect(await clear.isEnabled()).toBe(false);
  });

  it('work where a browser keeps nothing, or something foreign', async () => {
    const faults: string[] = [];
    const watch = (page: Page) => {
      page.on('pageerror', (error) => faults.push(error.message));
      page.on('console', (message) => faults.push(message.text()));
    };
    const page = await open(strap, async (fresh) => {
      watch(fresh);
      await fresh.addInitScript(() => {
        Object.defineProperty(window, 'localStorage', {
          get: () => {
            throw new DOMException('denied', 'SecurityError');
          },
        });
      });
    });
    await box(page, 'soak-it').click();
    expect(await progress(page)).toBe('1 of 3 steps done');
    await context.close();
    for (const kept of ['{', 'null', '[1]', '{"soak-it":"x"}', '{"soak-it":1e99}']) {
      const other = await open(strap, async (fresh) => {
        watch(fresh);
        await fresh.addInitScript((text) => {
          Storage.prototype.getItem = () => text;
        }, kept);
      });
      expect(await ticked(other)).toEqual([false, false, false]);
      await context.close();
    }
    expect(faults).toEqual([]);
  }, 60_000);

  it('are boxes of 48 px and more with a name of their own, for the keyboard too', async () => {
    for (const path of [strap, 'guides/strap/bench-sheet/index.html']) {
      const page = await open(path);
      const boxes = await page.locator('[data-tick] input, .bench button, .switch input').all();
      expect(boxes.length).toBeGreaterThanOrEqual(4);
      for (const one of boxes) {
        const size = (await one.boundingBox()) ?? { width: 48, height: 48 };
        expect(Math.min(size.width, size.height)).toBeGreaterThanOrEqual(48);
      }
      for (const name of ['Step 1 done', 'Step 2 done', 'Step 3 done'])
        expect(await page.getByRole('checkbox', { name, exact: true }).count()).toBe(1);
      await box(page, 'tie-it').focus();
      await page.keyboard.press('Space');
      expect(await ticked(page)).toEqual([false, true, false]);
      await context.close();
    }
  });

  it('are neither there without scripts, nor on paper', async () => {
    context = await browser().newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    for (const path of [strap, 'guides/strap/bench-sheet/index.html']) {
      await page.goto(site.address(path));
      expect(await page.locator('.bench, .tick, .print-button').count()).toBeGreaterThan(2);
      expect(await page.locator('.bench:visible, .tick:visible, .print-button:visible').count()).toBe(0);
    }
    await context.close();
    const printed = await open(strap);
    expect(await printed.locator('.tick:visible').count()).toBe(3);
    await printed.emulateMedia({ media: 'print' });
    expect(await printed.locator('.bench:visible, .tick:visible').count()).toBe(0);
  });
});

await inChromium('a screen that is kept on', (browser) => {
  let site: SmallSite;
  beforeAll(async () => {
    site = await smallSite({ strap: guide('Strap', '1.0.0') });
  }, 120_000);
  afterAll(() => site?.remove());

  /** Stands in for the device: writes down what it is asked. */
  function device(grants: boolean): void {
    const asked: string[] = [];
    let seen = 'visible';
    const request = (kind: string) => {
      asked.push(`request ${kind}`);
      if (!grants) return Promise.reject(new DOMException('low battery', 'NotAllowedError'));
      return Promise.resolve({
        release: () => {
          asked.push('release');
          return Promise.resolve();
        },
      });
    };
    Object.defineProperty(navigator, 'wakeLock', { value: { request } });
    Object.defineProperty(document, 'visibilityState', { get: () => seen });
    Object.assign(window, {
      asked,
      see: (state: string) => {
        seen = state;
        document.dispatchEvent(new Event('visibilitychange'));
      },
    });
  }
  async function on<T>(grants: boolean | undefined, work: (page: Page) => Promise<T>): Promise<T> {
    const context = await browser().newContext();
    try {
      const page = await context.newPage();
      if (grants === undefined)
        await page.addInitScript(() => Object.defineProperty(navigator, 'wakeLock', { value: undefined }));
      else await page.addInitScript(device, grants);
      await page.goto(site.address(strap));
      return await work(page);
    } finally {
      await context.close();
    }
  }
  const asked = (page: Page) => page.evaluate(() => (window as unknown as { asked: string[] }).asked);
  const see = (page: Page, state: string) =>
    page.evaluate((seen) => (window as unknown as { see: (state: string) => void }).see(seen), state);

  it('is asked for with the switch, again when the page comes back, and let go with the switch', async () => {
    await on(true, async (page) => {
      const button = page.getByRole('switch', { name: 'Keep the screen on' });
      expect(await asked(page)).toEqual([]);
      await button.click();
      expect(await asked(page)).toEqual(['request screen']);
      await see(page, 'hidden');
      await see(page, 'visible');
      expect(await asked(page)).toEqual(['request screen', 'request screen']);
      await button.click();
      expect(await asked(page)).toEqual(['request screen', 'request screen', 'release']);
      await see(page, 'hidden');
      await see(page, 'visible');
      expect(await asked(page)).toHaveLength(3);
    });
  });

  it('switches itself off where the device refuses, without a fault', async () => {
    await on(false, async (page) => {
      const faults: string[] = [];
      page.on('pageerror', (error) => faults.push(error.message));
      const button = page.getByRole('switch', { name: 'Keep the screen on' });
      await button.click();
      await page.waitForFunction(
        () => !document.querySelector<HTMLInputElement>('[data-awake] input')!.checked,
      );
      expect(faults).toEqual([]);
    });
  });

  it('has no switch where no device can', async () => {
    await on(undefined, async (page) => {
      expect(await page.locator('[data-clear]').isVisible()).toBe(true);
      expect(await page.locator('[data-awake]').isVisible()).toBe(false);
    });
  });

  it('a button on the sheet prints it', async () => {
    await on(true, async (page) => {
      await page.addInitScript(() => {
        window.print = () => Object.assign(window, { printed: true });
      });
      await page.goto(site.address('guides/strap/bench-sheet/index.html'));
      await page.getByRole('button', { name: 'Print', exact: true }).click();
      expect(await page.evaluate(() => (window as unknown as { printed?: boolean }).printed)).toBe(true);
    });
  });
});
