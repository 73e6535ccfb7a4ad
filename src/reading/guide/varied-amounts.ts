import type { Amount, Duration, Size, Target, Varied } from '../../core/model/values.ts';
import type { Setting } from '../../core/model/guide.ts';
import { readAmount, readCount, readHeat, readSize, readTarget } from '../../core/quantity/read.ts';
import { isByLevel, readVaried, refuseMapForText } from '../values/by-level.ts';
import { readClockTime } from '../values/money-and-time.ts';
import { means } from '../values/plain-words.ts';
import type { Raw, RawMap } from '../sheet/sheet.ts';
import { field, given, readText, refuse, type TextReader, type Written } from '../sheet/written.ts';

/** A text of the front matter, or a map of such texts by level. */
export function variedText<V>(
  at: Written<Raw> | undefined,
  levels: readonly string[],
  reader: TextReader<V>,
): Varied<V> | undefined {
  return readVaried(at, levels, (one) => readTextAt(one, levels, reader));
}

function readTextAt<V>(one: Written<Raw>, levels: readonly string[], reader: TextReader<V>): V | undefined {
  return typeof one.value === 'string' ? readText(one, reader) : refuseMapForText(one, levels);
}

interface AmountKeys {
  readonly amount?: Raw | undefined;
  readonly usual?: Raw | undefined;
}

/** `amount:` with the `usual:` beside it; both may be by level, together or one alone. */
export function variedAmount(
  from: Written<AmountKeys>,
  levels: readonly string[],
): Varied<Amount> | undefined {
  const [amount, usual] = [field(from, 'amount'), field(from, 'usual')];
  if (!amount) return undefined;
  if (!usual) return variedText(amount, levels, (text) => readAmount(text));
  const spread =
    isByLevel(usual.value, levels) && !isByLevel(amount.value, levels) ? spreadOver(amount, levels) : amount;
  return readVaried(spread, levels, (one) => {
    const own = usualAt(usual, one, levels);
    return typeof own?.value === 'string' ? withUsual(one, own as Written<string>) : undefined;
  });
}

/** Where the usual amount does not fit the range, it is the one that is underlined. */
function withUsual(amount: Written<Raw>, usual: Written<string>): Amount | undefined {
  if (typeof amount.value !== 'string') return readText(amount, (text) => readAmount(text));
  const read = readAmount(amount.value, usual.value);
  if (read.ok) return read.value;
  const [at, other] = read.problem.code === 'usual-outside-range' ? [usual, amount] : [amount];
  return refuse(at, read.problem, ...(other ? [other.file.sheet.valueAt(other.path)] : []));
}

/** One amount for all levels, written out for each, so that each can have a usual one of its own. */
function spreadOver(at: Written<Raw>, levels: readonly string[]): Written<Raw> {
  return { ...at, value: Object.fromEntries(levels.map((level) => [level, at.value])) };
}

function usualAt(
  usual: Written<Raw>,
  one: Written<Raw>,
  levels: readonly string[],
): Written<Raw> | undefined {
  if (!isByLevel(usual.value, levels)) return usual;
  return field(usual as Written<RawMap>, String(one.path.at(-1)));
}

export const variedTime = (
  at: Written<Raw> | undefined,
  levels: readonly string[],
): Varied<Duration> | undefined => variedText(at, levels, readClockTime);

export const variedSize = (
  at: Written<Raw> | undefined,
  levels: readonly string[],
): Varied<Size> | undefined => variedText(at, levels, readSize);

export const variedCount = (
  at: Written<Raw> | undefined,
  levels: readonly string[],
): Varied<number> | undefined => variedText(at, levels, readCount);

export const variedTarget = (
  at: Written<Raw> | undefined,
  levels: readonly string[],
): Varied<Target> | undefined => variedText(at, levels, readTarget);

/** A setting may be any words (`low`); the hottest temperature in them is kept, since it may burn. */
export const readSetting: TextReader<Setting> = (text) => {
  const heat = readHeat(text);
  return heat.ok ? means(given<Setting>({ text: text.trim(), heat: heat.value })) : heat;
};
