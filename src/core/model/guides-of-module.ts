import type { Module } from './module.ts';

/** The guides whose models the stations of a module use, each once, in the order of the stations. */
export function guidesOfModule({ stations }: Pick<Module, 'stations'>): readonly string[] {
  return [...new Set(stations.flatMap(({ models }) => models.map(({ guide }) => guide)))];
}
