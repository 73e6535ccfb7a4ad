import type { Place } from '../../core/diagnostic.ts';
import { packContent } from '../../core/plan/scale/requirements.ts';
import type { Context, GuideAtLevel } from './context.ts';
import { amountOfRow, sizeOfPiece } from './row-keys.ts';
import { isGuideUse } from '../../core/model/guide-use.ts';
import { usesInLife } from './usage.ts';

/** Two amounts that must be of one kind. */
export interface UnitPair {
  /** Why: it is bought in packs, it is used twice, packs of one material, a mix, a share of a row, a gap and a length. */
  readonly kind: 'bought' | 'used' | 'packs' | 'mix' | 'share' | 'gap';
  /** What they are amounts of. */
  readonly name: string;
  readonly one: Measured;
  readonly other: Measured;
  /** Whose density would bridge mass and volume. */
  readonly material?: string;
}
export interface Measured {
  readonly unit: string;
  readonly place: Place;
}

/** Each later pack of a material against its first. */
export function packPairs(context: Context): readonly UnitPair[] {
  return Object.values(context.workspace.materials).flatMap(({ id, name, packs }) =>
    packs.slice(1).map((_, i) => ({
      kind: 'packs' as const,
      name,
      one: pack(context, id, i + 1),
      other: pack(context, id, 0),
      material: id,
    })),
  );
}

function pack({ workspace, origins }: Context, id: string, index: number): Measured {
  const { unit } = packContent(workspace.materials[id]!.packs[index]!);
  return { unit, place: origins.at(`materials/${id}/packs/${index}/holds`) };
}

/** What guides take of a material against its first pack; of what has no pack, against the first that is taken. */
export function boughtPairs(context: Context): readonly UnitPair[] {
  const taken = byMaterial(context.guidesAt.flatMap(takenBy));
  return Object.values(context.workspace.materials).flatMap(({ id, name, packs }) => {
    const own = taken.get(id) ?? [];
    const other = packs.length > 0 ? pack(context, id, 0) : own[0];
    const kind = packs.length > 0 ? 'bought' : 'used';
    return other ? own.map((one) => ({ kind, name, one, other, material: id }) as const) : [];
  });
}

interface Taken extends Measured {
  readonly material: string;
}

function byMaterial(taken: readonly Taken[]): ReadonlyMap<string, readonly Taken[]> {
  const found = new Map<string, Taken[]>();
  for (const one of taken) {
    const own = found.get(one.material);
    if (own) own.push(one);
    else found.set(one.material, [one]);
  }
  return found;
}

/** All that a guide takes of materials: in rows, in its mixes, and in its life after the build. */
function takenBy(read: GuideAtLevel): readonly Taken[] {
  const { materials, mixes } = read.at;
  const isBought = (id: string): boolean => !isGuideUse(id) && !mixes.some((mix) => mix.id === id);
  const rows = materials.flatMap((row, i) => {
    const own = isBought(row.use) ? unitOfRow(read, i) : undefined;
    return own ? [{ material: row.use, ...own }] : [];
  });
  const ingredients = mixes.flatMap(({ of }, mix) =>
    of.map(({ use, amount }, i) => ({
      material: use,
      unit: amount.unit,
      place: read.place('mixes', mix, 'of', i, 'amount'),
    })),
  );
  const life = usesInLife(read.guide).map(({ used, way }) => ({
    material: used.material,
    unit: used.amount.unit,
    place: read.place(...way, 'amount'),
  }));
  return [...rows, ...ingredients, ...life];
}

/** The unit of a row and where it is said: of its amount, the length of a rod, the area of its pieces. */
export function unitOfRow(read: GuideAtLevel, row: number): Measured | undefined {
  const { amount, pieces } = read.at.materials[row]!;
  if (amount) return { unit: amount.unit, place: amountOfRow(read, row).place };
  const [piece] = pieces;
  if (!piece || piece.size.sides.length > 2) return undefined;
  const [side, across] = piece.size.sides;
  return { unit: across ? 'mm²' : side!.unit, place: sizeOfPiece(read, row, 0).place };
}
