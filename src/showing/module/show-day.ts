import type { Module } from '../../core/model/module.ts';
import type { Agenda } from '../../core/plan/cohort/agenda.ts';
import { properly } from '../text/author-text.ts';
import { capital, inWords } from '../text/fill.ts';
import { type Shown, shown } from '../shown/shown.ts';
import { showMinutes } from '../text/times.ts';

/** What happens in a session and how long it takes, as trainees are told: no script, no clock. */
export function showDay(
  { session }: Module,
  { items }: Agenda,
): readonly { readonly what: Shown; readonly takes: Shown }[] {
  return items.flatMap(({ id, start, end }) => {
    if (end === start) return [];
    const item = session?.agenda.find((known) => known.id === id);
    return [
      {
        what: shown(`day.${id}.what`, capital(properly(item?.what ?? inWords(id)))),
        takes: shown(`day.${id}.takes`, showMinutes(end - start)),
      },
    ];
  });
}
