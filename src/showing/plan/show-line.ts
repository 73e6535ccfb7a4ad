import type { Workspace } from '../../core/model/workspace.ts';
import type { Plan, PlannedLine } from '../../core/plan/result.ts';
import { planWords } from '../../words/plan.ts';
import { counted, fill } from '../text/fill.ts';
import { lineName } from '../text/names.ts';
import { showCount } from '../text/numbers.ts';
import { showCautions } from '../safety/show-cautions.ts';
import { showLineFacts } from './show-facts.ts';
import { showLinks } from './show-links.ts';
import { showMaterials } from './show-materials.ts';
import { clockOf } from '../text/plan-clock.ts';
import type { StepRuns } from './show-step-times.ts';
import { showSteps } from './show-steps.ts';
import { shown } from '../shown/shown.ts';
import type { ShownLine } from '../shown/shown-plan.ts';

/** One guide at one level, as its page and its sheets show it. */
export function showLine(key: string, plan: Plan, index: number, workspace: Workspace): ShownLine {
  const line = plan.lines[index]!;
  return {
    guide: line.guide,
    ...(line.level === undefined ? {} : { level: line.level }),
    title: shown(`${key}.title`, lineName(line)),
    count: shown(`${key}.count`, countText(line)),
    models: shown(`${key}.models`, counted(line.made, 'model')),
    ...(line.made === 0 ? { isFinished: true } : {}),
    facts: showLineFacts(`${key}.facts`, plan, index, workspace),
    materials: showMaterials(`${key}.materials`, line, workspace),
    steps: showSteps(`${key}.steps`, line, runsOf(plan, index, workspace), workspace),
    cautions: showCautions(`${key}.cautions`, line.at),
    links: showLinks(`${key}.links`, line, workspace),
  };
}

function runsOf({ schedule }: Plan, line: number, workspace: Workspace): (step: string) => StepRuns {
  if ('none' in schedule) return () => ({ jobs: [] });
  const clock = clockOf(schedule, workspace);
  return (step) => ({ jobs: schedule.jobs.filter((job) => job.line === line && job.step === step), clock });
}

/** "4 to make", or what is wanted and why more is made. */
function countText({ wanted, forOthers = 0, spares, finished = 0, made, at }: PlannedLine): string {
  const { counts } = planWords;
  const texts = { wanted: showCount(wanted), spares: counted(spares, 'spare'), made: showCount(made) };
  if (made === 0) return fill(counts.nothing, { finished: showCount(finished) });
  if (made === wanted && forOthers === 0) return fill(counts.plain, texts);
  const count = fill(spares > 0 ? counts.withSpares : counts.more, texts);
  const there = finished > 0 ? fill(counts.finished, { count, finished: showCount(finished) }) : count;
  const others =
    forOthers > 0 ? fill(counts.forOthers, { count: there, others: showCount(forOthers) }) : there;
  return at.yields === '1' ? others : fill(counts.someFail, { count: others });
}
