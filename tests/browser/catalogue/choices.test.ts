import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Choices,
  type Facet,
  countsOf,
  isChosen,
  readChoices,
  withoutChoice,
  writeChoices,
} from '../../../src/browser/catalogue/choices.ts';

const facets: readonly Facet[] = [
  { id: 'cost', keeps: 'any', values: ['to-2', '2-to-5', 'over-5'] },
  { id: 'hazard', keeps: 'any', values: ['blade', 'h223'] },
  { id: 'without', keeps: 'none', values: ['blade', 'h223'] },
];
const guide = (cost: string, ...dangers: readonly string[]): ReadonlySet<string> =>
  new Set([`cost:${cost}`, ...dangers.flatMap((danger) => [`hazard:${danger}`, `without:${danger}`])]);
const guides = [guide('to-2', 'blade'), guide('2-to-5', 'blade', 'h223'), guide('over-5')];
const choose = (choices: Record<string, readonly string[]>): Choices =>
  new Map(Object.entries(choices).map(([id, values]) => [id, new Set(values)]));
const left = (choices: Record<string, readonly string[]>): readonly number[] =>
  guides.flatMap((has, i) => (isChosen(has, choose(choices), facets) ? [i] : []));

describe('choices', () => {
  it('let any value of a facet do, and want every facet met', () => {
    expect(left({})).toEqual([0, 1, 2]);
    expect(left({ cost: ['to-2', 'over-5'] })).toEqual([0, 2]);
    expect(left({ cost: ['to-2', 'over-5'], hazard: ['blade'] })).toEqual([0]);
  });

  it('leave out what is chosen to be left out', () => {
    expect(left({ without: ['h223'] })).toEqual([0, 2]);
    expect(left({ without: ['h223', 'blade'] })).toEqual([2]);
  });

  it('count beside each value the guides that the other facets leave', () => {
    const counts = countsOf(guides, choose({ hazard: ['blade'] }), facets);
    expect(counts.get('cost:to-2')).toBe(1);
    expect(counts.get('cost:over-5')).toBe(0);
    // within its own facet, choosing another adds: it is counted as if nothing of it were chosen
    expect(counts.get('hazard:h223')).toBe(1);
  });

  it('stand in the address and come back from it; what a page does not know is left out', () => {
    expect(writeChoices(choose({ hazard: ['h223', 'blade'] }), 'cost', 'title')).toBe(
      '?hazard=h223&hazard=blade&sort=cost',
    );
    expect(writeChoices(choose({}), 'title', 'title')).toBe('');
    expect(readChoices('?hazard=h223&hazard=%3Cimg%3E&other=1', facets)).toEqual(
      choose({ hazard: ['h223'] }),
    );
    fc.assert(
      fc.property(
        fc.subarray(facets.flatMap(({ id, values }) => values.map((v) => [id, v] as const))),
        (some) => {
          const chosen = new Map<string, Set<string>>();
          for (const [id, value] of some) chosen.set(id, (chosen.get(id) ?? new Set()).add(value));
          expect(readChoices(writeChoices(chosen, 'title', 'title'), facets)).toEqual(chosen);
        },
      ),
    );
  });

  it('lose one and keep the others', () => {
    const choices = choose({ cost: ['to-2'], hazard: ['blade', 'h223'] });
    expect(withoutChoice(choices, 'hazard', 'blade')).toEqual(choose({ cost: ['to-2'], hazard: ['h223'] }));
    expect(withoutChoice(choices, 'cost', 'to-2')).toEqual(choose({ hazard: ['blade', 'h223'] }));
  });
});
