import type { Judged, PassMark, Scoring } from '../../core/model/module.ts';
import { exact } from '../../core/quantity/exact.ts';
import { roundTo } from '../../core/quantity/round.ts';
import { passMarkOf } from '../../core/scoring/pass-mark.ts';
import { planWords } from '../../words/plan.ts';
import { sessionWords } from '../../words/session.ts';
import { numberWords } from '../../words/units.ts';
import { showRecordDate } from '../text/dates.ts';
import { counted, fill } from '../text/fill.ts';
import { showNumber } from '../text/numbers.ts';

const words = sessionWords.passMark;

/**
 * "74.17 % (Angoff, 3 judges, 4 items, 1 October 2026)"; or that none is set, that nobody says, or that what the judges
 * said is not there.
 */
export function passMarkText(scoring: Scoring): string {
  const { pass } = scoring;
  if (pass === undefined) return words.unsaid;
  if (pass === 'none') return words.none;
  const mark = passMarkOf(scoring, pass);
  if (!mark) return fill(words.unknown, { method: words.methods[pass.method] });
  const percent = roundTo(mark.mul(100), exact('1/100'));
  return fill(words.set, {
    mark: fill(numberWords.percent, { n: showNumber(percent) }),
    how: howText(pass, scoring).join(planWords.listComma),
  });
}

/** "Angoff", "3 judges", "4 items", "1 October 2026" */
function howText({ method, judged, on }: PassMark, { items }: Scoring): readonly string[] {
  return [
    words.methods[method],
    ...(judged ? basisOf(judged, items.length) : []),
    ...(on === undefined ? [] : [showRecordDate(on)]),
  ];
}

function basisOf(judged: Judged, items: number): readonly string[] {
  switch (judged.method) {
    case 'angoff':
      return [counted(judged.shares.length, 'judge'), counted(items, 'item')];
    case 'borderline-regression':
      return [counted(judged.rated.length, 'person')];
    case 'contrasting-groups':
      return [counted(judged.people.length, 'person')];
  }
}
