import { describe, expect, it } from 'vitest';
import { makePlan } from '../../src/core/plan/plan.ts';
import type { PlannedJob } from '../../src/core/plan/result.ts';
import { showPlan } from '../../src/showing/plan/show-plan.ts';
import { readDemo, today } from '../publishing/demo-site.ts';

const { workspace } = await readDemo();
const { guides } = workspace!;

/**
 * The published schedules anew: a run may not go on before it was left for as long as its step says, so no wait may end
 * outside the times that are shown. The times are read back from the letters that a reader sees.
 */
describe.each(Object.keys(guides))('the waits of %s', (guide) => {
  const plan = makePlan(workspace!, [{ guide }], { today, effort: '1/50' });
  if ('refused' in plan) throw new Error(JSON.stringify(plan.refused));
  if ('none' in plan.schedule) throw new Error(`${guide} has no schedule`);
  const { jobs, start } = plan.schedule;
  const steps = showPlan(plan, workspace!).lines[0]!.steps;
  const ofStep = (id: string): readonly PlannedJob[] =>
    jobs.filter((job) => job.line === 0 && job.step === id);
  const midnight = Math.floor(start / 1440) * 1440;

  it('end within the shown “not before”, the first and the last of them at its ends', () => {
    const rows = steps.map(({ id, notBefore }) => ({
      id,
      ends: waitEnds(ofStep(id)).map((minute) => minute - midnight),
      shown: momentsIn(notBefore.text),
    }));
    for (const { id, ends, shown } of rows) {
      expect([id, shown.length > 0]).toEqual([id, ends.length > 0]);
      if (ends.length === 0) continue;
      expect([id, shown[0], shown.at(-1)]).toEqual([id, Math.min(...ends), Math.max(...ends)]);
    }
    expect(rows.some(({ ends }) => ends.length > 0)).toBe(guides[guide]!.steps.some(({ wait }) => wait));
  });

  it('are over before the same models go on', () => {
    const order = steps.map(({ id }) => id);
    for (const job of jobs.filter(({ line, end, waitEnd }) => line === 0 && waitEnd > end)) {
      const after = guides[guide]!.steps.filter(
        ({ id, after: known }) =>
          known?.includes(job.step) ?? order.indexOf(id) === order.indexOf(job.step) + 1,
      );
      const goesOn = after
        .flatMap(({ id }) => ofStep(id))
        .filter(({ models }) => models.some((model) => job.models.includes(model)));
      for (const next of goesOn) expect([next.step, next.start >= job.waitEnd]).toEqual([next.step, true]);
    }
  });
});

/** When each run has waited for as long as any run of its step does. */
function waitEnds(jobs: readonly PlannedJob[]): readonly number[] {
  const wait = Math.max(0, ...jobs.map(({ end, waitEnd }) => waitEnd - end));
  return wait === 0 ? [] : jobs.map(({ end }) => end + wait);
}

/** The moments that a text names, in minutes since the midnight before day 1; a bare time is of the day before it. */
function momentsIn(text: string): readonly number[] {
  let day = 1;
  return [...text.matchAll(/(?:day (\d+), )?(\d\d):(\d\d)/g)].map(([, known, hour, minute]) => {
    day = known === undefined ? day : Number(known);
    return (day - 1) * 1440 + Number(hour) * 60 + Number(minute);
  });
}
