import type { Step, StepUse } from '../../core/model/guide.ts';
import type { Section } from '../../core/model/prose.ts';
import { readCount } from '../../core/quantity/read.ts';
import { readClockTime } from '../values/money-and-time.ts';
import { asId } from '../../core/slug.ts';
import { means, oneOfThese, readId, readWords, readYesNo, wrong } from '../values/plain-words.ts';
import { checkShape } from '../shape/check-shape.ts';
import { stepUseShape, type RowShape } from '../shape/guide-shape.ts';
import type { Raw } from '../sheet/sheet.ts';
import {
  field,
  given,
  items,
  mapNamed,
  read,
  readEach,
  readNamed,
  readText,
  refuse,
  refuseKey,
  type TextReader,
  type Written,
} from '../sheet/written.ts';
import { basisReader } from './basis.ts';
import type { GuideNames } from './names.ts';
import { readOnly, readUse } from './rows.ts';
import { readHandsOn, readUseWithin, readWait } from './times-of-step.ts';
import { readSetting, variedAmount, variedText } from './varied-amounts.ts';

type StepShape = RowShape<'steps'>;

/** The steps of a guide in their order; one that does not say what it follows comes after the one before it. */
export function readSteps(
  from: readonly Written<StepShape>[],
  names: GuideNames,
  sections: readonly Section[],
): readonly Step[] {
  const ids = from.map((step) => idOf(step, sections));
  return from.map((step, index) => readStep(step, ids[index]!, ids[index - 1], names));
}

function readStep(from: Written<StepShape>, id: string, before: string | undefined, names: GuideNames): Step {
  const { levels } = names;
  return given<Step>({
    id,
    heading: read(from, 'heading', readWords),
    for: read(from, 'for', basisReader(names)) ?? { per: 'model' },
    handsOn: readHandsOn(field(from, 'hands-on'), levels),
    people: read(from, 'people', readCount) ?? 1,
    at: readNamed(from, 'at', readCount),
    wait: readWait(field(from, 'wait'), levels),
    watched: read(from, 'watched', readYesNo) ?? false,
    waitsAt: readNamed(from, 'waits-at', readPlaces),
    useWithin: readUseWithin(field(from, 'use-within'), levels),
    mayPause: read(from, 'may-pause', readYesNo) ?? false,
    partial: read(from, 'partial', readYesNo) ?? true,
    after: field(from, 'after') ? readEach(from, 'after', readId) : before ? [before] : [],
    uses: readUses(from, names),
    set: mapNamed(field(from, 'set'), (setting, name) => readSettingAt(setting, name, levels)),
    follow: read(from, 'follow', oneOfThese(['directions'] as const)),
    controls: readEach(from, 'controls', readWords),
    ignition: read(from, 'ignition', readYesNo) ?? false,
    clearsIn: read(from, 'clears-in', readClockTime),
    only: readOnly(from),
  });
}

/** Its `id`, else the slug of its `heading`. */
function idOf(from: Written<StepShape>, sections: readonly Section[]): string {
  if (field(from, 'id')) return read(from, 'id', readId) ?? '';
  const heading = field(from, 'heading');
  if (heading)
    return sections.find((section) => section.heading === heading.value)?.slug ?? asId(heading.value);
  const free = sections.filter(({ heading }) => heading !== '').map(({ slug }) => slug);
  refuse(from, { code: 'missing-key', variant: 'step-id', facts: { key: 'id', headings: free.join(', ') } });
  return '';
}

/** `2`: so many for each model; `1 a run`. */
const readPlaces: TextReader<Step['waitsAt'][string]> = (text) => {
  const run = /^(.*?)\s*(?:a|per|each|\/)\s*run$/.exec(text.trim());
  const count = readCount(run ? run[1]! : text.trim().replace(/\s*(a|per|each|\/)\s*model$/, ''));
  return count.ok ? means({ count: count.value, per: run ? 'run' : 'model' }) : wrong('places-unreadable');
};

function readUses(from: Written<StepShape>, names: GuideNames): readonly StepUse[] | undefined {
  const uses = field(from, 'uses');
  if (!uses) return undefined;
  return items(uses).flatMap((use) => readStepUse(use, names) ?? []);
}

function readStepUse(at: Written<Raw>, names: GuideNames): StepUse | undefined {
  if (typeof at.value === 'string') {
    const material = readText(at, readUse);
    return material === undefined ? undefined : { material };
  }
  const from = checkShape(at, stepUseShape);
  return given<StepUse>({
    material: read(from, 'material', readUse) ?? '',
    amount: variedAmount(from, names.levels),
    pieces: field(from, 'pieces') && readEach(from, 'pieces', readId),
  });
}

function readSettingAt(setting: Written<Raw>, name: string, levels: readonly string[]) {
  const id = readId(name);
  return id.ok
    ? variedText(setting, levels, readSetting)
    : refuseKey(setting, { variant: 'key', ...id.problem, facts: { text: name, ...id.problem.facts } });
}
