import { given } from '../../given.ts';
import type { Material, Pack } from '../../model/material.ts';
import type { Workspace } from '../../model/workspace.ts';
import { printHolding } from '../../quantity/print.ts';
import type { OwnPack, OwnSettings } from './own-settings.ts';

/** The workspace as it is for a reader: with their own packs and prices, tools, wage, units and paper. */
export function withOwn(workspace: Workspace, own: OwnSettings): Workspace {
  const { program, materials } = workspace;
  const { units = program.units, paper = program.paper, labour = program.labour } = own;
  const sold = Object.entries(own.packs ?? {}).map(([id, packs]) => [id, soldIn(materials[id]!, packs)]);
  return {
    ...workspace,
    program: {
      ...program,
      units,
      paper,
      ...(labour ? { labour } : {}),
      owned: { ...program.owned, ...own.owned },
    },
    materials: { ...materials, ...Object.fromEntries(sold) },
  };
}

function soldIn(material: Material, packs: readonly OwnPack[]): Material {
  return { ...material, packs: packs.map((pack) => asSold(pack, material.packs)) };
}

/** A pack that holds what a published one does is that one at another price; any other comes from no known supplier. */
function asSold({ holds, price }: OwnPack, published: readonly Pack[]): Pack {
  const alike = published.find((pack) => printHolding(pack.holds) === printHolding(holds));
  return given<Pack>({ ...alike, holds, price, priced: undefined });
}
