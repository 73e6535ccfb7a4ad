import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Workspace } from '../../../src/core/model/workspace.ts';
import type { PlanSettings } from '../../../src/core/plan/demand.ts';
import type { Plan, PlannedJob, PlannedSchedule } from '../../../src/core/plan/result.ts';
import { type Exact, exact, zero } from '../../../src/core/quantity/exact.ts';
import { secondsOf } from '../../../src/core/time/minutes.ts';
import { dayNumber } from '../../../src/core/time/day.ts';
import { openStretches, referenceWeek } from '../../../src/core/time/working-hours.ts';
import { aRow, asText, planOf } from './a-workspace.ts';
import { anyWorkspace } from './any-workspace.ts';

const batch = fc.integer({ min: 1, max: 5 });
/** In the reference week, forwards with dates, and backwards. */
const when = fc.constantFrom<Partial<PlanSettings>>(
  {},
  { start: '2026-11-26T10:20' },
  { readyBy: '2026-12-11T16:00' },
  { readyBy: '2026-12-10T13:30', margin: 45, goodUntil: '2026-12-12T17:00' },
);
/** Few schedules are tried: every one of them has to keep every rule. */
const effort = '1/100';

function plan(workspace: Workspace, wanted: number, settings: Partial<PlanSettings> = {}): Plan {
  return planOf(workspace, [{ guide: 'thing', wanted }], { effort, ...settings });
}

let [scheduledOnes, all] = [0, 0];
/** Random workspaces whose plan has a schedule. */
function scheduled(check: (schedule: PlannedSchedule, plan: Plan, workspace: Workspace) => void): void {
  fc.assert(
    fc.property(anyWorkspace, batch, when, (workspace, wanted, from) => {
      const planned = plan(workspace, wanted, from);
      all++;
      if ('none' in planned.schedule) return;
      scheduledOnes++;
      check(planned.schedule, planned, workspace);
    }),
    { numRuns: 30 },
  );
}

/** The most in use at once of things that are each held from one minute until another. */
function most(uses: readonly (readonly [from: number, to: number, count: number])[]): number {
  const moments = uses.map(([from]) => from);
  return Math.max(
    0,
    ...moments.map((at) =>
      uses.filter(([from, to]) => from <= at && at < to).reduce((sum, [, , count]) => sum + count, 0),
    ),
  );
}

const utc = (day: string, hour: number) => dayNumber(day) * 1440 + hour * 60;

const stepOf = ({ lines }: Plan, { line, step }: PlannedJob) =>
  lines[line]!.at.steps.find(({ id }) => id === step)!;

/** Minutes when the program is open, on the clock of the plan. */
function openOf({ program: { work, zone } }: Workspace, { clock, start: from }: PlannedSchedule) {
  if (clock === 'dated') return openStretches(work, Math.floor(from / 1440), 300, zone);
  const { open, every } = referenceWeek(work);
  const weeks = Array.from({ length: 60 }, (_, week) =>
    open.map(([a, b]) => [a + week * every, b + week * every] as const),
  );
  return weeks.flat().reduce<[number, number][]>((all, [a, b]) => {
    const last = all.at(-1);
    if (last?.[1] === a) last[1] = b;
    else all.push([a, b]);
    return all;
  }, []);
}

describe('any plan', () => {
  it('buys packs that cover the need, and one fewer of any would not', () => {
    fc.assert(
      fc.property(anyWorkspace, batch, (workspace, wanted) => {
        const { purchases, requirements } = plan(workspace, wanted);
        for (const { material, needed, fromStock, packs, left } of purchases) {
          if (workspace.materials[material]!.free) continue;
          const holds = packs.map(({ pack, count }) => {
            const { each, count: times } = workspace.materials[material]!.packs[pack]!.holds;
            return { count, holds: exact('value' in each ? each.value : '0').mul(times) };
          });
          const bought = holds.reduce((sum, pack) => sum.add(pack.holds.mul(pack.count)), zero);
          expect(bought.add(fromStock.value).sub(needed.value).equals(left.value)).toBe(true);
          expect(left.value.compare(zero)).toBeGreaterThanOrEqual(0);
          const { unused } = requirements.find((each) => each.material === material)!;
          const spare = left.value.sub(unused.value);
          for (const pack of holds) expect(spare.compare(pack.holds)).toBeLessThan(0);
        }
      }),
      { numRuns: 25 },
    );
  });

  it('shares each row, and each ingredient, out over the steps without loss', () => {
    fc.assert(
      fc.property(anyWorkspace, batch, (workspace, wanted) => {
        const [line] = plan(workspace, wanted).lines;
        const taken = (use: string): Exact =>
          line!.steps
            .flatMap(({ takes }) => takes.filter((take) => take.use === use))
            .reduce((sum, { total }) => sum.add(total.value), zero);
        for (const { row, total } of line!.rows)
          expect(taken(line!.at.materials[row]!.id).equals(total.value)).toBe(true);
        for (const { use, total } of line!.mixes[0]!.ingredients)
          expect(taken(use).equals(total.value)).toBe(true);
      }),
      { numRuns: 25 },
    );
  });

  it('makes at least what is wanted and spare', () => {
    fc.assert(
      fc.property(anyWorkspace, batch, (workspace, wanted) => {
        const [line] = planOf(workspace, [{ guide: 'thing', wanted }], {
          effort: '1/1000',
          spares: '1/10',
        }).lines;
        return line!.made >= line!.wanted + line!.spares && line!.spares >= 1;
      }),
      { numRuns: 25 },
    );
  });

  it('scales by a and then by b as by a times b, as long as amounts are for each model', () => {
    const factor = fc.integer({ min: 1, max: 20 });
    fc.assert(
      fc.property(anyWorkspace, factor, factor, (workspace, a, b) => {
        const thing = workspace.guides['thing']!;
        const rows = thing.materials.map(({ use, amount, waste }) => ({
          ...aRow(use, undefined),
          amount: amount!,
          waste,
        }));
        const each = {
          ...workspace,
          guides: { thing: { ...thing, yields: '1', materials: rows, steps: thing.steps.slice(0, 1) } },
        };
        const needs = (wanted: number) =>
          planOf(each, [{ guide: 'thing', wanted }], { effort: '1/1000' }).requirements;
        const times = (all: Plan['requirements'], by: number) =>
          all.map(({ amount }) => amount.value.mul(by));
        const [one, ab] = [times(needs(a), b), needs(a * b).map(({ amount }) => amount.value)];
        return one.every((value, i) => value.equals(ab[i]!));
      }),
      { numRuns: 25 },
    );
  });

  it('is the same to the byte for the same input', () => {
    fc.assert(
      fc.property(anyWorkspace, batch, when, (workspace, wanted, from) => {
        const copy = JSON.parse(JSON.stringify(workspace)) as Workspace;
        return asText(plan(workspace, wanted, from)) === asText(plan(copy, wanted, from));
      }),
      { numRuns: 12 },
    );
  });

  it('splits the outlay among its lines without loss', () => {
    fc.assert(
      fc.property(anyWorkspace, batch, batch, (workspace, a, b) => {
        const two = {
          ...workspace,
          guides: { ...workspace.guides, other: { ...workspace.guides['thing']!, id: 'other' } },
        };
        const both = planOf(
          two,
          [
            { guide: 'thing', wanted: a },
            { guide: 'other', wanted: b },
          ],
          { effort: '1/1000' },
        );
        const sum = both.cost.each.reduce(
          (all, { outlay }, i) => all.add(outlay.mul(both.lines[i]!.wanted + both.lines[i]!.spares)),
          zero,
        );
        return sum.equals(both.cost.outlay);
      }),
      { numRuns: 30 },
    );
  });
});

describe('any schedule', () => {
  it('has no builder in two places, and as many as a step needs', () => {
    scheduled(({ jobs }) => {
      for (const job of jobs) expect(new Set(job.builders).size).toBe(job.people);
      const builders = new Set(jobs.flatMap((job) => job.builders));
      for (const builder of builders) {
        const own = jobs.filter((job) => job.builders.includes(builder));
        own.slice(1).forEach((job, i) => expect(job.start).toBeGreaterThanOrEqual(own[i]!.end));
      }
    });
  });

  it('has nothing hands-on while closed, and pauses only where it may', () => {
    scheduled((schedule, of, workspace) => {
      const open = openOf(workspace, schedule);
      const isOpen = (from: number, to: number) => from === to || open.some(([a, b]) => a <= from && to <= b);
      for (const job of schedule.jobs) {
        const step = stepOf(of, job);
        if (step.people === 0) expect(open.some(([a, b]) => a <= job.start && job.start < b)).toBe(true);
        else
          for (const [from, to] of job.stretches ?? [[job.start, job.end]])
            expect(isOpen(from, to)).toBe(true);
        if (job.stretches) expect(step.mayPause).toBe(true);
        if (step.watched && job.waitEnd > job.end) expect(isOpen(job.end, job.waitEnd)).toBe(true);
      }
    });
  });

  it('follows the order of the steps, and waits as long as they say', () => {
    scheduled(({ jobs }, of) => {
      for (const job of jobs) {
        const { after } = stepOf(of, job);
        const before = jobs.filter(
          ({ step, models }) => after.includes(step) && models.some((model) => job.models.includes(model)),
        );
        for (const { waitEnd } of before) expect(job.start).toBeGreaterThanOrEqual(waitEnd);
      }
    });
  });

  it('keeps every hold limit', () => {
    scheduled(({ jobs }, of) => {
      for (const job of jobs) {
        const { any } = stepOf(of, job).useWithin;
        if (!any) continue;
        const next = jobs.filter(
          (other) =>
            stepOf(of, other).after.includes(job.step) &&
            other.models.some((model) => job.models.includes(model)),
        );
        for (const { end } of next)
          expect((end - job.end) * 60).toBeLessThanOrEqual(secondsOf(any).valueOf());
      }
    });
  });

  it('keeps within the places that there are', () => {
    scheduled(({ jobs }, of, { program }) => {
      for (const [place, capacity] of Object.entries(program.stations)) {
        const atHand = jobs.map(({ start: from, end, places }) => [from, end, places[place] ?? 0] as const);
        const waiting = jobs.flatMap((job) => {
          const { count, per } = stepOf(of, job).waitsAt[place] ?? { count: 0, per: 'run' as const };
          const takenAt = (model: number): number => {
            const next = jobs.filter(
              (other) => stepOf(of, other).after.includes(job.step) && other.models.includes(model),
            );
            return next.length === 0 ? job.waitEnd : Math.min(...next.map((other) => other.start));
          };
          if (per === 'run') return [[job.end, Math.max(...job.models.map(takenAt)), count] as const];
          return job.models.map((model) => [job.end, takenAt(model), count] as const);
        });
        expect(most([...atHand, ...waiting])).toBeLessThanOrEqual(capacity);
      }
    });
  });

  it('keeps within the tools that there are or are bought', () => {
    scheduled(({ jobs }, { tools, lines }) => {
      for (const { tool, peak, owned = 0, toBuy } of tools) {
        expect(peak).toBeLessThanOrEqual(owned + toBuy);
        const inHand = lines[0]!.at.tools
          .filter(({ use }) => use === tool)
          .flatMap((row) => row.in.map((step) => ({ step, count: row.count })));
        const uses = inHand.flatMap(({ step, count }) =>
          jobs.filter((job) => job.step === step).map((job) => [job.start, job.end, count] as const),
        );
        expect(most(uses)).toBeLessThanOrEqual(peak);
      }
    });
  });

  it('never has vapour and ignition at once', () => {
    scheduled(({ jobs }, of) => {
      const vapour = jobs.filter((job) =>
        of.lines[0]!.steps.some(({ step, hazards }) => step === job.step && hazards.includes('H225')),
      );
      const lit = jobs.filter((job) => stepOf(of, job).ignition);
      for (const { start: from, end } of vapour) {
        for (const flame of lit)
          expect(flame.waitEnd <= from || flame.start >= end + 10 || flame.start === flame.waitEnd).toBe(
            true,
          );
      }
    });
  });

  it('uses nothing before it has arrived', () => {
    scheduled(({ clock, jobs }, of, workspace) => {
      if (clock !== 'dated') return;
      const arrives = new Map(of.deliveries.map(({ supplier, arrives: at }) => [supplier, at]));
      const [line] = of.lines;
      for (const job of jobs) {
        for (const { material } of line!.steps.find(({ step }) => step === job.step)!.takes) {
          const purchase = of.purchases.find((bought) => bought.material === material);
          for (const { pack } of purchase?.packs ?? []) {
            const { from } = workspace.materials[material!]!.packs[pack]!;
            // a delivery is there with the slowest of its goods; here all goods of a supplier take as long
            expect(job.start).toBeGreaterThanOrEqual(from === undefined ? 0 : arrives.get(from)!);
          }
        }
      }
    });
  });

  it('is ready in time and good as long as it must be, where it is planned backwards', () => {
    scheduled(({ readyBy, jobs, lines }, of) => {
      if (readyBy === undefined) return;
      const last = (step: string) => !of.lines[0]!.at.steps.some(({ after }) => after.includes(step));
      for (const job of jobs) expect(job.waitEnd).toBeLessThanOrEqual(readyBy);
      // kept 5 d; good until the end of the session, which is 2 d after 16:00 or 13:30 and 45 min of margin
      const goodUntil = lines[0]!.models.map(({ useBy }) => useBy!);
      const least = readyBy === utc('2026-12-11', 16) ? readyBy : utc('2026-12-12', 17);
      for (const until of goodUntil) expect(until).toBeGreaterThanOrEqual(least);
      for (const job of jobs.filter(({ step }) => last(step)))
        expect(job.waitEnd + 5 * 1440).toBeGreaterThanOrEqual(least);
    });
  });

  it('has a chain from its beginning to its end, each run bound to the one before', () => {
    scheduled(({ jobs, chain, ready, firstHandsOn, readyBy }, of) => {
      const links = chain.map(({ job }) => jobs[job]!);
      expect(new Set(links).size).toBe(links.length);
      if (readyBy === undefined) expect(links.at(-1)!.waitEnd).toBe(ready);
      else expect(links[0]!.start).toBe(firstHandsOn);
      expect(['start', 'delivery']).toContain(chain[0]!.because);
      chain.forEach(({ job, because, id }, i) => {
        const [before, next] = [links[i - 1], jobs[job]!];
        if (because === 'step') expect(stepOf(of, next).after).toContain(before!.step);
        if (because === 'builders') {
          expect(before!.end).toBeLessThanOrEqual(next.start);
          expect(before!.people * next.people).toBeGreaterThan(0);
        }
        if (because === 'place' || because === 'tool') expect(id).toBeDefined();
        if (i > 0) expect(because).not.toBe('start');
      });
    });
  });

  it('keeps builders, places and tools as busy as its runs do', () => {
    scheduled(({ jobs, loads, handsOn, firstHandsOn, ready }) => {
      for (const load of loads) {
        expect(load.peak).toBeLessThanOrEqual(load.has);
        expect(load.minutes).toBeLessThanOrEqual(load.available);
        if (load.kind !== 'builders') expect(load.available).toBe(load.has * (ready - firstHandsOn));
      }
      expect(loads[0]).toMatchObject({ kind: 'builders', minutes: handsOn });
      const bench = jobs.reduce((sum, { start, end, places }) => {
        return sum + (places['bench'] ?? 0) * (end - start);
      }, 0);
      const counted = loads.find(({ id }) => id === 'bench');
      expect(counted?.minutes ?? 0).toBe(bench);
    });
  });

  it('is found for most of these workspaces, so that the rules above were put to the test', () => {
    expect(scheduledOnes / all).toBeGreaterThan(0.4);
  });
});
