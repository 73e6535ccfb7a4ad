import { beforeAll, describe, expect, it } from 'vitest';
import type { Workspace } from '../../../src/core/model/workspace.ts';
import { makePlan } from '../../../src/core/plan/plan.ts';
import type { Plan } from '../../../src/core/plan/result.ts';
import { showCatalogue } from '../../../src/showing/library/show-catalogue.ts';
import type { FacetId, ShownCatalogue } from '../../../src/showing/shown/shown-catalogue.ts';
import { readDemo, today } from '../../publishing/demo-site.ts';

let workspace: Workspace;
let plans: readonly Plan[] = [];
let catalogue: ShownCatalogue;
beforeAll(async () => {
  workspace = (await readDemo()).workspace!;
  plans = Object.values(workspace.guides).map(
    ({ id }) => makePlan(workspace, [{ guide: id }], { today }) as Plan,
  );
  catalogue = showCatalogue(plans, workspace);
}, 240_000);

const facet = (id: FacetId) => catalogue.facets.find((known) => known.id === id)!;
const has = (i: number): readonly string[] => catalogue.entries[i]!.has.split(' ');

describe('the catalogue of the demo program', () => {
  it('offers by what its guides differ, each value with as many guides as have it', () => {
    const ids = catalogue.facets.map(({ id }) => id);
    expect(ids).toEqual(
      expect.arrayContaining(['skill', 'cost', 'build', 'hands-on', 'keeps', 'hazard', 'tool', 'status']),
    );
    for (const { id, options } of catalogue.facets) {
      for (const { value, count } of options) {
        const having = plans.filter((_, i) => has(i).includes(`${id}:${value}`)).length;
        expect([id, value, count.text]).toEqual([id, value, String(having)]);
        expect(having).toBeGreaterThan(0);
      }
    }
  });

  it('puts each guide into one range of cost, build time, hands-on time and keeping', () => {
    for (const id of ['cost', 'build', 'hands-on', 'keeps'] as const) {
      for (const [i] of plans.entries()) {
        expect(has(i).filter((token) => token.startsWith(`${id}:`))).toHaveLength(1);
      }
    }
  });

  it('names dangers as the data sheets do, and how many of a tool there are', () => {
    const names = facet('hazard').options.map(({ name }) => name.text);
    expect(names).toContain('A sharp blade, cuts');
    expect(facet('tool').options.find(({ value }) => value === 'loaf-tin')!.note.text).toBe('8 here');
  });

  it('ranks guides from the cheapest and the quickest up', () => {
    const inOrder = [...plans.keys()].sort(
      (a, b) => catalogue.entries[a]!.ranks.cost - catalogue.entries[b]!.ranks.cost,
    );
    const costs = inOrder.map((i) => plans[i]!.cost.each[0]!.used);
    expect(costs.every((cost, i) => i === 0 || costs[i - 1]!.compare(cost) <= 0)).toBe(true);
    expect(catalogue.entries.map(({ ranks }) => ranks.build).sort()).toEqual(plans.map((_, i) => i + 1));
  });

  it('draws build times on one scale: the longest is its whole width', () => {
    const spans = catalogue.entries.map(({ span }) => span!);
    expect(Math.max(...spans.map(({ build }) => build))).toBe(1000);
    for (const { build, handsOn } of spans) expect(handsOn).toBeLessThanOrEqual(build);
  });

  it('offers nothing by which guides do not differ', () => {
    const one = showCatalogue(plans.slice(0, 1), workspace);
    expect(one.facets).toEqual([]);
    expect(one.entries).toHaveLength(1);
    expect(showCatalogue([], workspace)).toMatchObject({ facets: [], entries: [] });
  });
});
