import { minorDigitsOf } from './values/money-and-time.ts';
import type { Workspace } from '../core/model/workspace.ts';
import type { ProgramRead } from './program.ts';

type Things = Pick<Workspace, 'materials' | 'tools' | 'guides'>;

/** Minor digits of every currency that a workspace speaks of, in the order of their codes. */
export function minorDigitsIn(program: ProgramRead, things: Things): Readonly<Record<string, number>> {
  const used = [...new Set([...ofProgram(program), ...ofThings(things)])].sort();
  return Object.fromEntries(used.map((currency) => [currency, minorDigitsOf(currency) ?? 0]));
}

function ofProgram(program: ProgramRead): string[] {
  const sums = Object.values(program.suppliers).flatMap(({ delivery, freeOver }) => [delivery, freeOver]);
  return [program.currency, ...Object.keys(program.exchange), ...codes([program.labour, ...sums])];
}

function ofThings({ materials, tools, guides }: Things): string[] {
  const packs = Object.values(materials).flatMap((material) => material.packs.map(({ price }) => price));
  const toolPrices = Object.values(tools).map(({ price }) => price);
  const stated = Object.values(guides).flatMap(({ states }) => [
    states?.usedEach?.least,
    states?.usedEach?.most,
  ]);
  return codes([...packs, ...toolPrices, ...stated]);
}

function codes(sums: readonly ({ readonly currency: string } | undefined)[]): string[] {
  return sums.flatMap((money) => (money ? [money.currency] : []));
}
