import type { InPieces } from '../../core/in-pieces.ts';
import { type Slicing, runInSlices } from './slices.ts';

/**
 * Calls back when the page has had its turn. A timer would wait 4 ms each time (HTML Standard, timers, step 11; from
 * memory).
 */
export function pageTurns(): Slicing['later'] {
  const { port1, port2 } = new MessageChannel();
  const waiting: (() => void)[] = [];
  port1.onmessage = () => waiting.shift()?.();
  return (goOn) => {
    waiting.push(goOn);
    port2.postMessage(null);
  };
}

/** Work in slices of 8 ms, the page's own turns between them: typing never waits for it. */
export function pageSlices(): Slicing {
  return { now: () => performance.now(), budget: 8, later: pageTurns() };
}

/** Work in slices that always runs to its end. */
export function toItsEnd<T>(work: InPieces<T>, slicing: Slicing): Promise<T> {
  return new Promise((done, failed) => {
    runInSlices(work, slicing, done, failed);
  });
}
