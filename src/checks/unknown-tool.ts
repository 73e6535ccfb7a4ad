import type { Workspace } from '../core/model/workspace.ts';
import type { Check, Finding } from './check.ts';
import type { Context, GuideRead, ModuleRead } from './lookup/context.ts';
import { linkedTo, namedAt, the, unknownNames } from './lookup/unknown-names.ts';

/** A tool that a guide, a module or the program names, and no file describes. */
export const unknownTool: Check = {
  code: 'unknown-tool',
  gravity: 'stops',
  find: (context) => [
    ...context.guides.flatMap((read) => ofGuide(read, context)),
    ...context.modules.flatMap((read) => ofModule(read, context)),
    ...owned(context),
  ],
};

function ofGuide(read: GuideRead, { workspace, isThere }: Context): readonly Finding[] {
  const { tools, materials, mixes } = read.guide;
  const known = Object.keys(workspace.tools);
  const listed = tools.map(({ use }) => use);
  const named = tools.flatMap(({ use }, i) => namedAt(read, use, 'The list of tools', 'tools', i, 'use'));
  const rows = [...materials, ...mixes.flatMap(({ of }) => of)];
  const isListed = (name: string): boolean => rows.some(({ use }) => use === name);
  return [
    ...meantAsMaterial(
      unknownNames(named, known, (name) => isThere('tools', name)),
      workspace,
      (name) => (isListed(name) ? 'material-here' : 'material'),
    ),
    ...unknownNames(linkedTo(read, 'tool'), known, (name) => listed.includes(name) || isThere('tools', name)),
  ];
}

function ofModule(read: ModuleRead, { workspace, isThere }: Context): readonly Finding[] {
  const named = read.module.stations.flatMap(({ id, tools }, i) =>
    tools.flatMap(({ use }, j) => namedAt(read, use, the('station', id), 'stations', i, 'tools', j, 'use')),
  );
  const known = Object.keys(workspace.tools);
  const found = unknownNames([...named, ...linkedTo(read, 'tool')], known, (name) => isThere('tools', name));
  return meantAsMaterial(found, workspace, () => 'material-given-out');
}

/** Counting a tool that nobody describes changes no plan. */
function owned({ workspace, origins, isThere }: Context): readonly Finding[] {
  const counted = Object.keys(workspace.program.owned).map((name) => ({
    name,
    place: origins.key(`program/owned/${name}`),
    who: 'The list of what the program owns',
    put: (id: string) => `${id}: …`,
  }));
  const found = unknownNames(counted, Object.keys(workspace.tools), (name) => isThere('tools', name));
  const told = meantAsMaterial(found, workspace, () => 'material-owned');
  return told.map((finding) => ({ ...finding, gravity: 'incomplete' as const }));
}

/** Names of materials among names of tools are told as what they are. */
function meantAsMaterial(
  found: readonly Finding[],
  { materials }: Workspace,
  variantOf: (name: string) => string,
): readonly Finding[] {
  return found.map((finding) => {
    const name = finding.facts['name']!;
    return Object.hasOwn(materials, name) ? { ...finding, variant: variantOf(name) } : finding;
  });
}
