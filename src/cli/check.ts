import { check as checkWorkspace, readWorkspace } from '../index.ts';
import type { Diagnostic } from '../core/diagnostic.ts';
import type { Workspace } from '../core/model/workspace.ts';
import { findingsJson } from '../exports/findings-json.ts';
import { jsonText } from '../exports/json-text.ts';
import { showDiagnostic } from '../showing/terminal/diagnostic.ts';
import { fill, listed } from '../showing/text/fill.ts';
import { outcomeWords } from '../words/outcomes.ts';
import type { Command } from './command.ts';
import { sayFaults } from './fault.ts';
import { counted, findingsText, hasErrors, sumText } from './findings.ts';
import { findWorkspace } from './folder.ts';
import { inkFor } from './ink.ts';
import { progressOn } from './progress.ts';
import { todayOf } from './today.ts';
import type { World } from './world.ts';

/** Is everything there, and does it add up? Findings go to standard output. */
export const check: Command = {
  name: 'check',
  options: ['format', 'today', 'workspace'],
  run: async (call, world) => {
    const found = findWorkspace(call, world, { takesWord: true });
    const today = todayOf(call, world);
    if ('faults' in found) return sayFaults(world, found.faults, call.command);
    if (typeof today !== 'string') return sayFaults(world, [today], call.command);
    const progress = progressOn(world);
    progress.say(outcomeWords.checking);
    const read = await readWorkspace(found.folder);
    const findings = checkWorkspace(read, { today });
    progress.done();
    world.out.write(
      call.values.format === 'json' ? jsonOf(findings) : textOf(findings, read.workspace, world),
    );
    return hasErrors(findings) ? 1 : 0;
  },
};

function jsonOf(findings: readonly Diagnostic[]): string {
  return jsonText(findingsJson(findings, showDiagnostic));
}

function textOf(findings: readonly Diagnostic[], workspace: Workspace | undefined, world: World): string {
  const ink = inkFor(world.out, world);
  if (findings.length > 0 || !workspace)
    return `${findingsText(findings, ink)}${ink.strong(sumText(findings))}\n`;
  return `${fill(outcomeWords.fine, { all: listed(sizes(workspace)) })}\n`;
}

/** "6 guides", "4 modules", "45 materials", "31 tools". Apart from guides, what there is none of is not named. */
function sizes({ guides, modules, materials, tools }: Workspace): readonly string[] {
  const things = { guide: guides, module: modules, material: materials, tool: tools } as const;
  return (['guide', 'module', 'material', 'tool'] as const).flatMap((noun) => {
    const n = Object.keys(things[noun]).length;
    return n === 0 && noun !== 'guide' ? [] : [counted(noun, n)];
  });
}
