import { copyFile, mkdir, mkdtemp, rename, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join, relative, resolve } from 'node:path';
import { makePlan } from '../index.ts';
import { advised } from '../core/plan/compare/advised.ts';
import type { Plan } from '../core/plan/result.ts';
import {
  type PlanToPrint,
  type PrintFiles,
  type SheetToPrint,
  printFiles,
  printModule,
} from '../publishing/print-files.ts';
import { shippedFiles } from '../publishing/disk/shipped.ts';
import type { Files } from '../publishing/paths/files.ts';
import { fill, listed } from '../showing/text/fill.ts';
import { showCount } from '../showing/text/numbers.ts';
import { wrapped } from '../showing/text/wrapped.ts';
import { outcomeWords } from '../words/outcomes.ts';
import type { Call } from './arguments.ts';
import { findChromium } from './chromium.ts';
import type { Command } from './command.ts';
import { fault, sayFaults } from './fault.ts';
import { isImpossible, sayNoSchedule } from './plan.ts';
import { planQuery } from './plan-query.ts';
import { printPdf } from './print-pdf.ts';
import { type Progress, progressOn } from './progress.ts';
import { ask, type Asked, refuse, sayFindings } from './question.ts';
import type { ExitStatus, World } from './world.ts';

/** The sheets of guides, or of a module, as PDFs. Their names go to standard output, findings to standard error. */
export const print: Command = {
  name: 'print',
  options: [
    'batch',
    'builders',
    'effort',
    'good-until',
    'instructors',
    'margin',
    'out',
    'paper',
    'people',
    'ready-by',
    'sheets',
    'spares',
    'start',
    'stock',
    'today',
    'units',
    'workspace',
  ],
  run: async (call, world) => {
    const chromium = findChromium(world);
    if (chromium === undefined) return sayNoBrowser(world);
    const asked = await ask(call, world);
    return 'status' in asked ? asked.status : printAsked(asked, chromium, call, world);
  },
};

function sayNoBrowser(world: World): ExitStatus {
  const path = world.environment['CHROMIUM'];
  const text = path ? fill(outcomeWords.noBrowserThere, { path }) : outcomeWords.noBrowser;
  for (const line of wrapped(text, 80)) world.err.write(`${line}\n`);
  return 3;
}

async function printAsked(asked: Asked, chromium: string, call: Call, world: World): Promise<ExitStatus> {
  const progress = progressOn(world);
  progress.say(outcomeWords.planning);
  const made = sheetsOf(asked, call);
  progress.done();
  if ('refused' in made) return refuse([...asked.findings, ...made.refused], call, world);
  sayFindings(asked.findings, call, world);
  if (made.sheets.length === 0) return sayNoSheets(asked, call, world);
  const out = resolve(world.folder, call.values.out ?? 'sheets');
  const status = await inFolderOfItsOwn((folder) =>
    printInto(folder, made, { chromium, progress, out }, world),
  );
  for (const plan of made.impossible) sayNoSchedule(plan, asked.question.workspace, world);
  return made.impossible.length > 0 ? 3 : status;
}

/** The sheets of a module's session, or of each guide by itself; or all that is refused of them. */
function sheetsOf(
  asked: Asked,
  call: Call,
): (PrintFiles & { readonly impossible: readonly Plan[] }) | { readonly refused: Asked['findings'] } {
  const { workspace, session, settings } = asked.question;
  const { paper = workspace.program.paper, sheets: wanted } = call.values;
  if (session) return { ...printModule(session, workspace, settings.today, paper, wanted), impossible: [] };
  const plans = plansOf(asked, call);
  if ('refused' in plans) return plans;
  const impossible = plans.map(({ plan }) => plan).filter(isImpossible);
  return { ...printFiles({ ...asked.read, workspace }, plans, paper, wanted), impossible };
}

/** Each line of the demand by itself; or all that is refused of them. */
function plansOf(
  { question, read }: Asked,
  { values }: Call,
): readonly PlanToPrint[] | { readonly refused: Asked['findings'] } {
  const { workspace, demand, settings } = question;
  const made = demand.map((line) => {
    const plan = makePlan(workspace, [line], settings);
    if ('refused' in plan) return plan;
    return {
      plan: advised({ workspace, demand: [line], settings }, plan),
      query: planQuery(line, plan, settings, values, read.workspace),
    };
  });
  const refused = made.flatMap((plan) => ('refused' in plan ? plan.refused : []));
  return refused.length > 0 ? { refused } : made.flatMap((plan) => ('refused' in plan ? [] : plan));
}

function sayNoSheets({ question }: Asked, { command, values }: Call, world: World): ExitStatus {
  const { demand, session } = question;
  const guides = session?.module.id ?? listed([...new Set(demand.map(({ guide }) => guide))]);
  const facts = { guides, sheets: listed(values.sheets ?? []) };
  return sayFaults(world, [fault('no-such-sheet', facts)], command);
}

interface Printer {
  readonly chromium: string;
  readonly progress: Progress;
  readonly out: string;
}

/** Every PDF is made before the first is put where it belongs. */
async function printInto(
  folder: string,
  { files, sheets }: { readonly files: Files; readonly sheets: readonly SheetToPrint[] },
  { chromium, progress, out }: Printer,
  world: World,
): Promise<ExitStatus> {
  await writeAll(join(folder, 'pages'), new Map([...(await shippedFiles()), ...files]));
  for (const [i, { name, path }] of sheets.entries()) {
    const texts = { done: showCount(i + 1), all: showCount(sheets.length), name };
    progress.say(fill(outcomeWords.printing, texts));
    const pdf = join(folder, `${name}.pdf`);
    const trouble = await printPdf(chromium, join(folder, 'pages', path), pdf, folder);
    if (trouble !== undefined) {
      progress.done();
      return sayNotPrinted({ browser: chromium, name, reason: trouble }, world);
    }
  }
  progress.done();
  await mkdir(out, { recursive: true });
  for (const { name } of sheets) await putWhole(join(folder, `${name}.pdf`), join(out, `${name}.pdf`));
  for (const { name } of sheets) {
    const file = relative(world.folder, join(out, `${name}.pdf`));
    world.out.write(`${fill(outcomeWords.printed, { file })}\n`);
  }
  return 0;
}

function sayNotPrinted(
  facts: Readonly<Record<'browser' | 'name' | 'reason', string>>,
  world: World,
): ExitStatus {
  for (const line of wrapped(fill(outcomeWords.notPrinted, facts), 80)) world.err.write(`${line}\n`);
  return 3;
}

async function inFolderOfItsOwn(work: (folder: string) => Promise<ExitStatus>): Promise<ExitStatus> {
  const folder = await mkdtemp(join(tmpdir(), 'benchwright-print-'));
  try {
    return await work(folder);
  } finally {
    await rm(folder, { recursive: true, force: true, maxRetries: 5 });
  }
}

async function writeAll(folder: string, files: Files): Promise<void> {
  for (const [path, bytes] of files) {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), bytes);
  }
}

/** Copied beside its place, then renamed: whoever looks finds the whole old file or the whole new one. */
async function putWhole(from: string, to: string): Promise<void> {
  const beside = `${to}.part`;
  await copyFile(from, beside);
  await rename(beside, to);
}
