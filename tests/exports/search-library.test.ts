import { describe, expect, it } from 'vitest';
import { type FindablePage, searchLibrary, searchScript } from '../../src/exports/search-library.ts';

const page: FindablePage = {
  href: 'guides/a/index.html',
  kind: 'guide',
  title: 'Rib frame',
  of: '',
  says: 'placing a chest drain',
  text: '',
};
const also = (texts: Partial<FindablePage>, sayAlso: Record<string, readonly string[]>): string =>
  searchLibrary([{ ...page, ...texts }], sayAlso, []).pages[0]![6];

describe('what people also say', () => {
  const sayAlso = { 'chest drain': ['thoracostomy', 'intercostal drain'], abscess: ['boil'] };

  it('stands with a page that has one of the words, whichever of them it is', () => {
    expect(also({}, sayAlso)).toBe('thoracostomy intercostal drain');
    expect(also({ says: 'Thoracostomy' }, sayAlso)).toBe('chest drain intercostal drain');
    expect(also({ says: 'a boil' }, sayAlso)).toBe('abscess');
  });

  it('is taken as whole words and whole phrases, whatever the accents and marks between them', () => {
    expect(also({ says: 'boiling water; the chest, and a drain' }, sayAlso)).toBe('');
    expect(also({ says: 'Chest-drains' }, sayAlso)).toBe('');
    expect(also({ says: 'CHEST-DRÁIN' }, sayAlso)).toBe('thoracostomy intercostal drain');
  });

  it('does not come with the name of the guide that a step belongs to', () => {
    expect(also({ says: '', of: 'Abscess pouch' }, sayAlso)).toBe('');
  });
});

it('the script sets one global, no text can close it, and it says what was put in', () => {
  const library = searchLibrary(
    [{ ...page, title: '</script><script>alert(1)\u2028', text: ' one\n  two ' }],
    { pouch: ['bag'] },
    [['Guides', 'index.html']],
  );
  const script = searchScript(library);
  expect(script).not.toMatch(/<|\u2028/);
  const made = {} as { searchLibrary?: unknown };
  new Function('globalThis', script)(made);
  expect(made.searchLibrary).toEqual({
    alike: [['pouch', 'bag']],
    ways: [['Guides', 'index.html']],
    pages: [[page.href, 'guide', '</script><script>alert(1)\u2028', '', page.says, 'one two', '']],
  });
});
