import type { GuideAt } from '../../core/model/guide.ts';
import type { Amount } from '../../core/model/values.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import { libraryWords } from '../../words/library.ts';
import { planWords } from '../../words/plan.ts';
import { showAsWritten, showSize } from '../text/amounts.ts';
import { asSentence, properly } from '../text/author-text.ts';
import { capital, counted, fill, inWords, listed } from '../text/fill.ts';
import { materialName, stepName } from '../text/names.ts';
import { showRatio } from '../text/numbers.ts';
import { exact } from '../../core/quantity/exact.ts';
import { type Shown, shown } from '../shown/shown.ts';
import { showDuration } from '../text/times.ts';

/** One part of a model's life after the build: what is done, how long it takes, what it uses up. */
export interface ShownCare {
  readonly id: string;
  readonly name: Shown;
  /** Empty where unsaid. */
  readonly takes: Shown;
  readonly says: readonly Shown[];
}

interface Care {
  readonly id: string;
  readonly name: string;
  readonly takes?: string;
  readonly says: readonly string[];
}

/** What happens to a model once it is built, in the order of its life. Parts that the guide leaves out are not there. */
export function showInUse(key: string, at: GuideAt, workspace: Workspace): readonly ShownCare[] {
  const { inUse } = at;
  const all = [
    ...(at.aUseIs === undefined ? [] : [{ id: 'use', name: libraryWords.inUse.use, says: [at.aUseIs] }]),
    careOf('set-up', inUse.setUp, workspace),
    careOf('between', inUse.between, workspace),
    careOf('after', inUse.after, workspace),
    ...inUse.renew.map((renewal) => renewalOf(renewal, at, workspace)),
    storing(inUse.store),
    carrying(inUse),
    throwingAway(inUse),
  ];
  return all
    .filter((care) => care !== undefined && care.says.length > 0)
    .map((care) => finished(`${key}.${care!.id}`, care!));
}

function finished(key: string, { id, name, takes, says }: Care): ShownCare {
  return {
    id,
    name: shown(`${key}.name`, name),
    takes: shown(`${key}.takes`, takes ?? ''),
    says: says.map((text, i) => shown(`${key}.says[${i}]`, asSentence(capital(text)))),
  };
}

type InUse = GuideAt['inUse'];

function careOf(
  id: 'set-up' | 'between' | 'after',
  part: InUse['setUp'],
  workspace: Workspace,
): Care | undefined {
  if (!part) return undefined;
  const { takes, uses } = part;
  const says = [...(part.do === undefined ? [] : [part.do]), ...usesUp(uses, workspace)];
  return { id, name: libraryWords.inUse[id], ...(takes ? { takes: showDuration(takes) } : {}), says };
}

function renewalOf(
  { id, times, steps, materials }: InUse['renew'][number],
  at: GuideAt,
  workspace: Workspace,
): Care {
  const name = capital(inWords(id));
  const headings = listed(steps.map((step) => stepName(at, step)));
  return {
    id,
    name: times === undefined ? name : fill(libraryWords.renewTimes, { name, times: counted(times, 'time') }),
    says: [fill(libraryWords.renewSteps, { steps: headings }), ...usesUp(materials, workspace)],
  };
}

/** "360 mm of silicone tube, 60 mL of water". */
function usesUp(
  uses: readonly { readonly material: string; readonly amount: Amount }[],
  workspace: Workspace,
): readonly string[] {
  if (uses.length === 0) return [];
  const texts = uses.map(({ material, amount }) =>
    fill(libraryWords.usesUp, {
      amount: rangeText(amount),
      material: lowered(materialName(material, workspace)),
    }),
  );
  return [fill(libraryWords.usesUpAll, { list: listed(texts) })];
}

function rangeText({ least, most, unit }: Amount): string {
  const upper = showAsWritten({ value: most, unit });
  return least === most ? upper : `${showRatio(exact(least))}–${upper}`;
}

/** A name within a sentence; "PVC pipe" keeps its capitals. */
function lowered(name: string): string {
  return /^.[A-Z]/.test(name) ? name : name.charAt(0).toLowerCase() + name.slice(1);
}

/** That a model is kept apart from clinical stock is always said. */
function storing({ how }: NonNullable<InUse['store']> = {}): Care {
  const says = [...(how === undefined ? [] : [how]), libraryWords.storeApart];
  return { id: 'store', name: libraryWords.inUse.store, says };
}

function carrying({ carry }: InUse): Care | undefined {
  if (!carry) return undefined;
  const { size, weight, how } = carry;
  const measures = [...(size ? [showSize(size)] : []), ...(weight ? [showAsWritten(weight)] : [])];
  const says = [
    ...(measures.length > 0 ? [measures.join(planWords.listComma)] : []),
    ...(how === undefined ? [] : [how]),
  ];
  return { id: 'carry', name: libraryWords.inUse.carry, says };
}

function throwingAway({ dispose }: InUse): Care | undefined {
  if (!dispose) return undefined;
  const says = [
    ...(dispose.to === undefined ? [] : [fill(libraryWords.disposeTo, { to: properly(dispose.to) })]),
    ...(dispose.not === undefined ? [] : [fill(libraryWords.disposeNot, { not: properly(dispose.not) })]),
  ];
  return { id: 'dispose', name: libraryWords.inUse.dispose, says };
}
