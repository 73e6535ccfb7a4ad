import { given } from '../../core/given.ts';
import { readHeads } from '../../core/plan/cohort/read-people.ts';
import { wallMinute } from '../../core/plan/time/moment.ts';
import type { OwnSession } from './answer.ts';

/** What the fields ask for, and the names of those whose text means nothing. */
export interface FieldsReading {
  readonly own: OwnSession;
  readonly wrong: readonly string[];
}

/** The query of an address: `people:trainees=20&instructors=2&ready-by=2027-03-01T13:00`. */
export function readFields(query: URLSearchParams): FieldsReading {
  const wrong: string[] = [];
  const people: Record<string, number> = {};
  let [instructors, readyBy]: [number | undefined, string | undefined] = [undefined, undefined];
  for (const [name, text] of query) {
    const [kind, id] = name.split(':');
    const count = readHeads(text);
    if (kind === 'people' && id !== undefined && count !== undefined) people[id] = count;
    else if (name === 'instructors' && count !== undefined) instructors = count;
    else if (name === 'ready-by' && wallMinute(text) !== undefined) readyBy = text;
    else wrong.push(name);
  }
  return { own: given<OwnSession>({ people, instructors, readyBy }), wrong };
}
