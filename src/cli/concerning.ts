import type { Diagnostic } from '../core/diagnostic.ts';
import type { Guide } from '../core/model/guide.ts';
import type { Workspace } from '../core/model/workspace.ts';

/**
 * The findings that touch some guides: in their own files, in the program's, and in those of the materials and tools
 * that they use. A guide is planned whatever is wrong with its neighbours.
 */
export function concerning(
  guides: readonly string[],
  findings: readonly Diagnostic[],
  workspace: Workspace | undefined,
): readonly Diagnostic[] {
  const touched = new Set(['program.yaml', 'program.yml']);
  for (const id of guides) {
    touched.add(`guides/${id}/guide.md`);
    const guide = workspace && Object.hasOwn(workspace.guides, id) ? workspace.guides[id] : undefined;
    for (const file of guide ? filesUsedBy(guide) : []) touched.add(file);
  }
  return findings.filter(({ places }) => places.length === 0 || places.some(({ file }) => touched.has(file)));
}

function filesUsedBy({ materials, mixes, tools, inUse }: Guide): string[] {
  const resets = [inUse.setUp, inUse.between, inUse.after].flatMap((part) => part?.uses ?? []);
  const used = [
    ...materials.map(({ use }) => use),
    ...mixes.flatMap(({ of }) => of.map(({ use }) => use)),
    ...resets.map(({ material }) => material),
    ...inUse.renew.flatMap(({ materials: renewed }) => renewed.map(({ material }) => material)),
  ];
  return [...used.map((id) => `materials/${id}.yaml`), ...tools.map(({ use }) => `tools/${use}.yaml`)];
}
