import type { Module, Penalty, RatingScale, ScoredItem, Station } from '../../core/model/module.ts';
import { exact, zero } from '../../core/quantity/exact.ts';
import { teachingWords as words } from '../../words/teaching.ts';
import { asSentence, properly } from '../text/author-text.ts';
import { capital, counted, fill, inWords, listed } from '../text/fill.ts';
import { showCount, showNumber } from '../text/numbers.ts';
import { passMarkText } from '../session/pass-mark-text.ts';
import { stationName } from '../session/session-names.ts';
import { type Shown, shown } from '../shown/shown.ts';
import { showDuration } from '../text/times.ts';

/** What only instructors may see of a module, as finished text. It goes into the staff edition alone. */
export interface ShownTeaching {
  /** One for each station, and one for what belongs to none. */
  readonly scoreSheets: readonly ShownScoreSheet[];
  readonly raterNotes: readonly Shown[];
  /** "74.17 % (Angoff, 3 judges, 4 items, 1 October 2026)", or that none is set. Empty where nothing is scored. */
  readonly passMark: Shown;
  readonly debrief: readonly Shown[];
  /** Those surveys that there are. */
  readonly surveys: readonly ShownSurvey[];
}

export interface ShownScoreSheet {
  /** Of a station; absent for what belongs to none. */
  readonly station?: string;
  readonly name: Shown;
  readonly items: readonly ShownItem[];
  readonly ratings: readonly ShownRating[];
  readonly penalties: readonly { readonly when: Shown; readonly adds: Shown }[];
  /** "Limit 8 min". Empty where there is none. */
  readonly limit: Shown;
  /** "Total of the weights, of 9". */
  readonly total: Shown;
}

export interface ShownItem {
  readonly id: string;
  readonly says: Shown;
  readonly weight: Shown;
  /** "must not be missed", or empty. */
  readonly critical: Shown;
}

export interface ShownRating {
  readonly id: string;
  readonly says: Shown;
  readonly anchors: readonly { readonly point: Shown; readonly says: Shown }[];
}

export interface ShownSurvey {
  readonly when: 'before' | 'after';
  readonly title: Shown;
  readonly items: readonly ShownSurveyItem[];
}

export interface ShownSurveyItem {
  readonly id: string;
  readonly ask: Shown;
  /** "for trainees". Empty where everybody is asked. */
  readonly of: Shown;
  /** Empty for an answer in words. */
  readonly scale: readonly { readonly point: Shown; readonly says: Shown }[];
}

export function showTeaching(module: Module): ShownTeaching {
  const sentences = (name: string, texts: readonly string[]): readonly Shown[] =>
    texts.map((text, i) => shown(`teaching.${name}[${i}]`, asSentence(text)));
  return {
    scoreSheets: showScoreSheets(module),
    raterNotes: sentences('raterNotes', module.scoring?.raterNotes ?? []),
    passMark: shown('teaching.passMark', module.scoring ? passMarkText(module.scoring) : ''),
    debrief: sentences('debrief', module.debrief),
    surveys: (['before', 'after'] as const)
      .map((when) => showSurvey(when, module))
      .filter(({ items }) => items.length > 0),
  };
}

/** What serves an objective that is practised at a station is scored there. */
function showScoreSheets(module: Module): readonly ShownScoreSheet[] {
  const { scoring, stations, objectives } = module;
  if (!scoring) return [];
  const stationsOf = (of: ScoredItem | RatingScale): readonly string[] =>
    objectives.filter(({ id }) => of.objectives.includes(id)).flatMap(({ practisedAt }) => practisedAt);
  const at = (id: string) => (of: ScoredItem | RatingScale) => stationsOf(of).includes(id);
  const nowhere = (of: ScoredItem | RatingScale): boolean => !stations.some(({ id }) => at(id)(of));
  const sheets = [
    ...stations.map((station) => ({ station, belongs: at(station.id) })),
    { station: undefined, belongs: nowhere },
  ];
  return sheets.flatMap(({ station, belongs }, i) => {
    const items = scoring.items.filter(belongs);
    const ratings = scoring.ratings.filter(belongs);
    if (items.length + ratings.length === 0) return [];
    return [showScoreSheet(`teaching.scoreSheets[${i}]`, station, { ...scoring, items, ratings }, module)];
  });
}

function showScoreSheet(
  key: string,
  station: Station | undefined,
  { items, ratings, penalties, limit }: NonNullable<Module['scoring']>,
  module: Module,
): ShownScoreSheet {
  const total = items.reduce((sum, { weight }) => sum.add(exact(weight)), zero);
  return {
    ...(station ? { station: station.id } : {}),
    name: shown(`${key}.name`, station ? stationName(station) : module.title),
    items: items.map((item, i) => showItem(`${key}.items[${i}]`, item)),
    ratings: ratings.map((rating, i) => showRating(`${key}.ratings[${i}]`, rating)),
    penalties: penalties.map((penalty, i) => showPenalty(`${key}.penalties[${i}]`, penalty)),
    limit: shown(`${key}.limit`, limit ? fill(words.score.limit, { time: showDuration(limit) }) : ''),
    total: shown(
      `${key}.total`,
      items.length === 0 ? '' : fill(words.score.total, { total: showNumber(total) }),
    ),
  };
}

function showItem(key: string, { id, says, weight, critical }: ScoredItem): ShownItem {
  return {
    id,
    says: shown(`${key}.says`, capital(properly(says))),
    weight: shown(`${key}.weight`, showNumber(exact(weight))),
    critical: shown(`${key}.critical`, critical ? words.score.critical : ''),
  };
}

function showRating(key: string, { id, says, anchors }: RatingScale): ShownRating {
  return {
    id,
    says: shown(`${key}.says`, capital(properly(says ?? inWords(id)))),
    anchors: showPoints(`${key}.anchors`, anchors),
  };
}

/** Every whole point from the lowest to the highest that has words; those between may have none. */
function showPoints(
  key: string,
  scale: Readonly<Record<string, string>>,
): readonly { readonly point: Shown; readonly says: Shown }[] {
  const named = Object.keys(scale).map(Number);
  if (named.length === 0) return [];
  const [least, most] = [Math.min(...named), Math.max(...named)];
  return Array.from({ length: most - least + 1 }, (_, i) => ({
    point: shown(`${key}.${least + i}.point`, showCount(least + i)),
    says: shown(`${key}.${least + i}.says`, properly(scale[String(least + i)] ?? '')),
  }));
}

function showPenalty(key: string, { when, adds, atMost }: Penalty): ShownScoreSheet['penalties'][number] {
  const time = showDuration(adds);
  const text =
    atMost === undefined
      ? fill(words.score.adds, { time })
      : fill(words.score.addsAtMost, { time, times: counted(atMost, 'time') });
  return { when: shown(`${key}.when`, capital(properly(when))), adds: shown(`${key}.adds`, text) };
}

function showSurvey(when: 'before' | 'after', { surveys }: Module): ShownSurvey {
  const asked = surveys.filter((item) => item.asked.includes(when));
  return {
    when,
    title: shown(`teaching.surveys.${when}.title`, words.survey[when]),
    items: asked.map(({ id, ask, of, scale = {} }) => {
      const key = `teaching.surveys.${when}.${id}`;
      const kinds = of.length === 0 ? '' : fill(words.survey.of, { kinds: listed(of.map(inWords)) });
      return {
        id,
        ask: shown(`${key}.ask`, capital(properly(ask))),
        of: shown(`${key}.of`, kinds),
        scale: showPoints(`${key}.scale`, scale),
      };
    }),
  };
}
