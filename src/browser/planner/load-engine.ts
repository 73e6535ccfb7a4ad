import type { PageData } from '../../core/plan/own/page-data.ts';
import type { Engine } from '../engine.entry.ts';

/** What a page works its plan out with. */
export interface Loaded {
  readonly engine: Engine;
  readonly data: PageData;
}

/**
 * The engine and what it plans with, loaded as scripts that set globals: nothing else loads where a page was opened from
 * a disk.
 *
 * @param file  The way from the page to its data.
 */
export async function loadEngine(page: Document, file: string, level: string): Promise<Loaded> {
  const root = page.documentElement.dataset['root'] ?? '';
  await Promise.all([loadScript(page, `${root}scripts/engine.js`), loadScript(page, file)]);
  const { benchwrightEngine: engine, plannerData } = globalThis as typeof globalThis & {
    benchwrightEngine: Engine;
    plannerData: PageData;
  };
  return { engine, data: level === '' ? plannerData : { ...plannerData, level } };
}

function loadScript(page: Document, src: string): Promise<void> {
  return new Promise((loaded, failed) => {
    const script = Object.assign(page.createElement('script'), { src });
    script.addEventListener('load', () => loaded());
    script.addEventListener('error', () => failed(new Error(`${src} did not load`)));
    page.head.append(script);
  });
}
