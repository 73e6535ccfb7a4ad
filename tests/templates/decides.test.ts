import { describe, expect, it } from 'vitest';
import type { ShownSchedule } from '../../src/showing/shown/shown-schedule.ts';
import { scheduleWords } from '../../src/words/schedule.ts';
import { whatIfWords } from '../../src/words/what-if.ts';
import { guidePage } from '../../templates/guide/guide-page.tsx';
import { seen } from './seen.ts';
import { plan, text, view } from './views.ts';

const glued = {
  from: text('09:00'),
  to: text('09:05'),
  who: text('builder 1'),
  line: 0,
  of: text(''),
  what: text('Glue it'),
  then: text(''),
};
const days = [{ day: text('day 1'), rows: [glued] }];

const pageOf = (rest: Partial<ShownSchedule>): string =>
  seen(guidePage({ ...view, plan: { ...plan, schedule: { ...plan.schedule, ...rest } } }));

describe('the schedule on a guide’s page', () => {
  it('says below the day lists what decides how long it takes, when each is ready, and how busy everything is', () => {
    const page = pageOf({
      days,
      decides: [
        { when: text('09:00–09:10'), what: text('Pour it'), of: text(''), because: text('in use: tin') },
      ],
      models: [{ line: 0, models: text('models 1–4'), ready: text('day 2'), useBy: text('day 7') }],
      loads: [
        {
          kind: 'tool',
          isScarce: true,
          name: text('Loaf tin'),
          has: text('6'),
          peak: text('5'),
          busy: text('63 %'),
        },
      ],
    });
    const marks = ['class="days"', 'Pour it', 'in use: tin', 'models 1–4', 'day 7', 'Loaf tin', '63 %'];
    const places = marks.map((mark) => page.indexOf(mark));
    expect(places.every((place, i) => place > (places[i - 1] ?? 0))).toBe(true);
    expect(page).toContain('data-scarce="true"');
  });

  it('names the guide and level of each day, link, end and cost, where the plan is of several', () => {
    const schedule = {
      ...plan.schedule,
      ready: [{ of: text('Ready pad'), says: text('All are ready day 2.') }],
      days: [{ day: text('day 1'), rows: [{ ...glued, of: text('Day pad') }] }],
      decides: [{ when: text('09:00'), what: text('Pour it'), of: text('Chain pad'), because: text('') }],
    };
    const costs = plan.costs.map((cost) => ({
      ...cost,
      each: [
        { of: text('Cost pad'), sum: text('£1.49') },
        { of: text('Cost tube'), sum: text('£0.35') },
      ],
    }));
    const page = seen(guidePage({ ...view, plan: { ...plan, schedule, costs } }));
    const names = ['Ready pad', 'Day pad', 'Chain pad', 'Cost pad', 'Cost tube'];
    expect(names.filter((name) => !page.includes(`>${name}<`))).toEqual([]);
    expect(page).not.toMatch(/£1\.49(?:<\/?span[^>]*>)*£0\.35/);
  });

  it('has no heading for what there is nothing of', () => {
    const page = pageOf({});
    expect(page).not.toContain(`<h3>${scheduleWords.chain.heading}`);
    expect(page).not.toContain(scheduleWords.ready.heading);
    expect(page).not.toContain(scheduleWords.loads.heading);
  });

  it('leaves out the column of use-by where no model goes off', () => {
    const row = { line: 0, models: text('models 1–4'), ready: text('day 2'), useBy: text('') };
    expect(pageOf({ models: [row] })).not.toContain(`>${scheduleWords.ready.columns.useBy}<`);
  });

  it('where there is none says why, and what would help', () => {
    const page = pageOf({
      none: text('No schedule can keep every limit.'),
      helps: [text('With 3 builders it can.')],
    });
    expect(page.indexOf('No schedule can')).toBeLessThan(page.indexOf(whatIfWords.helps.heading));
    expect(page).toContain('With 3 builders it can.');
    expect(page).not.toContain('class="days"');
  });
});
