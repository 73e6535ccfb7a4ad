import type { InPieces } from '../../core/in-pieces.ts';
import type { OwnSettings } from '../../core/plan/own/own-settings.ts';
import type { ShownCurve } from '../../showing/shown/shown-what-if.ts';
import { plannerWords as words } from '../../words/planner.ts';
import { carryAlong, carryToSheets, copyAddress, writeAddress } from './address.ts';
import type { FirstAnswer, Refused } from './answer.ts';
import { fieldNames, markWrong, setFields } from './fields.ts';
import { keepSettings, keptSettings, storageKey } from './kept-settings.ts';
import { type Loaded, loadEngine } from './load-engine.ts';
import { type NewestOnly, newestOnly } from '../work/newest-only.ts';
import {
  type Panel,
  answerText,
  markChanged,
  markOld,
  markOldSizes,
  markWorking,
  onChange,
  onFirstFocus,
  panelOf,
  say,
  wrongText,
} from './panel.ts';
import { readPanel } from './read-panel.ts';
import { refreshing } from '../refresh/refresh.ts';
import { isSetting } from './setting-names.ts';
import { type Slicing, runInSlices } from '../work/slices.ts';
import { pageSlices, toItsEnd } from '../work/turns.ts';
import { once } from '../work/once.ts';

/** How long nobody types before the page is worked out, in milliseconds. */
const pause = 250;

/** After so many more the page says that it is at work: what takes less would only flash. */
const patience = 200;

/** So many models are a while of work on any device: the page says so at once. */
const many = 1000;

/** After so many plans a browser has made its code fast. */
const rehearsals = 3;

/** The panel of one page, and what is under way. */
interface Planning {
  readonly page: Document;
  readonly panel: Panel;
  readonly key: string;
  readonly load: () => Promise<Loaded | undefined>;
  readonly slices: Slicing;
  readonly newest: NewestOnly;
  /** Settings of the address that have no field. */
  unfielded: URLSearchParams;
  /** Done when the page shows the last answer. */
  shown: Promise<void>;
  /** Goes off when it takes long. */
  slow?: ReturnType<typeof setTimeout>;
}

/**
 * Brings the panel of a guide's page to life. Each change is worked out after a pause, in slices; the newest wins; the
 * page follows, or keeps its last good numbers, marked as old.
 */
export function startPlanner(page: Document): void {
  const panel = panelOf(page);
  if (!panel) return;
  const planning: Planning = {
    page,
    panel,
    key: storageKey(page, panel.guide),
    load: once(() => loadEngine(page, panel.file, panel.level).catch(() => undefined)),
    slices: pageSlices(),
    newest: newestOnly(),
    unfielded: new URLSearchParams(),
    shown: Promise.resolve(),
  };
  onChange(panel, (isFinal) => workOutAfter(isFinal ? 0 : pause, planning));
  onPress(planning, '[data-reset]', () => set(new URLSearchParams(), planning));
  onPress(planning, '[data-copy]', () => void copyAddress(page).then((sentence) => say(panel, sentence)));
  const isUntouched = planning.newest.begin();
  onFirstFocus(panel, () => isUntouched() && void getReady(planning));
  const begin = keptSettings(page.location, planning.key, panel.level);
  if (begin.toString() !== '') set(begin, planning);
}

function onPress({ panel: { form } }: Planning, button: string, pressed: () => void): void {
  form.querySelector(button)!.addEventListener('click', pressed);
}

/** Sets the fields to what a query says, and works it out. */
function set(query: URLSearchParams, planning: Planning): void {
  const { form } = planning.panel;
  setFields(form, query);
  const fields = fieldNames(form);
  const others = [...query].filter(([name]) => isSetting(name) && !fields.includes(name));
  planning.unfielded = new URLSearchParams(others);
  void workOut(planning);
}

/**
 * Somebody has come to a field: what works a change out is loaded, and plans a few times what the page shows already.
 * Nobody sees these plans, but code that has run is several times as fast when the change comes.
 */
async function getReady({ panel, newest, slices, load }: Planning): Promise<void> {
  const isNewest = newest.begin();
  const loaded = await load();
  if (!loaded || !isNewest()) return;
  const { settings } = readPanel(panel.form, new URLSearchParams(), loaded);
  const nobodyAsked = (): void => undefined;
  newest.stopBy(runInSlices(rehearsing(loaded, settings), slices, nobodyAsked, nobodyAsked));
}

function* rehearsing({ engine, data }: Loaded, settings: OwnSettings): InPieces<void> {
  for (let times = 0; times < rehearsals; times++) yield* engine.answeringFirst(data, settings);
}

/** What was under way is no longer wanted; what works it out is loaded meanwhile. */
function workOutAfter(milliseconds: number, planning: Planning): void {
  const { newest, load } = planning;
  newest.begin();
  clearTimeout(planning.slow);
  markWorking(planning.panel, false);
  void load();
  const timer = setTimeout(() => void workOut(planning), milliseconds);
  newest.stopBy(() => clearTimeout(timer));
}

async function workOut(planning: Planning): Promise<void> {
  const { panel, newest, slices, load, unfielded } = planning;
  const isNewest = newest.begin();
  clearTimeout(planning.slow);
  planning.slow = setTimeout(() => markWorking(panel, true), patience);
  const loaded = await load();
  if (!isNewest()) return;
  if (!loaded) return keepOld(words.notLoaded, planning);
  const { settings, wrong, unread } = readPanel(panel.form, unfielded, loaded);
  markWrong(panel.form, wrong);
  if (wrong.length > 0) return keepOld(wrongText(panel, wrong), planning);
  if ((settings.batch ?? 0) >= many) markWorking(panel, true);
  const { engine, data } = loaded;
  const query = engine.addressOf(settings, data);
  keep(query, planning);
  const done = (answer: FirstAnswer | Refused): void =>
    answered(answer, { query, unread, loaded, isNewest }, planning);
  newest.stopBy(runInSlices(engine.answeringFirst(data, settings), slices, done, failing(planning)));
}

/** The settings live in the address, on this device for the other levels of the guide, and in the ways to them. */
function keep(query: string, { page, panel, key }: Planning): void {
  writeAddress(page, query);
  carryAlong(page, query, panel.level);
  carryToSheets(page, query);
  keepSettings(key, panel.level, query);
  markChanged(panel, query !== '');
}

/** What was asked, and what worked it out. */
interface Asked {
  readonly query: string;
  readonly unread: readonly string[];
  readonly loaded: Loaded;
  readonly isNewest: () => boolean;
}

/** The page follows the plan first; what other sizes of the batch cost is worked out when the plan can be read. */
function answered(answer: FirstAnswer | Refused, asked: Asked, planning: Planning): void {
  if ('refused' in answer) return keepOld([...answer.refused, words.old].join(' '), planning);
  const { query, unread, loaded, isNewest } = asked;
  const sentence = answerText(loaded.engine.answerSentence(answer.plan), query, unread);
  follow(answer.plan, loaded, planning, () => {
    markOldSizes(planning.panel, true);
    if (!isNewest()) return;
    tell(sentence, false, planning);
    const done = (curve: ShownCurve | undefined): void =>
      follow({ curve }, loaded, planning, () => markOldSizes(planning.panel, false));
    planning.newest.stopBy(runInSlices(answer.curve, planning.slices, done, failing(planning)));
  });
}

/** A page that has begun to follow an answer follows it to its end: the next one waits for it. */
function follow(given: object, { engine }: Loaded, planning: Planning, then: () => void): void {
  const { page, slices } = planning;
  const end = planning.shown.then(() => toItsEnd(refreshing(page, given, engine.figures), slices));
  planning.shown = end.then(then).catch(failing(planning));
}

function keepOld(sentence: string, planning: Planning): void {
  tell(sentence, true, planning);
}

/** One sentence at the end of each change, and whether the numbers are old. */
function tell(sentence: string, isOld: boolean, { panel, slow }: Planning): void {
  clearTimeout(slow);
  markWorking(panel, false);
  markOld(panel, isOld);
  say(panel, sentence);
}

/** Our own fault: the browser's console has it, and the page says that its numbers are old. */
function failing(planning: Planning): (fault: unknown) => void {
  return (fault) => {
    keepOld([words.failed, words.old].join(' '), planning);
    reportError(fault);
  };
}
