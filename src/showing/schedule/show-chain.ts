import type { ChainLink, PlannedJob, PlannedLine, PlannedSchedule } from '../../core/plan/result.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import { planWords } from '../../words/plan.ts';
import { scheduleWords } from '../../words/schedule.ts';
import { fill, inWords } from '../text/fill.ts';
import { modelsText, numbersText } from '../text/model-lists.ts';
import { lineAmong, stepName, toolName } from '../text/names.ts';
import { showCount } from '../text/numbers.ts';
import type { ShownLink } from '../shown/shown-schedule.ts';
import { shown } from '../shown/shown.ts';
import { type Clock, showMinutes, showMoment, showMomentFrom } from '../text/times.ts';

/** Runs of one step that follow each other. */
interface Stretch {
  readonly links: readonly ChainLink[];
  readonly jobs: readonly PlannedJob[];
  /** The job before the first of them. */
  readonly before?: PlannedJob;
}

interface Context {
  readonly lines: readonly PlannedLine[];
  readonly schedule: PlannedSchedule;
  readonly clock: Clock;
  readonly workspace: Workspace;
}

/** At most so many are listed; of more, those in the middle are counted. */
const listedUpTo = 14;
const listedAtEachEnd = 6;

/** What decides when all is ready: which runs, and what kept each from beginning earlier. */
export function showChain(key: string, context: Context): readonly ShownLink[] {
  const stretches = stretchesOf(context.schedule);
  const afterTheGap = stretches.length > listedUpTo ? stretches.length - listedAtEachEnd : 0;
  const links = stretches.map((stretch, i) =>
    linkTexts(stretch, i === afterTheGap ? undefined : stretches[i - 1], context),
  );
  return shortened(links).map(({ line, when, what, because }, i) => ({
    ...(line === undefined ? {} : { line }),
    when: shown(`${key}[${i}].when`, when),
    what: shown(`${key}[${i}].what`, what),
    of: shown(`${key}[${i}].of`, lineAmong(context.lines, line)),
    because: shown(`${key}[${i}].because`, because),
  }));
}

interface Texts extends Readonly<Record<'when' | 'what' | 'because', string>> {
  readonly line?: number;
}

function shortened(links: readonly Texts[]): readonly Texts[] {
  if (links.length <= listedUpTo) return links;
  const more = fill(scheduleWords.chain.more, { n: showCount(links.length - 2 * listedAtEachEnd) });
  return [
    ...links.slice(0, listedAtEachEnd),
    { when: '', what: more, because: '' },
    ...links.slice(-listedAtEachEnd),
  ];
}

function stretchesOf({ chain, jobs }: PlannedSchedule): readonly Stretch[] {
  return chain.reduce<Stretch[]>((all, link, i) => {
    const job = jobs[link.job]!;
    const last = all.at(-1);
    if (last && last.jobs[0]!.line === job.line && last.jobs[0]!.step === job.step) {
      const joined = { ...last, links: [...last.links, link], jobs: [...last.jobs, job] };
      return [...all.slice(0, -1), joined];
    }
    const before = jobs[chain[i - 1]?.job ?? -1];
    return [...all, { links: [link], jobs: [job], ...(before ? { before } : {}) }];
  }, []);
}

function linkTexts(stretch: Stretch, before: Stretch | undefined, context: Context): Texts {
  const { jobs } = stretch;
  return {
    line: jobs[0]!.line,
    when: whenText(jobs, before?.jobs, context.clock),
    what: whatText(jobs, context.lines),
    because: becauseText(stretch, context),
  };
}

/** The day is said where it is another than that of the one before. */
function whenText(
  jobs: readonly PlannedJob[],
  before: readonly PlannedJob[] | undefined,
  clock: Clock,
): string {
  const from = startOf(jobs);
  const to = Math.max(...jobs.map(({ end }) => end));
  return fill(planWords.schedule.range, {
    from: before ? showMomentFrom(startOf(before), from, clock) : showMoment(from, clock),
    to: showMomentFrom(from, to, clock),
  });
}

const startOf = (jobs: readonly PlannedJob[]): number => Math.min(...jobs.map(({ start }) => start));

/** "Pour the gel, run 2"; of steps done for each model "Fit the bases, models 1–6". */
function whatText(jobs: readonly PlannedJob[], lines: readonly PlannedLine[]): string {
  const line = lines[jobs[0]!.line]!;
  const step = stepName(line.at, jobs[0]!.step);
  const { chain } = scheduleWords;
  const runs = line.steps.find((need) => need.step === jobs[0]!.step)?.runs ?? [];
  if (runs.length <= 1) return step;
  if (jobs.every(({ models }) => models.length === 1)) {
    const models = jobs.flatMap((job) => job.models).sort((a, b) => a - b);
    return fill(chain.models, { step, models: modelsText(models) });
  }
  const numbers = jobs.map(({ run }) => run).sort((a, b) => a - b);
  return numbers.length === 1
    ? fill(chain.run, { step, n: showCount(numbers[0]!) })
    : fill(chain.runs, { step, list: numbersText(numbers) });
}

/** Within a stretch these go without saying: one run of a step comes after the other. */
const plainReasons: readonly ChainLink['because'][] = ['step', 'builders'];

/** Why the first of them began no earlier, then what else held them up: "follows …, then waits for a tool: Hand drill". */
function becauseText({ links, before, jobs }: Stretch, { workspace, schedule }: Context): string {
  const reasons = links.flatMap((link, i) => {
    if (i > 0) return plainReasons.includes(link.because) ? [] : [reasonText(link, undefined, workspace)];
    const isFirst = link.because !== 'start' || jobs[0]!.start === schedule.firstHandsOn;
    return [isFirst ? reasonText(link, before, workspace) : scheduleWords.because.slack];
  });
  return [...new Set(reasons)].join(scheduleWords.chain.then);
}

function reasonText(
  { because, id = '' }: ChainLink,
  before: PlannedJob | undefined,
  workspace: Workspace,
): string {
  const { because: words } = scheduleWords;
  if (because === 'step' && before && before.waitEnd > before.end)
    return fill(words.stepWait, { time: showMinutes(before.waitEnd - before.end) });
  if (because === 'place') return fill(words.place, { name: inWords(id) });
  if (because === 'tool') return fill(words.tool, { name: toolName(id, workspace) });
  return words[because];
}
