import type { Page } from 'playwright-core';

/** What the panel of a page says and holds, as a reader finds it. */
export const says = (page: Page): Promise<string> =>
  page.locator('.planner [role=status]').evaluate((status) => status.textContent ?? '');

/** Waits until the panel says something else than before. */
export async function saysAnother(page: Page, before: string): Promise<string> {
  await page.waitForFunction(
    (old) => {
      const now = document.querySelector('.planner [role=status]')?.textContent ?? '';
      return now !== '' && now !== old;
    },
    before,
    { timeout: 90_000 },
  );
  return says(page);
}

/** Sets a field by its name, and waits for what the panel says to it. */
export async function sets(page: Page, name: string, value: string): Promise<string> {
  const before = await says(page);
  await open(page);
  await page.locator(`.planner [name="${name}"]`).fill(value);
  return saysAnother(page, before);
}

async function open(page: Page): Promise<void> {
  await page.locator('.planner details').evaluate((details) => details.setAttribute('open', ''));
}

export const field = (page: Page, name: string) => page.locator(`.planner [name="${name}"]`);

/** Waits for what other sizes of the batch cost: it comes after the plan. */
async function settles(page: Page): Promise<void> {
  const isOld = '.other-sizes[data-old]';
  await page.waitForFunction((old) => !document.querySelector(old), isOld, { timeout: 90_000 });
}

/** Every text of the page that follows the plan, by its key. */
export async function textsByKey(page: Page): Promise<Readonly<Record<string, string>>> {
  await settles(page);
  return page.evaluate(() =>
    Object.fromEntries(
      [...document.querySelectorAll('[data-shows]')].map((place) => [
        place.getAttribute('data-shows')!,
        place.textContent ?? '',
      ]),
    ),
  );
}

/** The letters of the page outside the panel and the bench bar, in order. */
export async function lettersOf(page: Page): Promise<string> {
  await settles(page);
  return page.evaluate(() => {
    const seen = [...document.querySelectorAll('header.mat .figures, main > section')];
    return seen.map((part) => (part as HTMLElement).innerText).join('\n');
  });
}
