import { expect, it } from 'vitest';
import { sayTrouble } from '../../src/cli/trouble.ts';
import type { World } from '../../src/cli/world.ts';
import { Bug } from '../../src/core/diagnostic.ts';

function said(trouble: unknown, args: readonly string[] = []): string {
  let text = '';
  const output = { write: (more: string) => void (text += more), isTerminal: false };
  const world: World = {
    args,
    folder: '/',
    environment: {},
    systemDay: () => '2026-11-25',
    out: output,
    err: output,
  };
  expect(sayTrouble(trouble, world)).toBe(3);
  return text;
}

it('asks to report a mistake of its own, in one sentence and without a trace', () => {
  const text = said(new Bug('units do not\nmeasure the same thing', { from: 'g', to: 'mm' }));
  expect(text).toBe(
    'Benchwright made a mistake of its own, and stopped: units do not measure the same thing. Please report it, with the files it was working on; --trace says where it happened.\n',
  );
});

it('tells where it happened, and with which values, when asked', () => {
  const text = said(new Bug('wrong', { from: 'g' }), ['plan', '--trace']);
  expect(text).toContain('trouble.test.ts');
  expect(text).toContain('{"from":"g"}');
});

it('says in plain words what the disk would not do', () => {
  const full = Object.assign(new Error('ENOSPC: no space left on device, write'), {
    code: 'ENOSPC',
    path: 'site/a.html',
  });
  expect(said(full)).toBe('site/a.html: the disk is full. Nothing more was done.\n');
});

it('takes anything that may be thrown', () => {
  expect(said('a word')).toContain('stopped: a word.');
});
