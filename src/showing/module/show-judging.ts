import type { Module, Scoring } from '../../core/model/module.ts';
import { moduleWords } from '../../words/modules.ts';
import { counted, fill } from '../text/fill.ts';
import { showDuration } from '../text/times.ts';

const { judged: words } = moduleWords;

/** How trainees are judged, in sentences that give away no item: time, list, ratings, the pass mark. */
export function showJudging({ scoring, surveys }: Module): readonly string[] {
  const confidence = surveys.length > 0 ? [words.confidence] : [];
  if (!scoring) return [words.nothing, ...confidence];
  const { limit, items, ratings } = scoring;
  return [
    ...(limit ? [fill(words.limit, { time: showDuration(limit) })] : []),
    ...(items.length > 0 ? [fill(words.items, { items: counted(items.length, 'item') })] : []),
    ...(ratings.length > 0 ? [fill(words.rating, { scales: counted(ratings.length, 'scale') })] : []),
    ...(items.some(({ critical }) => critical) ? [words.critical] : []),
    passText(scoring.pass),
    ...confidence,
  ];
}

function passText(pass: Scoring['pass']): string {
  if (pass === undefined) return words.unsaid;
  return pass === 'none' ? words.noneSet : fill(words.set, { method: words.methods[pass.method] });
}
