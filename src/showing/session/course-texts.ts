import { guidesOfModule } from '../../core/model/guides-of-module.ts';
import type { Module, Objective } from '../../core/model/module.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import { minutesOf } from '../../core/time/minutes.ts';
import { sessionWords } from '../../words/session.ts';
import { asSentence, properly } from '../text/author-text.ts';
import { capital, fill, inWords, plainSpaces } from '../text/fill.ts';

/** A module in the words of its pages, for other programs: without addresses, which publishing knows. */
export function courseTexts(module: Module, { guides, modules }: Pick<Workspace, 'guides' | 'modules'>) {
  const { summary = '', version = '', licence = '', audience = '', session } = module;
  const assessed = module.objectives.filter(({ assessedBy }) => assessedBy.length > 0);
  return {
    name: plainSpaces(properly(module.title)),
    description: plainSpaces(asSentence(summary)),
    version,
    licence,
    audience: plainSpaces(properly(audience)),
    after: module.after.map((id) => modules[id]?.title ?? capital(inWords(id))),
    teaches: module.objectives.map(objectiveText),
    assesses: assessed.map(objectiveText),
    ...(session ? { booked: minutesOf(session.booked) } : {}),
    resources: [
      ...module.prepare.map(({ kind, what, takes }) => ({
        kind,
        name: plainSpaces(preparationName(module, what)),
        ...(takes ? { minutes: minutesOf(takes) } : {}),
      })),
      ...guidesOfModule(module).map((id) => ({
        kind: 'guide' as const,
        id,
        name: plainSpaces(guides[id]?.title ?? capital(inWords(id))),
      })),
    ],
  };
}

/** "keep the needle tip in view until it enters the vessel, in 3 attempts of 4" */
function objectiveText({ does, standard }: Objective): string {
  const text = standard === undefined ? does : fill(sessionWords.objective, { does, standard });
  return plainSpaces(properly(text));
}

/** The heading of a text of the module; else as its author wrote it. */
function preparationName({ prose }: Module, what: string): string {
  return properly(prose.sections.find(({ slug }) => slug === what)?.heading ?? what);
}
