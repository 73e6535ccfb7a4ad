import { type Caution, signals } from '../core/model/guide.ts';
import type { Workspace } from '../core/model/workspace.ts';
import type { PlannedLine } from '../core/plan/result.ts';
import { stepHazards } from '../core/plan/scale/hazards.ts';
import { lineName } from './line-name.ts';

/** What can hurt in the making of a line: its cautions, most severe first, then what each step meets. */
export function safetyJson(line: PlannedLine, workspace: Workspace) {
  const { at } = line;
  const bySeverity = signals.flatMap((signal) => at.cautions.filter((caution) => caution.signal === signal));
  const met = stepHazards(at, workspace);
  return {
    ...lineName(line),
    cautions: bySeverity.map(cautionJson),
    steps: at.steps.map(({ id, controls }, i) => ({
      step: id,
      cautions: bySeverity.filter(({ steps }) => steps.includes(id)).map((caution) => caution.id),
      hazards: met[i]!.sources.flatMap(({ kind, id: source, hazards }) =>
        hazards.length > 0 ? [{ [kind]: source, hazards }] : [],
      ),
      controls,
    })),
  };
}

function cautionJson({
  id,
  signal,
  steps,
  hazard,
  harm,
  avoid,
}: Pick<Caution, 'id' | 'signal' | 'steps'> & CautionText) {
  return { id, signal, steps, hazard, ...(harm === undefined ? {} : { harm }), avoid };
}
type CautionText = Pick<PlannedLine['at']['cautions'][number], 'hazard' | 'harm' | 'avoid'>;
