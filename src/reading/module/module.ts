import {
  showings,
  type Activity,
  type Cohort,
  type Module,
  type Notices,
  type Objective,
  type People,
  type Preparation,
  roles,
} from '../../core/model/module.ts';
import type { Prose } from '../../core/model/prose.ts';
import { readCount } from '../../core/quantity/read.ts';
import { limits } from '../limits.ts';
import { readReviewed } from '../reviewed.ts';
import { checkShape } from '../shape/check-shape.ts';
import { moduleShape, type ModuleShape } from '../shape/module-shape.ts';
import {
  field,
  given,
  items,
  read,
  readEach,
  refuse,
  type OpenFile,
  type TextReader,
  type Written,
} from '../sheet/written.ts';
import { readClockTime } from '../values/money-and-time.ts';
import { oneOfThese, readId, readWords, wrong } from '../values/plain-words.ts';
import { readScoring } from './scoring.ts';
import { readSession, readStation } from './session.ts';
import { readQuestion, readSurveyItem } from './surveys.ts';

/** A module, from the front matter of `modules/<id>/module.md` and the facts of its prose. */
export function readModule(id: string, file: OpenFile, prose: Prose): Module {
  const from = checkShape({ value: file.sheet.values, path: [], file }, moduleShape);
  return given<Module>({
    id,
    ...readReviewed(from),
    audience: read(from, 'audience', readWords),
    after: readEach(from, 'after', readId),
    needs: readEach(from, 'needs', readWords),
    objectives: items(field(from, 'objectives')).map(readObjective),
    activities: items(field(from, 'activities')).map(readActivity),
    prepare: items(field(from, 'prepare')).map(readPreparation),
    promised: read(from, 'promised', readClockTime),
    bring: readEach(from, 'bring', readWords),
    wear: readEach(from, 'wear', readWords),
    notices: readNotices(from),
    cohort: readCohort(from),
    session: readSession(field(from, 'session')),
    stations: items(field(from, 'stations')).map(readStation),
    scoring: readScoring(field(from, 'scoring')),
    surveys: items(field(field(from, 'surveys'), 'items')).map(readSurveyItem),
    selfCheck: items(field(from, 'self-check')).map(readQuestion),
    debrief: readEach(from, 'debrief', readWords),
    pilot: read(from, 'pilot', readWords),
    prose,
  });
}

function readObjective(from: Written<ModuleShape['objectives'][number]>): Objective {
  return given<Objective>({
    id: read(from, 'id', readId) ?? '',
    does: read(from, 'does', readWords) ?? '',
    standard: read(from, 'standard', readWords),
    shownBy: read(from, 'shown-by', oneOfThese(showings)),
    by: read(from, 'by', readWords),
    practisedAt: readEach(from, 'practised-at', readId),
    assessedBy: readEach(from, 'assessed-by', readId),
  });
}

function readActivity(from: Written<NonNullable<ModuleShape['activities']>[number]>): Activity {
  return { id: read(from, 'id', readId) ?? '', what: read(from, 'what', readWords) ?? '' };
}

/** `{ read: the-basics, takes: 10 min }`: one of the three, and how long. */
function readPreparation(from: Written<NonNullable<ModuleShape['prepare']>[number]>): Preparation {
  const said = (['read', 'watch', 'do'] as const).filter((kind) => field(from, kind));
  const [kind = 'read'] = said;
  if (said.length !== 1) refuse(from, { code: 'missing-key', variant: 'read', facts: { key: 'read' } });
  return given<Preparation>({
    kind,
    what: read(from, kind, readWords) ?? '',
    takes: read(from, 'takes', readClockTime),
    text: read(from, 'text', readWords),
  });
}

function readNotices(from: Written<ModuleShape>): Notices {
  const notices = field(from, 'notices');
  return given<Notices>({
    accommodations: read(notices, 'accommodations', readWords),
    recording: read(notices, 'recording', readWords),
    privacy: read(notices, 'privacy', readWords),
  });
}

function readCohort(from: Written<ModuleShape>): Cohort {
  const cohort = field(from, 'cohort');
  const written = field(cohort, 'people');
  const people = items(written).map(readPeople);
  const all = people.reduce((sum, { count }) => sum + count, 0);
  if (written && all > limits.people)
    refuse(written, { code: 'people-too-many', facts: { all: String(all), most: String(limits.people) } });
  return given<Cohort>({
    ratio: read(cohort, 'ratio', readPeopleToOne),
    group: read(cohort, 'group', readCount),
    people,
    instructors: read(cohort, 'instructors', readCount),
  });
}

/** `6`, and not `1:6` or `1 to 6`, as people say it. */
const readPeopleToOne: TextReader<number> = (text) => {
  const two = /^(\d+) ?(?::|\/|to|per|in) ?(\d+)$/.exec(text.trim())?.slice(1);
  if (!two) return readCount(text);
  const [count] = two.filter((_, i) => two[1 - i] === '1');
  return count === undefined
    ? wrong('people-to-one-unreadable', {}, 'neither-one')
    : wrong('people-to-one-unreadable', { count });
};

function readPeople(from: Written<ModuleShape['cohort']['people'][number]>): People {
  const as = readEach(from, 'as', oneOfThese(roles));
  return {
    id: read(from, 'id', readId) ?? '',
    count: read(from, 'count', readCount) ?? 1,
    as: as.length > 0 ? as : ['trainees'],
  };
}
