import { beforeAll, describe, expect, it } from 'vitest';
import type { Files } from '../../src/publishing/paths/files.ts';
import { makeSite } from '../../src/publishing/site.ts';
import { sheetIds } from '../../src/publishing/sheets/sheet-pages.ts';
import { deferral } from '../../src/showing/safety/deferral.ts';
import { pageWords } from '../../src/words/pages.ts';
import { demoSite, manualNow, picturesNow, readDemo, shippedNow, today } from './demo-site.ts';
import { decoded, lettersOf, pagesOf, tagsOf } from './html.ts';

/** As the demo's program.yaml has the contact. */
const lastWord = deferral({ policy: { contact: 'the skills room safety lead' } }).inFull;

let site: Files = new Map();
let pages: readonly (readonly [path: string, html: string])[] = [];
beforeAll(async () => {
  site = await demoSite();
  pages = pagesOf(site);
}, 60_000);

/** Runs over every page; what is wrong is listed with its path. */
function wrongPages(isWrong: (html: string, path: string) => unknown): readonly string[] {
  return pages.filter(([path, html]) => isWrong(html, path)).map(([path]) => path);
}
const guidePages = () =>
  pages.filter(
    ([path]) => /\/guides\/.+\/index\.html$/.test(path) && !sheetIds.some((id) => path.includes(`/${id}/`)),
  );
const sheets = () => pages.filter(([path]) => path.includes('bench-sheet'));
const cutPlans = () => pages.filter(([path]) => path.includes('cutting-plan'));

describe('the site of the demo program', () => {
  it('has a door, and in each edition the catalogue, each guide and level, its sheets, materials, tools, safety, search, manual', () => {
    const paths = [...site.keys()];
    expect(paths).toContain('index.html');
    for (const edition of ['trainees', 'staff']) {
      for (const path of [
        'index.html',
        'guides/needle-block/index.html',
        'guides/needle-block/deep/index.html',
        'guides/needle-block/bench-sheet/index.html',
        'guides/needle-block/deep/bench-sheet/index.html',
        'materials/index.html',
        'tools/index.html',
        'safety/index.html',
        'search/index.html',
        'search/library.js',
        'manual/limits/index.html',
      ]) {
        expect(paths).toContain(`${edition}/${path}`);
      }
    }
  });

  it('is the same to the byte when it is made again, whatever the order of the files that were read', async () => {
    const again = await demoSite();
    expect([...again.keys()]).toEqual([...site.keys()]);
    const different = [...site].filter(([path, bytes]) => Buffer.compare(bytes, again.get(path)!) !== 0);
    expect(different.map(([path]) => path)).toEqual([]);
    const read = await readDemo();
    const reversed = <T>(all: Readonly<Record<string, T>>): Record<string, T> =>
      Object.fromEntries(Object.entries(all).reverse());
    const workspace = {
      ...read.workspace!,
      guides: reversed(read.workspace!.guides),
      materials: reversed(read.workspace!.materials),
    };
    const backwards = makeSite({
      read: { ...read, workspace, files: reversed(read.files), documents: reversed(read.documents) },
      pictures: await picturesNow(read),
      today,
      shipped: await shippedNow(),
      manual: new Map([...(await manualNow())].reverse()),
    }) as Files;
    const moved = [...site].filter(
      ([path, bytes]) => Buffer.compare(bytes, backwards.get(path) ?? new Uint8Array()) !== 0,
    );
    expect(moved.map(([path]) => path)).toEqual([]);
  }, 60_000);

  it('has file names that every disk and archive takes', () => {
    const paths = [...site.keys()];
    expect(
      paths.filter((path) => !/^[a-z0-9-]+(\/[a-z0-9-]+)*\.[a-z0-9]+$/.test(path) || path.length >= 120),
    ).toEqual([]);
    expect(new Set(paths.map((path) => path.toLowerCase())).size).toBe(paths.length);
  });

  it('leads from every link to a page and a place on it that are there', () => {
    const ids = new Map(
      pages.map(([path, html]) => [path, new Set(tagsOf(html).map(({ attributes }) => attributes['id']))]),
    );
    const dead = pages.flatMap(([path, html]) =>
      tagsOf(html)
        .map(({ attributes }) => attributes['href'])
        .filter((href) => href !== undefined)
        .filter((href) => !/^(https?|mailto|tel):/.test(href))
        .filter((href) => !isThere(new URL(href, `site:///${path}`), ids))
        .map((href) => `${path} -> ${href}`),
    );
    expect(dead).toEqual([]);
  });

  function isThere(url: URL, ids: ReadonlyMap<string, ReadonlySet<string | undefined>>): boolean {
    const path = decodeURIComponent(url.pathname.replace(/^\/+/, ''));
    if (!site.has(path)) return false;
    return url.hash === '' || (ids.get(path)?.has(decodeURIComponent(url.hash.slice(1))) ?? false);
  }

  it('loads nothing from another place, and nothing by an absolute way', () => {
    const loading = pages.flatMap(([path, html]) =>
      tagsOf(html)
        .filter(({ name }) => name !== 'a')
        .flatMap(({ attributes }) => [attributes['src'], attributes['href'], attributes['srcset']])
        .filter((address) => address !== undefined)
        .filter((address) => /^([a-z]+:|\/)/i.test(address))
        .map((address) => `${path} -> ${address}`),
    );
    expect(loading).toEqual([]);
    const styles = [...site]
      .filter(([path]) => path.endsWith('.css'))
      .map(([, bytes]) => new TextDecoder().decode(bytes));
    expect(
      styles
        .flatMap((style) => [...style.matchAll(/url\(([^)]*)\)/g)].map(([, url]) => url!))
        .filter((url) => !url.includes('../fonts/')),
    ).toEqual([]);
  });

  it('says first in each head what the page may load, and holds no script or style of its own', () => {
    expect(
      wrongPages(
        (html) =>
          !decoded(html).includes(
            `<head><meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; base-uri 'none'; form-action 'none'">`,
          ),
      ),
    ).toEqual([]);
    expect(
      wrongPages((html) =>
        /<style|<script(?![^>]* src=| type="application\/ld\+json")|\sstyle="|\son[a-z]+="/.test(html),
      ),
    ).toEqual([]);
    expect(
      wrongPages((html) =>
        tagsOf(html).some(({ name, attributes }) => name === 'script' && attributes['type'] === 'module'),
      ),
    ).toEqual([]);
  });

  it('says on every page and sheet that it is for training only, and what comes before the guide', () => {
    expect(wrongPages((html) => !lettersOf(html).includes(pageWords.trainingOnly))).toEqual([]);
    expect(wrongPages((html) => !lettersOf(html).includes(lastWord))).toEqual([]);
  });

  it('shows no number that went wrong, and no form of a machine', () => {
    expect(
      wrongPages((html) => /\bNaN\b|\bInfinity\b|\bundefined\b|\[object |\{[a-z]+\}/i.test(lettersOf(html))),
    ).toEqual([]);
    expect(
      wrongPages((html) =>
        /[^\d.,]\.\d|\d\.0(?![\d.])/.test(
          lettersOf(html).replace(
            /version \d+(\.\d+)+|\b\d+\.\d+\.\d+\b|ANSI Z[\d.]+|CC-[A-Z-]+[\d.]+|Rev\. \d+|penalty\.\d/g,
            '',
          ),
        ),
      ),
    ).toEqual([]);
  });

  it('has one heading of level 1 on each page, and none that skips a level', () => {
    const levels = (html: string) => [...html.matchAll(/<h([1-6])[\s>]/g)].map(([, level]) => Number(level));
    expect(wrongPages((html) => levels(html).filter((level) => level === 1).length !== 1)).toEqual([]);
    expect(
      wrongPages((html) => levels(html).some((level, i, all) => i > 0 && level > all[i - 1]! + 1)),
    ).toEqual([]);
  });

  it('gives every id once', () => {
    const repeated = (html: string) => {
      const ids = tagsOf(html).flatMap(({ attributes }) => attributes['id'] ?? []);
      return ids.filter((id, i) => ids.indexOf(id) !== i);
    };
    expect(pages.flatMap(([path, html]) => repeated(html).map((id) => `${path}#${id}`))).toEqual([]);
  });

  it('gives every picture its size and what it shows in words', () => {
    const pictures = pages.flatMap(([path, html]) =>
      tagsOf(html)
        .filter(({ name }) => name === 'img')
        .map((tag) => ({ path, ...tag })),
    );
    expect(pictures.length).toBeGreaterThan(20);
    const poor = pictures.filter(
      ({ attributes: { alt = '', width = '', height = '' } }) =>
        alt.length < 10 || !(Number(width) > 0) || !(Number(height) > 0),
    );
    expect(poor).toEqual([]);
  });
});

describe('cautions on a guide’s page', () => {
  it('stand in a group at the top, most severe first, before anything that is to be done', () => {
    const order = ['danger', 'warning', 'caution', 'notice'];
    for (const [path, html] of guidePages()) {
      const group = html.slice(html.indexOf('id="careful"'), html.indexOf('class="defers"'));
      const signals = [...group.matchAll(/signal-(danger|warning|caution|notice)"/g)].map(([, signal]) =>
        order.indexOf(signal!),
      );
      expect([path, signals]).toEqual([path, [...signals].sort((a, b) => a - b)]);
      expect(html.indexOf('id="careful"')).toBeLessThan(html.indexOf('<ol class="steps"'));
    }
  });

  it('stand in each step before what to take and before its first act, and so do dangers and what protects', () => {
    const steps = guidePages().flatMap(([path, html]) =>
      html
        .split('<li class="step"')
        .slice(1)
        .map((step) => ({ path, step })),
    );
    expect(steps.length).toBeGreaterThan(50);
    const dangerous = steps.filter(({ step }) => step.includes('class="dangers"'));
    expect(dangerous.length).toBeGreaterThan(20);
    const late = dangerous.filter(({ step }) => {
      const first = Math.min(
        ...['class="tray"', 'class="acts'].map((mark) => step.indexOf(mark)).filter((at) => at >= 0),
      );
      const last = Math.max(
        ...['signal-', 'named-list meets', 'named-list wear'].map((mark) => step.lastIndexOf(mark)),
      );
      return last > first;
    });
    expect(late.map(({ path }) => path)).toEqual([]);
  });

  it('stand on the sheet above the acts of their step', () => {
    const steps = sheets().flatMap(([path, html]) => {
      const make = html.slice(html.indexOf('class="make"'), html.indexOf('class="checks"'));
      return make
        .split('<article class="step"')
        .slice(1)
        .map((step) => ({ path, step }));
    });
    expect(steps.length).toBeGreaterThan(50);
    const late = steps.filter(
      ({ step }) =>
        Math.max(step.lastIndexOf('caution-line'), step.lastIndexOf('step-careful')) >
        step.indexOf('class="acts"'),
    );
    expect(late.map(({ path }) => path)).toEqual([]);
  });

  it('say hazard and how to avoid it, wherever they stand', () => {
    const panels = guidePages().flatMap(([, html]) => html.split('<li class="caution ').slice(1));
    expect(panels.length).toBeGreaterThan(20);
    expect(
      panels.filter((panel) => !panel.includes('class="hazard"') || !panel.includes('class="avoid"')),
    ).toEqual([]);
  });
});

describe('a sheet to print', () => {
  it('names no price', () => {
    expect(cutPlans().length).toBeGreaterThan(5);
    expect(
      [...sheets(), ...cutPlans()]
        .filter(([, html]) => /[£€$]\d/.test(lettersOf(html)))
        .map(([path]) => path),
    ).toEqual([]);
  });

  it('has a style of its own that prints title, version, batch and page on each page', () => {
    const head = new TextDecoder().decode(site.get('trainees/guides/needle-block/bench-sheet/head.css'));
    expect(head).toContain(
      '@top-left { content: "Ultrasound needle block, Shallow vessels · bench sheet · version 1.2.0 · 4',
    );
    expect(head).toContain('@bottom-right { content: "Page " counter(page) " of " counter(pages); }');
  });
});

describe('what a plan shows', () => {
  it('stands on the page with its key, letter for letter', () => {
    const page = new TextDecoder().decode(site.get('trainees/guides/needle-block/index.html'));
    const keys = tagsOf(page).flatMap(({ attributes }) => attributes['data-shows'] ?? []);
    expect(keys).toContain('lines[0].models');
    expect(keys.some((key) => /^lines\[0\]\.links\[\d+\]$/.test(key))).toBe(true);
    expect(keys).toContain('shopping.total');
    // A list has a blank row, from which the browser makes as many as the plan has.
    for (const key of ['facts[].value', 'lines[0].materials[].total', 'schedule.days[].rows[].what'])
      expect(keys).toContain(key);
  });

  it('has a page for each level, and each leads to the other', () => {
    const page = new TextDecoder().decode(site.get('trainees/guides/needle-block/deep/index.html'));
    const links = tagsOf(page).flatMap(({ attributes }) => attributes['href'] ?? []);
    expect(links).toContain('../../../guides/needle-block/index.html');
    expect(lettersOf(page)).toContain('Deep vessels');
  });

  it('says on a draft that it is one', () => {
    for (const [path, html] of [...sheets(), ...cutPlans()])
      expect([path, html.includes('class="draft"')]).toEqual([path, path.includes('neck-airway-trainer')]);
    const drafts = guidePages().filter(([, html]) => html.includes('class="draft"'));
    expect(drafts.map(([path]) => path).filter((path) => path.startsWith('trainees'))).toEqual([
      'trainees/guides/neck-airway-trainer/index.html',
      'trainees/guides/neck-airway-trainer/thick/index.html',
    ]);
  });
});
