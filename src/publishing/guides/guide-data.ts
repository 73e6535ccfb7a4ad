import type { Workspace } from '../../core/model/workspace.ts';
import { dayListCsv } from '../../exports/day-list-csv.ts';
import { type HowToTexts, howToJsonLd, scriptData } from '../../exports/how-to-json-ld.ts';
import { jsonText } from '../../exports/json-text.ts';
import { planJson } from '../../exports/plan-json.ts';
import { shoppingCsv } from '../../exports/shopping-csv.ts';
import { deferral } from '../../showing/safety/deferral.ts';
import { fill, plainSpaces } from '../../showing/text/fill.ts';
import { workOfEach } from '../../showing/schedule/work-of-each.ts';
import { guideDataWords as words } from '../../words/guide-data.ts';
import { pageWords } from '../../words/pages.ts';
import type { GuideData } from '../../../templates/guide/guide-data.tsx';
import { lettersOf } from '../../rendering/letters.ts';
import type { GuideProse } from '../prose/guide-prose.ts';
import type { PlannedGuide } from '../planned/planned-guides.ts';
import type { Files } from '../paths/files.ts';
import { webAddress } from '../paths/web-address.ts';

type FileName = keyof typeof words.files;

/**
 * What stands beside a guide's page for other programs: its plan, its shopping list and, where there is a schedule, its
 * day list. There is no calendar: the reference week has no dates, and events of a made-up week would only be in the way
 * of real ones.
 */
export function guideDataFiles(planned: PlannedGuide, workspace: Workspace): Files {
  const { computed: plan } = planned;
  const { schedule } = plan;
  const texts: Partial<Record<FileName, string>> = {
    'plan.json': jsonText(planJson(plan, workspace)),
    'shopping.csv': shoppingCsv(plan, workspace),
    ...('none' in schedule
      ? {}
      : { 'days.csv': dayListCsv(workOfEach(plan, schedule), schedule, workspace.program.zone) }),
  };
  return new Map(Object.entries(texts).map(([name, text]) => [name, new TextEncoder().encode(text)]));
}

/** The same for its page: links to those files, and the guide as JSON-LD. */
export function guideData(planned: PlannedGuide, prose: GuideProse, workspace: Workspace): GuideData {
  const names = [...guideDataFiles(planned, workspace).keys()] as readonly FileName[];
  const howTo = howToJsonLd(planned.computed, howToTexts(planned, prose, workspace), workspace.program);
  return {
    files: names.map((name) => ({ name: words.files[name], href: name })),
    ...(names.includes('days.csv') ? { command: commandOf(planned) } : {}),
    jsonLd: scriptData(howTo),
  };
}

/** What writes a calendar, for a start that the reader puts in. */
function commandOf({ written, level, made }: PlannedGuide): string {
  const line = level === undefined ? written.id : `${written.id}:${level}`;
  return fill(words.command, { line, batch: String(made) });
}

function howToTexts(planned: PlannedGuide, prose: GuideProse, workspace: Workspace): HowToTexts {
  const { guide, line, batch, computed } = planned;
  const address = webAddress(workspace.program, planned);
  return {
    name: line.title.text,
    description: plainSpaces(
      [guide.summary.text || guide.trains.text, pageWords.trainingOnly, deferral(workspace.program).inFull]
        .join(' ')
        .trim(),
    ),
    makes: plainSpaces(batch),
    version: guide.number.text,
    licence: guide.licence.text,
    supplies: planned.plan.shopping.rows.map(({ name, needed }) => ({
      name: plainSpaces(name.text),
      amount: plainSpaces(needed.text),
    })),
    steps: line.steps.map((step) => ({
      id: step.id,
      name: plainSpaces(step.heading.text),
      text: stepText(step, prose.steps[step.id]),
    })),
    tools: Object.fromEntries(
      computed.tools.map(({ tool }, i) => [tool, plainSpaces(planned.plan.tools[i]!.name.text)]),
    ),
    ...(address === undefined ? {} : { address }),
  };
}

/** The cautions of a step come before what is to be done there, in this form too. */
function stepText(
  { cautions, limit }: PlannedGuide['line']['steps'][number],
  prose: GuideProse['steps'][string] | undefined,
): string {
  const careful = cautions.flatMap(({ word, hazard, harm, avoid }) => [
    `${word.text}:`,
    hazard.text,
    harm.text,
    ...avoid.map(({ text }) => text),
  ]);
  const said = prose ? [...prose.careful, ...prose.acts].map(lettersOf) : [];
  return plainSpaces([...careful, ...said, limit.text].filter((text) => text.trim() !== '').join(' '))
    .replace(/\s+/g, ' ')
    .trim();
}
