import type { Module } from '../../core/model/module.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import { allergens } from '../../core/model/material.ts';
import { metIn } from '../../core/plan/cohort/met.ts';
import { scriptWords, scriptWordsOfNone } from '../../words/script.ts';
import { asSentence } from '../text/author-text.ts';
import { fill, listed, uncapital } from '../text/fill.ts';
import { materialName, toolName } from '../text/names.ts';

/** What is said, as a sentence: the author's own words, or what stands in the published list under the id written. */
export function scriptText(entry: string, module: Module, workspace: Workspace): string {
  if (!Object.hasOwn(scriptWords, entry)) return asSentence(entry);
  const met = metIn(module, workspace, allergens).map(({ kind, id }) =>
    uncapital(kind === 'tool' ? toolName(id, workspace) : materialName(id, workspace)),
  );
  const ofNone = met.length === 0 ? scriptWordsOfNone[entry] : undefined;
  return fill<string>(ofNone ?? scriptWords[entry]!, { list: listed(met) });
}
