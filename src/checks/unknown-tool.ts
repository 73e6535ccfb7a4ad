import type { Check, Finding } from './check.ts';
import type { Context, GuideRead, ModuleRead } from './context.ts';
import { linkedTo, namedAt, the, unknownNames } from './unknown-names.ts';

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
  const { tools } = read.guide;
  const known = Object.keys(workspace.tools);
  const listed = tools.map(({ use }) => use);
  const rows = tools.flatMap(({ use }, i) => namedAt(read, use, 'The list of tools', 'tools', i, 'use'));
  return [
    ...unknownNames(rows, known, (name) => isThere('tools', name)),
    ...unknownNames(linkedTo(read, 'tool'), known, (name) => listed.includes(name) || isThere('tools', name)),
  ];
}

function ofModule(read: ModuleRead, { workspace, isThere }: Context): readonly Finding[] {
  const named = read.module.stations.flatMap(({ id, tools }, i) =>
    tools.flatMap(({ use }, j) => namedAt(read, use, the('station', id), 'stations', i, 'tools', j, 'use')),
  );
  const known = Object.keys(workspace.tools);
  return unknownNames([...named, ...linkedTo(read, 'tool')], known, (name) => isThere('tools', name));
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
  return found.map((finding) => ({ ...finding, gravity: 'incomplete' as const }));
}
