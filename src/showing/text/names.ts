import type { GuideAt } from '../../core/model/guide.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { PlannedLine } from '../../core/plan/result.ts';
import { planWords } from '../../words/plan.ts';
import { properly } from './author-text.ts';
import { capital, fill, inWords } from './fill.ts';

/** "Ultrasound needle block, Deep vessel"; of a part made alone "Rib frame, Skin alone". */
export function lineName(line: PlannedLine): string {
  const part = line.at.parts.find(({ id }) => id === line.part)?.name;
  const model = modelName(line);
  return part === undefined ? model : fill(planWords.withPart, { model, part });
}

/** The same where the plan is of several lines; a single one is known, and goes without. */
export function lineAmong(lines: readonly PlannedLine[], line: number | undefined): string {
  return lines.length < 2 || line === undefined ? '' : lineName(lines[line]!);
}

function modelName({ at, level }: PlannedLine): string {
  const name = at.levels.find(({ id }) => id === level)?.name;
  return name === undefined ? at.title : fill(planWords.withLevel, { guide: at.title, level: name });
}

/** What a guide calls a row, a mix or an ingredient: the material's name, the mix's, or the id in words. */
export function useName(at: GuideAt, use: string, workspace: Workspace): string {
  const id = at.materials.find((row) => row.id === use)?.use ?? use;
  const mix = at.mixes.find((known) => known.id === id);
  return mix ? properly(mix.name ?? capital(inWords(id))) : materialName(id, workspace);
}

/** The name of a material, or of the guide whose model serves as one. */
export function materialName(id: string, workspace: Workspace): string {
  const guide = workspace.guides[id.replace(/^guide:/, '')];
  return properly(workspace.materials[id]?.name ?? guide?.title ?? capital(inWords(id)));
}

export function toolName(id: string, workspace: Workspace): string {
  return properly(workspace.tools[id]?.name ?? capital(inWords(id)));
}

/** The heading under which a step stands in the prose. */
export function stepName(at: GuideAt, id: string): string {
  const section = at.prose.sections.find(({ step }) => step === id);
  const step = at.steps.find((known) => known.id === id);
  return properly(section?.heading ?? step?.heading ?? capital(inWords(id)));
}

/** "1", counting from one; of the steps as the guide lists them. */
export function stepNumber(at: GuideAt, id: string): number {
  return at.steps.findIndex((step) => step.id === id) + 1;
}

/** The name of a supplier, by its key in the program's list. */
export function supplierName(id: string, program: Workspace['program']): string {
  return program.suppliers[id]?.name ?? inWords(id);
}
