import type { GuideAt } from '../../core/model/guide.ts';
import type { ReviewStatus } from '../../core/model/reviewed.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import { libraryWords } from '../../words/library.ts';
import { pageWords } from '../../words/pages.ts';
import { planWords } from '../../words/plan.ts';
import { asSentence, properly } from '../text/author-text.ts';
import { capital, fill } from '../text/fill.ts';
import { stepName } from '../text/names.ts';
import { type ShownCare, showInUse } from './show-in-use.ts';
import { type ShownOrigin, showOrigin } from './show-origin.ts';
import { type Shown, shown } from '../shown/shown.ts';

/** What a guide says apart from any batch: its record, its checks, its life after the build. */
export interface ShownGuide extends ShownOrigin {
  readonly id: string;
  readonly title: Shown;
  readonly level?: { readonly id: string; readonly name: Shown };
  readonly status: ReviewStatus;
  readonly summary: Shown;
  readonly trains: Shown;
  readonly electrosurgery: Shown;
  readonly checks: readonly ShownCheck[];
  readonly inUse: readonly ShownCare[];
}

export interface ShownCheck {
  readonly id: string;
  /** What is measured or asked. */
  readonly what: Shown;
  /** "15 mm ± 3 mm". Empty where a question is asked. */
  readonly target: Shown;
  /** The step after which it is made, if any. */
  readonly after?: { readonly step: string; readonly heading: Shown };
  readonly each: 'model' | 'run' | 'batch';
  /** "each run, by another person". */
  readonly of: Shown;
  readonly ifNot: Shown;
  /** Files of the guide's folder. */
  readonly like?: string;
  readonly unlike?: string;
}

/** A guide at one level as finished text. */
export function showGuide(at: GuideAt, workspace: Workspace): ShownGuide {
  const level = at.levels.find(({ id }) => id === at.level);
  return {
    id: at.id,
    title: shown('guide.title', at.title),
    ...(level ? { level: { id: level.id, name: shown('guide.level', level.name) } } : {}),
    status: at.status,
    summary: shown('guide.summary', asSentence(at.summary ?? '')),
    trains: shown('guide.trains', properly(at.trains ?? '')),
    ...showOrigin('guide', at),
    electrosurgery: shown('guide.electrosurgery', electrosurgeryText(at)),
    checks: at.checks.map((check, i) => showCheck(`guide.checks[${i}]`, check, at)),
    inUse: showInUse('guide.inUse', at, workspace),
  };
}

function electrosurgeryText({ electrosurgery: { allowed, said } }: GuideAt): string {
  if (allowed) return pageWords.electrosurgery.yes;
  return said ? pageWords.electrosurgery.no : pageWords.electrosurgery.unsaid;
}

type CheckAt = GuideAt['checks'][number];

function showCheck(key: string, check: CheckAt, at: GuideAt): ShownCheck {
  const { id, after, each, like, unlike, ifNot } = check;
  return {
    id,
    what: shown(`${key}.what`, capital(properly(check.measure ?? check.ask ?? ''))),
    target: shown(`${key}.target`, properly(check.target?.text ?? '')),
    ...(after === undefined
      ? {}
      : { after: { step: after, heading: shown(`${key}.after`, stepName(at, after)) } }),
    each,
    of: shown(`${key}.of`, ofText(check)),
    ifNot: shown(`${key}.ifNot`, ifNot === undefined ? planWords.none : asSentence(capital(ifNot))),
    ...(like === undefined ? {} : { like }),
    ...(unlike === undefined ? {} : { unlike }),
  };
}

function ofText({ each, by }: CheckAt): string {
  const of = libraryWords.checkEach[each];
  return by === undefined ? of : fill(libraryWords.checkedBy, { each: of, by });
}
