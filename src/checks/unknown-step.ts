import type { Check } from './check.ts';
import type { GuideRead } from './lookup/context.ts';
import {
  linkedTo,
  namedAt,
  namedIn,
  the,
  theTool,
  unknownNames,
  type Reference,
} from './lookup/unknown-names.ts';

/** A step that a guide names and does not have. */
export const unknownStep: Check = {
  code: 'unknown-step',
  gravity: 'stops',
  find: ({ guides }) =>
    guides.flatMap((read) => {
      const known = read.guide.steps.map(({ id }) => id);
      return unknownNames(
        [...bySteps(read), ...byTools(read), ...byRest(read), ...linkedTo(read, 'step')],
        known,
      );
    }),
};

function bySteps(read: GuideRead): readonly Reference[] {
  return read.guide.steps.flatMap(({ id, after, useWithin }, i) => {
    const who = the('step', read.stepName(id));
    const limits = Object.keys(useWithin.byStep).map((name) => ({
      name,
      place: read.key('steps', i, 'use-within', name),
      who: `The hold limit of “${read.stepName(id)}”`,
      put: (known: string) => `${known}: …`,
    }));
    return [...namedIn(read, after, who, 'steps', i, 'after'), ...limits];
  });
}

function byTools(read: GuideRead): readonly Reference[] {
  return read.guide.tools.flatMap(({ use, held, in: inHand }, i) => [
    ...namedAt(read, held?.from, theTool(use), 'tools', i, 'held', 'from'),
    ...namedAt(read, held?.to, theTool(use), 'tools', i, 'held', 'to'),
    ...namedIn(read, inHand, theTool(use), 'tools', i, 'in'),
  ]);
}

/** Quality checks, cautions and renewals. */
function byRest(read: GuideRead): readonly Reference[] {
  const { checks, cautions, inUse } = read.guide;
  return [
    ...checks.flatMap(({ id, after }, i) => namedAt(read, after, the('check', id), 'checks', i, 'after')),
    ...cautions.flatMap(({ id, steps }, i) =>
      namedIn(read, steps, the('caution', id), 'cautions', i, 'steps'),
    ),
    ...inUse.renew.flatMap(({ id, steps }, i) =>
      namedIn(read, steps, the('renewal', id), 'in-use', 'renew', i, 'steps'),
    ),
  ];
}
