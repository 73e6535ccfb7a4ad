import type { Check, Finding } from './check.ts';
import type { Context, GuideRead, ModuleRead } from './lookup/context.ts';
import { linkedTo, namedAt, the, unknownNames, type Reference } from './lookup/unknown-names.ts';
import { isGuideUse } from '../core/model/guide-use.ts';
import { directionsNamed, usesInLife } from './lookup/usage.ts';

/** A material that a guide, a module or another material names, and no file describes. */
export const unknownMaterial: Check = {
  code: 'unknown-material',
  gravity: 'stops',
  find: (context) => [
    ...context.guides.flatMap((read) => ofGuide(read, context)),
    ...context.modules.flatMap((read) => ofModule(read, context)),
    ...Object.keys(context.workspace.materials).flatMap((id) => ofMaterial(id, context)),
  ],
};

function ofGuide(read: GuideRead, context: Context): readonly Finding[] {
  const { materials, mixes } = read.guide;
  const described = Object.keys(context.workspace.materials);
  const [mixIds, rowIds] = [mixes.map(({ id }) => id), materials.map(({ id }) => id)];
  const isFile = (name: string): boolean => context.isThere('materials', name);
  const [mixed, ingredients] = parted(byIngredients(read), ({ name }) => mixIds.includes(name));
  const bought = [...ingredients, ...byDirections(read), ...byLife(read), ...byPatterns(read)];
  const listed = [...mixIds, ...rowIds];
  return [
    ...unknownNames(byRows(read), [...described, ...mixIds], (name) => mixIds.includes(name) || isFile(name)),
    ...unknownNames(bought, described, isFile),
    ...mixed.map(({ name, who, place }) => ({
      variant: 'mix',
      places: [place] as const,
      facts: { name, who },
    })),
    ...unknownNames(
      linkedTo(read, 'material'),
      [...listed, ...described],
      (name) => listed.includes(name) || isFile(name) || isNamedByGuide(read, name),
    ),
  ];
}

function ofModule(read: ModuleRead, { workspace, isThere }: Context): readonly Finding[] {
  const described = Object.keys(workspace.materials);
  return unknownNames(linkedTo(read, 'material'), described, (name) => isThere('materials', name));
}

/** A row or an ingredient names it: that is where it is told, not at each link. */
function isNamedByGuide({ guide }: GuideRead, name: string): boolean {
  return (
    guide.materials.some(({ use }) => use === name) ||
    guide.mixes.some(({ of }) => of.some(({ use }) => use === name))
  );
}

function parted<T>(all: readonly T[], isFirst: (one: T) => boolean): readonly [readonly T[], readonly T[]] {
  return [all.filter(isFirst), all.filter((one) => !isFirst(one))];
}

function byRows(read: GuideRead): readonly Reference[] {
  return read.guide.materials.flatMap(({ use }, i) =>
    isGuideUse(use) ? [] : namedAt(read, use, 'The list of materials', 'materials', i, 'use'),
  );
}

function byIngredients(read: GuideRead): readonly Reference[] {
  return read.guide.mixes.flatMap(({ id, of }, mix) =>
    of.flatMap(({ use }, i) => namedAt(read, use, the('mix', id), 'mixes', mix, 'of', i, 'use')),
  );
}

function byDirections(read: GuideRead): readonly Reference[] {
  return read.guide.steps.flatMap((step, i) =>
    directionsNamed(step).map(({ material, time }) => ({
      name: material,
      place: read.place('steps', i, 'wait'),
      who: `The wait of “${read.stepName(step.id)}”`,
      put: (id: string) => `as: ${id}.${time}`,
    })),
  );
}

function byLife(read: GuideRead): readonly Reference[] {
  return usesInLife(read.guide).flatMap(({ used, way }) =>
    namedAt(read, used.material, 'The life of the model after the build', ...way, 'material'),
  );
}

/** What patterns are printed on. */
function byPatterns(read: GuideRead): readonly Reference[] {
  return read.guide.patterns.flatMap(({ id, on }, i) =>
    namedAt(read, on, the('pattern', id), 'patterns', i, 'on'),
  );
}

/** Materials that it must not meet, and those that may stand in for it. */
function ofMaterial(id: string, { workspace, origins, isThere }: Context): readonly Finding[] {
  const { name, notWith, instead } = workspace.materials[id]!;
  const enemies = notWith.map((other, i) => ({
    name: other,
    place: origins.at(`materials/${id}/not-with/${i}`),
    who: `What ${name} must not meet`,
    put: (known: string) => known,
  }));
  const substitutes = instead.map(({ use }, i) => ({
    name: use,
    place: origins.at(`materials/${id}/instead/${i}/use`),
    who: `A substitute for ${name}`,
    put: (known: string) => `use: ${known}`,
  }));
  return unknownNames([...enemies, ...substitutes], Object.keys(workspace.materials), (other) =>
    isThere('materials', other),
  );
}
