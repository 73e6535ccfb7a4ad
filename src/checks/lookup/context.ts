import type { Place } from '../../core/diagnostic.ts';
import type { Guide, GuideAt, RowsWithLevels } from '../../core/model/guide.ts';
import type { Module } from '../../core/model/module.ts';
import type { Origins } from '../../core/model/origins.ts';
import { planAt, usualLevel } from '../../core/model/plan-at.ts';
import type { ProsePlace } from '../../core/model/prose.ts';
import type { IsoDate } from '../../core/model/values.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { Plan } from '../../core/plan/result.ts';
import { stepName } from './names.ts';

/** What all checks look at. */
export interface Context {
  readonly workspace: Workspace;
  readonly origins: Origins;
  readonly today: IsoDate;
  /** The guides as they are written. */
  readonly guides: readonly GuideRead[];
  /** The modules as they are written. */
  readonly modules: readonly ModuleRead[];
  /** Both, guides first. */
  readonly papers: readonly PaperRead[];
  /** Each guide at each of its levels, the usual one first; a guide without levels stands once. For most checks. */
  readonly guidesAt: readonly GuideAtLevel[];
  /** The same of one guide. */
  readonly levelsOf: (guide: Guide) => readonly GuideAtLevel[];
  /** Those of `guidesAt` whose steps can be put in order: no circle, none after a step that is not there. */
  readonly guidesInOrder: readonly GuideAtLevel[];
  /** Whether a file of that name is there, be it readable or not: of what is not, checks say nothing. */
  readonly isThere: (kind: Kind, id: string) => boolean;
  /** A photo or a drawing in the folder of a guide or a module; undefined where it is not there. */
  readonly bytesIn: (folder: string, file: string) => Uint8Array | undefined;
  /** The plan that a guide's stated figures speak of; `undefined` where none can be made. */
  readonly planOf: (guide: Guide) => Plan | undefined;
}
export type Kind = 'materials' | 'tools' | 'guides' | 'modules';

/** Keys and indexes down to a value, as the author wrote them. */
export type Way = readonly (string | number)[];

/** Where the values of a file of an author stand. */
export interface Places {
  readonly place: (...way: Way) => Place;
  readonly key: (...way: Way) => Place;
  readonly prose: (at: ProsePlace) => Place;
}

/** A module as it is written, with the places of its values. */
export interface ModuleRead extends Places {
  readonly module: Module;
  /** What lies beside it, by path below its folder. */
  readonly files: readonly string[];
}

/** What a guide and a module have alike: a title page, prose, and a folder of their own. */
export interface PaperRead extends Places {
  readonly paper: Guide | Module;
  /** `guides/needle-block` */
  readonly folder: string;
  /** What lies beside it, by path below its folder. */
  readonly files: readonly string[];
}

/** A guide as it is written, with the places of its values. */
export interface GuideRead extends Places {
  readonly guide: Guide;
  /** What its author calls a step: "Melt the gel". */
  readonly stepName: (id: string) => string;
}

/** A guide at one level. Ways count the rows of that level: `place('steps', 0)` is its first step, wherever it was written. */
export interface GuideAtLevel extends GuideRead {
  readonly at: GuideAt;
}

/** What checks are run on: what reading gives, and the day that counts as today. */
export interface ToCheck {
  readonly workspace: Workspace;
  readonly origins: Origins;
  /** Present but not readable: `materials/felt`. */
  readonly unread: readonly string[];
  /** All that lies beside guides and modules: photos, drawings, films, tables, by path below the workspace. */
  readonly files: Readonly<Record<string, Uint8Array>>;
  readonly today: IsoDate;
  /** Ids of the guides whose stated figures are compared with a plan; all where left out. */
  readonly compared?: readonly string[];
}

export function makeContext({ workspace, origins, unread, files, today }: ToCheck): Context {
  const notRead = new Set(unread);
  const filesIn = filesByFolder(files);
  const guides = Object.values(workspace.guides).map((guide) => guideRead(guide, origins));
  const modules = Object.values(workspace.modules).map((module) => ({
    module,
    files: filesIn(`modules/${module.id}`),
    ...placesIn(`modules/${module.id}`, origins),
  }));
  const levels = new Map(guides.map((read) => [read.guide, atItsLevels(read)]));
  const guidesAt = [...levels.values()].flat();
  return {
    workspace,
    origins,
    today,
    guides,
    modules,
    papers: [
      ...guides.map((read) => paperRead(`guides/${read.guide.id}`, read.guide, read, filesIn)),
      ...modules.map((read) => paperRead(`modules/${read.module.id}`, read.module, read, filesIn)),
    ],
    guidesAt,
    levelsOf: (guide) => levels.get(guide) ?? [],
    guidesInOrder: guidesAt.filter(({ at }) => isInOrder(at.steps)),
    bytesIn: (folder, file) => files[`${folder}/${file.replace(/^(\.\/)+/, '')}`],
    isThere: (kind, id) => Object.hasOwn(workspace[kind], id) || notRead.has(`${kind}/${id}`),
    planOf: () => undefined,
  };
}

/** What lies in the folder of each guide and module, by path below that folder. */
function filesByFolder(files: ToCheck['files']): (folder: string) => readonly string[] {
  const byFolder = new Map<string, string[]>();
  for (const file of Object.keys(files)) {
    const [kind, id, ...below] = file.split('/');
    const folder = `${kind}/${id}`;
    const own = byFolder.get(folder);
    if (own) own.push(below.join('/'));
    else byFolder.set(folder, [below.join('/')]);
  }
  return (folder) => byFolder.get(folder) ?? [];
}

function paperRead(
  folder: string,
  paper: Guide | Module,
  { place, key, prose }: Places,
  filesIn: (folder: string) => readonly string[],
): PaperRead {
  return { paper, folder, files: filesIn(folder), place, key, prose };
}

function guideRead(guide: Guide, origins: Origins): GuideRead {
  const stepNamed = (id: string): string => stepName(guide, id);
  return { guide, ...placesIn(`guides/${guide.id}`, origins), stepName: stepNamed };
}

function placesIn(top: string, origins: Origins): Places {
  const path = (way: Way): string => [top, ...way].join('/');
  return {
    place: (...way) => origins.at(path(way)),
    key: (...way) => origins.key(path(way)),
    prose: (at) => origins.prose(top, at),
  };
}

/** None where a row is kept for a level that is not there (`row-of-unknown-level`): what else is wrong would follow from that. */
function atItsLevels(read: GuideRead): readonly GuideAtLevel[] {
  const { levels, materials, mixes, tools, steps, checks, cautions } = read.guide;
  const rows: readonly { readonly only?: readonly string[] }[] = [
    materials,
    mixes,
    tools,
    steps,
    checks,
    cautions,
  ].flat();
  const isKnown = (level: string): boolean => levels.some(({ id }) => id === level);
  if (!rows.every(({ only = [] }) => only.every(isKnown))) return [];
  return levelIds(read.guide).map((level) => atLevel(read, level));
}

/** Whether the steps can be done one after the other: again and again one is left whose steps before it are done. */
function isInOrder(steps: GuideAt['steps']): boolean {
  const done = new Set<string>();
  while (done.size < steps.length) {
    const next = steps.find(({ id, after }) => !done.has(id) && after.every((before) => done.has(before)));
    if (!next) return false;
    done.add(next.id);
  }
  return true;
}

function levelIds(guide: Guide): readonly (string | undefined)[] {
  const usual = usualLevel(guide);
  return [usual, ...guide.levels.map(({ id }) => id).filter((id) => id !== usual)];
}

function atLevel(read: GuideRead, level: string | undefined): GuideAtLevel {
  const at = planAt(read.guide, level);
  const asWritten = ([list, index, ...rest]: Way): Way =>
    typeof index === 'number' && isOfLevels(list, at)
      ? [list, at.originOf[list][index]!, ...rest]
      : [list!, ...(index === undefined ? [] : [index]), ...rest];
  return {
    ...read,
    at,
    place: (...way) => read.place(...asWritten(way)),
    key: (...way) => read.key(...asWritten(way)),
  };
}

function isOfLevels(list: Way[number] | undefined, { originOf }: GuideAt): list is RowsWithLevels {
  return list !== undefined && list in originOf;
}
