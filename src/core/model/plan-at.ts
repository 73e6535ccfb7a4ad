import { Bug } from '../diagnostic.ts';
import type { Guide, GuideAt, QualityCheck, RowsWithLevels, Step } from './guide.ts';
import type { ByLevel } from './values.ts';

/**
 * A guide as it is at one level: every map by level settled, and only the rows that this level has.
 *
 *     wait: { shallow: 12 h, deep: 16 h }   at deep ->   wait: 16 h
 *     only: [shallow]                       at deep ->   row gone
 *
 * Where a step is gone, the steps after it follow what it followed, and no use names what is gone.
 *
 * @param level  One of the guide's; the usual one where left out.
 * @throws {Bug} When the guide has no such level.
 */
export function planAt(guide: Guide, level: string | undefined = usualLevel(guide)): GuideAt {
  if (level !== undefined && !guide.levels.some(({ id }) => id === level)) {
    throw new Bug('a guide was asked for a level that it has not', { guide: guide.id, level });
  }
  const originOf = keptRows(guide, level);
  const gone = goneSteps(guide, level);
  const stays = (id: string): boolean => !gone.has(id);
  const rows = {
    ...guide,
    materials: originOf.materials.map((i) => guide.materials[i]!),
    mixes: originOf.mixes.map((i) => guide.mixes[i]!),
    tools: originOf.tools.map((i) => guide.tools[i]!).map((row) => ({ ...row, in: row.in.filter(stays) })),
    steps: originOf.steps.map((i) => usingWhatIsHere(followedOn(guide.steps[i]!, gone), guide, level)),
    checks: originOf.checks.map((i) => withoutGone(guide.checks[i]!, gone)),
    cautions: originOf.cautions
      .map((i) => guide.cautions[i]!)
      .map((row) => ({ ...row, steps: row.steps.filter(stays) })),
    prose: undefined,
  };
  const at = settled(rows, level) as Omit<GuideAt, 'prose' | 'originOf' | 'level'>;
  return { ...at, prose: guide.prose, originOf, ...(level === undefined ? {} : { level }) };
}

/** The level marked usual, else the first; `undefined` where the guide has none. */
export function usualLevel(guide: Guide): string | undefined {
  return (guide.levels.find(({ usual }) => usual) ?? guide.levels[0])?.id;
}

interface Levelled {
  readonly only?: readonly string[];
}

function isAt(row: Levelled, level: string | undefined): boolean {
  return !row.only || level === undefined || row.only.includes(level);
}

/** Where each row that this level has stands in the guide as written. */
function keptRows(guide: Guide, level: string | undefined): Record<RowsWithLevels, number[]> {
  const kept = (rows: readonly Levelled[]): number[] =>
    rows.flatMap((row, i) => (isAt(row, level) ? [i] : []));
  const gone = goneSteps(guide, level);
  return {
    materials: kept(guide.materials),
    mixes: kept(guide.mixes),
    tools: kept(guide.tools),
    steps: kept(guide.steps),
    checks: kept(guide.checks),
    cautions: kept(guide.cautions).filter((i) => stillSpeaks(guide.cautions[i]!.steps, gone)),
  };
}

/** Steps that the guide has and this level has not, by id. */
function goneSteps(guide: Guide, level: string | undefined): ReadonlyMap<string, Step> {
  return new Map(guide.steps.filter((step) => !isAt(step, level)).map((step) => [step.id, step]));
}

/** No: all steps that it names are gone (without them it would speak of the whole guide). */
function stillSpeaks(named: readonly string[], gone: ReadonlyMap<string, Step>): boolean {
  return named.length === 0 || named.some((id) => !gone.has(id));
}

/** The step, coming after what the gone steps before it came after. */
function followedOn(step: Step, gone: ReadonlyMap<string, Step>): Step {
  const before = (id: string, seen: readonly string[]): readonly string[] => {
    if (seen.includes(id)) return [];
    return gone.get(id)?.after.flatMap((next) => before(next, [...seen, id])) ?? [id];
  };
  const byStep = Object.entries(step.useWithin.byStep).filter(([id]) => !gone.has(id));
  return {
    ...step,
    after: [...new Set(step.after.flatMap((id) => before(id, [])))],
    useWithin: { ...step.useWithin, byStep: Object.fromEntries(byStep) },
  };
}

/** The step without uses of rows, mixes and ingredients that only other levels have. */
function usingWhatIsHere(step: Step, guide: Guide, level: string | undefined): Step {
  if (!step.uses) return step;
  const here = namesOf(guide, (row) => isAt(row, level));
  const written = namesOf(guide, () => true);
  return { ...step, uses: step.uses.filter(({ material }) => here.has(material) || !written.has(material)) };
}

/** What a step may use by name: rows, mixes and their ingredients. */
function namesOf(guide: Guide, counts: (row: Levelled) => boolean): ReadonlySet<string> {
  const mixes = guide.mixes.filter(counts).flatMap((mix) => [mix.id, ...mix.of.map(({ use }) => use)]);
  return new Set([...guide.materials.filter(counts).map(({ id }) => id), ...mixes]);
}

/** The check, of the finished model where the step that it came after is gone. */
function withoutGone(check: QualityCheck, gone: ReadonlyMap<string, Step>): QualityCheck {
  const { after, ...rest } = check;
  return after === undefined || gone.has(after) ? rest : check;
}

/** The same value with each map by level replaced by what stands at the level. */
function settled(value: unknown, level: string | undefined): unknown {
  if (Array.isArray(value)) return value.map((item) => settled(item, level));
  if (typeof value !== 'object' || value === null) return value;
  if ('byLevel' in value) return settled(atLevel(value as ByLevel<unknown>, level), level);
  return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, settled(item, level)]));
}

function atLevel({ byLevel }: ByLevel<unknown>, level: string | undefined): unknown {
  if (level === undefined || !(level in byLevel))
    throw new Bug('a map by level lacks a level', { level, byLevel });
  return byLevel[level];
}
