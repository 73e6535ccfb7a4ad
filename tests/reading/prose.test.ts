import { describe, expect, it } from 'vitest';
import { codesOf, readGuide } from './base-workspace.ts';

const matter = 'materials: []\nsteps: []\n';
const prose = (text: string) => readGuide(matter, text).workspace!.guides['small']!.prose;

describe('sections', () => {
  it('begin at headings of level 2; what stands before is one of its own', () => {
    expect(prose('Hello.\n\n## One\n\n### Inside\n\n## Two\n').sections).toMatchObject([
      { heading: '', slug: '', at: { line: 6, column: 1 } },
      { heading: 'One', slug: 'one', at: { line: 8, column: 1, length: 6 } },
      { heading: 'Two', slug: 'two', at: { line: 12 } },
    ]);
  });

  it('have slugs of plain letters, each another', () => {
    const slugs = prose(
      '## Größe & Maß\n## Pour\n## Pour\n## Pour 2\n## Pour\n## Шаг\n## Шаг\n',
    ).sections.map(({ slug }) => slug);
    expect(slugs).toEqual(['grosse-mass', 'pour', 'pour-2', 'pour-2-2', 'pour-3', 'section', 'section-2']);
  });

  it('say which of the three readings they hold, however they are typed', () => {
    const text = '## One\n### Be careful\n### RIGHT WHEN:\n## Two\n### If not\n### if not\n### Something\n';
    expect(prose(text).sections.map(({ has }) => has)).toEqual([['be-careful', 'right-when'], ['if-not']]);
  });

  it('take a heading’s text without its marks', () => {
    expect(prose('## *Melt* the `gel`\n').sections[0]).toMatchObject({
      heading: 'Melt the gel',
      slug: 'melt-the-gel',
    });
  });
});

describe('links', () => {
  it('of our own kinds keep kind, target and text', () => {
    const text =
      '## A\n[300 mm x 200 mm\nof felt](material:felt) and [it](step:a), [x](set:heat), [y](caution:hot), [z](https://a.example)\n';
    expect(prose(text).links).toMatchObject([
      {
        kind: 'material',
        target: 'felt',
        text: '300 mm x 200 mm of felt',
        section: 0,
        at: { line: 7, column: 1 },
      },
      { kind: 'step', target: 'a', at: { line: 8, column: 29, length: 12 } },
      { kind: 'set', target: 'heat' },
      { kind: 'caution', target: 'hot' },
      { kind: 'other', target: 'https://a.example' },
    ]);
  });

  it('by reference lead where their definition says', () => {
    expect(prose('[felt][f]\n\n[f]: material:felt-3mm\n').links).toMatchObject([
      { kind: 'material', target: 'felt-3mm' },
    ]);
  });

  it('stand in tables and lists too', () => {
    expect(
      prose('| a |\n| - |\n| [x](tool:scale) |\n\n- [y](tool:jug)\n').links.map(({ target }) => target),
    ).toEqual(['scale', 'jug']);
  });

  it.each(['javascript:alert(1)', 'data:text/html,x', 'file:///etc/passwd', 'vbscript:x', 'JavaScript:x'])(
    'to %s are refused',
    (address) => {
      expect(codesOf(readGuide(matter, `[x](${address})\n`))).toEqual(['link-kind-unknown']);
    },
  );

  it.each([
    'https://a.example',
    'mailto:a@b.example',
    'tel:+44',
    '../other.md',
    '#pour',
    'photo 1.jpg'.replace(' ', '%20'),
  ])('to %s are fine', (address) => {
    expect(codesOf(readGuide(matter, `[x](${address})\n`))).toEqual([]);
  });
});

describe('images', () => {
  it('exist where their file lies in the guide’s own folder', () => {
    const { images } = prose(
      '![a](none.jpg)\n![b](../needle-block/tube-in-tin.jpg)\n![c](https://a.example/x.jpg)\n',
    );
    expect(images.map(({ exists }) => exists)).toEqual([false, false, false]);
  });
});

describe('HTML', () => {
  it('is refused once for a pair of tags, in a line and as a block', () => {
    expect(codesOf(readGuide(matter, 'a <b>c</b>\n\n<script>\nalert(1)\n</script>\n'))).toEqual([
      'raw-html',
      'raw-html',
    ]);
  });

  it('is not what only looks like it', () => {
    expect(
      codesOf(readGuide(matter, 'a < b, <5 mm, 3 > 2, `<b>`, <https://a.example>\n\n    <b>\n')),
    ).toEqual([]);
  });
});

describe('what nobody sees', () => {
  it.each([
    'a&#x202e;b',
    '## a&#8238;b',
    'a&#x2028;b',
    '[x](https://a&#x2066;b.example)',
    '![a&#x202e;b](b.jpg "c")',
  ])('does not come in by an entity, %s', (text) => {
    expect(codesOf(readGuide(matter, `${text}\n`)).map((code) => code.split('.')[0])).toContain(
      'hidden-character',
    );
  });

  it('is not a hard blank, and not the text of an entity', () => {
    expect(codesOf(readGuide(matter, '5&nbsp;g, `&#x202e;`, 1&ndash;2\n'))).toEqual([]);
  });
});

describe('times and ratios', () => {
  it('stay text: no mark of another dialect eats them', () => {
    const { documents } = readGuide(matter, 'Mix 1:10 at 9:30, see a@b.example and www.a.example.\n');
    expect(JSON.stringify(documents['small']!.root)).toContain(
      'Mix 1:10 at 9:30, see a@b.example and www.a.example.',
    );
  });
});

describe('the tree for whoever renders it', () => {
  it('is in step with the facts', () => {
    const { documents, workspace } = readGuide(
      matter,
      'Hello [a](tool:a).\n\n## One\n\n![b](b.jpg) [c](tool:c)\n\n## Two\n',
    );
    const { root, sections, links, images } = documents['small']!;
    const facts = workspace!.guides['small']!.prose;
    expect(sections).toHaveLength(facts.sections.length);
    expect(sections.map(({ from }) => root.children[from]!.position!.start.line)).toEqual(
      facts.sections.map(({ at }) => at.line),
    );
    expect(
      [...links].map(([node, index]) => [node.position!.start.line, facts.links[index]!.target]),
    ).toEqual([
      [6, 'a'],
      [10, 'c'],
    ]);
    expect([...images.values()]).toEqual([0]);
  });
});

/** Each of these takes the parser minutes at this length; all end in a refusal after one pass over the lines. */
describe('text made to keep the parser busy', () => {
  const repeated = (text: string): string => text.repeat(Math.floor(900_000 / text.length));
  it.each<[string, string]>([
    ['stars that open and never close', repeated(`${'*a **b '.repeat(300)}\n\n`)],
    ['brackets', repeated(`${'['.repeat(900)}\n\n`)],
    ['links in links', repeated(`${'[a]('.repeat(900)}\n\n`)],
    [
      'backticks of every length',
      repeated(`${Array.from({ length: 40 }, (_, i) => `${'`'.repeat(i + 1)}a`).join(' ')}\n\n`),
    ],
    ['quotes in quotes', repeated(`${'> '.repeat(99)}a\n\n`)],
    ['lists in lists', repeated(`${'- '.repeat(99)}a\n`)],
    [
      'lists indented ever further',
      repeated(`${Array.from({ length: 49 }, (_, i) => `${'  '.repeat(i)}- a`).join('\n')}\n\n`),
    ],
    [
      'a table without end',
      `|${'a|'.repeat(100)}\n|${'-|'.repeat(100)}\n${repeated(`|${'b|'.repeat(100)}\n`)}`,
    ],
    ['headings', repeated('## a\n')],
    ['underlined headings', repeated('a\n=\n')],
    ['empty lines', repeated('\n')],
    ['addresses of links', repeated('[a]: b\n')],
  ])('%s', (_, text) => {
    expect(codesOf(readGuide(matter, text))).toEqual(['too-much-markdown.work']);
  });

  it.each<[string, string, string]>([
    ['a hundred and one quotes', `${'> '.repeat(101)}a\n`, 'nesting'],
    ['a hundred and one lists', `${'- '.repeat(101)}a\n`, 'nesting'],
    ['a hundred and one columns', `|${'a|'.repeat(101)}\n|${'-|'.repeat(101)}\n`, 'columns'],
  ])('%s', (_, text, variant) => {
    expect(codesOf(readGuide(matter, text))).toEqual([`too-much-markdown.${variant}`]);
  });

  it('a long guide of ordinary prose is none of them', () => {
    const paragraph =
      'Lay the [felt](material:felt) *flat*, then press for `40 s` with both hands.\n- one\n- two\n\n';
    expect(codesOf(readGuide(matter, paragraph.repeat(500)))).toEqual([]);
  });

  it('a file over a megabyte is not looked at', () => {
    expect(codesOf(readGuide(matter, 'a'.repeat(1_000_000)))).toEqual(['file-too-large']);
  });
});
