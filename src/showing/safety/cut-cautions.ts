import type { ShownCaution, ShownLine, ShownPlan } from '../shown/shown-plan.ts';

/** Cautions of the steps that first take what is cut, most severe first: a sheet to cut by is never without them. */
export function cutCautions({ cutting }: ShownPlan, line: ShownLine): readonly ShownCaution[] {
  const materials = new Set<string | undefined>(cutting.map(({ material }) => material));
  const rows = new Set(line.materials.filter((row) => materials.has(row.material)).map(({ id }) => id));
  const steps = [...rows].flatMap((row) => {
    const first = line.steps.find(({ takes }) => takes.some(({ use }) => use === row));
    return first ? [first] : [];
  });
  const met = new Set(steps.flatMap(({ cautions }) => cautions.map(({ id }) => id)));
  return line.cautions.filter(({ id, steps: of }) => met.has(id) || of.text === '');
}
