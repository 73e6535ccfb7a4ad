import { nearName } from '../core/near-name.ts';
import { meaningOf, usesOf } from '../core/plan/scale/step-uses.ts';
import type { Check, Finding } from './check.ts';
import type { Context, GuideAtLevel, GuideRead } from './lookup/context.ts';
import { isListed, namesToUse } from './lookup/listed.ts';
import { inWords, rowName } from './lookup/names.ts';

/** A row of materials that no step uses, and a mix that no row takes: at all, or at a level that has it. */
export const unusedMaterial: Check = {
  code: 'unused-material',
  gravity: 'incomplete',
  find: (context) =>
    context.guides.flatMap((read) => {
      const levels = context.levelsOf(read.guide);
      const isSilent = levels.length > 0 && levels.every(namesNothing);
      return isSilent ? [noUses(read)] : [...unusedRows(read, levels, context), ...unusedMixes(read, levels)];
    }),
};

/** One cause: of several steps none says what it uses. */
function namesNothing({ at: { steps, materials } }: GuideAtLevel): boolean {
  return materials.length > 0 && steps.length > 1 && steps.every(({ uses }) => uses === undefined);
}

function noUses({ guide, key }: GuideRead): Finding {
  return {
    variant: 'all',
    places: [key('steps')],
    facts: { guide: guide.title, first: guide.materials[0]!.id },
  };
}

function unusedRows(
  read: GuideRead,
  levels: readonly GuideAtLevel[],
  { workspace }: Context,
): readonly Finding[] {
  return read.guide.materials.flatMap((row, i) => {
    const having = levels.filter(({ at }) => at.originOf.materials.includes(i));
    const using = having.filter(({ at }) => isUsed(at, at.originOf.materials.indexOf(i)));
    const [unused] = having.filter((level) => !using.includes(level));
    if (!unused) return [];
    const facts = { material: rowName(workspace, unused.at, row), id: row.id };
    const place = read.place('materials', i, row.id === row.use ? 'use' : 'id');
    return using.length === 0
      ? [{ places: [place] as const, facts }]
      : [atOneLevel(place, facts, unused, using)];
  });
}

type At = GuideAtLevel['at'];

/** A name in a step that is mistyped for the row is told there. */
function isUsed(at: At, row: number): boolean {
  const { id, use } = at.materials[row]!;
  return at.steps.some((step) =>
    usesOf(at, step).some(({ material }) => {
      const meant = isListed(at, material) ? undefined : nearName(material, namesToUse(at));
      return meaningOf(at, material).rows.includes(row) || meant === id || meant === use;
    }),
  );
}

function atOneLevel(
  place: Finding['places'][0],
  facts: Finding['facts'],
  unused: GuideAtLevel,
  using: readonly GuideAtLevel[],
): Finding {
  const levels = using.map(({ at }) => at.level!).join(', ');
  return { variant: 'level', places: [place], facts: { ...facts, level: unused.at.level!, levels } };
}

/** By a row; or by another mix, which `unknown-material` speaks of. */
function isTaken({ materials, mixes }: GuideRead['guide'], mix: string): boolean {
  return (
    materials.some(({ use }) => use === mix) || mixes.some(({ of }) => of.some(({ use }) => use === mix))
  );
}

/** A mix that a row takes at one level at least is no mistake: it is not mixed at the others. */
function unusedMixes(read: GuideRead, levels: readonly GuideAtLevel[]): readonly Finding[] {
  return read.guide.mixes.flatMap(({ id, name = inWords(id) }, i) =>
    levels.length === 0 || isTaken(read.guide, id)
      ? []
      : [{ variant: 'mix', places: [read.place('mixes', i, 'id')] as const, facts: { mix: name, id } }],
  );
}
