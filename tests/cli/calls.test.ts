import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { benchwright, folderWith, soundWorkspace } from './on-a-bench.ts';

const folder = folderWith(soundWorkspace);

/** Without the ends of its lines, which stand where 80 columns end. */
const asOneLine = (text: string): string => text.replaceAll('\n', ' ');

describe('a call that cannot be followed ends with 2, says what is wrong, and where to read more', () => {
  it.each([
    ['chek', 'There is no command “chek”. Did you mean check?'],
    [
      'frobnicate',
      'There is no command “frobnicate”. The commands are check, help, plan, print and publish.',
    ],
    ['toString', 'There is no command “toString”.'],
    ['--tody', 'There is no command “--tody”.'],
    ['check --tody 2026-11-25', 'check has no option --tody. Did you mean --today?'],
    ['check --batch 3', 'check has no option --batch.'],
    ['check --today', '--today takes a day, such as 2026-11-25, and none follows.'],
    ['check --today --format json', '--today takes a day, such as 2026-11-25, and none follows.'],
    ['check --today 2026-02-30', '--today takes a day, such as 2026-11-25, and not “2026-02-30”.'],
    ['check --today 2026-11-25 --today 2026-11-26', '--today stands twice.'],
    ['check --format xml', '--format takes text or json, and not “xml”.'],
    ['check --format=', '--format takes text or json, and not “”.'],
    ['check --trace=yes', '--trace takes nothing, and “yes” follows it.'],
    ['check one two', 'check does not know what to do with “two”.'],
    ['check nowhere', 'nowhere is no workspace: it has no program.yaml.'],
    ['check . --workspace .', 'Two workspaces are named: . and ..'],
    ['plan', 'Nothing is named that could be planned. The guides are knot-board.'],
    ['plan knot-bord', 'There is no guide “knot-bord”. Did you mean knot-board?'],
    ['plan needle-block', 'There is no guide “needle-block”. The guides are knot-board.'],
    ['plan constructor', 'There is no guide “constructor”.'],
    ['plan knot-board:wett', 'knot-board has no level “wett”. Did you mean wet?'],
    ['plan knot-board:gelatinous', 'knot-board has no level “gelatinous”. Its levels are plain and wet.'],
    ['plan knot-board=0', '“knot-board=0”: after = comes a whole number from 1 to 10,000.'],
    ['plan knot-board=10001', '“knot-board=10001”: after = comes a whole number from 1 to 10,000.'],
    ['plan knot-board=1e3', '“knot-board=1e3”: after = comes a whole number from 1 to 10,000.'],
    ['plan knot-board=', '“knot-board=”: after = comes a whole number from 1 to 10,000.'],
    ['plan =4', '“=4” is not a guide to plan. Write GUIDE, GUIDE=N, GUIDE:LEVEL=N or GUIDE/PART=N.'],
    ['plan knot-board/=4', '“knot-board/=4” is not a guide to plan.'],
    ['plan knot-board/skin=4', 'knot-board has no parts, so “skin” means nothing there.'],
    ['plan knot-board --margin 2h', '--margin means something only beside --ready-by, and there is none.'],
    ['plan knot-board --good-until 2026-12-04', '--good-until means something only beside --ready-by'],
    [
      'plan knot-board --ready-by 2026-12-04 --margin 2',
      '--margin takes a length of time up to a year, such as 2h',
    ],
    ['plan knot-board --ready-by 2026-12-04 --margin overnight', '--margin takes a length of time'],
    [
      'plan knot-board --start 2026-11-30 --ready-by 2026-12-04',
      '--start plans forwards and --ready-by backwards',
    ],
    ['plan knot-board --effort 0', '--effort takes a number above 0, such as 4 or 1/2, and not “0”.'],
    ['plan knot-board --format xml', '--format takes text, json, csv or ics, and not “xml”.'],
    ['plan knot-board --format ics', 'A calendar needs dates, and the plan is in the reference week.'],
    ['plan knot-board --list days', '--list chooses a table of --format csv, and the format is text.'],
    ['check --format csv', '--format takes text or json, and not “csv”.'],
    ['plan knot-board=4 --batch 5', '“knot-board=4” and --batch 5 both say how many.'],
    ['plan knot-board --batch 0', '--batch takes a whole number from 1 to 10,000, and not “0”.'],
    ['plan knot-board --batch 2.5', '--batch takes a whole number from 1 to 10,000, and not “2.5”.'],
    ['plan knot-board --batch -3', '--batch takes a whole number from 1 to 10,000, and not “-3”.'],
    ['plan knot-board --builders none', '--builders takes a whole number from 1 to 100, and not “none”.'],
    ['plan knot-board --spares 10', '--spares takes a share, such as 10 %, and not “10”.'],
    [
      'plan knot-board --start tomorrow',
      '--start takes a day or a time, such as 2026-11-30 or 2026-11-30T09:00, and not “tomorrow”.',
    ],
    ['plan knot-board --stock nowhere.yaml', 'nowhere.yaml cannot be opened.'],
    ['publish --edition teachers', '--edition takes trainees or staff, and not “teachers”.'],
    ['help frob', 'There is no command “frob”.'],
  ])('benchwright %s', async (line, says) => {
    const { status, out, err } = await benchwright(line.split(' '), { folder });
    expect(asOneLine(err)).toContain(says);
    expect(err).toMatch(/benchwright help( \w+)? says what it can do\.\n$/);
    expect([status, out]).toEqual([2, '']);
  });

  it('says all that is wrong at once', async () => {
    const { err } = await benchwright(['plan', 'knot-board=x', 'a=b=c', '--batch', 'no', '--frmat', 'json'], {
      folder,
    });
    expect(err.split('\n')).toHaveLength(4);
    const { err: words } = await benchwright(['plan', 'knot-board=x', '/'], { folder: '/' });
    expect(words.split('\n')).toHaveLength(5);
  });

  it('finds no workspace where there is none', async () => {
    const empty = folderWith({ 'notes.txt': 'nothing' });
    const { status, err } = await benchwright(['check'], { folder: empty });
    expect(asOneLine(err)).toContain(
      `No workspace is here: neither ${empty} nor a folder above it has a program.yaml.`,
    );
    expect(status).toBe(2);
  });

  it('refuses a SOURCE_DATE_EPOCH that is no number of seconds', async () => {
    const environment = { SOURCE_DATE_EPOCH: 'yesterday' };
    const { status, err } = await benchwright(['check'], { folder, environment });
    expect(err).toContain('SOURCE_DATE_EPOCH is “yesterday”');
    expect(status).toBe(2);
  });
});

describe('help', () => {
  it.each([['help'], ['--help'], ['-h'], ['help', 'help']])('%s tells of every command', async (...args) => {
    const { status, out, err } = await benchwright(args);
    for (const command of ['check', 'plan', 'publish', 'help']) expect(out).toContain(`  ${command} `);
    expect([status, err]).toEqual([0, '']);
  });

  it.each(['check', 'plan', 'publish'])(
    'of %s has its options and examples, in 80 columns',
    async (command) => {
      const { status, out } = await benchwright(['help', command]);
      expect(out).toContain('--workspace DIR');
      expect(out).toContain(`  benchwright ${command}`);
      expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
      expect(status).toBe(0);
      expect((await benchwright([command, '--help'])).out).toBe(out);
      expect((await benchwright([command, '-h'])).out).toBe(out);
    },
  );

  it('is what a call without a command gets, on standard error', async () => {
    const { status, out, err } = await benchwright([]);
    expect([status, out]).toEqual([2, '']);
    expect(err).toContain('Commands');
  });

  it('tells the version', async () => {
    const { status, out } = await benchwright(['--version']);
    expect([status, out]).toEqual([0, 'unbuilt\n']);
  });
});

describe('the workspace', () => {
  it('is found upwards from the current folder', async () => {
    const { status } = await benchwright(['plan', 'knot-board'], {
      folder: join(folder, 'guides/knot-board'),
    });
    expect(status).toBe(0);
  });

  it('may be named by a word, or by --workspace', async () => {
    expect((await benchwright(['check', folder])).status).toBe(0);
    expect((await benchwright(['check', '--workspace', folder])).status).toBe(0);
  });
});
