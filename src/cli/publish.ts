import { join, relative, resolve, sep } from 'node:path';
import { check, publish as publishSite, readWorkspace } from '../index.ts';
import type { Published } from '../index.ts';
import type { Diagnostic } from '../core/diagnostic.ts';
import type { IsoDate } from '../core/model/values.ts';
import { fill } from '../showing/text/fill.ts';
import { outcomeWords } from '../words/outcomes.ts';
import type { Call } from './arguments.ts';
import type { Command } from './command.ts';
import { fault, sayFaults } from './fault.ts';
import { counted, findingsText, hasErrors } from './findings.ts';
import { findWorkspace } from './folder.ts';
import { inkFor } from './ink.ts';
import { progressOn } from './progress.ts';
import { todayOf } from './today.ts';
import type { ExitStatus, World } from './world.ts';

/** The site, as plain files. Findings go to standard error; what was written, to standard output. */
export const publish: Command = {
  name: 'publish',
  options: ['edition', 'out', 'today', 'workspace'],
  run: async (call, world) => {
    const found = findWorkspace(call, world, { takesWord: true });
    const today = todayOf(call, world);
    if ('faults' in found) return sayFaults(world, found.faults, call.command);
    if (typeof today !== 'string') return sayFaults(world, [today], call.command);
    const among = amongContent(found.folder, outOf(call, world));
    if (among) {
      const facts = { folder: call.values.out ?? '', kind: among };
      return sayFaults(world, [fault('out-among-content', facts)], call.command);
    }
    return publishFrom(found.folder, today, call, world);
  },
};

function outOf({ values }: Call, world: World): string {
  return resolve(world.folder, values.out ?? 'site');
}

/** Folders of a workspace in which every file is content. */
const ofContent: readonly string[] = ['guides', 'materials', 'modules', 'results', 'tools'];

function amongContent(workspace: string, out: string): string | undefined {
  const [first] = relative(workspace, out).split(sep);
  return ofContent.find((name) => name === first);
}

async function publishFrom(folder: string, today: IsoDate, call: Call, world: World): Promise<ExitStatus> {
  const { edition } = call.values;
  const progress = progressOn(world);
  progress.say(outcomeWords.reading);
  const read = await readWorkspace(folder);
  const findings = check(read, { today });
  progress.done();
  world.err.write(findingsText(findings, inkFor(world.err, world)));
  if (hasErrors(findings)) {
    world.err.write(`${outcomeWords.notPublished}\n`);
    return 1;
  }
  progress.say(outcomeWords.making);
  const out = outOf(call, world);
  const done = await publishSite(read, {
    out,
    today,
    ...(edition ? { editions: [edition] } : {}),
    onPhoto: (photo, of) =>
      progress.say(fill(outcomeWords.pictures, { done: String(photo), all: String(of) })),
  });
  progress.done();
  return 'refused' in done ? refused(done.refused, world) : written(done, out, world);
}

/** What the folder itself refuses; all else is the content. */
const statuses: Readonly<Record<string, ExitStatus>> = {
  'folder-not-ours': 2,
  'foreign-file-in-the-way': 2,
  'publish-under-way': 3,
};

function refused(findings: readonly Diagnostic[], world: World): ExitStatus {
  world.err.write(findingsText(findings, inkFor(world.err, world)));
  return statuses[findings[0]?.code ?? ''] ?? 1;
}

/** "trainees: 84 files in site/trainees", and what to open. */
function written(published: Published, out: string, world: World): ExitStatus {
  for (const { edition, folder, files } of published.editions) {
    const facts = { edition, files: counted('file', files), folder: fromHere(folder, world) };
    world.out.write(`${fill(outcomeWords.published, facts)}\n`);
  }
  world.out.write(
    `${fill(outcomeWords.open, { page: join(relative(world.folder, out) || '.', 'index.html') })}\n`,
  );
  return 0;
}

/** Below the current folder as the way from there, elsewhere as it is. */
function fromHere(folder: string, world: World): string {
  const way = relative(world.folder, folder);
  return way.startsWith('..') ? folder : way;
}
