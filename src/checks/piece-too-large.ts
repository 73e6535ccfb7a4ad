import type { Material } from '../core/model/material.ts';
import { fitsOneOf } from '../core/plan/cut/cut.ts';
import { extent, sidesOf } from '../core/plan/supply/on-hand.ts';
import { convert, measure } from '../core/quantity/quantity.ts';
import type { Check, Finding } from './check.ts';
import type { Context, GuideAtLevel } from './lookup/context.ts';
import { sizeOfPiece } from './lookup/row-keys.ts';
import { written } from './lookup/written.ts';

/** A piece that no sheet, roll or rod of any pack is large enough for. */
export const pieceTooLarge: Check = {
  code: 'piece-too-large',
  gravity: 'stops',
  find: (context) =>
    context.guidesAt.flatMap((read) => read.at.materials.flatMap((_, row) => ofRow(read, row, context))),
};

function ofRow(read: GuideAtLevel, row: number, context: Context): readonly Finding[] {
  const { use, pieces } = read.at.materials[row]!;
  const material = Object.hasOwn(context.workspace.materials, use)
    ? context.workspace.materials[use]
    : undefined;
  const packs = (material?.packs ?? []).map(({ holds }) => ({ sides: sidesOf(holds) }));
  if (!material || packs.length === 0) return [];
  return pieces.flatMap(({ id, size, turn }, piece): readonly Finding[] => {
    const sides = size.sides.map((side) => convert(measure(side), 'mm').value);
    const isCut = packs.every((pack) => pack.sides.length === sides.length);
    if (!isCut || fitsOneOf({ sides, turn }, packs)) return [];
    const pack = context.origins.at(`materials/${use}/packs/${largest(material)}/holds`);
    const { key, place } = sizeOfPiece(read, row, piece);
    const facts = { piece: id, key, size: written(place), material: material.name, holds: written(pack) };
    const isTurnable = fitsOneOf({ sides, turn: true }, packs);
    const variant = isTurnable ? 'turn' : sides.length === 1 ? 'length' : undefined;
    return [{ ...(variant ? { variant } : {}), places: [place, pack], facts }];
  });
}

/** The pack of the largest sheet, roll or rod. */
function largest({ packs }: Material): number {
  const sizes = packs.map(({ holds }) => extent(sidesOf(holds)));
  return sizes.reduce((most, size, i) => (size.compare(sizes[most]!) > 0 ? i : most), 0);
}
