import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

interface LockedPackage {
  readonly version?: string;
  readonly integrity?: string;
  readonly hasInstallScript?: boolean;
  readonly resolved?: string;
  readonly link?: boolean;
}
const lock = JSON.parse(readFileSync(new URL('../../package-lock.json', import.meta.url), 'utf8')) as {
  packages: Record<string, LockedPackage>;
};
const locked = Object.entries(lock.packages).filter(([path]) => path !== '');

/** Packages whose install scripts we know: esbuild checks its binary, fsevents is for macOS alone. */
const mayRunScripts = ['esbuild', 'fsevents'];

it('every package of the lock file has an integrity and no download address', () => {
  expect(locked.length).toBeGreaterThan(50);
  expect(locked.filter(([, entry]) => !entry.integrity).map(([path]) => path)).toEqual([]);
  expect(locked.filter(([, entry]) => entry.resolved).map(([path]) => path)).toEqual([]);
});

it('no package runs a script at install but those listed', () => {
  const scripted = locked.filter(([, entry]) => entry.hasInstallScript);
  const unknown = scripted.filter(([path]) => !mayRunScripts.some((name) => path.endsWith(`/${name}`)));
  expect(unknown.map(([path]) => path)).toEqual([]);
});
