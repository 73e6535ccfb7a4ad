import { describe, expect, it } from 'vitest';
import { showGuide } from '../../../src/showing/library/show-guide.ts';
import { showLabels } from '../../../src/showing/sheets/show-labels.ts';
import type { Guide } from '../../../src/core/model/guide.ts';
import { aGuide, aMaterial, aRow, aStep, aWorkspace, planOf } from '../../core/plan/a-workspace.ts';

const latex = aMaterial('latex-sleeve', { name: 'Latex sleeve', also: ['latex'], form: 'count' });
const card = aMaterial('card', { name: 'Card', form: 'count' });
const insert = aGuide('insert', {
  materials: [aRow('latex-sleeve', '1')],
  steps: [aStep('pull-it-on', '5 min')],
});

/** What the label of one model of a guide says is in it. */
function containsOf(guide: Guide): string {
  const workspace = aWorkspace({ guides: [guide, insert], materials: [latex, card] });
  const plan = planOf(workspace, [{ guide: guide.id, wanted: 1 }]);
  const line = plan.lines.findIndex((own) => own.guide === guide.id);
  const shown = showGuide(plan.lines[line]!.at, workspace);
  return showLabels('labels', plan, line, shown, workspace).contains.text;
}

describe('a label', () => {
  const steps = [aStep('fold-it', '5 min')];

  it('names what somebody may react to', () => {
    expect(containsOf(aGuide('cuff', { materials: [aRow('latex-sleeve', '1')], steps }))).toMatch(
      /latex sleeve/i,
    );
  });

  it('names it too where it is in the model of another guide that goes in', () => {
    const own = aGuide('arm', { materials: [aRow('card', '1'), aRow('guide:insert', '1')], steps });
    expect(containsOf(own)).toMatch(/latex sleeve/i);
  });

  it('names it where it is replaced between two uses alone', () => {
    const inUse = {
      between: { says: '', uses: [{ material: 'latex-sleeve', amount: aRow('x', '1').amount! }] },
      renew: [],
    } as unknown as Guide['inUse'];
    expect(containsOf(aGuide('stand', { materials: [aRow('card', '1')], steps, inUse }))).toMatch(
      /latex sleeve/i,
    );
  });

  it('says so where nothing of the kind is named', () => {
    expect(containsOf(aGuide('fold', { materials: [aRow('card', '1')], steps }))).toMatch(/^No latex/);
  });
});
