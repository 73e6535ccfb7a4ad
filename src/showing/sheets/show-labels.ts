import type { Workspace } from '../../core/model/workspace.ts';
import type { Plan, PlannedLine, PlannedSchedule } from '../../core/plan/result.ts';
import { materialsIn } from '../../core/plan/scale/materials-in.ts';
import { isoDate } from '../../core/time/day.ts';
import { safetyWords } from '../../words/safety.ts';
import { sheetWords } from '../../words/sheets.ts';
import { showRecordDate } from '../text/dates.ts';
import { capital, fill, listed } from '../text/fill.ts';
import { lineName, materialName } from '../text/names.ts';
import { showCount } from '../text/numbers.ts';
import { clockOf } from '../text/plan-clock.ts';
import { showLineFacts } from '../plan/show-facts.ts';
import { type ShownGuide } from '../library/show-guide.ts';
import { shown } from '../shown/shown.ts';
import type { ShownLabel, ShownLabels } from '../shown/shown-sheets.ts';
import { dayOf } from '../text/times.ts';

const { labels: words } = sheetWords;
type Told = keyof typeof words.dangers;

/** What each model of one line carries: what it is, of which batch, how long it is good, what is in it. */
export function showLabels(
  key: string,
  plan: Plan,
  index: number,
  guide: Pick<ShownGuide, 'version'>,
  workspace: Workspace,
): ShownLabels {
  const line = plan.lines[index]!;
  const keeps = showLineFacts(`${key}.facts`, plan, index, workspace).find(({ id }) => id === 'keeps');
  return {
    title: shown(`${key}.title`, lineName(line)),
    version: shown(`${key}.version`, guide.version.text),
    contains: shown(`${key}.contains`, containsText(line, workspace)),
    madeOf: shown(`${key}.madeOf`, madeWithText(line, workspace)),
    trainingOnly: shown(`${key}.trainingOnly`, safetyWords.trainingOnly),
    apart: shown(`${key}.apart`, safetyWords.apart),
    keeps: shown(`${key}.keeps`, keeps ? fill(words.keeps, { time: keeps.value.text }) : ''),
    models: Array.from({ length: line.made }, (_, i) =>
      showLabel(`${key}.models[${i}]`, i, line.made, datesOf(plan, index, i, workspace)),
    ),
  };
}

function showLabel(
  key: string,
  model: number,
  made: number,
  { ready, useBy }: { readonly ready: string; readonly useBy: string },
): ShownLabel {
  return {
    number: shown(`${key}.number`, fill(words.number, { n: showCount(model + 1), made: showCount(made) })),
    ready: shown(`${key}.ready`, ready),
    useBy: shown(`${key}.useBy`, useBy),
  };
}

/** Days of a dated plan; of the reference week none, since its days are on no calendar. */
function datesOf(
  { schedule }: Plan,
  line: number,
  model: number,
  workspace: Workspace,
): { readonly ready: string; readonly useBy: string } {
  const at = 'none' in schedule ? undefined : schedule.lines[line]?.models[model];
  if (!at || 'none' in schedule || schedule.clock !== 'dated') return { ready: '', useBy: '' };
  const date = (minute: number): string => dateOf(minute, schedule, workspace);
  return { ready: date(at.ready), useBy: at.useBy === undefined ? '' : date(at.useBy) };
}

function dateOf(minute: number, schedule: PlannedSchedule, workspace: Workspace): string {
  return showRecordDate(isoDate(dayOf(minute, clockOf(schedule, workspace))));
}

/** "Contains water balloon (natural rubber latex)." Says so where the guide names nothing of the kind. */
export function containsText({ guide, level }: PlannedLine, workspace: Workspace): string {
  const told = [...new Set(materialsIn(guide, level, workspace))].flatMap((material) => {
    const dangers = (workspace.materials[material]?.also ?? [])
      .filter((danger): danger is Told => danger in words.dangers)
      .map((danger) => words.dangers[danger]);
    if (dangers.length === 0) return [];
    return fill(words.ofMaterial, { material: materialName(material, workspace), danger: listed(dangers) });
  });
  return told.length === 0 ? words.noneNamed : fill(words.contains, { list: listed(told) });
}

function madeWithText(line: PlannedLine, workspace: Workspace): string {
  const names = materialsOf(line).map((material) => materialName(material, workspace));
  return capital(fill(words.madeWith, { list: listed([...new Set(names)]) }));
}

function materialsOf({ steps }: PlannedLine): readonly string[] {
  return [...new Set(steps.flatMap(({ takes }) => takes.flatMap(({ material }) => material ?? [])))];
}
