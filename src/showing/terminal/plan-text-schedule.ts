import { planWords } from '../../words/plan.ts';
import { whatIfWords } from '../../words/what-if.ts';
import { eachInColumns, indented } from './columns.ts';
import { capital, fill } from '../text/fill.ts';
import { apart, hanging, isSaid, left, lineNumber, paragraphs, wrapping } from './plan-text-parts.ts';
import type { ShownSchedule } from '../shown/shown-schedule.ts';
import type { Shown } from '../shown/shown.ts';
import type { ShownPlan } from '../shown/shown-plan.ts';

type DayRow = ShownSchedule['days'][number]['rows'][number];

/** Who does what when, a list for each day; or why there is none. */
export function scheduleLines({ schedule, lines }: ShownPlan, width: number): readonly string[] {
  const { none, helps, says, backwards, days, ready, bound } = schedule;
  if (isSaid(none)) return [...paragraphs([none], width), ...helpLines(helps, width)];
  const several = lines.length > 1;
  const ends = ready.flatMap(({ says: text }, i) =>
    several ? hanging(lineNumber(i), text.text, width) : paragraphs([text], width),
  );
  return [
    ...paragraphs([says, backwards], width),
    ...dayLines(days, several, width),
    ...apart([...ends, ...paragraphs([bound], width)]),
  ];
}

/** What would help, each proposal on lines of its own. */
function helpLines(helps: readonly Shown[], width: number): readonly string[] {
  if (helps.length === 0) return [];
  return apart([whatIfWords.helps.heading, ...helps.flatMap(({ text }) => hanging('-', text, width))]);
}

/** All days in the same columns. */
function dayLines(days: ShownSchedule['days'], several: boolean, width: number): readonly string[] {
  const rows = days.flatMap((day) => day.rows);
  const cells = rows.map((row) => dayCells(row, several));
  const lines = eachInColumns([left, left, left, wrapping], cells, width - 2);
  return days.flatMap((day) => [
    ...apart([capital(day.day.text)]),
    ...indented(day.rows.flatMap((row) => lines[rows.indexOf(row)]!)),
  ]);
}

function dayCells({ from, to, who, what, then, line }: DayRow, several: boolean): readonly string[] {
  const time = fill(planWords.schedule.range, { from: from.text, to: to.text });
  const texts = [what, then].filter(isSaid).map(({ text }) => text);
  return [time, who.text, several ? lineNumber(line) : '', texts.join(planWords.listComma)];
}
