import type { Guide, KeepsAt, Level, Part, StatedFigures } from '../../core/model/guide.ts';
import type { Prose, Section } from '../../core/model/prose.ts';
import { readCount, readModels, readUses, readYield } from '../../core/quantity/read.ts';
import { readKeeping } from '../../core/time/duration.ts';
import { readClockTime, readPriceRange } from '../values/money-and-time.ts';
import { idBut, readWords, readYesNo } from '../values/plain-words.ts';
import { readReviewed } from '../reviewed.ts';
import { checkShape } from '../shape/check-shape.ts';
import { guideShape, type GuideShape, type RowShape } from '../shape/guide-shape.ts';
import { field, given, items, read, refuseKey, type OpenFile, type Written } from '../sheet/written.ts';
import { readInUse } from './in-use.ts';
import { isReservedForBases, isReservedForTimes, namesOf } from './names.ts';
import { readCaution, readQualityCheck } from './quality.ts';
import { readMaterialRow, readMix, readPattern, readToolRow } from './rows.ts';
import { readSteps } from './steps.ts';
import { noTime } from './times-of-step.ts';

/** A guide, from the front matter of `guides/<id>/guide.md` and the facts of its prose. */
export function readGuide(id: string, file: OpenFile, prose: Prose): Guide {
  const from = checkShape({ value: file.sheet.values, path: [], file }, guideShape);
  const names = namesOf(from);
  refuseZones(from);
  const steps = readSteps(items(field(from, 'steps')), names, prose.sections);
  return given<Guide>({
    id,
    ...readReviewed(from),
    trains: read(from, 'trains', readWords),
    levels: items(field(from, 'levels')).map(readLevel),
    parts: items(field(from, 'parts')).map(readPart),
    aUseIs: read(from, 'a-use-is', readWords),
    lasts: read(from, 'lasts', readUses),
    keeps: items(field(from, 'keeps')).map(readKeepsAt),
    mixes: items(field(from, 'mixes')).map((mix) => readMix(mix, names)),
    materials: items(field(from, 'materials')).map((row) => readMaterialRow(row, names)),
    patterns: items(field(from, 'patterns')).map(readPattern),
    tools: items(field(from, 'tools')).map(readToolRow),
    steps,
    checks: items(field(from, 'checks')).map((check) => readQualityCheck(check, names)),
    cautions: items(field(from, 'cautions')).map(readCaution),
    inUse: readInUse(field(from, 'in-use')),
    yields: read(from, 'yields', readYield) ?? '1',
    electrosurgery: readElectrosurgery(from),
    states: readStates(from),
    prose: { ...prose, sections: prose.sections.map((section) => withStep(section, steps)) },
  });
}

function refuseZones(from: Written<GuideShape>): void {
  const zones = field(from, 'zones');
  if (zones && items(zones).length > 0)
    refuseKey(zones, { code: 'not-built-yet', variant: 'zones', facts: {} });
}

function readLevel(from: Written<RowShape<'levels'>>): Level {
  const id = read(from, 'id', idBut(isReservedForTimes, 'level')) ?? '';
  return {
    id,
    name: read(from, 'name', readWords) ?? inWords(id),
    usual: read(from, 'usual', readYesNo) ?? false,
  };
}

function readPart(from: Written<RowShape<'parts'>>): Part {
  const id = read(from, 'id', idBut(isReservedForBases, 'part')) ?? '';
  return given<Part>({
    id,
    name: read(from, 'name', readWords) ?? inWords(id),
    lasts: read(from, 'lasts', readUses),
  });
}

/** `deep-vessel` -> "Deep vessel". */
function inWords(id: string): string {
  return id.slice(0, 1).toUpperCase() + id.slice(1).replaceAll('-', ' ');
}

function readKeepsAt(from: Written<RowShape<'keeps'>>): KeepsAt {
  return given<KeepsAt>({
    for: read(from, 'for', readKeeping) ?? noTime,
    at: read(from, 'at', readWords) ?? '',
    how: read(from, 'how', readWords),
    source: read(from, 'source', readWords),
  });
}

function readElectrosurgery(from: Written<GuideShape>): Guide['electrosurgery'] {
  const allowed = read(from, 'electrosurgery', readYesNo);
  return { allowed: allowed ?? false, said: allowed !== undefined };
}

function readStates(from: Written<GuideShape>): StatedFigures | undefined {
  const states = field(from, 'states');
  if (!states) return undefined;
  return given<StatedFigures>({
    for: read(states, 'for', readModels) ?? 1,
    builders: read(states, 'builders', readCount) ?? 1,
    usedEach: read(states, 'used-each', readPriceRange),
    handsOn: read(states, 'hands-on', readClockTime),
    readyIn: read(states, 'ready-in', readClockTime),
  });
}

function withStep(section: Section, steps: Guide['steps']): Section {
  const step = steps.find(({ id, heading }) =>
    heading === undefined ? id === section.slug : isSame(heading, section.heading),
  );
  return step && section.heading !== '' ? { ...section, step: step.id } : section;
}

const isSame = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();
