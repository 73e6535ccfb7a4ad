import { describe, expect, it } from 'vitest';
import type { Guide } from '../../../../src/core/model/guide.ts';
import type { Program } from '../../../../src/core/model/program.ts';
import type { PlanSettings } from '../../../../src/core/plan/demand.ts';
import { heldThings } from '../../../../src/core/plan/schedule/held.ts';
import { aGuide, aStep, aToolRow, inOrder, time } from '../a-workspace.ts';
import { aWorkload, holdText } from './a-workload.ts';

function holds(
  guide: Partial<Guide>,
  wanted: number,
  program: Partial<Program>,
  settings: Partial<PlanSettings> = {},
): string[] {
  const work = aWorkload([aGuide('x', guide)], [{ guide: 'x', wanted }], program, settings);
  return heldThings(work.lines, work.jobs, work.resources).map((hold) => holdText(hold, work));
}
const wait = (text: string) => ({ wait: { usual: time(text), ifRoom: {} } });
const every = (models: number) => ({ for: { per: 'every', models } as const });

describe('a tool that is held over several steps', () => {
  const steps = inOrder(aStep('melt', '9 min', '0 min', every(4)), aStep('pour', '5 min', '0 min', every(2)));
  const pot = (more = {}) => aToolRow('pot', { holds: 4, held: { from: 'melt', to: 'pour' }, ...more });

  it('is held by the models that share it, from the first hands on them to the last off them', () => {
    // 6 models: [1 2 3 4] melted in one pot and poured two at a time, [5 6] in another
    expect(holds({ steps, tools: [pot()] }, 6, { owned: { pot: 2 } })).toEqual([
      '1 pot: melt 1 start, pour 1 end & pour 2 end',
      '1 pot: melt 2 start, pour 3 end',
    ]);
  });

  it('is held by a run for all the groups that it touches, and by a group from the first run that touches it', () => {
    // 6 models in pots of 3: [1 2 3] [4 5 6]; melting [1 2 3 4] takes two of them
    expect(holds({ steps, tools: [pot({ holds: 3, count: 2 })] }, 6, { owned: { pot: 9 } })).toEqual([
      '2 pot: melt 1 start, pour 1 end & pour 2 end',
      '2 pot: melt 1 start & melt 2 start, pour 2 end & pour 3 end',
    ]);
  });

  it('is nothing to share out where it is in hand only, or where there are as many as one likes', () => {
    expect(holds({ steps, tools: [aToolRow('pot', { in: ['melt'] })] }, 4, { owned: { pot: 2 } })).toEqual(
      [],
    );
    expect(holds({ steps, tools: [pot()] }, 4, {})).toEqual([]);
  });
});

describe('a place in which models wait', () => {
  const pour = (per: 'run' | 'model', more = {}) =>
    aStep('pour', '9 min', '0 min', {
      ...every(4),
      ...wait('1 h'),
      waitsAt: { shelf: { count: 2, per } },
      ...more,
    });
  const shelf = { stations: { shelf: 99 } };

  it('is held from hands-off until the next step takes them', () => {
    const steps = inOrder(pour('model'), aStep('trim', '1 min', '0 min', every(4)), aStep('pack', '1 min'));
    expect(holds({ steps }, 6, shelf)).toEqual([
      '8 shelf: pour 1 end, trim 1 start',
      '4 shelf: pour 2 end, trim 2 start',
    ]);
  });

  it('is held by models that are taken on together, each group until its own run takes it', () => {
    const steps = inOrder(pour('model'), aStep('trim', '1 min', '0 min', every(3)));
    // [1 2 3 4] go on as [1 2 3] and [4]; [5 6] with 4 in the second run
    expect(holds({ steps }, 6, shelf)).toEqual([
      '6 shelf: pour 1 end, trim 1 start',
      '2 shelf: pour 1 end, trim 2 start',
      '4 shelf: pour 2 end, trim 2 start',
    ]);
  });

  it('counts once for the run, until the last of it is taken', () => {
    const steps = inOrder(pour('run'), aStep('trim', '1 min', '0 min', every(3)));
    expect(holds({ steps }, 6, shelf)).toEqual([
      '2 shelf: pour 1 end, trim 1 start & trim 2 start',
      '2 shelf: pour 2 end, trim 2 start',
    ]);
  });

  it('is held until the last of several next steps takes the model', () => {
    const steps = [
      pour('model'),
      aStep('paint', '1 min', '0 min', { ...every(2), after: ['pour'] }),
      aStep('label', '1 min', '0 min', { ...every(4), after: ['pour'] }),
    ];
    expect(holds({ steps }, 4, shelf)).toEqual([
      '4 shelf: pour 1 end, paint 1 start & label 1 start',
      '4 shelf: pour 1 end, paint 2 start & label 1 start',
    ]);
  });

  it('is held through the last wait, and not at all without one', () => {
    expect(holds({ steps: [pour('model')] }, 4, shelf)).toEqual(['8 shelf: pour 1 end, pour 1 wait end']);
    const steps = [aStep('pour', '9 min', '0 min', { waitsAt: { shelf: { count: 1, per: 'run' } } })];
    expect(holds({ steps }, 2, shelf)).toEqual([]);
  });

  it('is nothing to share out where the program does not list it', () => {
    expect(holds({ steps: inOrder(pour('model'), aStep('trim', '1 min')) }, 2, {})).toEqual([]);
  });

  it('is held by models that are past the step, until they are taken on too', () => {
    // of three, the first two are poured already, and the first is trimmed
    const steps = inOrder(pour('model', { for: { per: 'model' } }), aStep('trim', '1 min'));
    const past = [
      { step: 'pour', models: 2 },
      { step: 'trim', models: 1 },
    ];
    expect(holds({ steps }, 3, shelf, { finished: [{ guide: 'x', models: 0, past }] })).toEqual([
      '2 shelf: pour 1 end, trim 1 start',
      '2 shelf: pour 2 end, trim 2 start',
      '2 shelf: pour 3 end, trim 3 start',
    ]);
  });
});
