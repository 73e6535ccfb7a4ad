import type { InPieces } from '../../core/in-pieces.ts';
import { sessionFigures } from '../../showing/figures/session-figures.ts';
import { figures } from '../../showing/figures/figures.ts';
import type { SessionData } from '../../core/plan/own/session-data.ts';
import { sessionFieldWords as words } from '../../words/session-fields.ts';
import { plannerWords } from '../../words/planner.ts';
import { sheetFollowWords } from '../../words/sheet-follow.ts';
import { loadScript } from '../load-script.ts';
import { writeAddress } from '../planner/address.ts';
import { markWrong, queryOf } from '../planner/fields.ts';
import { type NewestOnly, newestOnly } from '../work/newest-only.ts';
import { markChanged, markOld, say, step, wrongText } from '../planner/panel.ts';
import { refreshing } from '../refresh/refresh.ts';
import { type Slicing, runInSlices } from '../work/slices.ts';
import { pageSlices, toItsEnd } from '../work/turns.ts';
import { answeringSession, type OwnSession, type SessionAnswer } from './answer.ts';
import { readFields } from './read-fields.ts';
import { once } from '../work/once.ts';

const drawings = { ...figures, ...sessionFigures };

/** How long nobody types before the page is worked out, in milliseconds. */
const pause = 250;

/** The fields of one page, and what is under way. */
interface Working {
  readonly page: Document;
  readonly form: HTMLFormElement;
  readonly load: () => Promise<SessionData | undefined>;
  readonly slices: Slicing;
  readonly newest: NewestOnly;
  /** Done when the page shows the last answer. */
  shown: Promise<void>;
}

/** Brings the fields of a session's page to life: groups, timetable, models, what to buy and when follow each change. */
export function startSession(page: Document): void {
  const place = page.querySelector<HTMLElement>('[data-session]');
  const form = place?.querySelector('form');
  if (!place || !form) return;
  const working: Working = {
    page,
    form,
    load: once(() => load(page, place.dataset['file'] ?? '')),
    slices: pageSlices(),
    newest: newestOnly(),
    shown: Promise.resolve(),
  };
  place.classList.add('is-awake');
  form.addEventListener('input', () => workOutAfter(pause, working));
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    workOutAfter(0, working);
  });
  form.addEventListener('click', ({ target }) => press((target as Element).closest('button'), working));
  if (setFields(form, new URLSearchParams(page.location.search))) void workOut(working);
}

/**
 * A sheet of the session follows what the page that led to it was set to, as its address says. What it could not follow
 * it says, on paper too.
 */
export async function followAddress(page: Document): Promise<void> {
  const sheet = page.querySelector<HTMLElement>('[data-session-sheet]');
  if (!sheet || page.location.search === '') return;
  const { own, wrong } = readFields(new URLSearchParams(page.location.search));
  const data = wrong.length > 0 ? undefined : await load(page, sheet.dataset['sessionSheet']!);
  const isDone = data !== undefined && (await hasFollowed(page, data, own));
  if (!isDone) sayOn(sheet, wrong);
}

async function hasFollowed(page: Document, data: SessionData, own: OwnSession): Promise<boolean> {
  try {
    await toItsEnd(followingSession(page, data, own), pageSlices());
    return true;
  } catch (fault) {
    reportError(fault);
    return false;
  }
}

function* followingSession(page: Document, data: SessionData, own: OwnSession): InPieces<void> {
  const { session } = yield* answeringSession(data, own);
  yield* refreshing(page, { session }, drawings);
}

function sayOn(sheet: HTMLElement, wrong: readonly string[]): void {
  const why =
    wrong.length > 0 ? plannerWords.unread.replace('{list}', wrong.join(', ')) : plannerWords.failed;
  const place = sheet.querySelector('.sheet-says')!;
  place.textContent = `${why} ${sheetFollowWords.asPublished}`;
  place.toggleAttribute('hidden', false);
  sheet.toggleAttribute('data-old', true);
}

async function load(page: Document, file: string): Promise<SessionData | undefined> {
  try {
    await loadScript(page, file);
  } catch {
    return undefined;
  }
  return (globalThis as typeof globalThis & { sessionData: SessionData }).sessionData;
}

/** One more or one fewer, and never fewer than none; or all as published. */
function press(button: HTMLButtonElement | null, working: Working): void {
  const { form } = working;
  if (button?.dataset['step'] !== undefined) step(form, button, 0);
  else if (button?.dataset['reset'] !== undefined) form.reset();
  else return;
  workOutAfter(button.dataset['reset'] === undefined ? pause : 0, working);
}

/** @returns Whether the query says anything. */
function setFields(form: HTMLFormElement, query: URLSearchParams): boolean {
  const fields = [...form.querySelectorAll('input')].filter(({ name }) => query.has(name));
  for (const field of fields) field.value = query.get(field.name)!;
  return fields.length > 0;
}

function workOutAfter(milliseconds: number, working: Working): void {
  const { newest, load } = working;
  newest.begin();
  void load();
  const timer = setTimeout(() => void workOut(working), milliseconds);
  newest.stopBy(() => clearTimeout(timer));
}

async function workOut(working: Working): Promise<void> {
  const { form, newest, slices, load } = working;
  const isNewest = newest.begin();
  const data = await load();
  if (!isNewest()) return;
  if (!data) return tell(plannerWords.notLoaded, true, working);
  const query = queryOf(form);
  const { own, wrong } = readFields(query);
  markWrong(form, wrong);
  if (wrong.length > 0) return tell(wrongText(working, wrong), true, working);
  keep(query.toString(), working);
  const done = (answer: SessionAnswer): void => answered(answer, isNewest, working);
  const fails = (fault: unknown): void => failed(fault, working);
  newest.stopBy(runInSlices(answeringSession(data, own), slices, done, fails));
}

/** The settings live in the address, and in the ways to the sheets. */
function keep(query: string, working: Working): void {
  const { page } = working;
  writeAddress(page, query);
  markChanged(working, query !== '');
  for (const link of page.querySelectorAll<HTMLAnchorElement>('a[data-carries]')) {
    const [path = ''] = link.getAttribute('href')!.split('?');
    link.setAttribute('href', query === '' ? path : `${path}?${query}`);
  }
}

/** Parts of the page that are there only where models are made. */
const ofPlan = ['to-buy', 'when'] as const;

/** A page that has begun to follow an answer follows it to its end: the next one waits for it. */
function answered(answer: SessionAnswer, isNewest: () => boolean, working: Working): void {
  const { page, slices } = working;
  const { session, plan, lives, refused } = answer;
  const follow = async (): Promise<void> => {
    await toItsEnd(refreshing(page, { ...plan, session, lives }, drawings), slices);
    for (const id of ofPlan)
      page.getElementById(id)?.toggleAttribute('hidden', !plan && refused.length === 0);
    if (isNewest()) tell([sentenceOf(answer), ...refused].join(' '), refused.length > 0, working);
  };
  working.shown = working.shown.then(follow).catch((fault: unknown) => failed(fault, working));
}

/** "20 trainees in 4 groups: 5, 5, 5, 5; 3 there, 4 needed; 21 models to make." */
function sentenceOf({ session }: SessionAnswer): string {
  const texts = {
    people: session.people.map(({ says }) => says.text).join('; '),
    instructors: session.instructors.says.text,
    models: session.models.map(({ name, count }) => `${name.text}: ${count.text}`).join('; '),
  };
  const sentence = texts.models === '' ? words.answerNoModels : words.answer;
  return sentence.replace(/\{(\w+)\}/g, (_, name: keyof typeof texts) => texts[name]);
}

/** One sentence at the end of each change, and whether the numbers are those from before it. */
function tell(sentence: string, isOld: boolean, working: Working): void {
  markOld(working, isOld);
  say(working, sentence);
}

function failed(fault: unknown, working: Working): void {
  tell([plannerWords.failed, plannerWords.old].join(' '), true, working);
  reportError(fault);
}
