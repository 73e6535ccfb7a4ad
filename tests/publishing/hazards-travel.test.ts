import { parse } from 'csv-parse/sync';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Signal, signals } from '../../src/core/model/guide.ts';
import type { PageRow } from '../../src/exports/search-library.ts';
import { makePlan } from '../../src/core/plan/plan.ts';
import type { Plan } from '../../src/core/plan/result.ts';
import type { Files } from '../../src/publishing/paths/files.ts';
import { makeSite } from '../../src/publishing/site.ts';
import { read as readWorkspace } from '../../src/reading/read.ts';
import { showShoppingList } from '../../src/showing/shopping/show-shopping-list.ts';
import { deferral } from '../../src/showing/safety/deferral.ts';
import { libraryWords } from '../../src/words/library.ts';
import { moduleWords } from '../../src/words/modules.ts';
import { safetyWords } from '../../src/words/safety.ts';
import { sheetWords } from '../../src/words/sheets.ts';
import { teachingWords } from '../../src/words/teaching.ts';
import { demoSite, picturesNow, readDemo, today } from './demo-site.ts';
import { lettersOf, pagesOf } from './html.ts';

/** As the demo's program.yaml has the contact. */
const lastWord = deferral({ policy: { contact: 'the skills room safety lead' } });

let site: Files;
let pages: ReadonlyMap<string, string>;
beforeAll(async () => {
  site = await demoSite();
  pages = new Map(pagesOf(site));
}, 60_000);

const textOf = (path: string): string => new TextDecoder().decode(site.get(path));
const guidePages = () =>
  [...pages].filter(
    ([path, html]) => path.startsWith('trainees/guides/') && html.includes('<li class="step"'),
  );
const sheetsNamed = (name: string) => [...pages].filter(([path]) => path.endsWith(`/${name}/index.html`));
const signalsIn = (html: string): readonly Signal[] =>
  [...html.matchAll(/signal-(danger|warning|caution|notice)/g)].map(([, signal]) => signal as Signal);
const isOrdered = (html: string): boolean => {
  const order = signalsIn(html).map((signal) => signals.indexOf(signal));
  return order.every((rank, i) => i === 0 || order[i - 1]! <= rank);
};

// ANSI Z535.6 (2011), from memory: grouped safety messages come before the procedure, embedded ones before their step.
describe('what can hurt', () => {
  it('stands together at the head of a guide, most severe first, before any step', () => {
    expect(guidePages().length).toBeGreaterThan(6);
    for (const [path, html] of guidePages()) {
      const [from, firstStep] = [html.indexOf('id="careful"'), html.indexOf('id="step-')];
      expect([path, from > 0 && from < firstStep]).toEqual([path, true]);
      const group = html.slice(from, html.indexOf('</section>', from));
      expect([path, signalsIn(group).length > 0, isOrdered(group)]).toEqual([path, true, true]);
    }
  });

  it.each([
    ['a guide', () => guidePages(), /<li class="step"/, 'class="acts'],
    ['a bench sheet', () => sheetsNamed('bench-sheet'), /<article class="step"/, 'class="acts'],
  ] as const)('stands in each step of %s before its first act, most severe first', (_, all, start, acts) => {
    const steps = all().flatMap(([path, html]) =>
      html
        .split(start)
        .slice(1)
        .map((step) => [path, step] as const),
    );
    const dangerous = steps.filter(([, step]) => signalsIn(step.split(acts)[0]!).length > 0);
    expect(dangerous.length).toBeGreaterThan(10);
    for (const [path, step] of steps) {
      const [before, after = ''] = step.split(acts);
      expect([path, isOrdered(before!)]).toEqual([path, true]);
      expect([path, signalsIn(after)]).toEqual([path, []]);
    }
  });

  it('is never folded away, nor hidden until a script runs', () => {
    for (const [path, html] of pages) {
      const folded = [...html.matchAll(/<details[\s\S]*?<\/details>/g)].map(([text]) => text);
      const hidden = [...html.matchAll(/<li class="caution[^>]*\shidden[\s>]/g)];
      expect([path, folded.filter((text) => text.includes('class="caution')).length, hidden.length]).toEqual([
        path,
        0,
        0,
      ]);
    }
  });

  it('travels with the product: to the shopping list, the batch record and the tables', () => {
    const rows = parse(textOf('trainees/guides/suture-pad/shopping.csv'), {
      bom: true,
      columns: true,
    }) as Record<string, string>[];
    const glue = rows.find(({ Material }) => Material === 'Brush-on contact adhesive');
    expect(glue?.['Dangers']).toBe('H225; H315; H319; H336; H411');
    for (const sheet of ['shopping-list', 'batch-record']) {
      const letters = lettersOf(pages.get(`trainees/guides/suture-pad/${sheet}/index.html`)!);
      expect([sheet, letters.includes('Highly flammable liquid and vapour (H225)')]).toEqual([sheet, true]);
    }
  });

  it('stands in full on the batch record as on the bench sheet, most severe first, before what is filled in', () => {
    const inGroup = (html: string): readonly string[] =>
      [...html.matchAll(/<p class="hazard">.*?<\/p>/gs)].map(([text]) => lettersOf(text));
    const records = sheetsNamed('batch-record');
    expect(records.length).toBeGreaterThan(10);
    for (const [path, html] of records) {
      const [group, rest = ''] = html.split('<table class="made">');
      const bench = pages.get(path.replace('batch-record', 'bench-sheet'))!;
      expect([path, isOrdered(group!), signalsIn(rest)]).toEqual([path, true, []]);
      expect([path, inGroup(group!)]).toEqual([path, inGroup(bench)]);
      expect([path, inGroup(group!).length > 0]).toEqual([path, true]);
    }
  });

  it('travels with a tool: to what is to have ready, and to the list where one is to buy', async () => {
    const read = await readDemo();
    const { program, ...rest } = read.workspace!;
    const workspace = { ...rest, program: { ...program, owned: { ...program.owned, 'craft-knife': 0 } } };
    const plan = makePlan(workspace, [{ guide: 'abscess-pouch', wanted: 2 }], {
      today,
      effort: '1/50',
    }) as Plan;
    const knife = showShoppingList('list', plan, workspace).tools.find(({ id }) => id === 'craft-knife');
    expect(knife?.dangers.text).toBe('A sharp blade, cuts');
    const ready = pages.get('trainees/guides/abscess-pouch/index.html')!.split('<ul class="kit"')[1]!;
    expect(lettersOf(ready.split('</ul>')[0]!)).toMatch(/Craft knife[^.]*A sharp blade, cuts/);
  });

  it('stands in the plan for other programs, most severe first', () => {
    const plan = JSON.parse(textOf('trainees/guides/needle-block/plan.json')) as {
      trainingOnly: string;
      safety: {
        cautions: { signal: Signal }[];
        steps: { step: string; cautions: string[]; hazards: object[] }[];
      }[];
    };
    expect(plan.trainingOnly).toBe(safetyWords.trainingOnly);
    const ranks = plan.safety[0]!.cautions.map(({ signal }) => signals.indexOf(signal));
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    expect(plan.safety[0]!.steps.find(({ step }) => step === 'set-the-tubes-in-the-tins')).toMatchObject({
      cautions: ['spray-and-flame'],
      hazards: [{ material: 'oil-spray', hazards: ['H222', 'H229'] }],
    });
  });

  it('is said where the search finds a dangerous step alone', () => {
    const script = textOf('trainees/search/library.js');
    const { pages: found } = JSON.parse(script.slice(script.indexOf('{'), script.lastIndexOf('}') + 1)) as {
      pages: readonly PageRow[];
    };
    const melt = found.find(([href]) => href.endsWith('needle-block/index.html#step-melt-the-gel'));
    expect(melt?.[3]).toBe('Ultrasound needle block · WARNING');
    const steps = found.filter(([, kind]) => kind === 'step');
    expect(steps.filter(([, , , of]) => /WARNING|CAUTION|DANGER/.test(of)).length).toBeGreaterThan(10);
  });
});

// Readers' goal 37: every warning has hazard, harm, how to avoid it, and a line on local policy.
describe('who has the last word', () => {
  const { inFull, atStep } = lastWord;
  const sectionOf = (html: string, start: string): string =>
    html.slice(html.indexOf(start)).split('</section>')[0]!;
  const pagesLike = (path: RegExp) => [...pages].filter(([name]) => path.test(name));

  it.each([
    ['a guide', /^trainees\/guides\/[^/]+\/(?:[^/]+\/)?index\.html$/, 'id="careful"'],
    ['a bench sheet', /\/bench-sheet\//, 'class="careful"'],
    ['a batch record', /\/batch-record\//, 'class="careful"'],
    ['a cutting plan', /\/cutting-plan\//, 'class="careful"'],
    ['a module for trainees', /\/modules\/[^/]+\/index\.html$/, 'id="careful"'],
    ['a module for staff', /\/session\/index\.html$/, 'id="careful"'],
    ['a hand-out', /\/hand-out\//, `<h2>${moduleWords.trainee.careful}</h2>`],
    ['a session plan', /\/session-plan\//, `<h2>${teachingWords.page.careful}</h2>`],
    ['the page on safety', /\/safety\/index\.html$/, 'id="hazards"'],
  ] as const)('stands in full, with whom to ask, in the group at the head of %s', (_, path, start) => {
    const met = pagesLike(path).filter(([, html]) => html.includes(start));
    expect(met.length).toBeGreaterThan(0);
    const silent = met.filter(([, html]) => !lettersOf(sectionOf(html, start)).includes(inFull));
    expect(silent.map(([name]) => name)).toEqual([]);
  });

  it.each(['shopping-list', 'batch-record', '../materials', '../tools'])(
    'stands above the first danger of a product on %s',
    (name) => {
      const folder = name.replace('../', '');
      const met = [...pages].filter(
        ([path, html]) =>
          path.includes(`/${folder}/index.html`) && /class="dangers"|class="named-list meets"/.test(html),
      );
      expect(met.length).toBeGreaterThan(0);
      for (const [path, html] of met) {
        const at = html.indexOf('class="defers"');
        const danger = html.search(/class="dangers"|class="named-list meets"/);
        expect([path, at > 0 && at < danger]).toEqual([path, true]);
      }
    },
  );

  it('stands in one line in every group of a step, on the page with whom to ask and a way to the whole', () => {
    const groups = guidePages().flatMap(([path, html]) =>
      html
        .split('<div class="dangers">')
        .slice(1)
        .map((group) => [path, group.split('class="acts')[0]!] as const),
    );
    expect(groups.length).toBeGreaterThan(20);
    const silent = groups.filter(
      ([, group]) => !lettersOf(group).includes(atStep) || !group.includes('<a href="#careful"'),
    );
    expect(silent.map(([path]) => path)).toEqual([]);
    const lines = sheetsNamed('bench-sheet').flatMap(([path, html]) =>
      [...html.matchAll(/<ul class="caution-lines">.*?<\/ul>/gs)].map(([group]) => [path, group] as const),
    );
    expect(lines.length).toBeGreaterThan(20);
    const ends = (group: string): boolean => lettersOf(group).trim().endsWith(sheetWords.policyFirst);
    expect(lines.filter(([, group]) => !ends(group)).map(([path]) => path)).toEqual([]);
  });
});

describe('for training only', () => {
  it('stands on every page and every sheet, and who has the last word too', () => {
    const plain = (html: string): string => lettersOf(html).replaceAll('\u00a0', ' ');
    expect(pages.size).toBeGreaterThan(100);
    const without = [...pages].filter(([, html]) => !plain(html).includes(safetyWords.trainingOnly));
    const undeferred = [...pages].filter(([, html]) => !plain(html).includes(lastWord.inFull));
    expect([...without, ...undeferred].map(([path]) => path)).toEqual([]);
  });

  it('stands on every label, with where a model is never put', () => {
    for (const [path, html] of sheetsNamed('labels')) {
      const labels = html.split('<article').slice(1).map(lettersOf);
      const bare = labels.filter(
        (text) => !text.includes(safetyWords.trainingOnly) || !text.includes(safetyWords.apart),
      );
      expect([path, labels.length > 0, bare.length]).toEqual([path, true, 0]);
    }
  });

  it('stays whatever a guide says of its storage, and there is no key that takes it off', async () => {
    const read = await readDemo();
    const workspace = read.workspace!;
    const board = workspace.guides['knot-board']!;
    const guides = {
      'knot-board': { ...board, title: 'For patient care', inUse: { renew: [], store: { apart: false } } },
    };
    const changed = makeSite({
      read: { ...read, workspace: { ...workspace, guides, modules: {} } },
      pictures: await picturesNow(read),
      today,
      shipped: new Map(),
      editions: ['trainees'],
    }) as Files;
    const letters = (path: string): string => lettersOf(new TextDecoder().decode(changed.get(path)));
    const page = letters('trainees/guides/knot-board/index.html');
    const label = letters('trainees/guides/knot-board/labels/index.html');
    expect(page).toContain(safetyWords.trainingOnly);
    expect(page).toContain(libraryWords.storeApart);
    expect([label.includes(safetyWords.trainingOnly), label.includes(safetyWords.apart)]).toEqual([
      true,
      true,
    ]);
    const files = new Map([
      [
        'program.yaml',
        new TextEncoder().encode('name: A\ncurrency: GBP\ntime-zone: Europe/London\ntraining-only: no\n'),
      ],
    ]);
    expect(readWorkspace(files).diagnostics.map(({ code }) => code)).toContain('unknown-key');
  });
});
