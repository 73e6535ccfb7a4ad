import type { Module, Station } from '../../../../src/core/model/module.ts';
import { time } from '../a-workspace.ts';

/** A small invented module, with what a test says otherwise. */
export function aModule(more: Partial<Module> = {}): Module {
  return {
    id: 'm',
    title: 'M',
    status: 'draft',
    after: [],
    needs: [],
    objectives: [],
    activities: [],
    prepare: [],
    bring: [],
    wear: [],
    notices: {},
    cohort: { people: [{ id: 'trainees', count: 20, as: ['trainees'] }], group: 4 },
    stations: [],
    surveys: [],
    selfCheck: [],
    debrief: [],
    history: [],
    sources: [],
    prose: { sections: [], links: [], images: [] },
    ...more,
  };
}

export function aStation(id: string, more: Partial<Station> = {}): Station {
  return {
    id,
    seats: 2,
    atOne: 2,
    takes: time('25 min'),
    changeOver: time('5 min'),
    led: false,
    models: [],
    tools: [],
    meanwhile: [],
    ...more,
  };
}
