import { allergens, metIn, sharps } from '../core/plan/cohort/met.ts';
import { scriptWords } from '../words/index.ts';
import type { Check, Finding } from './check.ts';
import type { Context, ModuleRead } from './context.ts';
import { materialName, toolName } from './names.ts';

/**
 * A brief or a clear-up that leaves out a sentence on which somebody's safety hangs. They are asked for by their ids:
 * nothing is guessed from an author's own words.
 */
export const missingFromScript: Check = {
  code: 'missing-from-script',
  gravity: 'stops',
  find: (context) => context.modules.flatMap((read) => ofModule(read, context)),
};

function ofModule(read: ModuleRead, context: Context): readonly Finding[] {
  const { module } = read;
  const [reactedTo, counted] = [allergens, sharps].map((dangers) =>
    metIn(module, context.workspace, dangers).map(({ kind, id }) =>
      kind === 'tool' ? toolName(context.workspace, id) : materialName(context.workspace, id),
    ),
  );
  const hasModels = module.stations.some(({ models }) => models.length > 0);
  return [
    ...missing(read, 'brief', 'training-only', hasModels ? [''] : []),
    ...missing(read, 'brief', 'allergens', reactedTo!),
    ...missing(read, 'clear-up', 'pockets', hasModels ? [''] : []),
    ...missing(read, 'clear-up', 'sharps-count', counted!),
  ];
}

/** @param because  What makes the sentence necessary; empty where nothing does. */
function missing(
  { module: { session }, place }: ModuleRead,
  item: string,
  sentence: string,
  because: readonly string[],
): readonly Finding[] {
  const index = session?.agenda.findIndex(({ id }) => id === item) ?? -1;
  const isSaid = session?.agenda[index]?.script.includes(sentence) ?? true;
  if (isSaid || because.length === 0) return [];
  const facts = { item, sentence, words: scriptWords[sentence]!, because: because.join(', ') };
  return [{ variant: sentence, places: [place('session', 'agenda', index, 'id')], facts }];
}
