import type { Workspace } from '../core/model/workspace.ts';
import { deferral } from '../showing/safety/deferral.ts';
import type { PlaceId, Site } from '../../templates/page/site.ts';
import type { ManualPage } from './library/manual-pages.ts';

const places: readonly { readonly id: PlaceId; readonly path: string }[] = [
  { id: 'guides', path: 'index.html' },
  { id: 'modules', path: 'modules/index.html' },
  { id: 'materials', path: 'materials/index.html' },
  { id: 'tools', path: 'tools/index.html' },
  { id: 'safety', path: 'safety/index.html' },
  { id: 'manual', path: 'manual/index.html' },
];

/** What every page shares: the program, its language, its policy, the ways to those pages that there are. */
export function siteOf({ program, modules }: Workspace, manual: readonly ManualPage[]): Site {
  const isThere: Partial<Record<PlaceId, boolean>> = {
    manual: manual.length > 0,
    modules: Object.keys(modules).length > 0,
  };
  const there = places.filter(({ id }) => isThere[id] ?? true);
  return {
    program: program.name,
    language: program.locale,
    places: there,
    defers: deferral(program).inFull,
    ...(program.policy ? { policy: program.policy } : {}),
  };
}
