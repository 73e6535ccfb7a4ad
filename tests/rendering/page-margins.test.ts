import { expect, it } from 'vitest';
import { pageMargins } from '../../src/rendering/page-margins.ts';

it('prints title and batch above, program and page below', () => {
  const style = pageMargins({
    title: 'Pad, 4 models',
    batchNumber: 'Batch no.',
    program: 'Room',
    page: 'Page {page} of {pages}',
  });
  expect(style).toContain('@top-left { content: "Pad, 4 models"; }');
  expect(style).toContain('@bottom-right { content: "Page " counter(page) " of " counter(pages); }');
});

it('lets no title end its string, its rule or the file', () => {
  const style = pageMargins({
    title: '"; } body { display: none } /*\n\\',
    batchNumber: '</style>',
    program: '',
    page: '{page}',
  });
  expect(style).toContain('"\\22 ; \\7d  body \\7b  display: none \\7d  /\\2a \\a \\5c "');
  expect(style).not.toMatch(/[<]|\} body/);
});
