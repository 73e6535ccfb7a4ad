import { describe, expect, it } from 'vitest';
import type { Diagnostic, Place } from '../../../src/core/diagnostic.ts';
import { showDiagnostic } from '../../../src/showing/terminal/diagnostic.ts';

const place = (text: string, marked: string, more: Partial<Place> = {}): Place => ({
  file: 'guides/needle-block/guide.md',
  line: 14,
  column: text.indexOf(marked) + 1,
  length: marked.length,
  text,
  ...more,
});
const vague = (
  facts: Partial<Record<'what' | 'text' | 'put', string>>,
  ...places: readonly Place[]
): Diagnostic => ({
  code: 'duration-vague',
  severity: 'error',
  places,
  facts: { what: 'wait of step pour', text: 'overnight', put: 'wait: ', ...facts },
});
const lines = (diagnostic: Diagnostic): string[] => showDiagnostic(diagnostic).split('\n');

describe('a diagnostic in words', () => {
  it('says it, shows where, tells why and what to write, and ends with severity and code', () => {
    expect(lines(vague({}, place('    wait: overnight', 'overnight')))).toEqual([
      'The wait of step pour is “overnight”, which does not say how long.',
      '  guides/needle-block/guide.md:14:11     wait: overnight',
      '                                               =========',
      'Why    Nothing can be planned round it, and another program’s night is longer or',
      '       shorter.',
      'Write  wait: …      in h, as long as it takes',
      'error, duration-vague',
    ]);
  });

  it('sets the excerpts of two places below one another', () => {
    const shown = lines(
      vague(
        {},
        place('wait: overnight', 'overnight'),
        place('holds: 250 g', '250 g', { file: 'materials/gel.yaml', line: 4 }),
      ),
    );
    expect(shown.slice(1, 5)).toEqual([
      '  guides/needle-block/guide.md:14:7     wait: overnight',
      '                                              =========',
      '  materials/gel.yaml:4:8                holds: 250 g',
      '                                               =====',
    ]);
  });

  it('cuts a long line round what is meant', () => {
    const text = `- { use: ${'x'.repeat(100)}, wait: overnight, note: ${'y'.repeat(100)} }`;
    const [, excerpt, underline] = lines(vague({}, place(text, 'overnight')));
    expect(excerpt).toMatch(/ {5}….*overnight.*…$/);
    expect(excerpt!.slice(underline!.indexOf('='))).toMatch(/^overnight/);
    expect(excerpt!.length).toBeLessThanOrEqual(80);
  });

  it('gives an excerpt a line of its own where the path leaves no room', () => {
    const file = `guides/${'very-'.repeat(12)}long/guide.md`;
    expect(lines(vague({}, place('wait: overnight', 'overnight', { file }))).slice(1, 4)).toEqual([
      `  ${file}:14:7`,
      '    wait: overnight',
      '          =========',
    ]);
  });

  it('underlines letters, not code units', () => {
    const [, excerpt, underline] = lines(vague({}, place('note: 🧪 overnight', 'overnight')));
    expect([...excerpt!].slice(underline!.indexOf('=')).join('')).toBe('overnight');
  });

  it('shows a place without text by its name alone', () => {
    expect(lines(vague({}, place('', '', { column: 1, length: 1 })))[1]).toBe(
      '  guides/needle-block/guide.md:14:1',
    );
  });

  it('moves no cursor of a terminal, whatever a file is called or says', () => {
    const shown = showDiagnostic(
      vague({ text: '\u001b[2J\u202e' }, place('wait: \u001b[2J', '[2J', { file: 'a\u001b]0;x.md' })),
    );
    expect(shown).not.toMatch(/[\0-\x09\x0b-\x1f\x7f-\x9f\u202e]/);
  });

  it('cuts what an author wrote at length, but never what is to be pasted', () => {
    const long = 'a b '.repeat(60).trim();
    const shown = lines({
      ...vague({ text: long }),
      code: 'text-cut-short',
      facts: { kept: long, text: long },
    });
    expect(shown[0]!.length).toBeLessThanOrEqual(80);
    expect(shown).toContain(`Write  "${long}"`);
  });

  it('says “and 3 more” of places beyond six', () => {
    const places = Array.from({ length: 9 }, (_, line) =>
      place('wait: overnight', 'overnight', { line: line + 1 }),
    );
    expect(lines(vague({}, ...places))).toContain('  and 3 more');
  });

  it('of a code without a sentence is our own fault', () => {
    expect(() => showDiagnostic({ ...vague({}), code: 'no-such-code' })).toThrow('no sentence');
  });
});
