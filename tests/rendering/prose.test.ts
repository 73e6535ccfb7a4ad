import type { ElementContent, Root } from 'hast';
import { toHtml } from 'hast-util-to-html';
import type { Definition, Link, LinkReference } from 'mdast';
import { describe, expect, it } from 'vitest';
import { parseMarkdown } from '../../src/reading/prose/markdown.ts';
import { type ProsePlace, renderProse } from '../../src/rendering/prose.ts';
import { sanitise } from '../../src/rendering/sanitise.ts';
import { renderStep } from '../../src/rendering/step-prose.ts';

const place: ProsePlace = {
  addressOf: (written) => {
    if (/^(https?|mailto|tel):/.test(written)) return written;
    return written === 'material:felt' ? '../../materials/index.html#material-felt' : undefined;
  },
  amountOf: (link: Link | LinkReference) =>
    link.type === 'link' && link.title === 'amount'
      ? { key: 'lines[0].links[0]', text: '576 g of felt' }
      : undefined,
  pictureOf: (file) => (file === 'pot.jpg' ? { address: 'pot.jpg', width: 640, height: 480 } : undefined),
  print: (text) => text,
  deeper: 1,
};

function rendered(markdown: string, changes: Partial<ProsePlace> = {}): string {
  const { children } = parseMarkdown(markdown, 0);
  const definitions = children.filter((node): node is Definition => node.type === 'definition');
  return html(renderProse(children, definitions, { ...place, ...changes }));
}
const html = (children: readonly ElementContent[]): string =>
  toHtml({ type: 'root', children: [...children] });

describe('hostile prose', () => {
  it.each([
    ['<script>alert(1)</script>', '<code>&#x3C;script>alert(1)&#x3C;/script></code>'],
    ['A <img src=x onerror=alert(1)> b', '<p>A <code>&#x3C;img src=x onerror=alert(1)></code> b</p>'],
    [
      '<div style="position:fixed">over all</div>',
      '<code>&#x3C;div style="position:fixed">over all&#x3C;/div></code>',
    ],
    ['<!-- a comment -->', '<code>&#x3C;!-- a comment --></code>'],
  ])('%s stands there as text', (markdown, expected) => {
    expect(rendered(markdown)).toBe(expected);
  });

  it.each([
    '[a](javascript:alert(1))',
    '[a](JaVaScRiPt:alert(1))',
    '[a](data:text/html,x)',
    '[a](vbscript:x)',
    '[a](file:///etc/passwd)',
    '[a](//elsewhere.example/x)',
    '[a](../../../secret.html)',
    '[a][b]\n\n[b]: javascript:alert(1)',
    '<javascript:alert(1)>',
  ])('%s is words without a link', (markdown) => {
    expect(rendered(markdown)).not.toMatch(/href/);
  });

  it('a scheme that gets past the site’s own table is dropped by the sanitiser all the same', () => {
    for (const address of ['javascript:alert(1)', 'data:text/html,x', 'JAVASCRIPT:x', 'vbscript:x']) {
      expect(rendered('[a](x)', { addressOf: () => address })).not.toContain('href');
    }
  });

  it.each([
    '![a cat](data:image/png;base64,AAAA)',
    '![a cat](https://elsewhere.example/a.png)',
    '![a cat](//elsewhere.example/a.png)',
    '![a cat](../secret.jpg)',
  ])('%s is its alternative text', (markdown) => {
    expect(rendered(markdown)).toBe('<p>a cat</p>');
  });

  it.each([
    '//elsewhere.example/a.png',
    'https://elsewhere.example/a.png',
    'data:image/png;base64,AA',
    '/a.png',
  ])('a picture at %s is dropped by the sanitiser, whoever made it', (src) => {
    const tree: Root = {
      type: 'root',
      children: [{ type: 'element', tagName: 'img', properties: { src, alt: 'a' }, children: [] }],
    };
    expect(toHtml(sanitise(tree))).toBe('');
  });

  it.each([
    '//elsewhere.example/a.png 480w',
    'a.jpg 480w, https://elsewhere.example/a.png 960w',
    '/a.png 2x',
  ])('a picture with a copy at %s is dropped too', (srcSet) => {
    const properties = { src: 'a.jpg', srcSet, alt: 'a' };
    const tree: Root = {
      type: 'root',
      children: [{ type: 'element', tagName: 'img', properties, children: [] }],
    };
    expect(toHtml(sanitise(tree))).toBe('');
  });

  it('brings no id, name, style, class or handler of its own', () => {
    const tree: Root = {
      type: 'root',
      children: [
        {
          type: 'element',
          tagName: 'p',
          properties: {
            id: 'content',
            name: 'x',
            style: 'color:red',
            className: ['mat'],
            onClick: 'x()',
            dataFind: '',
          },
          children: [{ type: 'element', tagName: 'iframe', properties: { src: 'x.html' }, children: [] }],
        },
        {
          type: 'element',
          tagName: 'form',
          properties: { action: 'x' },
          children: [{ type: 'text', value: 'words' }],
        },
        { type: 'comment', value: 'c' },
      ],
    };
    expect(toHtml(sanitise(tree))).toBe('<p></p>words');
  });

  it('a heading’s id carries a prefix, so that it can pass for nothing of the page itself', () => {
    expect(rendered('## Content', { deeper: 0, idOf: () => 'content' })).toBe(
      '<h2 id="text-content">Content</h2>',
    );
  });
});

describe('links', () => {
  it('of a material leads to its entry; what begins with an amount shows the finished one with its key', () => {
    expect(rendered('Weigh [500 g of felt](material:felt "amount").')).toBe(
      '<p>Weigh <a href="../../materials/index.html#material-felt"><span class="amount" data-shows="lines[0].links[0]">576 g of felt</span></a>.</p>',
    );
  });

  it('to what is not on the site keeps its words', () => {
    expect(rendered('See [the module](module:first) for more.')).toBe(
      '<p>See <span>the module</span> for more.</p>',
    );
  });

  it('to another site says nothing about where its reader came from', () => {
    expect(rendered('[policy](https://example.org/p)')).toBe(
      '<p><a href="https://example.org/p" rel="noreferrer">policy</a></p>',
    );
  });

  it('by name finds its definition, wherever in the document that stands', () => {
    expect(rendered('See [felt][f].\n\n[f]: material:felt')).toBe(
      '<p>See <a href="../../materials/index.html#material-felt">felt</a>.</p>',
    );
  });
});

describe('figures', () => {
  it('a picture alone in its paragraph is a figure with its size; its title is the caption', () => {
    expect(rendered('![Gel in a pot](pot.jpg "Stir slowly.")')).toBe(
      '<figure><img src="pot.jpg" alt="Gel in a pot" width="640" height="480" loading="lazy" decoding="async"><figcaption>Stir slowly.</figcaption></figure>',
    );
    expect(rendered('![Gel in a pot](pot.jpg)')).toBe(
      '<figure><img src="pot.jpg" alt="Gel in a pot" width="640" height="480" loading="lazy" decoding="async"></figure>',
    );
  });

  it('a picture among words stays among them', () => {
    expect(rendered('Like this: ![Gel](pot.jpg)')).toBe(
      '<p>Like this: <img src="pot.jpg" alt="Gel" width="640" height="480" loading="lazy" decoding="async"></p>',
    );
  });

  it('a photo at several widths lets browsers choose', () => {
    const copies = [480, 960].map((width) => ({ address: `../pot-${width}.jpg`, width }));
    const pictureOf = () => ({ address: '../pot-960.jpg', width: 960, height: 720, copies });
    expect(rendered('![Gel](pot.jpg)', { pictureOf })).toBe(
      '<figure><img src="../pot-960.jpg" srcset="../pot-480.jpg 480w, ../pot-960.jpg 960w" ' +
        'sizes="(min-width: 66rem) 27rem, (min-width: 36rem) 34rem, 100vw" alt="Gel" width="960" height="720" ' +
        'loading="lazy" decoding="async"></figure>',
    );
  });

  it('on paper is left out whole', () => {
    expect(rendered('Before.\n\n![Gel](pot.jpg)\n\nAfter.', { withoutFigures: true })).toBe(
      '<p>Before.</p>\n<p>After.</p>',
    );
  });
});

describe('tables', () => {
  it('scroll by themselves, by keyboard too, and say what they are', () => {
    const table = rendered('| a | b |\n| :-- | --: |\n| 1 | 2 |');
    expect(table).toMatch(/^<div class="scroll" role="group" tabindex="0" aria-label="Table"><table>/);
    expect(table).toContain('<th class="end">b</th>');
    expect(table).not.toContain('align=');
  });
});

describe('headings', () => {
  it('stand as much deeper as the page asks, and never below level 6', () => {
    expect(rendered('### Three\n\n###### Six')).toBe('<h4>Three</h4>\n<h6>Six</h6>');
  });
});

describe('a step', () => {
  const step = (markdown: string) => renderStep(parseMarkdown(markdown, 0).children, [], place);

  it('is apart by what it is for: care before the acts, though its author wrote it last', () => {
    const parts = step(
      '1. Pour.\n\n![Gel](pot.jpg)\n\n### Right when\nIt is full.\n\n### If not:\nPour more.\n\n### Be careful\nIt is hot.',
    );
    expect(html(parts.careful)).toBe('<p>It is hot.</p>');
    expect(html(parts.acts)).toContain('Pour.');
    expect(html(parts.rightWhen)).toBe('<p>It is full.</p>');
    expect(html(parts.ifNot)).toBe('<p>Pour more.</p>');
    expect(html(parts.figures)).toContain('pot.jpg');
    expect(html(parts.acts)).not.toContain('pot.jpg');
  });

  it('keeps another heading of level 3, and what is below it, among the acts', () => {
    const parts = step('Do.\n\n### Right when\nDone.\n\n### For left hands\nTurn it.');
    expect(html(parts.acts)).toBe('<p>Do.</p>\n<h4>For left hands</h4>\n<p>Turn it.</p>');
    expect(html(parts.rightWhen)).toBe('<p>Done.</p>');
  });
});
