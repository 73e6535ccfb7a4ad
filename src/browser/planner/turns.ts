import { type Slicing, runInSlices } from './slices.ts';
import type { InPieces } from '../../core/in-pieces.ts';

/** Work in slices of 8 ms, the page's own turns between them: typing never waits for it. */
export function pageSlices(): Slicing {
  const { port1, port2 } = new MessageChannel();
  const waiting: (() => void)[] = [];
  port1.onmessage = () => waiting.shift()?.();
  return {
    now: () => performance.now(),
    budget: 8,
    later: (goOn) => {
      waiting.push(goOn);
      port2.postMessage(null);
    },
  };
}

/** Work in slices that always runs to its end. */
export function toItsEnd<T>(work: InPieces<T>, slicing: Slicing): Promise<T> {
  return new Promise((done, failed) => {
    runInSlices(work, slicing, done, failed);
  });
}
