import type { Diagnostic } from '../../diagnostic.ts';
import { planAt } from '../../model/plan-at.ts';
import type { Workspace } from '../../model/workspace.ts';
import { type Exact, ceil, exact, zero } from '../../quantity/exact.ts';
import type { Finished } from '../demand.ts';
import { type Asked, type Line, forEachGood, lineOf } from './line.ts';
import { refusal } from '../refusal.ts';
import { guidesUsed, guideUsed, isGuideUse } from '../../model/guide-use.ts';

/** Models of one line that go into those of another: an insert for a block. */
export interface Insert {
  /** The line whose models they go into, and its row that uses them. */
  readonly into: number;
  readonly row: number;
  /** The line that makes them. */
  readonly of: number;
  /** Good ones, for all models of `into` that still need theirs. */
  readonly count: number;
  /** So many of the same line go elsewhere before these. Finished ones go first. */
  readonly before: number;
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
  finished: readonly Finished[] = [],
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
  return withoutIdle(counted(all, order, (asked) => lineOf(asked, workspace, spares, finished), workspace));
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
  count: (asked: Asked) => Line,
  workspace: Workspace,
): Lines {
  const lines: Line[] = [];
  const inserts: Insert[] = [];
  for (const index of order) {
    const line = count({ ...all[index]!, forOthers: countOf(inserts, index) });
    lines[index] = line;
    for (const { row, total } of line.needs.rows) {
      const { use } = line.at.materials[row]!;
      const needed = isGuideUse(use) ? ceil(total.value) : 0;
      if (needed === 0) continue;
      const of = findWhole(all, guideUsed(use), workspace);
      inserts.push({ into: index, row, of, count: needed, before: countOf(inserts, of) });
    }
  }
  return { lines, inserts };
}

/** Models of a line that go into others. */
function countOf(inserts: readonly Insert[], line: number): number {
  return inserts.filter(({ of }) => of === line).reduce((sum, { count }) => sum + count, 0);
}

/** Without lines that nobody asked for and that nothing needs any more. */
function withoutIdle({ lines, inserts }: Lines): Lines {
  const kept = lines.flatMap(({ wanted }, line) => (wanted > 0 ? [line] : []));
  return {
    lines: kept.map((line) => lines[line]!),
    inserts: inserts.map((insert) => ({
      ...insert,
      into: kept.indexOf(insert.into),
      of: kept.indexOf(insert.of),
    })),
  };
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
      .reduce((sum, insert) => sum.add(borneBy(insert, lines, sumOf(insert.of))), own[line] ?? zero);
  return lines.map((_, line) => sumOf(line));
}

/** What the models made for an insert come to, of a sum over all that its line makes. */
export function borneBy({ of, count, before }: Insert, lines: readonly Line[], all: Exact): Exact {
  const { finished } = lines[of]!;
  const made = Math.max(0, before + count - finished) - Math.max(0, before - finished);
  return forEachGood(lines[of]!, all).mul(exact(made));
}
