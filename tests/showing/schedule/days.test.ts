import { describe, expect, it } from 'vitest';
import type { PlannedJob } from '../../../src/core/plan/result.ts';
import { tasksOf } from '../../../src/showing/schedule/show-days.ts';

const job = (
  step: string,
  run: number,
  start: number,
  end: number,
  builders: readonly number[] = [1],
): PlannedJob => ({
  line: 0,
  step,
  run,
  models: [run],
  start,
  end,
  waitEnd: end,
  people: builders.length,
  builders,
  places: {},
  tools: {},
});
const rows = (jobs: readonly PlannedJob[]) =>
  tasksOf(jobs).map(({ step, builders, from, to, jobs: merged }) => ({
    step,
    who: builders.join('+'),
    from,
    to,
    runs: merged.map(({ run }) => run).join(' '),
  }));

describe('a day list has a row for each stretch of work, not a crumb for each run', () => {
  it('joins runs of one step that one builder does without a break', () => {
    const jobs = Array.from({ length: 288 }, (_, i) => job('spray', i + 1, 550 + i, 551 + i));
    const merged = rows(jobs);
    expect(merged).toHaveLength(1);
    expect(merged[0]).toMatchObject({ from: 550, to: 838 });
  });

  it('keeps the builders apart, and those who work together together', () => {
    expect(
      rows([
        job('cut', 1, 540, 550),
        job('cut', 2, 540, 550, [2]),
        job('cut', 3, 550, 560, [1, 2]),
        job('cut', 4, 560, 570, [1, 2]),
      ]),
    ).toEqual([
      { step: 'cut', who: '1', from: 540, to: 550, runs: '1' },
      { step: 'cut', who: '2', from: 540, to: 550, runs: '2' },
      { step: 'cut', who: '1+2', from: 550, to: 570, runs: '3 4' },
    ]);
  });

  it('starts a new row after a break, and when another task came between', () => {
    expect(
      rows([
        job('cut', 1, 540, 550),
        job('glue', 1, 550, 560),
        job('cut', 2, 560, 570),
        job('cut', 3, 600, 610),
      ]).map(({ step, from, to }) => `${step} ${from}–${to}`),
    ).toEqual(['cut 540–550', 'glue 550–560', 'cut 560–570', 'cut 600–610']);
  });

  it('gives each stretch of paused work its row, and counts its run once', () => {
    const paused: PlannedJob = {
      ...job('sew', 1, 700, 800),
      stretches: [
        [700, 750],
        [780, 800],
      ],
    };
    expect(rows([paused, job('sew', 2, 800, 810)])).toEqual([
      { step: 'sew', who: '1', from: 700, to: 750, runs: '1' },
      { step: 'sew', who: '1', from: 780, to: 810, runs: '1 2' },
    ]);
  });
});
