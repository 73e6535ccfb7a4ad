import type { SearchLibrary } from '../../exports/search-library.ts';
import { loadScript, rootOf } from '../load-script.ts';
import { pageSlices } from '../work/turns.ts';
import { type Search, startSearch } from './find.ts';

export interface LoadedSearch extends Search {
  readonly library: SearchLibrary;
}

/**
 * The library comes as a script that sets a global.
 *
 * @throws Where the script does not load.
 */
export async function loadSearch(page: Document): Promise<LoadedSearch> {
  await loadScript(page, `${rootOf(page)}search/library.js`);
  const { searchLibrary: library } = globalThis as typeof globalThis & { searchLibrary: SearchLibrary };
  return { library, ...startSearch(library, pageSlices()) };
}
