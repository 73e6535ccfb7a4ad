import type { Diagnostic } from '../core/diagnostic.ts';
import type { Workspace } from '../core/model/workspace.ts';
import { guidesTouched } from '../checks/usage.ts';

/**
 * The findings that touch some guides: in their own files, in the program's, and in those of the materials and tools
 * that they use. A guide is planned whatever is wrong with its neighbours.
 */
export function concerning(
  guides: readonly string[],
  findings: readonly Diagnostic[],
  workspace: Workspace | undefined,
): readonly Diagnostic[] {
  const isTouched = (file: string): boolean =>
    !file.includes('/') ||
    guides.some((id) => file.startsWith(`guides/${id}/`)) ||
    (workspace !== undefined && guidesTouched(file, workspace).some(({ id }) => guides.includes(id)));
  return findings.filter(({ places }) => places.length === 0 || places.some(({ file }) => isTouched(file)));
}
