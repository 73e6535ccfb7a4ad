import { readFileSync, readdirSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Who may import whom: complete, not transitive. DEVELOPERS.md draws it. */
const arrows: Record<string, readonly string[]> = {
  index: ['publishing', 'checks', 'reading', 'exports', 'showing', 'words', 'core'],
  schedule: ['core'],
  cutting: ['core'],
  packs: ['core'],
  cli: ['index', 'publishing', 'checks', 'reading', 'exports', 'showing', 'words', 'core'],
  publishing: ['templates', 'rendering', 'reading', 'checks', 'exports', 'showing', 'words', 'core'],
  templates: ['rendering', 'showing', 'words', 'core (types)'],
  browser: ['showing', 'exports', 'words', 'core'],
  rendering: ['words', 'core'],
  reading: ['words', 'core'],
  checks: ['words', 'core'],
  exports: ['words', 'core'],
  showing: ['words', 'core'],
  words: [],
  'core/plan': ['core', 'core/solve', 'core/model', 'core/time', 'core/money', 'core/quantity'],
  'core/model': ['core', 'core/quantity', 'core/time'],
  'core/time': ['core', 'core/model', 'core/quantity'],
  'core/money': ['core', 'core/model', 'core/quantity'],
  'core/quantity': ['core', 'core/model (types)'],
  'core/scoring': ['core', 'core/model', 'core/quantity', 'core/statistics', 'core/time'],
  'core/solve': ['core', 'core/quantity'],
  'core/statistics': ['core', 'core/quantity'],
  core: [],
};

/** Packages that only some folders may know: everything else keeps them from the reader's browser, or from core. */
const packages: Record<string, readonly string[]> = {
  core: ['fraction.js'],
  words: [],
  showing: [],
  browser: ['minisearch'],
  templates: ['hastscript'],
};

interface Import {
  readonly file: string;
  readonly to: string;
  readonly typesOnly: boolean;
}

const files = ['src', 'templates'].flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => `${folder}/${name}`),
);
const imports = files.flatMap(importsOf);

function importsOf(file: string): Import[] {
  const source = ts.createSourceFile(file, readFileSync(join(root, file), 'utf8'), ts.ScriptTarget.ES2022);
  return source.statements
    .filter((s) => ts.isImportDeclaration(s) || ts.isExportDeclaration(s))
    .flatMap((s) => {
      if (!s.moduleSpecifier || !ts.isStringLiteral(s.moduleSpecifier)) return [];
      const typesOnly = ts.isImportDeclaration(s)
        ? s.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword
        : s.isTypeOnly;
      const name = s.moduleSpecifier.text;
      const to = name.startsWith('.') ? relative(root, resolve(root, dirname(file), name)) : name;
      return [{ file, to, typesOnly }];
    });
}

/** `src/core/plan/buy.ts` -> `core/plan`; `src/core/diagnostic.ts` -> `core`; `src/index.ts` -> `index`. */
function folderOf(path: string): string {
  if (path.startsWith('templates/')) return 'templates';
  const [first, ...rest] = path.replace(/^src\//, '').split('/');
  if (rest.length === 0) return first!.replace(/\.ts$/, '');
  return first === 'core' && rest.length > 1 ? `core/${rest[0]}` : first!;
}
const isOurs = (to: string) => /^(src|templates)\//.test(to);
const topOf = (folder: string) => folder.split('/')[0]!;

function isAllowed(from: string, to: string, typesOnly: boolean): boolean {
  const allowed = arrows[from] ?? [];
  const names = to.startsWith('core') && !from.startsWith('core') ? ['core'] : [to];
  return names.some((name) => allowed.includes(name) || (typesOnly && allowed.includes(`${name} (types)`)));
}

describe('imports run one way', () => {
  it('looks at a house that is there', () => {
    expect(imports.length).toBeGreaterThan(100);
    expect([...new Set(files.map(folderOf))].filter((folder) => !(folder in arrows))).toEqual([]);
  });

  it('every arrow between folders is one that the table allows', () => {
    const wrong = imports
      .filter(({ to }) => isOurs(to))
      .filter(({ file, to, typesOnly }) => {
        const [from, target] = [folderOf(file), folderOf(to)];
        return from !== target && !isAllowed(from, target, typesOnly);
      });
    expect(wrong.map(({ file, to }) => `${file} -> ${to}`)).toEqual([]);
  });

  it('core, words, showing, browser and templates know only the packages they are allowed', () => {
    const wrong = imports.filter(({ file, to, typesOnly }) => {
      if (typesOnly) return false;
      const allowed = packages[topOf(folderOf(file))];
      return allowed && !isOurs(to) && !allowed.some((name) => to === name || to.startsWith(`${name}/`));
    });
    expect(wrong.map(({ file, to }) => `${file} -> ${to}`)).toEqual([]);
  });

  it('no check imports another check', () => {
    const ofChecks = imports.filter(({ file, to }) => isCheck(file) && isCheck(to));
    const wrong = ofChecks.filter(({ file }) => file !== 'src/checks/checks.ts');
    expect(ofChecks.length).toBeGreaterThan(20);
    expect(wrong.map(({ file, to }) => `${file} -> ${to}`)).toEqual([]);
  });

  it('no two folders beside each other use each other, but for types', () => {
    const folders = imports
      .filter(({ to, typesOnly }) => isOurs(to) && !typesOnly)
      .map(({ file, to }) => [dirname(file), dirname(to)] as const)
      .filter(([from, to]) => from !== to && dirname(from) === dirname(to));
    const both = folders.filter(([from, to]) => folders.some(([f, t]) => f === to && t === from));
    expect(folders.length).toBeGreaterThan(20);
    expect([...new Set(both.map(([from, to]) => `${from} <-> ${to}`))]).toEqual([]);
  });

  it('nothing runs in a circle from file to file, but for types within the general problems', () => {
    const isFree = ({ file, typesOnly }: Import): boolean => typesOnly && file.startsWith('src/core/solve/');
    expect(circles(imports.filter((edge) => isOurs(edge.to) && !isFree(edge)))).toEqual([]);
  });
});

/** A check, or the table of them: files of `src/checks` but the type, and what its folder holds for several. */
function isCheck(path: string): boolean {
  return dirname(path) === 'src/checks' && path !== 'src/checks/check.ts';
}

function circles(edges: readonly Import[]): string[] {
  const next = new Map<string, Import[]>();
  for (const edge of edges) next.set(edge.file, [...(next.get(edge.file) ?? []), edge]);
  const done = new Set<string>();
  const found: string[] = [];
  const walk = (file: string, path: readonly string[]): void => {
    if (path.includes(file)) found.push([...path.slice(path.indexOf(file)), file].join(' -> '));
    if (path.includes(file) || done.has(file)) return;
    for (const { to } of next.get(file) ?? []) walk(to, [...path, file]);
    done.add(file);
  };
  for (const file of next.keys()) walk(file, []);
  return found;
}
