import type { Guide } from '../core/model/guide.ts';
import { nearName } from '../core/near-name.ts';
import type { Finished } from '../core/plan/demand.ts';
import { readCount } from '../core/quantity/read.ts';
import { checkShape } from './shape/check-shape.ts';
import { blockOf } from './shape/wanted.ts';
import { finishedShape, type FinishedShape } from './shape/stock-shape.ts';
import {
  entries,
  field,
  given,
  items,
  read,
  readText,
  refuse,
  refuseKey,
  type Written,
} from './sheet/written.ts';
import { readWords } from './values/plain-words.ts';

type Row = FinishedShape[number];

/**
 * The models that a stock file lists: so many finished, so many past a step.
 *
 *     - { guide: needle-block, level: deep, count: 3, past: { pour: 4 } }
 */
export function readFinished(written: Written, guides: Readonly<Record<string, Guide>>): readonly Finished[] {
  if (!Array.isArray(written.value)) {
    refuse(written, { code: 'wrong-kind', variant: 'rows', facts: blockOf(finishedShape.element) });
    return [];
  }
  const rows = items(checkShape(written, finishedShape));
  return rows.flatMap((row) => finishedOf(row, guides) ?? []);
}

function finishedOf(row: Written<Row>, guides: Readonly<Record<string, Guide>>): Finished | undefined {
  const guide = known(field(row, 'guide'), 'guide', Object.keys(guides), {});
  const at = guide === undefined ? undefined : guides[guide];
  const past = entries(field(row, 'past')).map(([step, count]) => ({ step, count }));
  const models = read(row, 'count', readCount) ?? 0;
  const counted = past.flatMap(({ step, count }) => {
    const number = readText(count, readCount);
    const isThere = !at || known(count, 'step', idsOf(at.steps), { guide: at.id }, step) !== undefined;
    return number === undefined || !isThere ? [] : [{ step, models: number }];
  });
  if (!at) return undefined;
  const level = known(field(row, 'level'), 'level', idsOf(at.levels), { guide: at.id });
  const part = known(field(row, 'part'), 'part', idsOf(at.parts), { guide: at.id });
  return given<Finished>({ guide: at.id, level, part, models, past: counted });
}

const idsOf = (things: readonly { readonly id: string }[]): readonly string[] => things.map(({ id }) => id);

/** A name that the workspace has; reported, with the nearest one, where it has not. */
function known(
  written: Written | undefined,
  what: 'guide' | 'level' | 'part' | 'step',
  names: readonly string[],
  of: Readonly<Record<string, string>>,
  key?: string,
): string | undefined {
  const name = key ?? readText(written, readWords);
  if (!written || name === undefined || names.includes(name)) return name;
  const near = nearName(name, names);
  const variant = near ? 'near' : names.length === 0 ? 'none' : undefined;
  const facts = { ...of, [what]: name, known: names.join(', '), ...(near ? { near } : {}) };
  const fault = { code: `stock-unknown-${what}`, facts, ...(variant ? { variant } : {}) };
  return key === undefined ? refuse(written, fault) : refuseKey(written, fault);
}
