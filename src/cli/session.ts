import { given } from '../core/given.ts';
import type { Module } from '../core/model/module.ts';
import type { Workspace } from '../core/model/workspace.ts';
import { nearName } from '../core/near-name.ts';
import { type CohortPlan, type CohortSettings, groupsOf, peopleOf } from '../core/plan/cohort/cohort.ts';
import { practises } from '../core/plan/cohort/model-needs.ts';
import {
  saysTime,
  sessionQuestion,
  type SessionTime,
  sessionTime,
} from '../core/plan/cohort/session-question.ts';
import type { DemandLine, PlanSettings } from '../core/plan/demand.ts';
import { counted, listed } from '../showing/text/fill.ts';
import { type Fault, fault, withNear } from './fault.ts';
import type { Values } from './options.ts';

/** The session that a plan is for. */
export interface AskedSession {
  readonly module: Module;
  readonly cohort: CohortPlan;
  /** As far as the call says it. */
  readonly time: SessionTime;
}

/** The id of the module that a call names, if it names one; one that could not be read is there too. */
export function moduleNamed(
  demand: readonly DemandLine[],
  modules: Workspace['modules'],
  unread: readonly string[],
): string | undefined {
  const isModule = (id: string): boolean => Object.hasOwn(modules, id) || unread.includes(`modules/${id}`);
  return demand.map(({ guide }) => guide).find(isModule);
}

/** What does not go together in a call for a module; or for none. */
export function faultsOfModule(
  id: string | undefined,
  demand: readonly DemandLine[],
  values: Values,
  { modules }: Workspace,
): readonly Fault[] {
  if (id === undefined) return optionsOfModules(values).map((option) => fault('needs-module', { option }));
  if (demand.length > 1) return [fault('module-with-others', { module: id })];
  const { level, part, wanted } = demand[0]!;
  if ([level, part, wanted].some((said) => said !== undefined))
    return [fault('module-with-number', { module: id })];
  const module = Object.hasOwn(modules, id) ? modules[id] : undefined;
  return module ? [...faultsOfPeople(module, values), ...faultsOfGroup(module, values)] : [];
}

function optionsOfModules({ people, instructors, group, list }: Values): readonly string[] {
  return [
    ...(people === undefined ? [] : ['--people']),
    ...(instructors === undefined ? [] : ['--instructors']),
    ...(group === undefined ? [] : ['--group']),
    ...(list === 'timetable' ? ['--list timetable'] : []),
  ];
}

function faultsOfPeople(module: Module, { people = {} }: Values): readonly Fault[] {
  const { id, cohort } = module;
  const known = cohort.people.map((kind) => kind.id);
  const unknown = Object.keys(people).filter((kind) => !known.includes(kind));
  const practising = peopleOf(module, { people }).filter(practises);
  const isAnybody = practising.length === 0 || practising.some(({ count }) => count > 0);
  return [
    ...unknown.map((kind) =>
      withNear('unknown-people', nearName(kind, known), { module: id, people: kind, known: listed(known) }),
    ),
    ...(unknown.length > 0 || isAnybody
      ? []
      : [fault('nobody-practises', { module: id, kinds: listed(practising.map((kind) => kind.id)) })]),
  ];
}

/** A group that is there, and a session that begins at a time: its calendar is made of both. */
function faultsOfGroup(
  module: Module,
  { people = {}, group, 'ready-by': readyBy }: Values,
): readonly Fault[] {
  if (group === undefined) return [];
  const groups = groupsOf(peopleOf(module, { people })).length;
  const facts = { module: module.id, group: String(group), groups: counted(groups, 'group') };
  return [
    ...(group <= groups ? [] : [fault(groups === 0 ? 'unknown-group.none' : 'unknown-group', facts)]),
    ...(saysTime(readyBy) ? [] : [fault('group-without-time')]),
  ];
}

/** What a call for a module asks a plan for: the models of its session, as one demand. */
export function askedOfModule(
  module: Module,
  workspace: Workspace,
  { people, instructors }: Values,
  settings: PlanSettings,
): {
  readonly session: AskedSession;
  readonly demand: readonly DemandLine[];
  readonly settings: PlanSettings;
} {
  const own = given<CohortSettings>({ people, instructors });
  const { cohort, ...asked } = sessionQuestion(module, workspace, own, settings);
  return { session: { module, cohort, time: sessionTime(settings, workspace.program) }, ...asked };
}
