import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { checks } from '../../src/checks/checks.ts';
import { problemWords } from '../../src/words/diagnostics/index.ts';
import { casesFolder } from '../cases/workspace-of-case.ts';

const folder = fileURLToPath(new URL('../../src/checks', import.meta.url));
const codes = checks.map(({ code }) => code);

/** All files of the folder but the table and the type; what several checks look up has a folder of its own. */
const files = readdirSync(folder, { withFileTypes: true })
  .filter((entry) => entry.isFile() && !['check.ts', 'checks.ts'].includes(entry.name))
  .map(({ name }) => name);

function exportsCheck(name: string): boolean {
  return /^export const \w+: Check\b/m.test(readFileSync(join(folder, name), 'utf8'));
}

describe('the table of checks', () => {
  it('is in the order of the alphabet, each code once, and cannot be changed', () => {
    expect(codes).toEqual([...new Set(codes)].sort());
    expect(Object.isFrozen(checks)).toBe(true);
  });

  it('holds every check that has a file, under the name of that file', () => {
    expect(files.map((name) => name.replace(/\.ts$/, '')).sort()).toEqual(codes);
    expect(files.filter((name) => !exportsCheck(name))).toEqual([]);
  });

  it('names each by the bad thing, in words with hyphens', () => {
    expect(codes.filter((code) => !/^[a-z]+(-[a-z]+)+$/.test(code))).toEqual([]);
  });

  it('has a case of each, with the whole message stored', () => {
    const hasCase = (code: string): boolean =>
      existsSync(join(casesFolder, code)) &&
      readdirSync(join(casesFolder, code)).some((name) =>
        existsSync(join(casesFolder, code, name, 'expected.txt')),
      );
    expect(codes.filter((code) => !hasCase(code))).toEqual([]);
  });

  it('has a sentence for each', () => {
    const keys = Object.keys(problemWords);
    const hasWords = (code: string): boolean =>
      keys.some((key) => key === code || key.startsWith(`${code}.`));
    expect(codes.filter((code) => !hasWords(code))).toEqual([]);
  });
});

describe('what is said', () => {
  const own = Object.entries(problemWords).filter(([key]) => codes.includes(key.split('.')[0]!));
  const all = own.map(([key, words]) => [key, Object.values(words).join(' ')] as const);

  it('knows no words of code, and no scolding', () => {
    const code =
      /\b(schema|regex|null|undefined|boolean|string|array|object|invalid|illegal|oops|error|parse[dr]?)\b/i;
    expect(all.filter(([, text]) => code.test(text))).toEqual([]);
  });

  it('is one sentence, with a full stop or a list of what it speaks of', () => {
    const odd = own.filter(([, { says }]) => !/^[^.!]*[.]$/.test(says.replaceAll(/\{\w+\}/g, 'x')));
    expect(odd.map(([key]) => key)).toEqual([]);
  });

  it('always says what to do', () => {
    expect(own.filter(([, { write, act }]) => !write && !act).map(([key]) => key)).toEqual([]);
  });

  /** A density, a price, a hazard, a control, the words of a caution: `…`, for whoever knows. */
  it('never fills in what only somebody at the bench, the shop or the data sheet knows', () => {
    const known = [
      'price',
      'priced',
      'rate',
      'is',
      'hazard',
      'harm',
      'signal',
      'clears-in',
      'dated',
      'by',
      'until',
    ];
    const lines = own.flatMap(([key, { write = '' }]) =>
      write.split('\n').map((line) => [key, line.trim()] as const),
    );
    const filled = lines.filter(([, line]) => {
      const [, name, value] = /^(?:- )?([a-z-]+): (\S+)/.exec(line) ?? [];
      return name !== undefined && known.includes(name) && !value!.startsWith('…');
    });
    expect(filled).toEqual([]);
  });

  it('never offers a longer hold limit', () => {
    const offers = own.filter(([, { write = '', act = '' }]) => /use-within/.test(write + act));
    expect(offers).toEqual([]);
  });
});
