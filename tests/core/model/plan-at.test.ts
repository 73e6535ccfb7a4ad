import { describe, expect, it } from 'vitest';
import { Bug } from '../../../src/core/diagnostic.ts';
import { planAt, usualLevel } from '../../../src/core/model/plan-at.ts';
import { aGuide, aMix, aRow, aStep, amount, inOrder, time } from '../plan/a-workspace.ts';

const shallow = { id: 'shallow', name: 'Shallow', usual: false };
const deep = { id: 'deep', name: 'Deep', usual: true };
const byDepth = <T>(atShallow: T, atDeep: T) => ({ byLevel: { shallow: atShallow, deep: atDeep } });

const guide = aGuide('block', {
  levels: [shallow, deep],
  mixes: [{ ...aMix('dye', '10 mL', [{ use: 'ink', amount: amount('1 mL') }]), only: ['deep'] }],
  materials: [
    { ...aRow('gel', undefined), amount: byDepth(amount('1 L'), amount('2 L')) },
    { ...aRow('dye', '5 mL'), only: ['deep'] },
  ],
  steps: inOrder(
    aStep('pour', '5 min', '0 min', {
      wait: { usual: byDepth(time('12 h'), time('16 h')), ifRoom: {} },
      uses: [{ material: 'gel' }, { material: 'dye' }, { material: 'ink' }, { material: 'gell' }],
      useWithin: { byStep: { mark: time('10 min') } },
    }),
    aStep('mark', '1 min', '0 min', { only: ['deep'] }),
    aStep('unmould', '5 min'),
  ),
  checks: [
    { id: 'line', ask: 'Is the line straight?', after: 'mark', each: 'model' },
    { id: 'clear', ask: 'Clear?', after: 'pour', each: 'model' },
  ],
  cautions: [
    { id: 'ink', signal: 'notice', steps: ['mark'], hazard: 'ink stains', avoid: [] },
    { id: 'both', signal: 'notice', steps: ['mark', 'pour'], hazard: 'spills', avoid: [] },
    { id: 'all', signal: 'notice', steps: [], hazard: 'mess', avoid: [] },
  ],
});

describe('a guide at one level', () => {
  it('has one amount and one time where there were two', () => {
    expect(planAt(guide, 'shallow').materials[0]!.amount).toEqual(amount('1 L'));
    expect(planAt(guide, 'deep').steps[0]!.wait!.usual).toEqual(time('16 h'));
  });

  it('is the level marked usual, else the first, where none is named', () => {
    expect(planAt(guide).level).toBe('deep');
    expect(usualLevel(aGuide('x', { levels: [shallow, { ...deep, usual: false }] }))).toBe('shallow');
    expect(usualLevel(aGuide('x'))).toBeUndefined();
    expect('level' in planAt(aGuide('x'))).toBe(false);
  });

  it('keeps the rows of its level and knows where each was written', () => {
    const at = planAt(guide, 'shallow');
    expect(at.materials.map(({ id }) => id)).toEqual(['gel']);
    expect(at.mixes).toEqual([]);
    expect(at.steps.map(({ id }) => id)).toEqual(['pour', 'unmould']);
    expect(at.originOf.steps).toEqual([0, 2]);
    expect(planAt(guide, 'deep').originOf.steps).toEqual([0, 1, 2]);
  });

  it('lets the steps after a gone step follow what that followed', () => {
    expect(planAt(guide, 'shallow').steps[1]!.after).toEqual(['pour']);
    expect(planAt(guide, 'deep').steps[2]!.after).toEqual(['mark']);
  });

  it('names nothing that only other levels have, but keeps a name that nobody knows for the checks', () => {
    const pour = planAt(guide, 'shallow').steps[0]!;
    expect(pour.uses!.map(({ material }) => material)).toEqual(['gel', 'gell']);
    expect(pour.useWithin.byStep).toEqual({});
  });

  it('never widens a caution: one whose steps are all gone goes, not to the whole guide', () => {
    const { cautions, originOf } = planAt(guide, 'shallow');
    expect(cautions.map(({ id, steps }) => [id, steps])).toEqual([
      ['both', ['pour']],
      ['all', []],
    ]);
    expect(originOf.cautions).toEqual([1, 2]);
  });

  it('keeps a check of a gone step, of the finished model', () => {
    expect(planAt(guide, 'shallow').checks.map(({ id, after }) => [id, after])).toEqual([
      ['line', undefined],
      ['clear', 'pour'],
    ]);
  });

  it('is never made for a level that the guide has not', () => {
    expect(() => planAt(guide, 'medium')).toThrow(Bug);
  });
});
