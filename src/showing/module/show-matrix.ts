import type { Module } from '../../core/model/module.ts';
import { moduleWords } from '../../words/modules.ts';
import { properly } from '../text/author-text.ts';
import { capital, inWords } from '../text/fill.ts';
import { type Shown, shown } from '../shown/shown.ts';
import { stationName } from '../session/session-names.ts';

/** Where each objective is practised and how anybody can tell: rows are objectives, columns stations and activities. */
export interface ShownMatrix {
  readonly columns: readonly Shown[];
  readonly rows: readonly ShownMatrixRow[];
}

export interface ShownMatrixRow {
  readonly objective: Shown;
  /** "shows how". */
  readonly shownBy: Shown;
  /** By column: whether it is practised there. */
  readonly practised: readonly boolean[];
  /** Items, ratings and questions, in words. */
  readonly assessed: readonly Shown[];
}

export function showMatrix(module: Module): ShownMatrix {
  const columns = [
    ...module.stations.map((station) => ({ id: station.id, name: stationName(station) })),
    ...module.activities.map(({ id, what }) => ({ id, name: capital(properly(what)) })),
  ];
  return {
    columns: columns.map(({ id, name }) => shown(`matrix.columns.${id}`, name)),
    rows: module.objectives.map(({ id, does, shownBy, practisedAt, assessedBy }) => {
      const key = `matrix.rows.${id}`;
      return {
        objective: shown(`${key}.objective`, capital(properly(does))),
        shownBy: shown(`${key}.shownBy`, shownBy === undefined ? '' : moduleWords.shownBy[shownBy]),
        practised: columns.map((column) => practisedAt.includes(column.id)),
        assessed: assessedBy.map((item, i) => shown(`${key}.assessed[${i}]`, itemText(item, module))),
      };
    }),
  };
}

/** An item in its own words: what is scored, rated or asked. */
function itemText(id: string, { scoring, selfCheck }: Module): string {
  const item = scoring?.items.find((known) => known.id === id)?.says;
  const rating = scoring?.ratings.find((known) => known.id === id);
  const question = selfCheck.find((known) => known.id === id)?.ask;
  return capital(properly(item ?? rating?.says ?? question ?? inWords(id)));
}
