import { exact, exactText } from '../core/quantity/exact.ts';
import type { Check, Finding } from './check.ts';
import type { GuideRead } from './lookup/context.ts';

/**
 * Most uses of one published model: a frame for chest drains, of which the worn parts are replaced.
 *
 * @source Kouyoumjian, SAGE Open Medicine 2023: 1000 uses.
 */
const mostUses = exact(1000);

/** More uses of a model, or of a part of it, than any published model shows. */
export const unusualLife: Check = {
  code: 'unusual-life',
  gravity: 'note',
  find: ({ guides }) => guides.flatMap(ofGuide),
};

function ofGuide({ guide, place }: GuideRead): readonly Finding[] {
  const parts = guide.parts.map(({ name, lasts }, i) => ({ name, lasts, way: ['parts', i, 'lasts'] }));
  return [{ name: guide.title, lasts: guide.lasts, way: ['lasts'] }, ...parts].flatMap(
    ({ name, lasts, way }) =>
      lasts !== undefined && exact(lasts).gt(mostUses)
        ? [{ places: [place(...way)] as const, facts: { name, uses: exactText(exact(lasts)) } }]
        : [],
  );
}
