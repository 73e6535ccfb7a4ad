import type { ProseLink } from '../core/model/prose.ts';
import type { Workspace } from '../core/model/workspace.ts';
import { dimensionOf } from '../core/quantity/units.ts';
import { readLeading, type Leading } from '../core/quantity/read.ts';
import type { Check, Finding } from './check.ts';
import type { Context, GuideAtLevel } from './lookup/context.ts';
import { inWords, materialName, toolName } from './lookup/names.ts';
import { isSameNumber, nearestFirst } from './lookup/same-number.ts';
import { statedNumbers, type StatedNumber } from './lookup/stated-numbers.ts';

/**
 * A number in the text of a link that is not the one of the front matter. What is by level must agree with one of the
 * levels: the text is the same for all.
 */
export const proseDisagrees: Check = {
  code: 'prose-disagrees',
  gravity: 'incomplete',
  find: (context) =>
    context.guides.flatMap(({ guide }) =>
      guide.prose.links.flatMap((link) => ofLink(link, context.levelsOf(guide), context)),
    ),
};

function ofLink(link: ProseLink, levels: readonly GuideAtLevel[], context: Context): readonly Finding[] {
  const leading = readLeading(link.text);
  const numbersOf = statedNumbers[link.kind];
  const [read] = levels;
  if (!leading || !numbersOf || !read || !isCompared(link.kind, leading.amount)) return [];
  const numbers = levels.flatMap((level) => numbersOf(link, level, context.workspace));
  if (numbers.some(({ is, density }) => isSameNumber(leading.amount, is, density))) return [];
  const [first, ...others] = nearestFirst(leading.amount, numbers);
  if (first) return [otherThan([first, ...others], link, leading, read, context)];
  return leadsSomewhere(link, read, context.workspace) ? [unsaid(link, leading, read, context)] : [];
}

/** Of a step only times are compared, of tools and other guides only counts: `[2 L tin](tool:tin)` is a name. */
function isCompared(kind: ProseLink['kind'], said: Leading['amount']): boolean {
  if (kind === 'tool' || kind === 'guide') return 'count' in said;
  return kind !== 'step' || ('unit' in said && dimensionOf(said.unit) === 'time');
}

/** Numbers of the front matter, at most so many of which are named. */
function otherThan(
  numbers: readonly [StatedNumber, ...StatedNumber[]],
  link: ProseLink,
  leading: Leading,
  read: GuideAtLevel,
  { workspace }: Context,
): Finding {
  const texts = [...new Set(numbers.map(({ text }) => text))].slice(0, 3);
  const shown = numbers.filter(({ text }) => texts.includes(text));
  const [first] = numbers;
  return {
    variant: link.kind,
    places: [read.prose(link.at), ...shown.map(({ place }) => place)],
    facts: {
      text: link.text,
      name: nameOf(link, read, workspace),
      is: texts.join(' or '),
      paste: linkText(link, [first.text, withoutDegrees(leading.rest)].filter(Boolean).join(' ')),
    },
  };
}

/** “60 degrees” begins with a count: the unit of the front matter stands for what follows. */
const withoutDegrees = (rest: string): string => rest.replace(/^(?:degrees?|deg\.?)\b ?/i, '');

function unsaid(link: ProseLink, { rest }: Leading, read: GuideAtLevel, { workspace }: Context): Finding {
  const name = nameOf(link, read, workspace);
  return {
    variant: `${link.kind}-unsaid`,
    places: [read.prose(link.at)],
    facts: { text: link.text, name, paste: linkText(link, rest || name) },
  };
}

function linkText({ kind, target }: ProseLink, text: string): string {
  return `[${text}](${kind}:${target})`;
}

/** Links that lead nowhere are told as that. */
function leadsSomewhere(
  { kind, target, section }: ProseLink,
  { guide }: GuideAtLevel,
  workspace: Workspace,
): boolean {
  const own = guide.prose.sections[section]?.step;
  const spoken = guide.steps.filter(({ id }) => own === undefined || id === own);
  if (kind === 'step') return guide.steps.some(({ id }) => id === target);
  if (kind === 'set') return spoken.some(({ set }) => Object.hasOwn(set, target));
  if (kind === 'guide') return Object.hasOwn(workspace.guides, target);
  return Object.hasOwn(kind === 'tool' ? workspace.tools : workspace.materials, target);
}

function nameOf({ kind, target }: ProseLink, { at, stepName }: GuideAtLevel, workspace: Workspace): string {
  if (kind === 'step') return stepName(target);
  if (kind === 'tool') return toolName(workspace, target);
  if (kind === 'guide') return workspace.guides[target]?.title ?? inWords(target);
  if (kind === 'set') return inWords(target);
  const row = at.materials.find(({ id }) => id === target);
  const mix = at.mixes.find(({ id }) => id === (row?.use ?? target));
  return mix ? (mix.name ?? inWords(mix.id)) : materialName(workspace, row?.use ?? target);
}
