import type { Diagnostic } from '../diagnostic.ts';
import type { InPieces } from '../in-pieces.ts';
import type { Workspace } from '../model/workspace.ts';
import { wanting } from './buy/buy.ts';
import type { Want } from './buy/want.ts';
import { piecesToCut } from './cut/cut-pieces.ts';
import type { DemandLine, PlanSettings } from './demand.ts';
import { demanded } from './demand/demanded.ts';
import { type Lines, withInserts } from './demand/inserts.ts';
import type { Line } from './demand/line.ts';
import { type Run, runsOfPlan } from './demand/plan-runs.ts';
import { type Settings, readSettings } from './demand/read-settings.ts';
import { refusal } from './refusal.ts';
import type { Requirement } from './result.ts';
import { requirementsOf } from './scale/requirements.ts';

/** What a demand comes to before anything is ordered or placed in time. */
export interface Work extends Settings, Lines {
  readonly workspace: Workspace;
  readonly requirements: readonly Requirement[];
  /** What could be bought, one for each requirement. */
  readonly wants: readonly Want[];
  readonly runs: readonly Run[];
}

/** So many models of one line, those that fail included, are the most that are planned. */
const madeUpTo = 100_000;

/**
 * What is made, needed and done for a demand; or why it is not planned.
 *
 * @param cutting  Pieces that may be laid in search of better layouts of each material. Work, never seconds.
 */
export function* workingOut(
  workspace: Workspace,
  demand: readonly DemandLine[],
  settings: PlanSettings,
  cutting: number,
): InPieces<Work | { readonly refused: readonly Diagnostic[] }> {
  const asked = demanded(workspace, demand);
  const set = readSettings(workspace.program, settings);
  const refused = [...('refused' in asked ? asked.refused : []), ...('refused' in set ? set.refused : [])];
  if ('refused' in asked || 'refused' in set) return { refused };
  const all = withInserts(asked.lines, workspace, set.spares, set.finished);
  if ('refused' in all) return all;
  const tooMany = all.lines.filter(({ made }) => made > madeUpTo);
  if (tooMany.length > 0) return { refused: tooMany.map(tooManyMade) };
  yield;
  const requirements = requirementsOf(all.lines, workspace);
  const pieces = piecesToCut(all.lines, workspace);
  const wants = yield* wanting({ requirements, pieces, workspace, stock: set.stock, cutting });
  if ('refused' in wants) return wants;
  const runs = runsOfPlan(all.lines, workspace, set.clock);
  return { ...set, ...all, workspace, requirements, wants, runs };
}

function tooManyMade({ at, made }: Line): Diagnostic {
  return refusal('too-many-made', { guide: at.id, made: String(made), most: String(madeUpTo) });
}
