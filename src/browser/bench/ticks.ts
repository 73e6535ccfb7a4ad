import { benchWords } from '../../words/bench.ts';
import { keepTicks, keptTicks, tickKey, type Ticks } from './tick-store.ts';
import { progressOf, showTicks, stepOf, tickElements } from './tick-view.ts';

/** Steps to tick off, kept on this device for this guide, level, version and batch. */
export function startTicks(page: Document, now: () => number): void {
  const bench = benchOn(page);
  if (!bench) return;
  const ticking = tickingOn(bench, now);
  const window = page.defaultView!;
  page.addEventListener('change', ({ target }) => {
    const tick = (target as Element).closest<HTMLElement>('[data-tick]');
    if (tick) ticking.tick(stepOf(tick), (target as HTMLInputElement).checked);
  });
  bench.clear.addEventListener('click', ticking.clearOrBringBack);
  // Another page of the same guide has ticked; or another batch is planned on this one.
  window.addEventListener('storage', ticking.load);
  new MutationObserver(ticking.load).observe(bench.batch, {
    childList: true,
    characterData: true,
    subtree: true,
  });
  ticking.load();
  for (const hidden of [bench.bar, ...tickElements(page)]) hidden.hidden = false;
}

/** The elements of a page where ticks are kept. */
interface Bench {
  readonly page: Document;
  readonly bar: HTMLElement;
  readonly progress: HTMLElement;
  readonly batch: HTMLElement;
  readonly clear: HTMLButtonElement;
}

/** Undefined on a page without steps. */
function benchOn(page: Document): Bench | undefined {
  const bar = page.querySelector<HTMLElement>('[data-bench]');
  if (!bar || tickElements(page).length === 0) return undefined;
  return {
    page,
    bar,
    progress: bar.querySelector<HTMLElement>('[role=status]')!,
    batch: bar.querySelector<HTMLElement>('[data-bench-batch]')!,
    clear: bar.querySelector<HTMLButtonElement>('[data-clear]')!,
  };
}

interface Ticking {
  readonly load: () => void;
  readonly tick: (step: string, isDone: boolean) => void;
  readonly clearOrBringBack: () => void;
}

/** Holds the ticks that are shown, and those that were cleared last, in case that was a slip. */
function tickingOn(bench: Bench, now: () => number): Ticking {
  const store = (): Storage => bench.page.defaultView!.localStorage;
  let ticks: Ticks = {};
  let cleared: Ticks | undefined;
  const become = (next: Ticks, before?: Ticks): void => {
    [ticks, cleared] = [next, before];
    show(bench, ticks, cleared !== undefined, now());
  };
  const change = (next: Ticks, before?: Ticks): void => {
    keepTicks(keyOf(bench), next, store);
    become(next, before);
  };
  return {
    load: () => become(keptTicks(keyOf(bench), store)),
    tick: (step, isDone) => change(isDone ? { ...ticks, [step]: now() } : without(ticks, step)),
    clearOrBringBack: () => (cleared ? change(cleared) : change({}, ticks)),
  };
}

function show({ page, progress, clear }: Bench, ticks: Ticks, isCleared: boolean, now: number): void {
  showTicks(page, ticks, now);
  progress.textContent = progressOf(page, ticks);
  clear.textContent = isCleared ? benchWords.bringBack : benchWords.clear;
  clear.disabled = !isCleared && Object.keys(ticks).length === 0;
}

function keyOf({ page, bar: { dataset }, batch }: Bench): string {
  return tickKey({
    site: new URL(page.documentElement.dataset['root'] || '.', page.location.href).pathname,
    guide: dataset['bench'] ?? '',
    level: dataset['level'] ?? '',
    version: dataset['version'] ?? '',
    batch: batch.textContent ?? '',
  });
}

function without(ticks: Ticks, step: string): Ticks {
  return Object.fromEntries(Object.entries(ticks).filter(([id]) => id !== step));
}
