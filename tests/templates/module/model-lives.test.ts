import { expect, it } from 'vitest';
import type { Nodes } from 'hast';
import { cohortOf } from '../../../src/core/plan/cohort/cohort.ts';
import { showLives } from '../../../src/showing/session/show-lives.ts';
import { showSession } from '../../../src/showing/session/show-session.ts';
import { modelLives } from '../../../templates/module/model-lives.tsx';
import { aModule, aStation } from '../../core/plan/cohort/a-module.ts';
import { aGuide, time } from '../../core/plan/a-workspace.ts';
import { bench } from '../../showing/bench.ts';
import { seen } from '../seen.ts';

const pad = aGuide('pad', {
  lasts: '3',
  inUse: {
    setUp: { takes: time('4 min'), do: 'tape it to the table', uses: [] },
    after: { do: 'count the needles', uses: [] },
    renew: [],
    dispose: { to: 'general waste' },
  },
});
const workspace = { ...bench, guides: { ...bench.guides, pad } };

function pageOf(guide: string): string {
  const module = aModule({
    stations: [aStation('a', { models: [{ guide, uses: 1, share: 'mixed', besides: {} }] })],
  });
  const cohort = cohortOf(module, workspace.guides);
  const lives = showLives('lives', cohort, workspace);
  return seen(modelLives(showSession(module, cohort, workspace), lives) as Nodes);
}

it('what is done before and after, with its time where that is known; how to throw it away stands with its guide', () => {
  const page = pageOf('pad').replaceAll('\u00a0', ' ');
  expect(page).toContain('Set up 4 min before it begins');
  expect(page).toContain(pad.title);
  expect(page).toMatch(/Set up<\/span><span[^>]*>4 min<.*Tape it to the table\..*Count the needles\./s);
  expect(page).not.toContain('general waste');
});

it('is not there where no guide says anything of it', () => {
  const workspace = { ...bench, guides: { plain: aGuide('plain') } };
  const module = aModule({
    stations: [aStation('a', { models: [{ guide: 'plain', uses: 1, share: 'mixed', besides: {} }] })],
  });
  const cohort = cohortOf(module, workspace.guides);
  expect(cohort.models).toHaveLength(1);
  const lives = showLives('lives', cohort, workspace);
  expect(modelLives(showSession(module, cohort, workspace), lives)).toBeNull();
});

it('is not there where no model is', () => {
  const module = aModule();
  const cohort = cohortOf(module, {});
  expect(modelLives(showSession(module, cohort, workspace), [])).toBeNull();
});
