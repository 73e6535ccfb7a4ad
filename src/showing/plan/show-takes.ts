import type { Workspace } from '../../core/model/workspace.ts';
import type { PlannedLine, StepNeed, StepTake } from '../../core/plan/result.ts';
import { type Measure, compare } from '../../core/quantity/quantity.ts';
import { planWords } from '../../words/plan.ts';
import { amountParts, showExactly } from '../text/amounts.ts';
import { showSizeIn } from './amounts-of-uses.ts';
import { counted, fill, inWords } from '../text/fill.ts';
import { useName } from '../text/names.ts';
import { showCount } from '../text/numbers.ts';
import { roundedFor, sharesOf, takenOf, type Measured } from './shares.ts';
import { shown } from '../shown/shown.ts';
import type { ShownTake } from '../shown/shown-plan.ts';
import { type System, firstSystem, inSystems } from '../text/systems.ts';

/** The tray at the head of a step: what one full run of it takes, and what all its runs take together. */
export function showTakes(
  key: string,
  step: StepNeed,
  line: PlannedLine,
  workspace: Workspace,
): readonly ShownTake[] {
  const texts = step.takes.flatMap((take) =>
    take.pieces.length > 0 ? piecesOf(take, line, workspace) : [amountOf(take, step, line, workspace)],
  );
  return texts.map(({ use, ...rest }, i) => ({
    use,
    amount: shown(`${key}[${i}].amount`, rest.amount),
    unit: shown(`${key}[${i}].unit`, rest.unit),
    name: shown(`${key}[${i}].name`, useName(line.at, use, workspace)),
    note: shown(`${key}[${i}].note`, rest.notes.join(planWords.andAlso)),
    total: shown(`${key}[${i}].total`, rest.total),
  }));
}

interface Texts {
  readonly use: string;
  readonly amount: string;
  readonly unit: string;
  readonly total: string;
  readonly notes: readonly string[];
}

/** The number of the first system stands large; all else is its unit. */
function amountOf(take: StepTake, step: StepNeed, line: PlannedLine, workspace: Workspace): Texts {
  const { units } = workspace.program;
  const taken = (system: System) => roundedTake(take, step, line, workspace, system);
  const all = inSystems(units, (system) => showExactly(taken(system).total, system));
  const run = inSystems(units, (system) => showExactly(taken(system).run, system));
  const { number } = amountParts(taken(firstSystem(units)).run, firstSystem(units));
  const unit = run.slice(number.length).trimStart();
  return { use: take.use, amount: number, unit, total: all, notes: allNote(all, step) };
}

/** A material of one run is rounded up by itself, but is never shown as more than all runs take. */
function roundedTake(
  take: StepTake,
  step: StepNeed,
  line: PlannedLine,
  { tools }: Workspace,
  system: System,
): Record<'total' | 'run', Measure> {
  const of: Measured = { line, use: take.use, tools, system };
  const total = sharesOf(of).get(step.step)!;
  if (step.runs.length === 1) return { total, run: total };
  const run = roundedFor(of, takenOf(line, step, take).run);
  return { total, run: compare(run, total) <= 0 ? run : total };
}

function piecesOf(take: StepTake, line: PlannedLine, { program }: Workspace): readonly Texts[] {
  const row = line.at.materials.find(({ id }) => id === take.use);
  return take.pieces.map(({ piece, run, total }) => {
    const written = row?.pieces.find(({ id }) => id === piece);
    const all = counted(total, 'piece');
    return {
      use: take.use,
      amount: showCount(run),
      unit: '',
      total: all,
      notes: [
        ...(row && row.pieces.length > 1 ? [inWords(piece)] : []),
        ...(written ? [showSizeIn(program.units, written.size)] : []),
        ...(run === total ? [] : [fill(planWords.steps.inAll, { amount: all })]),
      ],
    };
  });
}

function allNote(amount: string, { runs }: StepNeed): readonly string[] {
  return runs.length === 1 ? [] : [fill(planWords.steps.inAll, { amount })];
}
