import { Bug, type Diagnostic } from '../../core/diagnostic.ts';
import { problemWords, type ProblemWords } from '../../words/diagnostics/index.ts';
import { showPlaces } from './diagnostic-places.ts';
import { capital, fill } from '../text/fill.ts';
import { printable, wrapped } from '../text/wrapped.ts';

const width = 80;
/** Facts that quote an author's text are cut in sentences: a whole paragraph would drown them. */
const quotes = ['text', 'value', 'kept', 'address', 'extra'];
const longestQuote = 60;

/**
 * A diagnostic as its author reads it, of at most 80 columns, without colour:
 *
 *     Gelatin powder is used in mL but sold in g, so the number of packs cannot be worked out.
 *       guides/needle-block/guide.md:14:13     amount: 120 mL
 *                                                      ======
 *     Why    mL is a volume and g is a mass; turning one into the other needs a measured density.
 *     Write  amount: 120 g      if you weigh it; by volume, add density: with its source
 *     error, unit-mismatch
 */
export function showDiagnostic(diagnostic: Diagnostic): string {
  const { says, why, write, act } = wordsOf(diagnostic);
  const facts = mapValues(diagnostic.facts, (fact, name) =>
    name === 'block' ? inLines(fact) : printable(fact),
  );
  const short = mapValues(facts, (fact, name) => (quotes.includes(name) ? shortened(fact) : fact));
  return [
    ...wrapped(capital(fill(says, short)), width),
    ...showPlaces(diagnostic.places, width),
    ...labelled('Why    ', why === undefined ? [] : wrapped(fill(why, short), width - 7)),
    ...labelled('Write  ', write === undefined ? [] : fill(write, facts).split('\n').flatMap(remedy)),
    ...labelled('Write  ', act === undefined ? [] : wrapped(fill(act, short), width - 7)),
    `${diagnostic.severity}, ${diagnostic.code}`,
  ].join('\n');
}

/** Several lines to paste. */
const inLines = (fact: string): string => fact.split('\n').map(printable).join('\n');

/** @throws {Bug} When the catalogue has no sentence: a code without words. */
export function wordsOf({ code, variant }: Pick<Diagnostic, 'code' | 'variant'>): ProblemWords {
  const words = problemWords[variant === undefined ? code : `${code}.${variant}`] ?? problemWords[code];
  if (!words) throw new Bug('a problem has no sentence', { code, variant });
  return words;
}

/** The text to paste, never broken, then the remark after it. */
function remedy(line: string): string[] {
  const [, paste = line, remark] = /^(.*?\S)\s{3,}(.*)$/.exec(line) ?? [];
  if (remark === undefined) return [paste];
  const room = width - 7 - paste.length - 6;
  if (room >= remark.length) return [`${paste}      ${remark}`];
  return [paste, ...wrapped(remark, width - 7 - 2).map((part) => `  ${part}`)];
}

function labelled(label: string, lines: readonly string[]): string[] {
  return lines.map((line, index) => (index === 0 ? label : ' '.repeat(label.length)) + line);
}

function shortened(fact: string): string {
  return fact.length > longestQuote ? `${fact.slice(0, longestQuote - 1).trimEnd()}…` : fact;
}

type Facts = Readonly<Record<string, string>>;

function mapValues(facts: Facts, change: (fact: string, name: string) => string): Facts {
  return Object.fromEntries(Object.entries(facts).map(([name, fact]) => [name, change(fact, name)]));
}
