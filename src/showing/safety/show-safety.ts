import type { Material } from '../../core/model/material.ts';
import type { IsoDate } from '../../core/model/values.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import { planAt } from '../../core/model/plan-at.ts';
import { type HazardMet, hazardsMet } from '../../core/plan/scale/hazard-register.ts';
import { addMonths } from '../../core/time/day.ts';
import { controlWords } from '../../words/controls.ts';
import { planWords } from '../../words/plan.ts';
import { registerWords as words } from '../../words/register.ts';
import { properly } from '../text/author-text.ts';
import { dangerText } from './danger-text.ts';
import { showRecordDate } from '../text/dates.ts';
import { capital, counted, fill, inWords, plainSpaces } from '../text/fill.ts';
import { materialName, stepName, toolName } from '../text/names.ts';
import { mostSevereFirst } from './show-cautions.ts';
import { labelText, precautionText } from './show-ghs.ts';

/** Something that can hurt, with all that is known of it, as finished text. */
export interface ShownHazard {
  readonly kind: HazardMet['kind'];
  /** Of the material or tool; `heat` and `ignition` stand for themselves. */
  readonly id: string;
  readonly name: string;
  readonly dangers: readonly string[];
  /** Signal word and pictograms by the codes; empty without any. */
  readonly label: string;
  readonly precautions: readonly string[];
  /** "of 20 April 2026, 7 months old", "none named"; empty of what has none. */
  readonly dataSheet: string;
  readonly link?: string;
  /** In no guide: empty. */
  readonly met: readonly ShownMeeting[];
}

export interface ShownMeeting {
  readonly guide: string;
  readonly title: string;
  readonly step: string;
  readonly stepName: string;
  /** Of a level that is not the usual one. */
  readonly folder: string;
  /** "heat 60 °C"; empty of what needs no saying. */
  readonly what: string;
  readonly controls: readonly string[];
  /** "WARNING: Hot gel sticks to skin", most severe first. */
  readonly cautions: readonly string[];
}

/** Every hazard of a workspace: materials, then tools, by name; then heat and ignition. */
export function showSafety(workspace: Workspace, today: IsoDate): readonly ShownHazard[] {
  const all = hazardsMet(workspace);
  const metOf = (kind: HazardMet['kind'], id?: string): readonly ShownMeeting[] =>
    all
      .filter((met) => met.kind === kind && (id === undefined || met.source === id))
      .map((met) => meeting(met, workspace));
  const dangerous = Object.values(workspace.materials).filter(
    ({ hazards, also, precautions }) => hazards.length + also.length + precautions.length > 0,
  );
  const materials = dangerous.map((material) => ({
    ...ofMaterial(material, today, workspace),
    met: metOf('material', material.id),
  }));
  const tools = Object.values(workspace.tools)
    .filter(({ also }) => also.length > 0)
    .map(({ id, also }) => ({
      ...plain('tool', id, toolName(id, workspace)),
      dangers: also.map((danger) => capital(dangerText(danger))),
      met: metOf('tool', id),
    }));
  const situations = (['heat', 'ignition'] as const).map((kind) => ({
    ...plain(kind, kind, properly(words.situations[kind].name)),
    dangers: [words.situations[kind].danger],
    met: metOf(kind),
  }));
  return [...byName(materials), ...byName(tools), ...situations.filter(({ met }) => met.length > 0)];
}

function byName(hazards: readonly ShownHazard[]): readonly ShownHazard[] {
  return [...hazards].sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
}

function plain(kind: HazardMet['kind'], id: string, name: string): Omit<ShownHazard, 'dangers' | 'met'> {
  return { kind, id, name, label: '', precautions: [], dataSheet: '' };
}

function ofMaterial(material: Material, today: IsoDate, workspace: Workspace): Omit<ShownHazard, 'met'> {
  const { id, hazards, also, precautions, dataSheet } = material;
  return {
    ...plain('material', id, materialName(id, workspace)),
    dangers: [...hazards, ...also].map((danger) => capital(dangerText(danger))),
    label: labelText(material),
    precautions: precautions.map(precautionText),
    dataSheet: hazards.length > 0 || dataSheet ? sheetText(dataSheet, today) : '',
    ...(dataSheet?.link === undefined ? {} : { link: dataSheet.link }),
  };
}

function sheetText(dataSheet: Material['dataSheet'], today: IsoDate): string {
  if (!dataSheet) return words.noSheet;
  const { dated } = dataSheet;
  if (dated === undefined) return words.sheetUndated;
  return fill(words.sheet, {
    date: showRecordDate(dated),
    age: counted(monthsBetween(dated, today), 'month'),
  });
}

/** Whole months; none before the day itself. */
function monthsBetween(from: IsoDate, to: IsoDate): number {
  let months = 0;
  while (addMonths(from, months + 1) <= to) months++;
  return months;
}

function meeting(met: HazardMet, workspace: Workspace): ShownMeeting {
  const at = planAt(workspace.guides[met.guide]!, met.level);
  const usual = planAt(workspace.guides[met.guide]!);
  const setting =
    met.kind === 'heat' ? at.steps.find(({ id }) => id === met.step)?.set[met.source] : undefined;
  const cautions = at.cautions.filter(({ id }) => met.cautions.includes(id));
  return {
    guide: met.guide,
    title: at.title,
    step: met.step,
    stepName: stepName(at, met.step),
    folder: met.level === usual.level ? met.guide : `${met.guide}/${met.level}`,
    what: setting ? fill(words.setting, { name: inWords(met.source), value: properly(setting.text) }) : '',
    controls: met.controls.map((control) => controlWords[control] ?? capital(control)),
    cautions: mostSevereFirst(cautions).map(({ signal, hazard }) =>
      fill(words.caution, { word: planWords.cautions.word[signal], hazard: capital(properly(hazard)) }),
    ),
  };
}

/** The same as rows of a table: one for each step where a hazard is met, one for what no guide uses. */
export function safetyRows(hazards: readonly ShownHazard[]): readonly SafetyTexts[] {
  return hazards.flatMap((hazard) => {
    const { kind, name, dangers, label, precautions, dataSheet, link = '' } = hazard;
    const own = {
      name: plainSpaces(name),
      dangers: lines(dangers),
      label,
      precautions: lines(precautions),
      dataSheet: plainSpaces(dataSheet),
      link,
    };
    const met = hazard.met.length > 0 ? hazard.met : [undefined];
    return met.map((at) => ({
      kind: words.kinds[kind],
      ...own,
      guide: at?.title ?? '',
      step: at?.stepName ?? '',
      what: plainSpaces(at?.what ?? ''),
      controls: lines(at?.controls ?? []),
      cautions: lines(at?.cautions ?? []),
    }));
  });
}
type SafetyTexts = Readonly<Record<keyof typeof words.columns, string>>;

const lines = (texts: readonly string[]): string => plainSpaces(texts.join('\n'));
