import type { OtherDanger } from '../../model/material.ts';
import type { Module } from '../../model/module.ts';
import type { Workspace } from '../../model/workspace.ts';
import { materialsIn } from '../scale/materials-in.ts';

/** Something that the people of a session meet, and its dangers. */
export interface Met {
  readonly kind: 'material' | 'tool';
  readonly id: string;
  readonly also: readonly OtherDanger[];
}

/** What is counted before anybody leaves. */
export const sharps: readonly OtherDanger[] = ['blade', 'needle'];

/**
 * What has one of some dangers among all that a session's people meet: materials in the models of its stations and
 * those that their use takes, and tools of the stations. Tools of the bench stay at the bench. By id.
 */
export function metIn(module: Module, workspace: Workspace, dangers: readonly OtherDanger[]): readonly Met[] {
  const models = module.stations.flatMap((station) => station.models);
  const held = models.flatMap(({ guide, level }) => materialsIn(guide, level, workspace));
  const used = module.stations.flatMap((station) => station.tools.map(({ use }) => use));
  const all: readonly Met[] = [
    ...sorted(held).map((id) => ({
      kind: 'material' as const,
      id,
      also: workspace.materials[id]?.also ?? [],
    })),
    ...sorted(used).map((id) => ({ kind: 'tool' as const, id, also: workspace.tools[id]?.also ?? [] })),
  ];
  return all.filter(({ also }) => also.some((danger) => dangers.includes(danger)));
}

const sorted = (ids: readonly string[]): readonly string[] => [...new Set(ids)].sort();
