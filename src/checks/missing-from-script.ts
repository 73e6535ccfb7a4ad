import type { Workspace } from '../core/model/workspace.ts';
import { allergens } from '../core/model/material.ts';
import { metIn, sharps, type Met } from '../core/plan/cohort/met.ts';
import { scriptWords } from '../words/index.ts';
import type { Check, Finding } from './check.ts';
import type { Context, ModuleRead } from './lookup/context.ts';
import { materialName, toolName } from './lookup/names.ts';

/**
 * A brief or a clear-up that leaves out a sentence on which somebody's safety hangs. They are asked for by their ids:
 * nothing is guessed from an author's own words.
 */
export const missingFromScript: Check = {
  code: 'missing-from-script',
  gravity: 'stops',
  find: (context) => context.modules.flatMap((read) => ofModule(read, context)),
};

/** What is said where, and the dangers that make it necessary; without any, models of whatever kind do. */
const sentences = [
  { item: 'brief', sentence: 'training-only' },
  { item: 'brief', sentence: 'allergens', dangers: allergens },
  { item: 'clear-up', sentence: 'pockets' },
  { item: 'clear-up', sentence: 'sharps-count', dangers: sharps },
] as const;

function ofModule({ module, place }: ModuleRead, { workspace }: Context): readonly Finding[] {
  const agenda = module.session?.agenda ?? [];
  const hasModels = module.stations.some(({ models }) => models.length > 0);
  return sentences.flatMap(({ item, sentence, ...wanted }): readonly Finding[] => {
    const index = agenda.findIndex(({ id }) => id === item);
    if (agenda[index]?.script.includes(sentence) ?? true) return [];
    const met = 'dangers' in wanted ? metIn(module, workspace, wanted.dangers) : [];
    if (met.length === 0 && ('dangers' in wanted || !hasModels)) return [];
    const because = met.map((one) => nameOf(one, workspace)).join(', ');
    const facts = { item, sentence, words: scriptWords[sentence]!, because };
    return [{ variant: sentence, places: [place('session', 'agenda', index, 'id')], facts }];
  });
}

function nameOf({ kind, id }: Met, workspace: Workspace): string {
  return kind === 'tool' ? toolName(workspace, id) : materialName(workspace, id);
}
