import type { Module } from '../../core/model/module.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import { allergens, metIn } from '../../core/plan/cohort/met.ts';
import { scriptWords } from '../../words/script.ts';
import { asSentence } from '../author-text.ts';
import { fill, listed, uncapital } from '../fill.ts';
import { materialName, toolName } from '../names.ts';

/** What is said, as a sentence: the author's own words, or what stands in the published list under the id written. */
export function scriptText(entry: string, module: Module, workspace: Workspace): string {
  const published = Object.hasOwn(scriptWords, entry) ? scriptWords[entry] : undefined;
  if (published === undefined) return asSentence(entry);
  const list = listed(
    metIn(module, workspace, allergens).map(({ kind, id }) =>
      uncapital(kind === 'tool' ? toolName(id, workspace) : materialName(id, workspace)),
    ),
  );
  return fill<string>(published, { list });
}
