import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const root = new URL('../../', import.meta.url);

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
  expect(locked.filter(([, entry]) => !entry.integrity?.startsWith('sha512-')).map(([path]) => path)).toEqual(
    [],
  );
  expect(locked.filter(([, entry]) => entry.resolved).map(([path]) => path)).toEqual([]);
});

it('no package runs a script at install but those listed', () => {
  const scripted = locked.filter(([, entry]) => entry.hasInstallScript);
  const unknown = scripted.filter(([path]) => !mayRunScripts.some((name) => path.endsWith(`/${name}`)));
  expect(unknown.map(([path]) => path)).toEqual([]);
});

it('each package has its reason in DEVELOPERS.md, and no other is named there', () => {
  const { dependencies, devDependencies } = JSON.parse(
    readFileSync(new URL('package.json', root), 'utf8'),
  ) as Record<'dependencies' | 'devDependencies', Record<string, string>>;
  const guide = readFileSync(new URL('DEVELOPERS.md', root), 'utf8');
  const [, section] = /^## Packages, and why each$([^]*?)^## /m.exec(guide)!;
  const rows = [...section!.matchAll(/^\| (`.+) \| (\S.*) \|$/gm)];
  const named = rows.flatMap(([, names]) => names!.split(', ').map((name) => name.replaceAll('`', '')));
  const used = [...Object.keys(dependencies), ...Object.keys(devDependencies)];
  expect(named.sort()).toEqual(used.sort());
});

it('the program runs no script where it is installed, and uses every package that it brings', () => {
  const { scripts, dependencies } = JSON.parse(readFileSync(new URL('package.json', root), 'utf8')) as {
    scripts: Record<string, string>;
    dependencies: Record<string, string>;
  };
  const atInstall = ['preinstall', 'install', 'postinstall', 'preprepare', 'prepare', 'postprepare'];
  expect(Object.keys(scripts).filter((name) => atInstall.includes(name))).toEqual([]);
  const sources = ['src', 'templates', '.config'].map(textsBelow).join('\n');
  const unused = Object.keys(dependencies).filter(
    (name) => !sources.includes(name.replace('@fontsource-variable/', '')),
  );
  expect(unused).toEqual([]);
});

function textsBelow(folder: string): string {
  const entries = readdirSync(new URL(folder, root), { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  return files.map((file) => readFileSync(file, 'utf8')).join('\n');
}
