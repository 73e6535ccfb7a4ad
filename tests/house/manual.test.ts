import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checks, runChecks } from '../../src/checks/checks.ts';
import { moduleFileKinds } from '../../src/checks/lookup/module-file-kind.ts';
import type { Gravity } from '../../src/core/diagnostic.ts';
import { limits } from '../../src/reading/limits.ts';
import { judgesColumns } from '../../src/reading/judges.ts';
import { read } from '../../src/reading/read.ts';
import { otherDangers } from '../../src/core/model/material.ts';
import { controlWords } from '../../src/words/controls.ts';
import { scriptWords, scriptWordsOfNone } from '../../src/words/script.ts';
import { fileWith, keyRowsOf, keysIn, keysOf, shapeAt, shapes } from './keys-of-manual.ts';

const page = readFileSync(new URL('../../content/manual/writing-a-guide.md', import.meta.url), 'utf8');

it('the manual lists every control with the words it is printed in', () => {
  const rows = Object.entries(controlWords).map(([id, words]) => `| \`${id}\` | ${words} |`);
  expect(rows.filter((row) => !page.includes(row))).toEqual([]);
});

/** The examples of a page, in its order. */
const examplesIn = (text: string) =>
  [...text.matchAll(/^```\n([\s\S]*?)^```$/gm)].map(([, example]) => example!);
const bytes = (text: string) => new TextEncoder().encode(text);
const [program, material, guide] = examplesIn(page);
const smallest = new Map([
  ['program.yaml', bytes(program!)],
  ['materials/webbing.yaml', bytes(material!)],
  ['guides/practice-strap/guide.md', bytes(guide!)],
]);

it('the smallest workspace of the manual reads and checks without an error', () => {
  const { workspace, diagnostics, ...rest } = read(smallest);
  const findings = runChecks({ workspace: workspace!, ...rest, today: '2026-11-25' });
  expect(diagnostics).toEqual([]);
  expect(Object.keys(workspace!.guides)).toEqual(['practice-strap']);
  expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
});

describe('the page on modules', () => {
  const modules = readFileSync(new URL('../../content/manual/writing-a-module.md', import.meta.url), 'utf8');

  it('lists every sentence of a script with the words it is printed in', () => {
    const rows = Object.entries(scriptWords).map(
      ([id, words]) => `| \`${id}\` | ${words.replace('{list}', '… and …')} |`,
    );
    expect(rows.filter((row) => !modules.includes(row))).toEqual([]);
  });

  it('has those that are printed where nothing is to be listed', () => {
    const text = modules.replaceAll('\n', ' ');
    expect(Object.values(scriptWordsOfNone).filter((words) => !text.includes(words))).toEqual([]);
  });

  it('begins with a module that checks without a finding', () => {
    const [module] = examplesIn(modules);
    const files = new Map([...smallest, ['modules/first-straps/module.md', bytes(module!)] as const]);
    const { workspace, diagnostics, ...rest } = read(files);
    const findings = runChecks({ workspace: workspace!, ...rest, today: '2026-11-25' });
    const ofModule = findings.filter(({ places }) => places.some(({ file }) => file.startsWith('modules/')));
    expect(diagnostics).toEqual([]);
    expect(Object.keys(workspace!.modules)).toEqual(['first-straps']);
    expect(ofModule).toEqual([]);
  });
});

describe('the page on what is checked', () => {
  const entries = readFileSync(new URL('../../content/manual/what-is-checked.md', import.meta.url), 'utf8')
    .split(/^### /m)
    .slice(1)
    .map((entry) => {
      const [code, ...text] = entry.split('\n');
      return [code!, text.join(' ').split(' ## ')[0]!.trim()] as const;
    });
  const ends: Readonly<Record<Gravity, string>> = {
    stops: 'An error.',
    incomplete: 'A warning in a draft, then an error.',
    calendar: 'Always a warning: only the calendar changed it.',
    local: 'Always a warning: it is about this program’s own lists.',
    doubtful: 'Always a warning: it may be meant as it is.',
    note: 'A note.',
  };

  it('has every check under its own name, and no other', () => {
    expect(entries.map(([code]) => code).sort()).toEqual(checks.map(({ code }) => code));
  });

  it('says how each weighs', () => {
    const wrong = checks.filter(({ code, gravity }) => {
      const text = entries.find(([own]) => own === code)?.[1] ?? '';
      return !text.endsWith(ends[gravity]) || text === ends[gravity];
    });
    expect(wrong.map(({ code }) => code)).toEqual([]);
  });
});

describe('the page on what is trusted', () => {
  const read = (name: string) =>
    readFileSync(new URL(`../../content/manual/${name}`, import.meta.url), 'utf8');

  it('names every kind of link that is let through, and the page on modules every kind of file', () => {
    const [row] = /^\| links .*$/m.exec(read('what-is-trusted.md'))!;
    for (const kind of ['http', 'https', 'mailto', 'tel']) expect(row).toContain(kind);
    const modules = read('writing-a-module.md');
    expect(moduleFileKinds.filter((kind) => !modules.includes(kind.toUpperCase()))).toEqual([]);
  });

  it('leads to limits that are those of the program', () => {
    const rows = {
      'a Markdown file': `${limits.markdownBytes / 1_000_000} MB`,
      'its front matter': `${limits.frontMatterBytes / 1000} kB`,
      'nesting of lists and quotes': String(limits.nesting),
      'columns of a table': String(limits.tableColumns),
      'a photo or a drawing': `${limits.fileBytes / 1_000_000} MB`,
      'a photo, across times down': `${limits.photoPoints / 1_000_000} million points`,
      'a table of judges': `${limits.tableBytes / 1000} kB`,
      'people in a module': limits.people.toLocaleString('en'),
      'guides in a workspace': limits.guides.toLocaleString('en'),
      'files in a workspace': limits.files.toLocaleString('en'),
      'all files of a workspace': `${limits.allBytes / 1_000_000_000} GB`,
    };
    const page = read('limits.md');
    const missing = Object.entries(rows).filter(([what, most]) => !page.includes(`| ${what} | ${most} |`));
    expect(missing).toEqual([]);
    expect(read('what-is-trusted.md')).toContain('(limits.md)');
  });
});

it('the manual’s own page leads to every other', () => {
  const folder = new URL('../../content/manual/', import.meta.url);
  const home = readFileSync(new URL('index.md', folder), 'utf8');
  const pages = readdirSync(folder).filter((name) => name.endsWith('.md') && name !== 'index.md');
  expect(pages.filter((name) => !home.includes(`](${name})`))).toEqual([]);
});

describe('the pages of keys', () => {
  const rows = ['keys-of-a-program.md', 'keys-of-a-guide.md', 'keys-of-a-module.md'].flatMap(keyRowsOf);
  const told = rows.flatMap((row) =>
    row.at.flatMap((at) =>
      keysIn(row.example, shapeAt(shapes[row.file]!, at), at).map((path) => ({ ...row, path })),
    ),
  );

  it.each(Object.keys(shapes))('have every key of %s in one row, and no other', (file) => {
    const keys = keysOf(shapes[file]!);
    const paths = told.filter((row) => row.file === file).map(({ path }) => path);
    const unwritten = keys.filter(({ path, isGroup }) => !isGroup && !paths.includes(path));
    const unknown = paths.filter((path) => !keys.some((key) => key.path === path));
    const twice = paths.filter((path, i) => paths.indexOf(path) < i);
    expect({ unwritten: unwritten.map(({ path }) => path), unknown, twice }).toEqual({
      unwritten: [],
      unknown: [],
      twice: [],
    });
  });

  it.each(Object.keys(shapes))('say of every key of %s whether it is needed', (file) => {
    const wrong = keysOf(shapes[file]!).flatMap(({ path, isNeeded }) => {
      const row = told.find((row) => row.file === file && row.path === path);
      return row && isNeeded !== undefined && (row.needed === '**yes**') !== isNeeded ? [path] : [];
    });
    expect(wrong).toEqual([]);
  });

  const names: Readonly<Record<string, (row: number) => string>> = {
    'program.yaml': () => 'program.yaml',
    'materials/ID.yaml': (row) => `materials/row-${row}.yaml`,
    'tools/ID.yaml': (row) => `tools/row-${row}.yaml`,
    'guide.md': (row) => `guides/row-${row}/guide.md`,
    'module.md': (row) => `modules/row-${row}/module.md`,
  };

  it('show examples that can be read as they stand', () => {
    const files = rows.flatMap((row, i): (readonly [string, Uint8Array])[] => {
      const name = names[row.file]?.(i);
      if (name === undefined || row.means.includes('not built yet')) return [];
      const text = JSON.stringify(fileWith(row), undefined, 1);
      return [[name, bytes(name.endsWith('.md') ? `---\n${text}\n---\n` : text)]];
    });
    const programs = files.filter(([name]) => name === 'program.yaml');
    const all = new Map([...smallest, ...files.filter(([name]) => name !== 'program.yaml')]);
    const reads = [all, ...programs.map((program) => new Map([...smallest, program]))].map((each) =>
      read(each),
    );
    const wrong = reads.flatMap(({ diagnostics }) =>
      diagnostics.map(({ code, places: [at] }) => `${at?.file}:${at?.line}: ${code}`),
    );
    expect(files.length).toBeGreaterThan(200);
    expect(wrong).toEqual([]);
  });

  const textOf = (name: string) =>
    readFileSync(new URL(`../../content/manual/${name}`, import.meta.url), 'utf8');

  it('have every column of a table of judges, and every danger without a code', () => {
    const columns = [...new Set(Object.values(judgesColumns).flat())];
    const module = textOf('keys-of-a-module.md');
    expect(columns.filter((column) => !module.includes(`| \`${column}\` |`))).toEqual([]);
    const program = textOf('keys-of-a-program.md');
    expect(otherDangers.filter((danger) => !program.includes(`\`${danger}\``))).toEqual([]);
  });
});
