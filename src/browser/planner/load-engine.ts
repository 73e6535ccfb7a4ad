import type { PageData } from '../../core/plan/own/page-data.ts';
import type { Engine } from '../engine.entry.ts';
import { loadScript, rootOf } from '../load-script.ts';

/** What a page works its plan out with. */
export interface Loaded {
  readonly engine: Engine;
  readonly data: PageData;
}

/**
 * The engine and what it plans with, loaded as scripts that set globals.
 *
 * @param file  The way from the page to its data.
 */
export async function loadEngine(page: Document, file: string, level: string): Promise<Loaded> {
  await Promise.all([loadScript(page, `${rootOf(page)}scripts/engine.js`), loadScript(page, file)]);
  const { benchwrightEngine: engine, plannerData } = globalThis as typeof globalThis & {
    benchwrightEngine: Engine;
    plannerData: PageData;
  };
  return { engine, data: level === '' ? plannerData : { ...plannerData, level } };
}
