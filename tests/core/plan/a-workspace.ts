import type {
  Guide,
  GuideAt,
  Ingredient,
  MaterialRow,
  Mix,
  Piece,
  Step,
  ToolRow,
} from '../../../src/core/model/guide.ts';
import type { Material, Pack } from '../../../src/core/model/material.ts';
import type { Program } from '../../../src/core/model/program.ts';
import type { Tool } from '../../../src/core/model/tool.ts';
import type { Amount, Duration, Money, Size } from '../../../src/core/model/values.ts';
import type { Workspace } from '../../../src/core/model/workspace.ts';
import { readMoney } from '../../../src/core/money/read-money.ts';
import type { DemandLine, PlanSettings } from '../../../src/core/plan/demand.ts';
import { advised } from '../../../src/core/plan/compare/advised.ts';
import { makePlan } from '../../../src/core/plan/plan.ts';
import type { Plan } from '../../../src/core/plan/result.ts';
import { exactText } from '../../../src/core/quantity/exact.ts';
import type { Measure } from '../../../src/core/quantity/quantity.ts';
import { type Reading, readAmount, readHolding, readSize } from '../../../src/core/quantity/read.ts';
import { dayNumber } from '../../../src/core/time/day.ts';
import { readDuration } from '../../../src/core/time/duration.ts';

/** Small invented workspaces for the tests of the planner, written as an author would write them. */

export function amount(text: string, usual?: string): Amount {
  return value(readAmount(text, usual));
}
export function size(text: string): Size {
  return value(readSize(text));
}
export function time(text: string): Duration {
  return value(readDuration(text));
}
export function money(text: string): Money {
  return value(readMoney(text));
}

function value<T>(reading: Reading<T>): T {
  if (!reading.ok) throw new Error(`the test wrote something unreadable: ${JSON.stringify(reading.problem)}`);
  return reading.value;
}

/** `pack('500 g', '6.40 GBP', { from: 'craft-shop' })`. */
export function pack(holds: string, price?: string, more: Partial<Pack> = {}): Pack {
  return { holds: value(readHolding(holds)), ...(price ? { price: money(price) } : {}), ...more };
}

export function aMaterial(id: string, more: Partial<Material> = {}): Material {
  return {
    id,
    name: id,
    must: [],
    form: 'bulk',
    packs: [],
    free: false,
    keeps: {},
    times: {},
    hazards: [],
    also: [],
    precautions: [],
    notWith: [],
    instead: [],
    ...more,
  };
}

export function aTool(id: string, more: Partial<Tool> = {}): Tool {
  return { id, name: id, also: [], ...more };
}

export function aRow(use: string, text: string | undefined, more: Partial<MaterialRow> = {}): MaterialRow {
  return {
    id: use,
    use,
    ...(text === undefined ? {} : { amount: amount(text) }),
    pieces: [],
    waste: '0',
    for: { per: 'model' },
    ...more,
  };
}

export function aPiece(id: string, text: string, count = 1): Piece {
  return { id, size: size(text), count, turn: true };
}

export function aMix(id: string, makes: string, of: readonly Ingredient[], leftBehind = '0'): Mix {
  const { usual, unit } = amount(makes);
  return { id, makes: { value: usual, unit }, leftBehind, of };
}

export function aToolRow(use: string, more: Partial<ToolRow> = {}): ToolRow {
  return { use, count: 1, holds: 1, in: [], ...more };
}

/** `aStep('pour', '4 min', '1 min')`: 4 minutes once and 1 minute each. */
export function aStep(id: string, once: string, each = '0 min', more: Partial<Step> = {}): Step {
  return {
    id,
    for: { per: 'model' },
    handsOn: { once: time(once), each: time(each) },
    people: 1,
    at: {},
    watched: false,
    waitsAt: {},
    useWithin: { byStep: {} },
    mayPause: false,
    partial: true,
    after: [],
    set: {},
    controls: [],
    ignition: false,
    ...more,
  };
}

/** Steps one after the other, as reading puts them. */
export function inOrder(...steps: readonly Step[]): readonly Step[] {
  return steps.map((step, i) => (i === 0 ? step : { ...step, after: [steps[i - 1]!.id] }));
}

export function aGuide(id: string, more: Partial<Guide> = {}): Guide {
  return {
    id,
    title: id,
    status: 'draft',
    levels: [],
    parts: [],
    keeps: [],
    mixes: [],
    materials: [],
    patterns: [],
    tools: [],
    steps: [aStep('make', '10 min')],
    checks: [],
    cautions: [],
    inUse: { renew: [] },
    yields: '1',
    electrosurgery: { allowed: false, said: false },
    history: [],
    sources: [],
    prose: { sections: [], links: [], images: [] },
    ...more,
  };
}

/** London, with its clock changes of 2026 and 2027 (IANA zone database). */
const london = {
  zone: 'Europe/London',
  changes: [
    [dayNumber('2026-01-01') * 1440, 0],
    [dayNumber('2026-03-29') * 1440 + 60, 60],
    [dayNumber('2026-10-25') * 1440 + 60, 0],
    [dayNumber('2027-03-28') * 1440 + 60, 60],
    [dayNumber('2027-10-31') * 1440 + 60, 0],
  ] as const,
  until: dayNumber('2028-01-01') * 1440,
};

/** Monday to Friday, 09:00–12:30 and 13:00–17:00; two builders. */
export function aProgram(more: Partial<Program> = {}): Program {
  return {
    name: 'Quillmoor Skills Room',
    locale: 'en-GB',
    timeZone: 'Europe/London',
    zone: london,
    currency: 'GBP',
    minorDigits: { GBP: 2 },
    exchange: {},
    units: 'metric',
    paper: 'A4',
    work: {
      days: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri'],
      hours: [
        [540, 750],
        [780, 1020],
      ],
      closed: [],
    },
    builders: 2,
    stations: {},
    owned: {},
    room: [],
    spares: '0',
    suppliers: {},
    sayAlso: {},
    ...more,
  };
}

export function aWorkspace(content: {
  readonly program?: Partial<Program>;
  readonly materials?: readonly Material[];
  readonly tools?: readonly Tool[];
  readonly guides: readonly Guide[];
}): Workspace {
  return {
    program: aProgram(content.program),
    materials: byId(content.materials ?? []),
    tools: byId(content.tools ?? []),
    guides: byId(content.guides),
    modules: {},
  };
}

function byId<T extends { readonly id: string }>(things: readonly T[]): Record<string, T> {
  return Object.fromEntries(things.map((thing) => [thing.id, thing]));
}

/** The plan of a demand that must not be refused. For workspaces as small as these a little searching is enough. */
export function planOf(
  workspace: Workspace,
  demand: readonly DemandLine[],
  more: Partial<PlanSettings> = {},
): Plan {
  const settings = { today: '2026-11-25', effort: '1/20', ...more };
  const plan = makePlan(workspace, demand, settings);
  if ('refused' in plan) throw new Error(`refused: ${JSON.stringify(plan.refused)}`);
  return advised({ workspace, demand, settings }, plan);
}

/** `2 x 3 g` is easier to compare as "6 g" than as a fraction. */
export function said({ value: number, unit }: Measure): string {
  return `${exactText(number)} ${unit}`.trim();
}

/** A plan as text: exact numbers as fractions. */
export function asText(plan: unknown): string {
  return JSON.stringify(plan, (_, part: unknown) => (typeof part === 'bigint' ? String(part) : part));
}

export type { GuideAt };
