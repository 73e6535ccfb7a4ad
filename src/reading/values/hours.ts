import { weekdays, type Weekday } from '../../core/model/program.ts';
import { means, oneOf, wrong } from './plain-words.ts';
import type { Raw, RawList } from '../sheet/sheet.ts';
import { items, readText, refuse, type TextReader, type Written } from '../sheet/written.ts';

const inFull = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];

/** `Mon`, or in full. */
export const readWeekday: TextReader<Weekday> = oneOf(
  Object.fromEntries([...weekdays, ...inFull].map((name, index) => [name, weekdays[index % 7]!])),
  weekdays,
);

/** `Mon-Fri` -> "Mon, Tue, Wed, Thu, Fri"; `undefined` for anything else. */
export function daysFromTo(text: string): string | undefined {
  const ends = text.split(/\s*(?:-|–|to)\s*/).map(readWeekday);
  const [from, to] = ends.map((day) => (day.ok ? weekdays.indexOf(day.value) : -1));
  if (ends.length !== 2 || from! < 0 || to! < from!) return undefined;
  return weekdays.slice(from, to! + 1).join(', ');
}

type Stretch = readonly [from: number, to: number];

/** The hours of a working day, in order and apart: `[09:00-12:30, 13:00-17:00]`, or `always`. */
export function readHours(at: Written<Raw> | undefined): readonly Stretch[] | undefined {
  if (!at) return undefined;
  if (typeof at.value === 'string') return readText(at, readAlways);
  if (!Array.isArray(at.value)) return refuse(at, { code: 'wrong-kind', variant: 'list', facts: {} });
  const list = items(at as Written<RawList>);
  const stretches = list.map((item) => readText(item, readStretch));
  if (stretches.length === 0) return refuse(at, { code: 'hours-none', facts: {} });
  refuseOverlap(list, stretches);
  return stretches.filter((stretch) => stretch !== undefined);
}

const readAlways: TextReader<readonly Stretch[]> = (text) => {
  if (text.trim() === 'always') return means([[0, 1440]]);
  const one = readStretch(text);
  return one.ok ? means([one.value]) : one;
};

/** `09:00-12:30`: minutes of the day; 24:00 is its end. */
const readStretch: TextReader<Stretch> = (text) => {
  const match = /^(\d{1,2}):(\d{2})\s*(?:-|–|to)\s*(\d{1,2}):(\d{2})$/.exec(text.trim());
  if (!match) return wrong('hours-unreadable');
  const [fromHour, fromMinute, toHour, toMinute] = match.slice(1).map(Number) as [
    number,
    number,
    number,
    number,
  ];
  const [from, to] = [fromHour * 60 + fromMinute, toHour * 60 + toMinute];
  if (fromMinute > 59 || toMinute > 59 || to > 1440) return wrong('hours-unreadable', {}, 'no-such-time');
  return from < to ? means([from, to]) : wrong('hours-unreadable', {}, 'backwards');
};

function refuseOverlap(list: readonly Written[], stretches: readonly (Stretch | undefined)[]): void {
  let end = -1;
  for (const [index, stretch] of stretches.entries()) {
    if (!stretch) continue;
    if (stretch[0] < end)
      refuse(list[index]!, { code: 'hours-overlap', facts: { before: String(list[index - 1]!.value) } });
    end = Math.max(end, stretch[1]);
  }
}
