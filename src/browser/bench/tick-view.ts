import { showProgress, showWallMoment } from '../../showing/plan/bench-text.ts';
import type { Ticks } from './tick-store.ts';
import { minutesLater, wallMoment } from './wall-clock.ts';

/** Shows which steps are ticked off, since when, and what follows from it. */
export function showTicks(page: Document, ticks: Ticks, now: number): void {
  for (const tick of tickElements(page)) showTick(tick, ticks[stepOf(tick)], now);
}

/** "3 of 8 steps done" */
export function progressOf(page: Document, ticks: Ticks): string {
  const steps = tickElements(page).map(stepOf);
  return showProgress(steps.filter((step) => step in ticks).length, steps.length);
}

export function tickElements(page: Document): readonly HTMLElement[] {
  return [...page.querySelectorAll<HTMLElement>('[data-tick]')];
}

export function stepOf(tick: HTMLElement): string {
  return tick.dataset['tick'] ?? '';
}

function showTick(tick: HTMLElement, at: number | undefined, now: number): void {
  tick.querySelector('input')!.checked = at !== undefined;
  tick.classList.toggle('ticked', at !== undefined);
  const hasRuns = (tick.closest('.step, tbody')?.querySelector('.runs')?.textContent ?? '') !== '';
  for (const line of tick.querySelectorAll<HTMLElement>('[data-says]')) {
    const isElsewhere = line.dataset['when'] === (hasRuns ? 'one-run' : 'runs');
    line.hidden = at === undefined || isElsewhere;
    line.textContent = at === undefined ? '' : sentenceOf(line, at, now);
  }
}

/** The last, since the name of a step may stand before it, whatever its author called it. */
const lastTime = /\{time\}(?!.*\{time\})/;

/** Its sentence with the time that follows from the tick. */
function sentenceOf({ dataset }: HTMLElement, at: number, now: number): string {
  const rounds = dataset['rounds'] === 'up' ? 'up' : 'down';
  const then = wallMoment(minutesLater(at, Number(dataset['minutes'] ?? 0)), rounds);
  const time = showWallMoment(then, wallMoment(now, 'down'));
  return (dataset['says'] ?? '').replace(lastTime, () => time);
}
