import type { Check, Finding } from './check.ts';
import type { GuideRead } from './lookup/context.ts';

/** Headings of steps that stand in another order than the steps. Told once a guide, at the first. */
export const headingsOutOfOrder: Check = {
  code: 'headings-out-of-order',
  gravity: 'incomplete',
  find: ({ guides }) => guides.flatMap(ofGuide),
};

function ofGuide(read: GuideRead): readonly Finding[] {
  const { steps, prose } = read.guide;
  const sections = prose.sections.flatMap(({ step, heading, at }) => {
    const index = steps.findIndex(({ id }) => id === step);
    return index < 0 ? [] : [{ index, heading, place: read.prose(at) }];
  });
  const late = sections.findIndex(({ index }, i) => i > 0 && index < sections[i - 1]!.index);
  if (late < 0) return [];
  const [before, after] = [sections[late - 1]!, sections[late]!];
  const inSteps = [after, before].map(({ index }) => read.place('steps', index, 'id'));
  return [
    {
      places: [after.place, before.place, ...inSteps],
      facts: { first: before.heading, second: after.heading },
    },
  ];
}
