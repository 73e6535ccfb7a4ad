import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { safeSvg } from '../../src/rendering/safe-svg.ts';

const made = (svg: string): string | undefined => {
  const bytes = safeSvg(new TextEncoder().encode(svg));
  return bytes && new TextDecoder().decode(bytes);
};
const drawing = (inside: string, attributes = ''): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"${attributes}>${inside}</svg>`;
const own = (inside: string): string => `${drawing(inside)}\n`;

describe('a drawing', () => {
  it('keeps its lines, texts, styles and what refers within it', () => {
    const svg = drawing(
      '<style>.a{fill:url(#g)}</style><g class="a" transform="rotate(2)"><path d="M0 0h9" stroke-width="2"/><text x="1" y="2">5 &lt; 6</text><use href="#p"/></g>',
    );
    expect(made(svg)).toBe(`${svg}\n`);
  });

  it('loses what runs, with all that is in it', () => {
    expect(made(drawing('<script>alert(1)</script><path d="M0 0"/>'))).toBe(own('<path d="M0 0"/>'));
    expect(made(drawing('<foreignObject><body>x</body></foreignObject>'))).toBe(own(''));
    expect(made(drawing('<a href="#x"><path d="M0 0"/></a>'))).toBe(own(''));
    expect(made(drawing('<animate attributeName="href" to="javascript:x"/>'))).toBe(own(''));
  });

  it.each([
    ['a handler', '<path onclick="x()" d="M0 0"/>'],
    ['a handler in capitals', '<path ONLOAD="x()" d="M0 0"/>'],
    ['an address elsewhere', '<path href="https://elsewhere.example" d="M0 0"/>'],
    ['an address elsewhere under the old name', '<path xlink:href="data:text/html,x" d="M0 0"/>'],
    ['a script in an address', '<path href="java&#115;cript:x" d="M0 0"/>'],
    ['a style that loads', '<path style="fill:url(https://elsewhere.example/a)" d="M0 0"/>'],
    ['a style that loads behind an entity', '<path style="fill:ur&#108;(//elsewhere.example/a)" d="M0 0"/>'],
    ['a fill that loads', '<path fill="url( \'http://elsewhere.example/a#b\')" d="M0 0"/>'],
  ])('loses %s', (_, inside) => {
    expect(made(drawing(inside))).toBe(own('<path d="M0 0"/>'));
  });

  it('loses a sheet of styles that loads', () => {
    expect(made(drawing('<style>@import "https://elsewhere.example/a.css";</style>'))).toBe(
      own('<style></style>'),
    );
  });

  it('always says that it is a drawing, and nothing else', () => {
    expect(made('<svg viewBox="0 0 9 9"></svg>')).toBe(own(''));
    expect(made('<svg xmlns="http://www.w3.org/1999/xhtml" viewBox="0 0 9 9"></svg>')).toBe(own(''));
  });

  it.each([
    ['entities of its own', '<!DOCTYPE svg [<!ENTITY x "y">]><svg>&x;</svg>'],
    ['an entity that XML does not know', drawing('&nbsp;')],
    ['tags that do not match', '<svg><g></svg></g>'],
    ['an open end', '<svg><g>'],
    ['no drawing', '<html><svg></svg></html>'],
    ['nothing', ''],
    ['a marked section', drawing('<![CDATA[<script>]]>')],
    ['an attribute without quotes', '<svg onload=alert(1)></svg>'],
  ])('is not published with %s', (_, svg) => {
    expect(made(svg)).toBeUndefined();
  });

  it('made by a program, with a prologue, a document type and comments, is published', () => {
    const prologue =
      '<?xml version="1.0"?>\n<!-- made by hand -->\n<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">\n';
    expect(made(prologue + drawing('<metadata><x:y/></metadata><path d="M0 0"/>'))).toBe(
      own('<path d="M0 0"/>'),
    );
  });

  it('of the demo guides stays as it is drawn', () => {
    const guides = fileURLToPath(new URL('../../content/quillmoor/guides', import.meta.url));
    const files = readdirSync(guides, { recursive: true, encoding: 'utf8' }).filter((name) =>
      name.endsWith('.svg'),
    );
    expect(files.length).toBeGreaterThan(10);
    const plain = (svg: string): string => svg.replace(/\s+/g, ' ').replace(/ ?\/>/g, '/>').trim();
    const changed = files.filter((file) => {
      const source = readFileSync(join(guides, file), 'utf8');
      return plain(made(source) ?? '') !== plain(source.replace(/<!--.*?-->/gs, ''));
    });
    expect(changed).toEqual([]);
  });
});
