import type { Diagnostic } from '../core/diagnostic.ts';
import type { Workspace } from '../core/model/workspace.ts';
import { guidesTouched } from '../checks/lookup/usage.ts';
import { guidesWithin } from '../core/model/guide-use.ts';

/**
 * The findings that touch some guides, and a module where they are its own: in their files, in those of the guides
 * whose models they need, in the program's, and in those of the materials and tools that all these use. A guide is
 * planned whatever is wrong with its neighbours, and with modules that use it.
 */
export function concerning(
  named: readonly string[],
  findings: readonly Diagnostic[],
  workspace: Workspace | undefined,
  module?: string,
): readonly Diagnostic[] {
  const guides = workspace ? named.flatMap((id) => [id, ...guidesWithin(id, workspace)]) : named;
  const isTouched = (file: string): boolean =>
    !file.includes('/') ||
    guides.some((id) => file.startsWith(`guides/${id}/`)) ||
    (workspace !== undefined && guidesTouched(file, workspace).some(({ id }) => guides.includes(id)));
  const isOfModule = (file: string): boolean => file.startsWith(`modules/${module}/`);
  return findings.filter(({ places }) => {
    const [first] = places;
    if (first?.file.startsWith('modules/')) return isOfModule(first.file);
    return !first || places.some(({ file }) => isTouched(file));
  });
}
