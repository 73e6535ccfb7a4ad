import { isForStaff } from '../../core/model/for-staff.ts';
import type { Module, Question } from '../../core/model/module.ts';
import { minutesOf } from '../../core/time/minutes.ts';
import { moduleWords as words } from '../../words/modules.ts';
import { asSentence, properly } from '../text/author-text.ts';
import { capital, fill, inWords } from '../text/fill.ts';
import { type ShownOrigin, showOrigin } from '../library/show-origin.ts';
import { type Shown, shown } from '../shown/shown.ts';
import { showDuration, showMinutes } from '../text/times.ts';
import { showJudging } from './show-judging.ts';

/**
 * What a module says to everybody, as finished text. Nothing that only instructors may see is in it: scripts, items,
 * raters' notes and what to ask at the end are in `ShownTeaching`.
 */
export interface ShownModule extends ShownOrigin {
  readonly id: string;
  readonly status: Module['status'];
  readonly title: Shown;
  readonly summary: Shown;
  readonly audience: Shown;
  /** Why it is taught. */
  readonly needs: readonly Shown[];
  readonly pilot: Shown;
  readonly booked: Shown;
  readonly where: Shown;
  readonly objectives: readonly ShownObjective[];
  readonly prepare: readonly ShownPreparation[];
  /** "16 min". Empty where nobody says how long. */
  readonly prepareTime: Shown;
  /** "16 min in all." */
  readonly prepareTotal: Shown;
  /** "Never more than 20 min." */
  readonly promised: Shown;
  readonly bring: readonly Shown[];
  readonly wear: readonly Shown[];
  readonly stations: readonly { readonly id: string; readonly name: Shown; readonly takes: Shown }[];
  /** In sentences: time, how many look at what, the pass mark. */
  readonly judged: readonly Shown[];
  readonly notices: readonly { readonly name: Shown; readonly says: Shown }[];
  readonly selfCheck: readonly ShownQuestion[];
}

export interface ShownObjective {
  readonly id: string;
  /** "Keep the needle tip in view until it enters the vessel". */
  readonly does: Shown;
  /** "By the end of the day: through one space, in 8 min." */
  readonly howWell: Shown;
  readonly shownBy: Shown;
  /** "You can do it, and somebody sees it." */
  readonly means: Shown;
}

export interface ShownPreparation {
  readonly kind: Shown;
  readonly what: Shown;
  readonly takes: Shown;
  /** A section of the module's own prose. */
  readonly section?: string;
  /** A file beside the module, by the name that it is published under; from publishing, where it is there. */
  readonly file?: string;
  /** The same in words: captions or a transcript, a file too. */
  readonly text?: string;
}

export interface ShownQuestion {
  readonly ask: Shown;
  readonly choices: readonly Shown[];
  /** "The lower edge. They run below the rib." */
  readonly answer: Shown;
}

export function showModule(module: Module): ShownModule {
  const { session } = module;
  const at = (name: string, text: string): Shown => shown(`module.${name}`, text);
  const eachOf = (name: string, texts: readonly string[]): readonly Shown[] =>
    texts.map((text, i) => at(`${name}[${i}]`, text));
  return {
    id: module.id,
    status: module.status,
    ...showOrigin('module', module),
    title: at('title', module.title),
    summary: at('summary', asSentence(module.summary ?? '')),
    audience: at('audience', capital(properly(module.audience ?? ''))),
    needs: eachOf('needs', module.needs.map(asSentence)),
    pilot: at('pilot', asSentence(module.pilot ?? '')),
    booked: at('booked', session ? showDuration(session.booked) : ''),
    where: at('where', session?.where ?? ''),
    objectives: module.objectives.map((objective, i) => showObjective(`module.objectives[${i}]`, objective)),
    prepare: module.prepare.map((item, i) => showPreparation(`module.prepare[${i}]`, item, module)),
    ...showPromise(module),
    bring: eachOf('bring', module.bring.map(capitalised)),
    wear: eachOf('wear', module.wear.map(capitalised)),
    stations: module.stations.map(({ id, name, takes }, i) => ({
      id,
      name: at(`stations[${i}].name`, name ?? capital(inWords(id))),
      takes: at(`stations[${i}].takes`, showDuration(takes)),
    })),
    judged: eachOf('judged', showJudging(module)),
    notices: showNotices(module),
    selfCheck: module.selfCheck.map((question, i) => showQuestion(`module.selfCheck[${i}]`, question)),
  };
}

const capitalised = (text: string): string => capital(properly(text));

function showObjective(key: string, objective: Module['objectives'][number]): ShownObjective {
  const { id, does, shownBy } = objective;
  return {
    id,
    does: shown(`${key}.does`, capitalised(does)),
    howWell: shown(`${key}.howWell`, howWellText(objective)),
    shownBy: shown(`${key}.shownBy`, shownBy === undefined ? '' : capital(words.shownBy[shownBy])),
    means: shown(`${key}.means`, shownBy === undefined ? '' : words.shownBySays[shownBy]),
  };
}

function howWellText({ standard, by }: Module['objectives'][number]): string {
  if (by === undefined) return standard === undefined ? '' : asSentence(standard);
  const { aimBy, aimByAlone } = words.trainee;
  return properly(standard === undefined ? fill(aimByAlone, { by }) : fill(aimBy, { by, standard }));
}

/** What is to be read may be a section of the module's prose, named by its heading in small letters and hyphens. */
function showPreparation(
  key: string,
  { kind, what, takes }: Module['prepare'][number],
  { prose }: Module,
): ShownPreparation {
  const section = prose.sections.find((known) => known.slug === what && what !== '' && !isForStaff(known));
  return {
    kind: shown(`${key}.kind`, words.trainee.kinds[kind]),
    what: shown(`${key}.what`, section ? section.heading : capitalised(what)),
    takes: shown(`${key}.takes`, takes ? showDuration(takes) : ''),
    ...(section ? { section: section.slug } : {}),
  };
}

function showPromise({
  prepare,
  promised,
}: Module): Pick<ShownModule, 'prepareTime' | 'prepareTotal' | 'promised'> {
  const total = prepare.reduce((sum, { takes }) => sum + (takes ? minutesOf(takes) : 0), 0);
  const time = total === 0 ? '' : showMinutes(total);
  return {
    prepareTime: shown('module.prepareTime', time),
    prepareTotal: shown('module.prepareTotal', time === '' ? '' : fill(words.trainee.prepareSays, { time })),
    promised: shown(
      'module.promised',
      promised ? fill(words.trainee.promised, { time: showDuration(promised) }) : '',
    ),
  };
}

function showNotices({ notices }: Module): ShownModule['notices'] {
  return (['accommodations', 'recording', 'privacy'] as const).flatMap((kind) => {
    const says = notices[kind];
    if (says === undefined) return [];
    return [
      {
        name: shown(`module.notices.${kind}.name`, words.trainee[kind]),
        says: shown(`module.notices.${kind}.says`, asSentence(says)),
      },
    ];
  });
}

function showQuestion(key: string, { ask, choices, right, because }: Question): ShownQuestion {
  const answer = { right: capitalised(choices[right - 1] ?? ''), because: asSentence(because) };
  return {
    ask: shown(`${key}.ask`, properly(ask)),
    choices: choices.map((choice, i) => shown(`${key}.choices[${i}]`, capitalised(choice))),
    answer: shown(`${key}.answer`, fill(words.trainee.rightIs, answer)),
  };
}
