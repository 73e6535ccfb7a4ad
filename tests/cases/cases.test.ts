/**
 * Each folder `<code>/<name>/` is one thing that an author may get wrong, and the whole message about it.
 *
 *     case.json      { "change": [{ "file", "find", "put" }], "remedy": [{ "file", "find", "put" }], "today"? }
 *     files/…        whole files over the base, where a change is not enough (a photo, bytes that are not UTF-8)
 *     expected.txt   every message of that workspace, as stored text: read it like prose
 *
 * The base is a sound workspace without findings: `base/`. `change` breaks it in one place; `find` must stand there
 * exactly once. `remedy` pastes what the message says under Write: the test looks it up there (`…` in the message
 * stands for what only the author knows), pastes it, and wants no finding left.
 *
 * To add a case of a check: make the folder, write case.json, run
 *     WRITE_CASES=1 npx vitest run --config .config/vitest.config.ts tests/cases
 * and read what it wrote into expected.txt. Reading's problems and the checks' stand side by side.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { showDiagnostic } from '../../src/showing/terminal/diagnostic.ts';
import type { Diagnostic } from '../../src/core/diagnostic.ts';
import { fileProblems } from '../../src/words/diagnostics/files.ts';
import { planRefusals, planWarnings } from '../../src/words/diagnostics/plan.ts';
import { publishingProblems } from '../../src/words/diagnostics/publishing.ts';
import { stockProblems } from '../../src/words/diagnostics/stock.ts';
import { problemWords } from '../../src/words/diagnostics/index.ts';
import { allCases, casesFolder, filesOf, findingsOf, type Case } from './workspace-of-case.ts';

const cases = allCases();
const told = new Map(cases.map((one) => [one, findingsOf(filesOf(one), one.today)]));

it('the base is sound', () => {
  const base: Case = { code: 'base', name: '', folder: join(casesFolder, 'no-such-folder') };
  expect(findingsOf(filesOf(base)).map(showDiagnostic)).toEqual([]);
});

describe.each(cases.map((one) => [`${one.code}/${one.name}`, one] as const))('%s', (_, one) => {
  const stored = join(one.folder, 'expected.txt');
  const shown = (): string => `${told.get(one)!.map(showDiagnostic).join('\n\n')}\n`;

  it('is told in these words', () => {
    if (process.env['WRITE_CASES']) writeFileSync(stored, shown());
    expect(existsSync(stored)).toBe(true);
    expect(shown()).toBe(readFileSync(stored, 'utf8'));
  });

  it('is told under its own code, once', () => {
    expect(told.get(one)!.map(({ code }) => code)).toContain(one.code);
    const seen = told.get(one)!.map(showDiagnostic);
    expect(new Set(seen).size).toBe(seen.length);
  });

  it('keeps to 80 columns, but for text to paste', () => {
    const long = shown()
      .split('\n')
      .filter((line) => [...line].length > 80 && !/^(Write| {7}\S)/.test(line));
    expect(long).toEqual([]);
  });

  it.runIf(one.remedy)('is gone once the text under Write is pasted', () => {
    const pastes = pastesIn(shown());
    const isPasted = (put: string): boolean =>
      [put, ...put.split('\n')].some((text) => pastes.some((paste) => paste.test(text.trim())));
    expect(one.remedy!.filter(({ put }) => !isPasted(put))).toEqual([]);
    expect(findingsOf(filesOf(one, true), one.today).map(showDiagnostic)).toEqual([]);
  });
});

/** Each line under Write as a pattern, without its remark. */
function pastesIn(text: string): readonly RegExp[] {
  const blocks = [...text.matchAll(/^Write {2}(.*(?:\n {7}.*)*)/gm)].map((match) =>
    match[1]!.replaceAll('\n       ', '\n'),
  );
  const lines = blocks.flatMap((block) => [
    ...block.split('\n').map((line) => line.split(/ {3,}/)[0]!),
    block,
  ]);
  return lines.map((line) => new RegExp(`^${line.trim().split('…').map(escaped).join('[^]+')}$`));
}
const escaped = (text: string): string => text.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** What a workspace held in memory cannot show: the disk's own refusals, plans, stock files, sites. */
const shownElsewhere = new Set([
  ...Object.keys({ ...planRefusals, ...planWarnings, ...publishingProblems, ...stockProblems }),
  ...Object.keys(fileProblems).filter((key) => /^(file-refused|no-program\.no-folder|too-many-)/.test(key)),
]);

it('every sentence of the catalogue has a case', () => {
  const seen = new Set([...told.values()].flat().map(keyOf));
  const unseen = Object.keys(problemWords).filter((key) => !seen.has(key) && !shownElsewhere.has(key));
  expect(unseen.join(' ')).toBe('');
});

/** The key of the sentence that says a problem. */
function keyOf({ code, variant }: Diagnostic): string {
  return variant !== undefined && `${code}.${variant}` in problemWords ? `${code}.${variant}` : code;
}
