import { parse } from 'csv-parse/sync';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Files } from '../../src/publishing/paths/files.ts';
import { makeSite } from '../../src/publishing/site.ts';
import { safeFileName } from '../../src/publishing/paths/paths.ts';
import { moduleFileKinds } from '../../src/checks/lookup/module-file-kind.ts';
import { findingsOf } from '../cases/workspace-of-case.ts';
import { baseFiles, guideFile, moduleFile, readWith, textOf } from '../reading/base-workspace.ts';
import { today } from './demo-site.ts';
import { decoded, lettersOf, pagesOf, tagsOf } from './html.ts';

/*
 * A guide and a module written to break out: of their pages, of their data for search engines, of their tables, of their
 * folder. Each text says what would happen if it were taken for anything but text.
 */

const evil = `</script><script>globalThis.canary=1</script><img src=x onerror=alert(1)>"'&#x3c;b&gt;`;
const quoted = JSON.stringify(evil);
const page = '<!doctype html><script>canary = 1</script>';

/** Names that would overwrite, leave the folder, run, or be taken for one another; and two that are handed out. */
const named = [
  ...['index.html', 'hand-out/index.html', 'evil.svg', 'evil.js', 'evil.xhtml', 'module.md', 'judges.csv'],
  ...['../../program.yaml', '../needle-block/guide.md', '/etc/passwd', '..\\a.mp4', 'file:///etc/passwd'],
  ...[
    'javascript:alert(1)',
    'javascript:x.mp4',
    '//far.example/x.mp4',
    'https://far.example/x.mp4',
    '__proto__',
  ],
  ...['films/Film 1.mp4', 'films/film-1.MP4', './con.mp4', `${'long'.repeat(40)}.mp4`, 'évil.é', 'a.mp4/b'],
];
/** Where a file of such a name lies beside the module. */
const handedOut = [
  ...['con-file.mp4', 'films-film-1.mp4', 'films-film-1-2.mp4', `${'long'.repeat(15)}.mp4`],
  ...['far-example-x.mp4', 'https-far-example-x.mp4', 'javascript-x.mp4'],
];

const formula = '=HYPERLINK("https://far.example");=1+1';

/** Names of the base that begin as formulas do, and a guide with a title that closes a script. */
function hostileNames(): Record<string, string> {
  const named = (file: string, name: string, put: string) => ({
    [file]: textOf(file).replace(`name: ${name}`, `name: ${JSON.stringify(put)}`),
  });
  return {
    ...named('materials/gelatin-powder.yaml', 'Gelatin powder', formula),
    ...named('materials/label.yaml', 'Label', '+label;@x'),
    ...named('materials/rubber-tube.yaml', 'Rubber tube, 6 mm', '-tube, 6 mm'),
    ...named('program.yaml', 'a craft shop', '@shop'),
    [guideFile]: textOf(guideFile)
      .replace('title: Ultrasound needle block', `title: ${quoted}`)
      .replace('name: Shallow vessel', `name: ${quoted}`),
  };
}

function hostileModule(): string {
  const prepare = named.flatMap((file) => [
    `  - read: ${JSON.stringify(file)}`,
    `    text: ${JSON.stringify(file)}`,
    '    takes: 0 min',
  ]);
  return textOf(moduleFile)
    .replace('title: First ultrasound-guided access', `title: ${quoted}`)
    .replace('prepare:\n', `prepare:\n${prepare.join('\n')}\n`)
    .replace('asked: [after]', 'asked: [before, after]')
    .replace('bring: [a pen]', `bring: [${quoted}]`)
    .replace('privacy: Scores stay with your supervisor.', `privacy: ${quoted}`)
    .replace('does: keep', `does: 'keep </script><script>canary=1</script>`)
    .replace('enters the vessel\n    standard', "enters the vessel'\n    standard")
    .replace('name: Needling', `name: ${JSON.stringify(formula)}`)
    .replace('meanwhile: [Watch, and say what you see.]', `meanwhile: [${quoted}]`)
    .replace('says: The tip is in view until it enters the vessel', `says: ${quoted}`)
    .replace('ask: Where is the needle seen best?', `ask: ${quoted}`);
}

const ownPages = ['modules/first-access/index.html', 'guides/needle-block/index.html'];

let site: Files = new Map();
let pages: ReturnType<typeof pagesOf> = [];
beforeAll(() => {
  const beside = named.map((file) => [`modules/first-access/${file.replace('./con', 'con')}`, page] as const);
  const workspace = readWith({
    ...Object.fromEntries(beside),
    ...hostileNames(),
    [moduleFile]: hostileModule(),
  });
  const errors = workspace.diagnostics.filter(({ code }) => code !== 'file-misplaced');
  expect(errors).toEqual([]);
  const made = makeSite({ read: workspace, pictures: new Map(), today, shipped: new Map() });
  if ('refused' in made) throw new Error(JSON.stringify(made.refused));
  site = made;
  pages = pagesOf(site);
}, 60_000);

describe('a guide and a module written to break out', () => {
  it('has its texts on its pages, and in them nothing but letters', () => {
    expect(pages.filter(([path]) => path.includes('/modules/')).length).toBeGreaterThan(8);
    for (const path of ['trainees', 'staff'].flatMap((edition) =>
      ownPages.map((page) => `${edition}/${page}`),
    )) {
      const html = new TextDecoder().decode(site.get(path));
      expect(lettersOf(html)).toContain('globalThis.canary=1');
    }
    const running = pages.flatMap(([path, html]) =>
      tagsOf(html)
        .filter(
          ({ name, attributes }) =>
            (name === 'script' && !attributes['src'] && attributes['type'] !== 'application/ld+json') ||
            name === 'img' ||
            Object.keys(attributes).some((key) => /^on|^style$/.test(key)),
        )
        .map(({ name }) => `${path} ${name}`),
    );
    expect(running).toEqual([]);
  });

  it('says first in the head of each page and sheet what it may load', () => {
    const late = pages.filter(
      ([, html]) =>
        !/<head><meta http-equiv="Content-Security-Policy" content="default-src 'none';/.test(decoded(html)),
    );
    expect(late.map(([path]) => path)).toEqual([]);
  });

  it('stays in its data for search engines what it was, letter for letter', () => {
    for (const page of ownPages) {
      const html = new TextDecoder().decode(site.get(`trainees/${page}`));
      const [, data] = /<script type="application\/ld\+json">([\s\S]*?)<\/script>/.exec(html)!;
      const read = JSON.parse(data!) as { name?: string; '@graph'?: { name: string }[] };
      expect([page, read.name ?? read['@graph']![0]!.name]).toEqual([page, expect.stringContaining(evil)]);
    }
  });

  it('begins no cell of any table as a formula begins, whatever parts the cells', () => {
    const tables = [...site].filter(([path]) => path.endsWith('.csv'));
    const kinds = [
      'shopping',
      'days',
      'timetable',
      'score-sheet',
      'survey-before',
      'survey-after',
      'hazards',
    ];
    const names = new Set(tables.map(([path]) => path.replace(/.*\/|\.csv$/g, '')));
    expect([...names].sort()).toEqual([...kinds].sort());
    const texts = tables.map(([path, bytes]) => [path, new TextDecoder().decode(bytes)] as const);
    for (const name of ['shopping', 'timetable', 'hazards'])
      expect(texts.find(([path]) => path.endsWith(`${name}.csv`))![1]).toMatch(/'[=+@-]/);
    const begins = /^["\s]*(?:[=+@]|-(?!\d+(\.\d+)?$))/;
    const formulas = texts.flatMap(([path, text]) => {
      const cells = [...(parse(text, { bom: true }) as string[][]).flat(), ...text.split(/[;\t\r\n]/)];
      return cells.filter((cell) => begins.test(cell)).map((cell) => `${path}: ${cell}`);
    });
    expect(formulas).toEqual([]);
  });

  it('leads from no page to what runs or to another place', () => {
    const out = pages.flatMap(([path, html]) =>
      tagsOf(html)
        .flatMap(({ attributes }) => attributes['href'] ?? [])
        .filter((href) => /^([a-z]+:|\/)/i.test(href))
        .map((href) => `${path} -> ${href}`),
    );
    expect(out).toEqual([]);
  });

  it('hands out only what no browser opens as a page, each under a safe name of its own', () => {
    const own = [...site.keys()].flatMap(
      (path) => /^trainees\/modules\/first-access\/(.*)/.exec(path)?.[1] ?? [],
    );
    expect(own.filter((name) => !/\.(html|css|csv|js)$/.test(name))).toEqual([...handedOut].sort());
    expect(own.filter((name) => /^evil|judges|passwd|program/.test(name))).toEqual([]);
    const bytes = [...site.entries()].filter(([, file]) => Buffer.from(file).includes(page));
    expect(bytes.map(([path]) => path.replace(/.*\//, '')).every((name) => handedOut.includes(name))).toBe(
      true,
    );
  });

  it('is told about, file by file, before anything is published', () => {
    const text = (file: string) =>
      textOf(moduleFile).replace('read: the basics', `read: ${JSON.stringify(file)}\n    text: a.vtt`);
    const codes = (file: string) =>
      findingsOf(
        new Map(Object.entries({ ...Object.fromEntries(baseFiles), ...bytesOf(file, text(file)) })),
      ).map(({ code, severity }) => `${code} ${severity}`);
    for (const file of ['index.html', 'evil.svg', 'evil.js', 'evil.xhtml'])
      expect([file, codes(file)]).toEqual([file, ['module-file-kind-unknown error']]);
    for (const kind of moduleFileKinds) expect([kind, codes(`a.${kind}`)]).toEqual([kind, []]);
  });
});

function bytesOf(file: string, module: string): Record<string, Uint8Array> {
  const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
  const folder = 'modules/first-access';
  return {
    [moduleFile]: bytes(module),
    [`${folder}/${file}`]: bytes(page),
    [`${folder}/a.vtt`]: bytes('WEBVTT'),
  };
}

it.each([
  ['film.é', 'film'],
  ['film.___', 'film'],
  [`a.${'x'.repeat(300)}`, `a.${'x'.repeat(12)}`],
  ['AUX.mp4', 'aux-file.mp4'],
  ['com1', 'com1-file'],
  ['...', 'file'],
  ['../../x.mp4', 'x.mp4'],
  ['C:\\x.mp4', 'c-x.mp4'],
  ['a\u202egp.4pm', 'a-gp.4pm'],
  ['', 'file'],
])('%j is published as %s', (name, safe) => {
  expect(safeFileName(name)).toBe(safe);
});
