import { expect, it } from 'vitest';
import { showPlan } from '../../src/showing/plan/show-plan.ts';
import { aGuide, aMaterial, aRow, aStep, aWorkspace, planOf } from '../core/plan/a-workspace.ts';

const insert = aGuide('insert', {
  title: 'Insert',
  materials: [aRow('card', '1')],
  steps: [aStep('fold-it', '5 min')],
});
const arm = aGuide('arm', {
  title: 'Arm',
  materials: [aRow('card', '1'), aRow('guide:insert', '1')],
  steps: [aStep('lay-it-in', '5 min')],
});
const workspace = aWorkspace({
  guides: [arm, insert],
  materials: [aMaterial('card', { name: 'Card', form: 'count' })],
});
const shownFor = (guide: string) => showPlan(planOf(workspace, [{ guide, wanted: 2 }]), workspace);

it('a row leads to its material, or to the guide of the model that goes in', () => {
  expect(shownFor('arm').lines[0]!.materials.map(({ leadsTo }) => leadsTo)).toEqual([
    'materials/index.html#material-card',
    'guides/insert/index.html',
  ]);
});

it('costs, ends, days and what decides are named by guide where the plan is of several', () => {
  const { costs, schedule } = shownFor('arm');
  const names = (of: readonly { readonly of: { readonly text: string } }[]) => of.map(({ of }) => of.text);
  expect(names(costs[0]!.each)).toEqual(['Arm', 'Insert']);
  expect(costs.at(-1)!.each).toMatchObject([{ of: { text: '' } }]); // cash to start: of the whole demand
  expect(names(schedule.ready)).toEqual(['Arm', 'Insert']);
  expect(new Set(names(schedule.days[0]!.rows))).toEqual(new Set(['Arm', 'Insert']));
  expect(names(schedule.decides)).toEqual(['Insert', 'Arm']);
});

it('and go without where it is of one', () => {
  const { costs, schedule } = shownFor('insert');
  const all = [...costs.flatMap(({ each }) => each), ...schedule.ready, ...schedule.days[0]!.rows];
  expect(all.filter(({ of }) => of.text !== '')).toEqual([]);
});
