import { given } from '../../given.ts';
import type { Question } from '../compare/with-change.ts';
import type { DemandLine, PlanSettings } from '../demand.ts';
import type { OwnSettings } from './own-settings.ts';
import type { PageData } from './page-data.ts';
import { withOwn } from './with-own.ts';

/** What is asked of the planner when a reader has set this: the page's own level first, then what is made along. */
export function questionOf({ workspace, guide, level, today }: PageData, own: OwnSettings): Question {
  const { batch, along = {}, part, builders, start, readyBy, margin, goodUntil, stock } = own;
  const lineOf = (at: string | undefined, wanted: number | undefined): DemandLine =>
    given<DemandLine>({ guide, level: at, part, wanted });
  return {
    workspace: withOwn(workspace, own),
    demand: [lineOf(level, batch), ...Object.entries(along).map(([other, wanted]) => lineOf(other, wanted))],
    settings: given<PlanSettings>({ today, builders, start, readyBy, margin, goodUntil, stock }),
  };
}
