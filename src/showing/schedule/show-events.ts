import type { Workspace } from '../../core/model/workspace.ts';
import type { Delivery, Plan, PlannedLine, PlannedSchedule } from '../../core/plan/result.ts';
import { utcTime } from '../../core/time/iso-time.ts';
import { exportWords } from '../../words/exports.ts';
import { planWords } from '../../words/plan.ts';
import { safetyWords } from '../../words/safety.ts';
import { deferral } from '../safety/deferral.ts';
import { counted, fill, plainSpaces } from '../text/fill.ts';
import { materialDangers } from '../safety/product-dangers.ts';
import { rangesOf } from '../text/model-lists.ts';
import { lineName, supplierName } from '../text/names.ts';
import { showStepCautions } from '../safety/show-cautions.ts';
import { whoText } from './show-days.ts';
import { showHazards } from '../safety/show-hazards.ts';
import { showShopping } from '../shopping/show-shopping.ts';
import type { ShownPlan } from '../shown/shown-plan.ts';
import { type Work, workOfEach } from './work-of-each.ts';

/** Something of a plan that stands in a calendar: what is done or happens, from when, and until when where it lasts. */
export interface PlanEvent {
  /** The same whenever the same is planned for the same day, and of nothing else. */
  readonly id: string;
  readonly title: string;
  readonly notes?: string;
  /** Minutes since 1970 in UTC. */
  readonly from: number;
  readonly until?: number;
}

const { events: words } = exportWords;

/**
 * A plan with dates as events: orders and deliveries, the work of each builder, when each line is ready, and until
 * when the first of it is good.
 */
export function showEvents(
  plan: Plan,
  schedule: PlannedSchedule,
  workspace: Workspace,
): readonly PlanEvent[] {
  const events = [
    ...plan.deliveries.flatMap((delivery) => deliveryEvents(delivery, plan, workspace)),
    ...workEvents(plan, schedule, workspace),
    ...plan.lines.flatMap((line, index) => readyEvents(line, schedule.lines[index]!)),
  ];
  const day = anchor(schedule);
  return events.map((event) => ({ ...event, id: `${event.id}.${day}` }));
}

/** What a plan is made for: two of the same guide stand side by side, and one that is made again takes its own place. */
function anchor({ start, readyBy = start }: PlannedSchedule): string {
  return utcTime(readyBy).replace(/[-:]/g, '').toLowerCase();
}

function deliveryEvents(delivery: Delivery, plan: Plan, workspace: Workspace): PlanEvent[] {
  const { supplier: id, ordered, arrives } = delivery;
  const supplier = id === undefined ? planWords.shopping.noSupplier : supplierName(id, workspace.program);
  const notes = packsFrom(id, plan, workspace);
  const event = (kind: 'order' | 'delivery', from: number | undefined): PlanEvent[] =>
    from === undefined
      ? []
      : [{ id: `${kind}.${id ?? 'unnamed'}`, title: fill(words[kind], { supplier }), notes, from }];
  return [...event('order', ordered), ...event('delivery', arrives)];
}

/** "Gelatin powder: 2 × 500 g", a line for each material. */
function packsFrom(supplier: string | undefined, plan: Plan, workspace: Workspace): string {
  const { rows } = showShopping('shopping', plan, workspace);
  const isFrom = (index: number): boolean => {
    const { material, packs } = plan.purchases[index]!;
    return packs.some(({ pack }) => workspace.materials[material]!.packs[pack]!.from === supplier);
  };
  return rows
    .filter((_, index) => isFrom(index))
    .map((row) => plainSpaces(packLine(row, workspace)))
    .join('\n');
}

function packLine(
  { material, name, packs }: ShownPlan['shopping']['rows'][number],
  workspace: Workspace,
): string {
  const dangers = materialDangers(material, workspace);
  const pack = { material: name.text, packs: packs.text };
  return dangers === '' ? fill(words.pack, pack) : fill(words.packDangers, { ...pack, dangers });
}

/** What can hurt at a step stands in the calendar of who does it: cautions most severe first, then the products. */
function carefulNotes(step: string, line: PlannedLine, workspace: Workspace): string {
  const cautions = showStepCautions('cautions', line.at, step).map(({ word, hazard, harm, avoid }) => {
    const texts = [hazard, harm, ...avoid].map(({ text }) => text).filter((text) => text !== '');
    return fill(words.caution, { word: word.text, text: texts.join(' ') });
  });
  const products = showHazards('hazards', step, line, workspace).map(({ text }) => text);
  return plainSpaces([...cautions, ...products, last(workspace)].join('\n'));
}

/** A calendar has more than this plan in it: each event says what it is for, and who has the last word. */
function last({ program }: Workspace): string {
  const { trainingOnly } = safetyWords;
  return fill(words.last, { trainingOnly, defers: deferral(program).inFull });
}

function workEvents(plan: Plan, schedule: PlannedSchedule, workspace: Workspace): PlanEvent[] {
  const seen = new Map<string, number>();
  return workOfEach(plan, schedule).map(({ task, from, until, builder, guide, work }) => {
    const id = workId(task, plan.lines[task.line]!, builder);
    const again = (seen.get(id) ?? 0) + 1;
    seen.set(id, again);
    const who = plainSpaces(whoText(builder === undefined ? [] : [builder]));
    const what = fill(planWords.schedule.ofGuide, { guide, what: work });
    return {
      id: again === 1 ? id : `${id}.${again}`,
      title: fill(words.work, { work: what, who }),
      notes: carefulNotes(task.step, plan.lines[task.line]!, workspace),
      from,
      until,
    };
  });
}

/** `work.needle-block.deep.pour.1-4.7.builder-2` */
function workId({ step, jobs }: Work['task'], line: PlannedLine, builder: number | undefined): string {
  const ranges = rangesOf([...new Set(jobs.flatMap(({ models }) => models))].sort((a, b) => a - b));
  const models = ranges.map(([from, to]) => (from === to ? `${from}` : `${from}-${to}`)).join('.');
  const who = builder === undefined ? 'machine' : `builder-${builder}`;
  return ['work', lineId(line), step, models, who].join('.');
}

function readyEvents(
  line: PlannedLine,
  { ready, useBy, models }: PlannedSchedule['lines'][number],
): PlanEvent[] {
  if (models.length === 0) return [];
  const name = plainSpaces(lineName(line));
  const title = fill(words.ready, { line: name, models: plainSpaces(counted(line.made, 'model')) });
  const isReady = { id: `ready.${lineId(line)}`, title, from: ready };
  if (useBy === undefined) return [isReady];
  return [isReady, { id: `use-by.${lineId(line)}`, title: fill(words.useBy, { line: name }), from: useBy }];
}

function lineId({ guide, level, part }: PlannedLine): string {
  return [guide, level, part].filter((id) => id !== undefined).join('.');
}
