import type { Guide, GuideAt } from '../../core/model/guide.ts';
import type { Workspace } from '../../core/model/workspace.ts';

/** A step as its author calls it: by its heading, else by its id in words. */
export function stepName(guide: Pick<Guide, 'prose' | 'steps'>, id: string): string {
  const section = guide.prose.sections.find(({ step }) => step === id);
  return section?.heading ?? guide.steps.find((step) => step.id === id)?.heading ?? inWords(id);
}

/** `melt-the-gel` -> "Melt the gel". */
export function inWords(id: string): string {
  return id.charAt(0).toUpperCase() + id.slice(1).replaceAll('-', ' ');
}

export function materialName({ materials }: Workspace, id: string): string {
  return materials[id]?.name ?? inWords(id);
}

export function toolName({ tools }: Workspace, id: string): string {
  return tools[id]?.name ?? inWords(id);
}

/** A row of materials: by its own id where the material stands twice, else by what it uses. */
export function rowName(
  workspace: Workspace,
  at: GuideAt,
  row: { readonly id: string; readonly use: string },
): string {
  const mix = at.mixes.find(({ id }) => id === row.use);
  const name = mix ? (mix.name ?? inWords(mix.id)) : materialName(workspace, row.use);
  return row.id === row.use ? name : `${name} (${row.id})`;
}

/** `heat-gloves`: an id of a published list; words of an author's own have blanks, or are one word. */
export function isLikeAnId(text: string): boolean {
  return /^[a-z0-9]+(-[a-z0-9]+)+$/.test(text);
}
