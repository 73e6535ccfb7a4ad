import { describe, expect, it } from 'vitest';
import type { Guide } from '../../../src/core/model/guide.ts';
import {
  aGuide,
  aMaterial,
  aMix,
  aPiece,
  aRow,
  aStep,
  aWorkspace,
  amount,
  inOrder,
  planOf,
  said,
} from './a-workspace.ts';

const materials = ['powder', 'water', 'husk', 'felt', 'glue', 'tape'].map((id) => aMaterial(id));
const glueByVolume = aMaterial('glue', { density: { gramsPerMillilitre: '5/4' } });

/** What each step takes of what, in all: `pour: gel 12 L`. */
function takesOf(guide: Partial<Guide>, wanted: number, known = materials): string[] {
  const workspace = aWorkspace({ materials: known, guides: [aGuide('x', guide)] });
  const [line] = planOf(workspace, [{ guide: 'x', wanted }]).lines;
  return line!.steps.flatMap(({ step, takes }) =>
    takes.map(({ use, total }) => `${step}: ${use} ${said(total)}`),
  );
}

const gel = aMix('gel', '1 L', [
  { use: 'powder', amount: amount('100 g') },
  { use: 'water', amount: amount('900 mL') },
  { use: 'husk', amount: amount('10 g') },
]);

describe('what a step takes', () => {
  it('is all of it in a guide of one step that names nothing', () => {
    const rows = [aRow('felt', '2'), aRow('tape', '150 mm')];
    expect(takesOf({ materials: rows }, 3)).toEqual(['make: felt 6', 'make: tape 450 mm']);
  });

  it('is nothing in a guide of several steps where a step names nothing', () => {
    const steps = inOrder(
      aStep('cut', '1 min', '0 min', { uses: [{ material: 'felt' }] }),
      aStep('press', '1 min'),
    );
    expect(takesOf({ materials: [aRow('felt', '2')], steps }, 3)).toEqual(['cut: felt 6']);
  });

  it('is the share that it says, and the rest goes to the first step that says none', () => {
    const steps = inOrder(
      aStep('tack', '1 min', '0 min', { uses: [{ material: 'glue', amount: amount('5 g') }] }),
      aStep('stick', '1 min', '0 min', { uses: [{ material: 'glue' }] }),
      aStep('mend', '1 min', '0 min', { uses: [{ material: 'glue' }] }),
    );
    // 10 models: 200 g; tack 5/20 of it, stick the rest
    expect(takesOf({ materials: [aRow('glue', '20 g')], steps }, 10)).toEqual([
      'tack: glue 50 g',
      'stick: glue 150 g',
    ]);
  });

  it('may be said by volume where the row is by weight and a density is known', () => {
    const steps = inOrder(
      aStep('tack', '1 min', '0 min', { uses: [{ material: 'glue', amount: amount('4 mL') }] }), // 5 g
      aStep('stick', '1 min', '0 min', { uses: [{ material: 'glue', amount: amount('15 g') }] }),
    );
    const takes = takesOf({ materials: [aRow('glue', '20 g')], steps }, 2, [glueByVolume]);
    expect(takes).toEqual(['tack: glue 10 g', 'stick: glue 30 g']);
  });

  it('of a mix is what goes into the pot where it is first named, and the mix itself where it is named last', () => {
    const steps = inOrder(
      aStep('melt', '1 min', '0 min', { uses: [{ material: 'gel' }] }),
      aStep('pour', '1 min', '0 min', { uses: [{ material: 'gel' }] }),
    );
    expect(takesOf({ mixes: [gel], materials: [aRow('gel', '2 L')], steps }, 3)).toEqual([
      'melt: powder 600 g',
      'melt: water 5400 mL',
      'melt: husk 60 g',
      'pour: gel 6 L',
    ]);
  });

  it('of an ingredient that is named is taken from the mix; the others go in with it', () => {
    const steps = inOrder(
      aStep('bloom', '1 min', '0 min', {
        uses: [{ material: 'powder' }, { material: 'water', amount: amount('300 mL') }],
      }),
      aStep('melt', '1 min', '0 min', {
        uses: [{ material: 'gel' }, { material: 'water', amount: amount('600 mL') }],
      }),
    );
    expect(takesOf({ mixes: [gel], materials: [aRow('gel', '1 L')], steps }, 2)).toEqual([
      'bloom: powder 200 g',
      'bloom: water 600 mL',
      'melt: gel 2 L',
      'melt: husk 20 g',
      'melt: water 1200 mL',
    ]);
  });

  it('of pieces is those that it names; a step that names the row takes the others', () => {
    const pieces = [
      aPiece('skin', '100 mm x 100 mm'),
      aPiece('tab', '20 mm x 10 mm', 2),
      aPiece('rim', '50 mm x 10 mm'),
    ];
    const steps = inOrder(
      aStep('cover', '1 min', '0 min', { uses: [{ material: 'felt', pieces: ['skin'] }] }),
      aStep('trim', '1 min', '0 min', { uses: [{ material: 'felt' }] }),
    );
    expect(takesOf({ materials: [aRow('felt', undefined, { pieces })], steps }, 4)).toEqual([
      'cover: felt 40000 mm²',
      'trim: felt 3600 mm²', // 4 x (2 x 200 + 500)
    ]);
  });

  it('stands for one full run too, and in a small batch for the run there is', () => {
    const steps = [aStep('mix', '1 min', '0 min', { for: { per: 'every', models: 6 } })];
    const workspace = aWorkspace({
      materials,
      guides: [aGuide('x', { materials: [aRow('husk', '10 g', { waste: '1/10' })], steps })],
    });
    const runOf = (wanted: number): string =>
      said(planOf(workspace, [{ guide: 'x', wanted }]).lines[0]!.steps[0]!.takes[0]!.run);
    expect(runOf(20)).toBe('66 g');
    expect(runOf(4)).toBe('44 g');
  });
});
