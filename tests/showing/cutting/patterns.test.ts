import { beforeAll, describe, expect, it } from 'vitest';
import type { Workspace } from '../../../src/core/model/workspace.ts';
import { makePlan } from '../../../src/core/plan/plan.ts';
import type { Plan } from '../../../src/core/plan/result.ts';
import { exact } from '../../../src/core/quantity/exact.ts';
import { type Drawings, showPatterns } from '../../../src/showing/cutting/show-patterns.ts';
import { readDemo, today } from '../../publishing/demo-site.ts';

describe('patterns to print at 1:1', () => {
  let workspace: Workspace;
  let plan: Plan;
  let ids: readonly string[];
  beforeAll(async () => {
    workspace = (await readDemo()).workspace!;
    const made = makePlan(workspace, [{ guide: 'suture-pad' }], { today, effort: '1/50' });
    if ('refused' in made) throw new Error(JSON.stringify(made.refused));
    plan = made;
    ids = plan.lines[0]!.at.patterns.map(({ id }) => id);
  }, 60_000);

  const sized = (some: readonly string[]): Drawings =>
    Object.fromEntries(some.map((id) => [id, { width: exact('90'), height: exact('60'), isEven: true }]));
  const shownWith = (drawings: Drawings) => showPatterns('patterns', plan, 0, drawings, workspace);

  it('prints every pattern whose drawing states its size, and says nothing of others', () => {
    const { patterns, unsized } = shownWith(sized(ids));
    expect(ids.length).toBeGreaterThan(0);
    expect(patterns.map(({ id }) => id)).toEqual(expect.arrayContaining([...ids]));
    expect(unsized.text).toBe('');
  });

  it('names in one sentence the patterns that it cannot print', () => {
    const { patterns, unsized } = shownWith({});
    expect(patterns.filter(({ id }) => ids.includes(id))).toEqual([]);
    expect(unsized.text).toMatch(
      /^Not printed here: [A-Z][^.]*\. No drawing beside the guide states its size in mm,/,
    );
    for (const id of ids) expect(unsized.text.toLowerCase()).toContain(id.replaceAll('-', ' '));
  });
});
