import { answerWords as words } from '../../words/answer.ts';
import { fill } from '../text/fill.ts';
import type { ShownFact, ShownPlan } from '../shown/shown-plan.ts';

/** What came of a change, to be read aloud: "24 models: £101.20 to buy, ready day 3, 11:00." */
export function answerSentence({ lines, title, facts, schedule }: ShownPlan): string {
  const [only, ...others] = lines;
  const valueOf = (id: ShownFact['id']): string => facts.find((fact) => fact.id === id)?.value.text ?? '';
  const what = only && others.length === 0 ? only.models.text : title.text;
  const [outlay, ready, begin] = [valueOf('outlay'), valueOf('ready'), valueOf('begin')];
  if (ready === '') return fill(words.noSchedule, { what, outlay, none: schedule.none.text });
  return begin === ''
    ? fill(words.ready, { what, outlay, ready })
    : fill(words.backwards, { what, outlay, begin, ready });
}
