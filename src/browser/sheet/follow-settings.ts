import { modelNumbers } from '../../showing/plan/show-model-numbers.ts';
import { showRecord } from '../../showing/sheets/show-record.ts';
import { showShoppingList } from '../../showing/shopping/show-shopping-list.ts';
import { plannerWords } from '../../words/planner.ts';
import { sheetFollowWords as words } from '../../words/sheet-follow.ts';
import type { FirstAnswer } from '../planner/answer.ts';
import { type Loaded, loadEngine } from '../planner/load-engine.ts';
import { refreshing } from '../refresh/refresh.ts';
import { isSetting } from '../planner/setting-names.ts';
import { pageSlices, toItsEnd } from '../work/turns.ts';

/**
 * A sheet follows the settings that its address has, as the guide's page does. Until it does, and where it cannot, it
 * says on paper too that its numbers are those that were published.
 */
export async function followSettings(page: Document): Promise<void> {
  const sheet = page.querySelector<HTMLElement>('[data-plan-sheet]');
  const asked = [...new URLSearchParams(page.location.search)].filter(([name]) => isSetting(name));
  if (!sheet || asked.length === 0) return;
  carryBack(page);
  if (!isFollower(sheet)) return say(sheet, [words.never, words.asPublished].join(' '), true);
  say(sheet, words.working, true);
  const { planSheet: file = '', level = '' } = sheet.dataset;
  const said = await loadEngine(page, file, level)
    .then((loaded) => follow(page, sheet, asked, loaded))
    .catch((fault: unknown) => {
      reportError(fault);
      return plannerWords.failed;
    });
  if (said !== undefined) say(sheet, [said, words.asPublished].join(' '), true);
}

/** @returns Why it does not follow them, if it does not. */
async function follow(
  page: Document,
  sheet: HTMLElement,
  asked: readonly (readonly [name: string, text: string])[],
  { engine, data }: Loaded,
): Promise<string | undefined> {
  const { settings, unread } = engine.settingsFrom(page.location.search, data);
  const taken = asked.filter(([name]) => !unread.some(({ key }) => key === name));
  const leftOut = unread.length > 0 ? [unreadText(unread)] : [];
  if (taken.length === 0) return leftOut.join('');
  const slices = pageSlices();
  const answer = await toItsEnd(engine.answeringFirst(data, settings), slices);
  if ('refused' in answer) return answer.refused.join(' ');
  await toItsEnd(refreshing(page, partsOf(answer), engine.figures), slices);
  setMargin(page, sheet, answer.plan.lines[0]!.models.text);
  const list = taken.map(([name, text]) => `${name} ${text}`).join('; ');
  say(sheet, [words.set.replace('{settings}', list), ...leftOut].join(' '), false);
  return undefined;
}

function unreadText(unread: readonly { readonly key: string; readonly text: string }[]): string {
  return plannerWords.unread.replace('{list}', unread.map(({ key, text }) => `${key}=${text}`).join(', '));
}

/** Labels and patterns are set for their own paper when they are published. */
function isFollower({ dataset }: HTMLElement): boolean {
  return dataset['margin'] !== undefined;
}

/** What sheets show besides the plan: what to order, what is filed, a box a model. */
function partsOf({ plan, computed, workspace }: FirstAnswer): object {
  return {
    ...plan,
    list: showShoppingList('list', computed, workspace),
    record: showRecord('record', computed, 0, workspace),
    models: modelNumbers('models', computed.lines[0]!.made),
  };
}

/** On paper too, since what is printed goes by itself. */
function say(sheet: HTMLElement, sentence: string, isOld: boolean): void {
  const place = sheet.querySelector('.sheet-says')!;
  place.textContent = sentence;
  place.toggleAttribute('hidden', false);
  sheet.toggleAttribute('data-old', isOld);
}

/** The way back to the guide keeps the settings. */
function carryBack(page: Document): void {
  const back = page.querySelector('nav a[href]');
  back?.setAttribute('href', `${back.getAttribute('href')}${page.location.search}`);
}

/** The head of printed pages names the batch. Only a style can say it there, and a page may hold none in its markup. */
function setMargin(page: Document, { dataset: { margin = '' } }: HTMLElement, batch: string): void {
  const style = new CSSStyleSheet();
  style.replaceSync(`@page { @top-left { content: ${JSON.stringify(margin.replace('{batch}', batch))}; } }`);
  page.adoptedStyleSheets = [...page.adoptedStyleSheets, style];
}
