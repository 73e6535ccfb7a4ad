import type { Module } from '../../core/model/module.ts';
import { usualLevel } from '../../core/model/plan-at.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { CohortPlan } from '../../core/plan/cohort/cohort.ts';
import type { ModelNeed } from '../../core/plan/cohort/model-needs.ts';
import { sessionWords } from '../../words/session.ts';
import { capital, counted, fill, inWords, listed } from '../text/fill.ts';
import { showCount } from '../text/numbers.ts';
import { shown } from '../shown/shown.ts';
import { guideName } from './session-names.ts';
import type { Besides, ShownModelNeed } from './shown-session.ts';

const words = sessionWords.models;

/** Models of each guide and level that stand ready, and what each is for. */
export function showSessionModels(
  key: string,
  module: Module,
  { models }: CohortPlan,
  workspace: Workspace,
): readonly ShownModelNeed[] {
  return models.map((need) => {
    const { guide, level, spares, parts } = need;
    const own = `${key}.${level === undefined ? guide : `${guide}.${level}`}`;
    return {
      guide,
      ...(level === undefined ? {} : { level }),
      name: shown(`${own}.name`, guideName(workspace, guide, level)),
      count: shown(`${own}.count`, counted(need.models + spares, 'model')),
      of: shown(`${own}.of`, ofText(need)),
      share: shown(`${own}.share`, shareText(need, module, workspace)),
      parts: parts.map((part) => shown(`${own}.parts.${part.part}`, partText(part, need, workspace))),
      wears: shown(`${own}.wears`, parts.map((part) => partText(part, need, workspace)).join('; ')),
    };
  });
}

/** "6 to practise on, 1 for the demonstration and 2 spares" */
function ofText({ models, besides, spares }: ModelNeed): string {
  const apart = Object.entries(besides) as [Besides, number][];
  const practice = models - apart.reduce((sum, [, n]) => sum + n, 0);
  return listed([
    fill(words.practice, { n: showCount(practice) }),
    ...apart.filter(([, n]) => n > 0).map(([kind, n]) => fill(words.besides[kind], { n: showCount(n) })),
    ...(spares > 0 ? [fill(words.spares, { spares: counted(spares, 'spare') })] : []),
  ]);
}

/** "Skin: 7 in all, 4 of them on the models" */
function partText(
  { part, count, spares }: ModelNeed['parts'][number],
  need: ModelNeed,
  { guides }: Workspace,
): string {
  const name = guides[need.guide]?.parts.find(({ id }) => id === part)?.name;
  return fill(words.part, {
    part: name ?? capital(inWords(part)),
    count: showCount(count + need.spares + spares),
    on: showCount(need.models + need.spares),
  });
}

/** How often they are used and how people share them; of several stations each way once. */
function shareText({ guide, level, uses }: ModelNeed, { stations }: Module, { guides }: Workspace): string {
  const written = guides[guide];
  const usual = written && usualLevel(written);
  const own = stations
    .flatMap(({ models }) => models)
    .filter((models) => models.guide === guide && (models.level ?? usual) === level);
  const ways = [...new Set(own.map(({ share }) => sessionWords.shares[share]))];
  return fill(words.share, { uses: counted(uses, 'use'), ways: listed(ways) });
}
