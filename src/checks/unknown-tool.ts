import type { Check, Finding } from './check.ts';
import type { Context, GuideRead } from './context.ts';
import { linkedTo, namedAt, unknownNames } from './unknown-names.ts';

/** A tool that a guide or the program names, and no file describes. */
export const unknownTool: Check = {
  code: 'unknown-tool',
  gravity: 'stops',
  find: (context) => [...context.guides.flatMap((read) => ofGuide(read, context)), ...owned(context)],
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
