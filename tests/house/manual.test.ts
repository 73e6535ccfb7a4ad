import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { runChecks } from '../../src/checks/checks.ts';
import { read } from '../../src/reading/read.ts';
import { controlWords } from '../../src/words/controls.ts';

const page = readFileSync(new URL('../../content/manual/writing-a-guide.md', import.meta.url), 'utf8');

it('the manual lists every control with the words it is printed in', () => {
  const rows = Object.entries(controlWords).map(([id, words]) => `| \`${id}\` | ${words} |`);
  expect(rows.filter((row) => !page.includes(row))).toEqual([]);
});

it('the smallest workspace of the manual reads and checks without an error', () => {
  const [program, material, guide] = [...page.matchAll(/^```\n([\s\S]*?)^```$/gm)].map(([, text]) => text!);
  const bytes = (text: string) => new TextEncoder().encode(text);
  const { workspace, diagnostics, ...rest } = read(
    new Map([
      ['program.yaml', bytes(program!)],
      ['materials/webbing.yaml', bytes(material!)],
      ['guides/practice-strap/guide.md', bytes(guide!)],
    ]),
  );
  const findings = runChecks({ workspace: workspace!, ...rest, today: '2026-11-25' });
  expect(diagnostics).toEqual([]);
  expect(Object.keys(workspace!.guides)).toEqual(['practice-strap']);
  expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
});
