import { describe, expect, it } from 'vitest';
import { searchDocument, searchScript } from '../../src/rendering/search-documents.ts';

const page = {
  href: 'guides/a/index.html',
  kind: 'guide',
  title: 'Needle block',
  says: 'needles under ultrasound',
} as const;

describe('a document of the search', () => {
  it('holds every word once', () => {
    const { words } = searchDocument({ ...page, text: 'Pour the gel. Pour it slowly, 60 °C.' }, {});
    expect(words).toBe('60 gel it pour slowly the');
  });

  it('holds what people also say for a word of it, in either direction', () => {
    const sayAlso = { ultrasound: ['sonography'], abscess: ['boil'] };
    expect(searchDocument({ ...page, text: '' }, sayAlso).words).toContain('sonography');
    expect(searchDocument({ ...page, says: 'a boil', text: '' }, sayAlso).words).toBe('abscess boil');
  });
});

describe('the script of the documents', () => {
  it('sets one global, and no text can close it', () => {
    const document = searchDocument({ ...page, title: '</script><script>alert(1)\u2028', text: '' }, {});
    const script = searchScript([document]);
    expect(script).not.toMatch(/<|\u2028/);
    const made = {} as { searchDocuments?: unknown };
    new Function('globalThis', script)(made);
    expect(made.searchDocuments).toEqual([
      [page.href, 'guide', '</script><script>alert(1)\u2028', page.says, ''],
    ]);
  });
});
