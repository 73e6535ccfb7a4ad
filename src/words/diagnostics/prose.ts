import type { ProblemFamily } from './sentences.ts';

/** The text below the front matter. */
export const proseProblems: ProblemFamily = {
  'raw-html': {
    says: '“{tag}” is HTML, which is not let into a guide.',
    why: 'It could bring in anything, and other viewers show it differently.',
    act: 'the same in Markdown; a < that is meant as itself wants a backslash before it',
  },
  'raw-html.comment': {
    says: 'A hidden remark in the text is not let into a guide.',
    why: 'It would look as if it were not there, and be published all the same.',
    write: '# …   in the front matter, if it is for those who write the guide',
  },
  'link-kind-unknown': {
    says: 'The link “{text}” leads to “{address}”, a kind of address that is not let in.',
    why: 'Besides addresses on the web, links may begin with one of: {kinds}.',
    write: '[{text}](https://…)',
  },
  'link-kind-unknown.near': {
    says: 'The link “{text}” leads to “{address}”; there is no kind “{scheme}”, and “{near}” comes near it.',
    write: '[{text}]({near}:{rest})',
  },
  'too-much-markdown.nesting': {
    says: 'More than {most} quotes or lists stand in one another here.',
    act: 'the line with fewer of them',
  },
  'too-much-markdown.columns': {
    says: 'A table has more than {most} columns here.',
    act: 'two tables, or rows in place of columns',
  },
  'too-much-markdown.work': {
    says: 'From here on, {file} would take more than {most} seconds to read.',
    why: 'What takes long are thousands of signs in one paragraph, of cells in a table, or of lists in lists.',
    act: 'two files in its place, or an empty line between paragraphs',
  },
};
