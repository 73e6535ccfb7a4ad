import fc from 'fast-check';
import type { Material } from '../../../src/core/model/material.ts';
import type { Workspace } from '../../../src/core/model/workspace.ts';
import type { OnHand } from '../../../src/core/plan/demand.ts';
import type { OwnPack, OwnSettings } from '../../../src/core/plan/own/own-settings.ts';
import type { PageData } from '../../../src/core/plan/own/page-data.ts';
import { workspaceOf } from '../../../src/core/plan/own/workspace-of.ts';

/** The pages of all guides of a workspace, each at each of its levels. */
export function pagesOf(workspace: Workspace, today: string): readonly PageData[] {
  return Object.values(workspace.guides).flatMap(({ id, levels }) => {
    const data = { guide: id, today, workspace: workspaceOf(workspace, id) };
    return levels.length === 0 ? [data] : levels.map((level) => ({ ...data, level: level.id }));
  });
}

const some = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined, freq: 2 });

/** Whatever a reader of that page may set, each now and then. */
export function anySettings({ guide, level, workspace }: PageData): fc.Arbitrary<OwnSettings> {
  const { levels, parts, steps } = workspace.guides[guide]!;
  const others = levels.filter(({ id }) => id !== level).map(({ id }) => id);
  const alone = parts.filter(({ id }) => steps.some(({ for: of }) => of.per === 'part' && of.part === id));
  const materials = Object.values(workspace.materials).filter(({ packs, free }) => packs.length > 0 && !free);
  return fc
    .record({
      batch: some(fc.integer({ min: 1, max: 30 })),
      along: someOfEach(others, () => fc.integer({ min: 1, max: 8 })),
      part: some(fc.constantFrom(undefined, ...alone.map(({ id }) => id))),
      builders: some(fc.integer({ min: 1, max: 5 })),
      ...anyTimes,
      units: some(fc.constantFrom('metric' as const, 'US' as const, 'both' as const)),
      paper: some(fc.constantFrom('A4' as const, 'Letter' as const)),
      labour: some(anyPrice),
      owned: someOfEach(Object.keys(workspace.tools), () => fc.integer({ min: 0, max: 12 })),
      packs: someOfEach(idsOf(materials), (id) => packsOf(workspace.materials[id]!)),
      stock: someOfEach(idsOf(materials), (id) => stockOf(workspace.materials[id]!)),
    })
    .map(({ when, ...rest }) => without({ ...rest, ...when }) as OwnSettings);
}

const anyPrice = fc.integer({ min: 1, max: 9999 }).map((pence) => {
  const [whole, rest] = [Math.floor(pence / 100), pence % 100];
  return { amount: rest === 0 ? String(whole) : lowest(pence, 100), currency: 'GBP' };
});

const anyTimes = {
  when: fc.constantFrom<OwnSettings>(
    {},
    {},
    { start: '2026-11-30T09:00' },
    { readyBy: '2026-12-18T16:00' },
    { readyBy: '2026-12-18T12:00', margin: 120, goodUntil: '2026-12-18T17:00' },
    { readyBy: '2026-11-26T10:00' },
  ),
};

/** Packs that are published, at other prices. */
function packsOf({ packs }: Material): fc.Arbitrary<readonly OwnPack[]> {
  const own = packs.map(({ holds }) => some(anyPrice).map((price) => (price ? { holds, price } : { holds })));
  return fc.tuple(...own);
}

/** Some packs, or part of what one holds where that is an amount. */
function stockOf({ packs }: Material): fc.Arbitrary<OnHand> {
  const { each } = packs[0]!.holds;
  const count = fc.integer({ min: 1, max: 4 });
  if ('sides' in each) return count.map((sheets) => ({ pieces: [{ count: sheets, each }] }));
  return fc.integer({ min: 0, max: 60 }).map((part) => ({ value: String(part), unit: each.unit }));
}

function someOfEach<T>(
  ids: readonly string[],
  value: (id: string) => fc.Arbitrary<T>,
): fc.Arbitrary<Readonly<Record<string, T>> | undefined> {
  const all = fc.record(Object.fromEntries(ids.map((id) => [id, some(value(id))])));
  const given = all.map((record) => without(record) as Record<string, T>);
  return some(given).map((record) => (record && Object.keys(record).length > 0 ? record : undefined));
}

function without(record: object): object {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined));
}

const idsOf = (all: readonly { readonly id: string }[]) => all.map(({ id }) => id);

function lowest(above: number, below: number): string {
  const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));
  const by = divisor(above, below);
  return `${above / by}/${below / by}`;
}
