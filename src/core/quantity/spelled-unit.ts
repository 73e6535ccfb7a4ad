import { nearName } from '../near-name.ts';
import { refuse } from './problem.ts';
import type { Unit } from './units.ts';
import { units } from './units.ts';
import { spellingsOf } from './spellings.ts';

/**
 * The unit that a text begins with, by its longest spelling, and what follows. `undefined` where it begins with
 * none: `"mm x 20"` is mm and `" x 20"`, `"mmm"` is none.
 */
export function leadingUnit(text: string): { readonly unit: Unit; readonly rest: string } | undefined {
  for (let end = longest; end > 0; end--) {
    const unit = spelled.get(text.slice(0, end));
    if (unit && !goesOn(text, end)) return { unit, rest: text.slice(end) };
  }
  return undefined;
}

const spelled = new Map(
  units.flatMap((unit) => spellingsOf(unit).map((spelling) => [spelling, unit] as const)),
);
spelled.delete('');
const longest = Math.max(...[...spelled.keys()].map((spelling) => spelling.length));

/** A letter, digit or exponent right after a letter is part of the same word. */
function goesOn(text: string, end: number): boolean {
  return /[\p{L}\d²³°%^]/u.test(text.slice(end, end + 1)) && /[\p{L}\d²³]/u.test(text[end - 1]!);
}

/** Why `name` is no unit, for the number that stands before it. */
export function unknownUnit(text: string, number: string, name: string) {
  if (name === 'gr')
    return refuse('unit-ambiguous', text, { unit: name, choices: `${number} g / ${number} grain` });
  const choices = kitchenChoices(name);
  if (choices.length > 0) {
    const written = choices.map((symbol) => `${number} ${symbol}`).join(' / ');
    return refuse('unit-system-missing', text, { unit: name, choices: written });
  }
  const nearest = nearestUnit(name);
  if (nearest) return refuse('unit-unknown.near', text, { unit: name, number, nearest });
  return refuse('unit-unknown', text, { unit: name, number });
}

/** `cup` -> `US cup`, `metric cup`: the kitchen measures by their names without a system. */
const kitchen = new Map<string, string[]>();
for (const unit of units) {
  const names = spellingsOf(unit).flatMap((spelling) => /^(?:US|imp|metric) (.+)$/.exec(spelling)?.[1] ?? []);
  for (const name of new Set(names)) kitchen.set(name, [...(kitchen.get(name) ?? []), unit.symbol]);
}

/** What `name` may mean, when its system is left out, or has no such measure (`imp cup`), or a letter is wrong. */
function kitchenChoices(name: string): readonly string[] {
  const bare = name.toLowerCase().replace(/^(?:us|imp|imperial|uk|metric) /, '');
  const near = bare.length > 3 ? nearName(bare, [...spelled.keys(), ...kitchen.keys()]) : undefined;
  return kitchen.get(bare) ?? kitchen.get(near ?? '') ?? [];
}

/** The symbol whose spelling is nearest; words of one or two letters must agree but for their case. */
function nearestUnit(name: string): string | undefined {
  const known = [...spelled.keys()].filter((spelling) => spelling.length > 2);
  const sameButCase = [...spelled.keys()].find((spelling) => spelling.toLowerCase() === name.toLowerCase());
  const near = sameButCase ?? (name.length > 2 ? nearName(name, known) : undefined);
  return near === undefined ? undefined : spelled.get(near)!.symbol;
}
