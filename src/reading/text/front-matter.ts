import matter from 'gray-matter';
import { Bug } from '../../core/diagnostic.ts';
import { limits } from '../limits.ts';
import type { Report } from '../report.ts';
import { lineText, placeAt, placeOfLine, type Source } from './source.ts';

/** A Markdown file cut in two; each piece with its offset in the file. */
export interface SplitFile {
  readonly matter: { readonly text: string; readonly offset: number };
  readonly prose: { readonly text: string; readonly offset: number };
}

/**
 * The front matter and the prose of a Markdown file, or `undefined` after a report.
 *
 *     ---            line 1, these three characters and nothing else
 *     title: …
 *     ---            the next line that begins with three dashes: again nothing else
 *     prose
 *
 * The fences are looked at here first, because the splitter takes any line that begins with `---` for the closing
 * one, lets an unclosed one swallow the file, and chooses a language by what follows the opening one.
 */
export function splitFrontMatter(source: Source, report: Report): SplitFile | undefined {
  const close = closingLine(source, report);
  if (close === undefined) return undefined;
  const matterLength = source.starts[close - 1]! - 4;
  if (matterLength > limits.frontMatterBytes) return refuseLong(source, matterLength, report);
  const file = matter(source.text, splitterOptions);
  const proseOffset = source.text.length - file.content.length;
  return {
    matter: { text: source.text.slice(4, 4 + matterLength), offset: 4 },
    prose: { text: file.content, offset: proseOffset },
  };
}

function refuseLong(source: Source, length: number, report: Report): undefined {
  const facts = {
    file: source.file,
    size: `${Math.ceil(length / 1000)} kB`,
    most: `${limits.frontMatterBytes / 1000} kB`,
  };
  report({ code: 'file-too-large', variant: 'front-matter', facts }, placeOfLine(source, 1));
}

/** The line of the closing fence, or a report of what is wrong with the two. */
function closingLine(source: Source, report: Report): number | undefined {
  const opening = lineText(source, 1);
  if (opening !== '---') {
    const variant = opening.startsWith('---') ? 'opening' : 'none';
    report(
      { code: 'front-matter-fence', variant, facts: { file: source.file, text: opening } },
      placeOfLine(source, 1),
    );
    return undefined;
  }
  const at = source.text.indexOf('\n---', 3);
  if (at < 0) {
    report(
      { code: 'front-matter-fence', variant: 'unclosed', facts: { file: source.file } },
      placeOfLine(source, 1),
    );
    return undefined;
  }
  return closesCleanly(source, at + 1, report);
}

function closesCleanly(source: Source, offset: number, report: Report): number | undefined {
  const { line, text } = placeAt(source, offset);
  if (text === '---') return line;
  report(
    { code: 'front-matter-fence', variant: 'closing', facts: { file: source.file, text } },
    placeOfLine(source, line),
  );
  return undefined;
}

const refuseLanguage = (): never => {
  throw new Bug('Front matter reached an engine for a language that is not YAML.');
};

/** Always given, and every engine named: nothing in a file chooses what reads it, and nothing in it runs. */
const splitterOptions = {
  language: 'yaml',
  delimiters: '---',
  engines: {
    yaml: { parse: (text: string) => ({ text }), stringify: refuseLanguage },
    json: refuseLanguage,
    javascript: refuseLanguage,
    js: refuseLanguage,
    coffee: refuseLanguage,
    coffeescript: refuseLanguage,
    cson: refuseLanguage,
    toml: refuseLanguage,
  },
};
