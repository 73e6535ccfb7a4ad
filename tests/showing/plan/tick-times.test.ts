import { describe, expect, it } from 'vitest';
import { planAt } from '../../../src/core/model/plan-at.ts';
import { read } from '../../../src/reading/read.ts';
import { showProgress, showWallMoment } from '../../../src/showing/plan/bench-text.ts';
import { showTickTimes } from '../../../src/showing/plan/show-tick-times.ts';

/** What follows from ticking off the first of three steps, of which the second and third come after it. */
function timesOf(first: string, room = ''): readonly string[] {
  const text = (lines: string): Uint8Array => new TextEncoder().encode(lines);
  const { workspace, diagnostics } = read(
    new Map([
      ['program.yaml', text(`name: Invented Skills Room\ncurrency: GBP\ntime-zone: Europe/London\n${room}`)],
      [
        'guides/strap/guide.md',
        text(
          `---\ntitle: Strap\nstatus: draft\nmaterials: []\nsteps:\n  - id: soak-it\n    hands-on: 5 min\n${first}` +
            '  - id: tie-it\n    hands-on: 5 min\n  - id: trim-it\n    hands-on: 5 min\n    after: [soak-it]\n---\n' +
            '## Soak it\n\nA.\n\n## Tie it\n\nB.\n\n## Trim it\n\nC.\n',
        ),
      ],
    ]),
  );
  expect(diagnostics).toEqual([]);
  const at = planAt(workspace!.guides['strap']!, undefined);
  return showTickTimes(at.steps[0]!, at, workspace!).map(
    ({ minutes, rounds, says }) => `${minutes} ${rounds}: ${says}`,
  );
}

describe('what follows from ticking a step off', () => {
  it('is nothing for a step that neither waits nor has a limit', () => {
    expect(timesOf('')).toEqual([]);
  });

  it('is when the next may begin, late rather than early, and by when hands are off it, early rather than late', () => {
    expect(timesOf('    wait: 90 s\n    use-within: 45 min\n')).toEqual([
      '2 up: Next step not before {time}.',
      '45 down: Hands off the next step by {time}.',
    ]);
  });

  it('is a limit for each step by name where they differ', () => {
    expect(timesOf('    use-within:\n      tie-it: 45 min\n      trim-it: 2 h\n')).toEqual([
      '45 down: Hands off “Tie it” by {time}.',
      '120 down: Hands off “Trim it” by {time}.',
    ]);
  });

  it('is the longest wait of the rooms that this program has', () => {
    const wait = '    wait:\n      usual: 1 h\n      if-damp: 3 h\n';
    expect(timesOf(wait)).toEqual(['60 up: Next step not before {time}.']);
    expect(timesOf(wait, 'room: [damp]\n')).toEqual(['180 up: Next step not before {time}.']);
  });

  it('is how long vapour stays', () => {
    expect(timesOf('    clears-in: 10 min\n')).toEqual(['10 up: No flame and no hot tool before {time}.']);
  });
});

describe('a moment on the clock of the reader', () => {
  const nine = { day: '2026-11-25', minute: 540 };
  it('is the time alone on the same day, with its day on another, with its year in another', () => {
    expect(showWallMoment({ day: '2026-11-25', minute: 5 }, nine)).toBe('00:05');
    expect(showWallMoment({ day: '2026-11-26', minute: 825 }, nine)).toBe('Thu 26 November, 13:45');
    expect(showWallMoment({ day: '2027-01-01', minute: 0 }, nine)).toBe('Fri 1 January 2027, 00:00');
  });

  it('progress is counted in steps', () => {
    expect([showProgress(0, 8), showProgress(3, 8), showProgress(1, 1)]).toEqual([
      '0 of 8 steps done',
      '3 of 8 steps done',
      '1 of 1 step done',
    ]);
  });
});
