import { toHtml } from 'hast-util-to-html';
import type { ElementContent, Nodes } from 'hast';
import { describe, expect, it } from 'vitest';
import { catalogueWords } from '../../src/words/catalogue.ts';
import { pageWords } from '../../src/words/pages.ts';
import { sheetWords } from '../../src/words/sheets.ts';
import { benchSheet } from '../../templates/sheets/bench-sheet.tsx';
import { cataloguePage } from '../../templates/library/catalogue-page.tsx';
import { cautionPanel } from '../../templates/page/caution.tsx';
import { articlesPage } from '../../templates/library/articles-page.tsx';
import { doorPage } from '../../templates/library/door-page.tsx';
import { guidePage } from '../../templates/guide/guide-page.tsx';
import { safetyPage } from '../../templates/library/safety-page.tsx';
import { said, shows } from '../../templates/page/place.ts';
import { seen } from './seen.ts';
import { guide, hotGlue, line, plan, site, step, text, view } from './views.ts';
import { showBenchCautions } from '../../src/showing/safety/show-bench-cautions.ts';

const html = (node: Nodes): string => toHtml(node);
const order = (page: string, ...marks: readonly string[]): boolean => {
  const places = marks.map((mark) => page.indexOf(mark));
  return places.every((at, i) => at >= 0 && (i === 0 || at > places[i - 1]!));
};
const words = (letters: string): readonly ElementContent[] => [{ type: 'text', value: letters }];

describe('a caution', () => {
  it('says signal, hazard, harm and how to avoid it, in this order', () => {
    const panel = html(cautionPanel(hotGlue, 'caution-hot-glue'));
    expect(order(panel, 'WARNING', 'Hot glue sticks', 'Deep burns', 'cold water')).toBe(true);
    expect(panel).toContain('id="caution-hot-glue"');
  });

  /** ANSI Z535.6-2011: the safety alert symbol stands with danger, warning and caution; a notice is not about injury. */
  it('has the safety alert symbol, and a notice has none', () => {
    expect(html(cautionPanel(hotGlue))).toContain('class="alert"');
    expect(html(cautionPanel({ ...hotGlue, signal: 'notice' }))).not.toContain('class="alert"');
  });
});

describe('a guide’s page', () => {
  it('puts what can hurt before the tray, and the tray before the acts', () => {
    const prose = {
      careful: words('Never alone.'),
      acts: words('Press it.'),
      rightWhen: words('It holds.'),
      ifNot: words('Again.'),
      figures: [],
    };
    const page = html(guidePage({ ...view, steps: { 'glue-it': prose } }));
    const own = page.slice(page.indexOf('id="step-glue-it"'));
    expect(
      order(
        own,
        'Hot glue sticks',
        'Never alone.',
        'Glue: irritates',
        'Wear heat-proof',
        'class="tray"',
        'within 45 min',
        'Press it.',
        'It holds.',
        'Again.',
      ),
    ).toBe(true);
  });

  it('groups the cautions before everything else that it says', () => {
    const page = html(
      guidePage({ ...view, before: [{ id: 'text-opening', heading: '', content: words('About it.') }] }),
    );
    expect(
      order(
        page,
        '<main',
        'id="caution-hot-glue"',
        'Local policy first.',
        'About it.',
        'id="materials"',
        'id="build"',
      ),
    ).toBe(true);
  });

  it('says why where there is no schedule, and draws none', () => {
    const schedule = { ...plan.schedule, none: text('No schedule can keep every limit.') };
    const page = seen(guidePage({ ...view, plan: { ...plan, schedule } }));
    expect(page).toContain('No schedule can keep every limit.');
    expect(page).not.toContain('class="strip"');
  });

  it('names no danger where its author names none, and says to look round all the same', () => {
    const calm = { ...line, cautions: [], steps: [] };
    expect(html(guidePage({ ...view, line: calm }))).toContain(pageWords.guide.noCautions);
  });

  it('carries a band while it is a draft, and only then', () => {
    expect(html(guidePage(view))).not.toContain(pageWords.draft);
    expect(html(guidePage({ ...view, guide: { ...guide, status: 'draft' } }))).toContain(pageWords.draft);
  });

  it('leads from level to level where there are several, and marks this one', () => {
    const levels = [
      { id: 'thin', name: 'Thin', href: 'index.html' },
      { id: 'thick', name: 'Thick', href: 'thick/index.html' },
    ];
    const page = html(
      guidePage({ ...view, guide: { ...guide, level: { id: 'thin', name: text('Thin') } }, levels }),
    );
    expect(page).toContain('<a href="index.html" data-to-level="thin" aria-current="page">Thin</a>');
    expect(page).toContain('<a href="thick/index.html" data-to-level="thick">Thick</a>');
    expect(html(guidePage(view))).not.toContain('class="levels"');
  });

  it('leaves out parts that say nothing, on the page and on the ruler', () => {
    const page = html(guidePage(view));
    expect(page).not.toContain('id="checks"');
    expect(page).not.toContain('href="#checks"');
    expect(page).toContain('href="#in-use"');
  });

  it('escapes what authors write', () => {
    const page = html(guidePage({ ...view, guide: { ...guide, title: text('<b>"A" & b</b>') } }));
    expect(page).toContain('&#x3C;b>"A" &#x26; b&#x3C;/b>');
  });
});

describe('a bench sheet', () => {
  const sheet = {
    language: 'en',
    root: '../../../',
    back: '../index.html',
    guide,
    plan,
    line,
    batch: '4 models',
    models: [text('1'), text('2')],
    steps: {},
    cautions: showBenchCautions('cautions', line),
  };

  it('says on its front what to read before, measure out, note and sign, on its back what to do and check', () => {
    const page = html(benchSheet(sheet));
    expect(
      order(
        page,
        plan.trainingOnly.text,
        'Hot glue sticks',
        `<h2>${sheetWords.clear}`,
        `<h2>${sheetWords.weigh}`,
        `<h2>${sheetWords.changes}`,
        `<h2>${sheetWords.signOff}`,
        `<h2>${sheetWords.make}`,
        `<h2>${sheetWords.checks}`,
      ),
    ).toBe(true);
  });

  it('puts the dangers of a step below its name and above its acts', () => {
    const prose = { careful: [], acts: words('Press it.'), rightWhen: [], ifNot: [], figures: [] };
    const page = html(benchSheet({ ...sheet, steps: { [step.id]: prose } }));
    const make = page.slice(page.indexOf('class="make"'));
    expect(order(make, 'Glue it', 'WARNING', 'Press it.', '60 °C', 'Wait 1 h')).toBe(true);
    expect(order(page, 'Glue: irritates', 'class="make"')).toBe(true);
  });

  it('has a box for each model below each question', () => {
    const page = html(benchSheet(sheet));
    const asked = page.slice(page.indexOf('class="asked"')).split('class="boxes"').slice(1);
    expect(asked.length).toBeGreaterThan(0);
    for (const boxes of asked.map((all) => all.replace(/<template>.*?<\/template>/g, '')))
      expect(boxes.match(/class="box"/g)).toHaveLength(2);
  });
});

describe('other pages', () => {
  it('the catalogue says so where there is no guide yet', () => {
    const none = { facets: [], entries: [], longest: text('0 min') };
    expect(html(cataloguePage(site, [], none, ''))).toContain(catalogueWords.empty);
  });

  it('the door leads to the editions that were published, and to no other', () => {
    const door = html(doorPage(site, ['staff']));
    expect(door).toContain('href="staff/index.html"');
    expect(door).not.toContain('trainees');
  });

  it('the safety page says what comes first, and when no product with a danger is listed', () => {
    const page = html(
      safetyPage({
        site: { ...site, policy: { contact: 'the safety lead', link: 'https://example.org/policy' } },
        hazards: [],
        csv: 'hazards.csv',
      }),
    );
    expect(
      order(
        page,
        pageWords.safety.order[0],
        pageWords.safety.order[1],
        'the safety lead',
        'DANGER',
        pageWords.safety.none,
      ),
    ).toBe(true);
  });

  it('a material says what it must be, its dangers, its packs, what stands in for it and who uses it', () => {
    const article = {
      id: 'glue',
      name: text('Glue'),
      must: [text('without solvent'), text('clear')],
      packs: [
        {
          holds: text('50 mL'),
          price: text('£2.00'),
          priced: text('3 May 2026'),
          from: text('a shop'),
          arrives: text('2 working days'),
        },
      ],
      free: false,
      facts: [{ name: text('Density'), value: text('1.1 g/mL') }],
      dangers: [text('Causes skin irritation (H315)')],
      label: text('Signal word of the label: Warning.'),
      precautions: [text('Keep container tightly closed. (P233)')],
      dataSheet: { dated: text('of 1 May 2026'), link: 'https://example.org/sheet' },
      notWith: [{ id: 'felt', name: text('Felt') }],
      instead: [{ id: 'tape', name: text('Tape'), says: text('not tried yet') }],
    };
    const page = html(
      articlesPage(site, 'materials', [
        { article, usedIn: [{ name: 'Practice strap', href: '../guides/strap/index.html' }] },
      ]),
    );
    expect(
      order(
        page,
        'id="material-glue"',
        'without solvent, clear',
        'H315',
        'Signal word of the label: Warning.',
        'P233',
        'https://example.org/sheet',
        '50 mL',
        '£2.00',
        '1.1 g/mL',
        '#material-felt',
        '#material-tape',
        '../guides/strap/index.html',
      ),
    ).toBe(true);
  });
});

describe('a finished text', () => {
  it('stands with its key', () => {
    expect(shows(text('5 min'))).toEqual({ dataShows: '5 min', children: '5 min' });
  });

  it('fills the blanks of a sentence, and leaves a blank that nobody fills', () => {
    expect(said('Page {page} of {pages}', { page: '1' })).toBe('Page 1 of {pages}');
  });
});
