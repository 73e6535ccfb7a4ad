import { given } from '../../given.ts';
import type { Guide } from '../../model/guide.ts';
import { guidesWithin } from '../../model/guide-use.ts';
import { guidesOfModule } from '../../model/guides-of-module.ts';
import type { Material } from '../../model/material.ts';
import type { Module } from '../../model/module.ts';
import type { Program } from '../../model/program.ts';
import type { Prose, ProseLink, ProsePlace } from '../../model/prose.ts';
import type { Workspace } from '../../model/workspace.ts';
import { readLeading } from '../../quantity/read.ts';

/**
 * As much of a workspace as a plan of one guide needs, made and shown: that guide and those whose models it uses, their
 * materials and tools. Plans of the two are the same.
 */
export function workspaceOf(whole: Workspace, guide: string): Workspace {
  return sliceOf(whole, [guide], [], (of) => ({ ...guideForPlans(of), inUse: betweenAlone(of.inUse) }));
}

/** The same for a session of a module: all guides of its stations with their use, and what else stands there. */
export function workspaceOfSession(whole: Workspace, module: Module): Workspace {
  const tools = module.stations.flatMap((station) => station.tools.map(({ use }) => use));
  return sliceOf(whole, guidesOfModule(module), tools, guideForPlans);
}

function sliceOf(
  whole: Workspace,
  ids: readonly string[],
  alsoTools: readonly string[],
  slim: (guide: Guide) => Guide,
): Workspace {
  const needed = ids.flatMap((id) => [id, ...guidesWithin(id, whole)]);
  const guides = mapped(named(whole.guides, needed), slim);
  const kept = Object.values(guides);
  const materials = named(whole.materials, kept.flatMap(materialsOf));
  const tools = [...kept.flatMap((guide) => guide.tools.map(({ use }) => use)), ...alsoTools];
  return {
    program: programFor(kept, Object.values(materials), tools, whole.program),
    modules: {},
    materials: inOrder(mapped(materials, forPlans)),
    tools: inOrder(named(whole.tools, tools)),
    guides: inOrder(guides),
  };
}

/** In the order of their ids: that of the files that were read says nothing. */
function inOrder<T>(table: ById<T>): ById<T> {
  return Object.fromEntries(Object.entries(table).sort(([a], [b]) => (a < b ? -1 : 1)));
}

type ById<T> = Readonly<Record<string, T>>;

/** Those of a table that are named, in its order. */
function named<T>(table: ById<T>, ids: readonly string[]): ById<T> {
  return Object.fromEntries(Object.entries(table).filter(([id]) => ids.includes(id)));
}

function mapped<T>(table: ById<T>, change: (value: T) => T): ById<T> {
  return Object.fromEntries(Object.entries(table).map(([id, value]) => [id, change(value)]));
}

/** Rows, ingredients, what is replaced between uses, and products whose directions give a time. */
function materialsOf({ materials, mixes, inUse, steps }: Guide): readonly string[] {
  const waits = steps.flatMap(({ wait }) => (wait ? [wait.usual, ...Object.values(wait.ifRoom)] : []));
  const times = waits.flatMap((wait) => ('byLevel' in wait ? Object.values(wait.byLevel) : [wait]));
  return [
    ...materials.map(({ use }) => use),
    ...mixes.flatMap(({ of }) => of.map(({ use }) => use)),
    ...[inUse.setUp, inUse.between, inUse.after]
      .flatMap((part) => part?.uses ?? [])
      .map(({ material }) => material),
    ...inUse.renew.flatMap((each) => each.materials).map(({ material }) => material),
    ...times.flatMap((time) => ('material' in time ? [time.material] : [])),
  ];
}

function programFor(
  guides: readonly Guide[],
  materials: readonly Material[],
  tools: readonly string[],
  program: Program,
): Program {
  const steps = guides.flatMap((guide) => guide.steps);
  const places = steps.flatMap(({ at, waitsAt }) => [...Object.keys(at), ...Object.keys(waitsAt)]);
  const shops = materials.flatMap(({ packs }) => packs.flatMap(({ from }) => from ?? []));
  return given<Program>({
    ...program,
    stations: named(program.stations, places),
    owned: named(program.owned, tools),
    suppliers: named(program.suppliers, shops),
    sayAlso: {},
    address: undefined,
    policy: program.policy?.contact === undefined ? undefined : { contact: program.policy.contact },
  });
}

function forPlans(material: Material): Material {
  return given<Material>({
    ...material,
    precautions: [],
    notWith: [],
    instead: [],
    dataSheet: undefined,
  });
}

function guideForPlans(guide: Guide): Guide {
  return given<Guide>({
    ...guide,
    patterns: [],
    checks: [],
    history: [],
    sources: [],
    prose: amountsOf(guide.prose),
    ...onlyOnPage,
  });
}

/** What is replaced between uses counts into a plan; the rest of a model's use does not. */
function betweenAlone({ between }: Guide['inUse']): Guide['inUse'] {
  return given<Guide['inUse']>({ between, renew: [] });
}

const onlyOnPage = {
  summary: undefined,
  trains: undefined,
  licence: undefined,
  version: undefined,
  approved: undefined,
  aUseIs: undefined,
};

/** Headings of steps, and the links that begin with an amount, each in its place. */
function amountsOf({ sections, links }: Prose): Prose {
  return {
    sections: sections.map(({ heading, step }) => ({
      ...(step === undefined ? { heading: '' } : { heading, step }),
      slug: '',
      has: [],
      at: nowhere,
    })),
    links: links.map((link) => (hasAmount(link) ? { ...link, at: nowhere } : noLink)),
    images: [],
  };
}

const nowhere: ProsePlace = { line: 0, column: 0, length: 0 };
const noLink: ProseLink = { kind: 'other', target: '', text: '', section: 0, at: nowhere };

function hasAmount({ kind, text }: ProseLink): boolean {
  return kind === 'set' || readLeading(text) !== undefined;
}
