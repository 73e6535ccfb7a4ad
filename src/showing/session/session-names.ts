import type { Module, Station } from '../../core/model/module.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import { planWords } from '../../words/plan.ts';
import { sessionWords } from '../../words/session.ts';
import { properly } from '../text/author-text.ts';
import { capital, fill, inWords } from '../text/fill.ts';
import { showCount } from '../text/numbers.ts';

/** "Chest drain" */
export function stationName({ id, name }: Pick<Station, 'id' | 'name'>): string {
  return properly(name ?? capital(inWords(id)));
}

export function stationNameIn({ stations }: Module, id: string): string {
  return stationName(stations.find((station) => station.id === id) ?? { id });
}

/** An item of the agenda: what the author says, else the names of its stations, else its id in words. */
export function agendaName(module: Module, id: string): string {
  const item = module.session?.agenda.find((known) => known.id === id);
  return properly(item?.what ?? capital(inWords(id)));
}

/** "Group 1", of an index. */
export function groupName(index: number): string {
  return fill(sessionWords.group, { n: showCount(index + 1) });
}

/** "18 trainees"; "seniors: 1". */
export function peopleText(id: string, count: number): string {
  const { one, some } = sessionWords.people;
  return count === 1
    ? fill(one, { kind: inWords(id) })
    : fill(some, { count: showCount(count), kind: inWords(id) });
}

/** "Ultrasound needle block, Deep vessel" */
export function guideName({ guides }: Workspace, id: string, level: string | undefined): string {
  const guide = guides[id];
  const title = guide?.title ?? capital(inWords(id));
  const name = guide?.levels.find((known) => known.id === level)?.name;
  return name === undefined ? title : fill(planWords.withLevel, { guide: title, level: name });
}
