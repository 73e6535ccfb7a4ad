import type { Diagnostic } from '../diagnostic.ts';
import { planAt } from '../model/plan-at.ts';
import type { Workspace } from '../model/workspace.ts';
import { type Exact, ceil, exact, zero } from '../quantity/exact.ts';
import { type Asked, type Line, goodOnes, lineOf } from './line.ts';
import { refusal } from './refusal.ts';
import { isGuide } from './requirements.ts';

/** Models of one line that go into those of another: an insert for a block. */
export interface Insert {
  /** The line whose models they go into, and its row that uses them. */
  readonly into: number;
  readonly row: number;
  /** The line that makes them. */
  readonly of: number;
  /** Good ones, for all models of `into`. */
  readonly count: number;
}

/** The lines of a plan, those included that make models for others. */
export interface Lines {
  readonly lines: readonly Line[];
  readonly inserts: readonly Insert[];
}

/**
 * A demand with all that it draws in: where a row uses the model of another guide, that guide has a line too, at its
 * usual level. Lines that were asked for come first, in their order.
 *
 *     12 blocks, 2 inserts in each   ->   12 blocks; 24 inserts, made ahead
 */
export function withInserts(
  asked: readonly Asked[],
  workspace: Workspace,
  spares: Exact,
): Lines | { readonly refused: readonly Diagnostic[] } {
  const all = [...asked];
  for (const { at } of all) {
    for (const id of guidesUsed(at)) {
      if (!workspace.guides[id]) return { refused: [refusal('unknown-guide', { guide: id, known: '' })] };
      if (findWhole(all, id, workspace) < 0)
        all.push({ at: planAt(workspace.guides[id]), wanted: 0, forOthers: 0 });
    }
  }
  const order = usersFirst(all, workspace);
  if (!order)
    return {
      refused: [
        refusal('guide-in-itself', { guide: all.find(({ at }) => guidesUsed(at).length > 0)!.at.id }),
      ],
    };
  return counted(all, order, workspace, spares);
}

/** Ids of the guides whose models a guide uses. */
function guidesUsed({ materials }: Line['at']): string[] {
  return [...new Set(materials.filter(({ use }) => isGuide(use)).map(({ use }) => guideIn(use)))];
}

function guideIn(use: string): string {
  return use.slice('guide:'.length);
}

/** The line that makes whole models of a guide at its usual level. */
function findWhole(lines: readonly Asked[], id: string, { guides }: Workspace): number {
  const { level } = planAt(guides[id]!);
  return lines.findIndex(({ at, part }) => at.id === id && at.level === level && part === undefined);
}

/** Lines so that each comes after all whose models use its own; `undefined` where they go round in a circle. */
function usersFirst(lines: readonly Asked[], workspace: Workspace): number[] | undefined {
  const uses = lines.map(({ at }) => guidesUsed(at).map((id) => findWhole(lines, id, workspace)));
  const order: number[] = [];
  while (order.length < lines.length) {
    const free = lines.findIndex(
      (_, line) =>
        !order.includes(line) && uses.every((used, user) => order.includes(user) || !used.includes(line)),
    );
    if (free < 0) return undefined;
    order.push(free);
  }
  return order;
}

/** Counts from the users down: what they make settles what they need. */
function counted(
  all: readonly Asked[],
  order: readonly number[],
  workspace: Workspace,
  spares: Exact,
): Lines {
  const lines: Line[] = [];
  const inserts: Insert[] = [];
  for (const index of order) {
    const forOthers = inserts.filter(({ of }) => of === index).reduce((sum, { count }) => sum + count, 0);
    const line = lineOf({ ...all[index]!, forOthers }, workspace, spares);
    lines[index] = line;
    for (const { row, total } of line.needs.rows) {
      const { use } = line.at.materials[row]!;
      if (!isGuide(use)) continue;
      inserts.push({
        into: index,
        row,
        of: findWhole(all, guideIn(use), workspace),
        count: ceil(total.value),
      });
    }
  }
  return { lines, inserts };
}

/**
 * Sums of the lines with those of the models that go into theirs: what a block costs with its inserts.
 *
 * @param own  Of each line's own materials or work, all models together.
 */
export function rolledUp({ lines, inserts }: Lines, own: readonly Exact[]): readonly Exact[] {
  const sumOf = (line: number): Exact =>
    inserts
      .filter(({ into }) => into === line)
      .reduce((sum, { of, count }) => sum.add(shareOf(lines[of]!, count).mul(sumOf(of))), own[line] ?? zero);
  return lines.map((_, line) => sumOf(line));
}

/** So many of a line's good models. */
export function shareOf(line: Line, count: number): Exact {
  return exact(count).div(exact(goodOnes(line)));
}
