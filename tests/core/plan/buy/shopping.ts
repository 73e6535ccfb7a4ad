import { atOnce } from '../../../../src/core/in-pieces.ts';
import type { Material } from '../../../../src/core/model/material.ts';
import type { Program } from '../../../../src/core/model/program.ts';
import type { Workspace } from '../../../../src/core/model/workspace.ts';
import { type Bought, buy, wanting } from '../../../../src/core/plan/buy/buy.ts';
import type { OnHand } from '../../../../src/core/plan/demand.ts';
import { measure } from '../../../../src/core/quantity/quantity.ts';
import { aWorkspace, amount } from '../a-workspace.ts';

/** What is needed of a material that is measured out, and nothing else of a plan. */
export interface Errand {
  readonly needs: Readonly<Record<string, string>>;
  readonly materials: readonly Material[];
  readonly program?: Partial<Program>;
  readonly stock?: Readonly<Record<string, OnHand>>;
}

export function shopFor(errand: Errand): Bought {
  const workspace = shopOf(errand);
  const requirements = Object.entries(errand.needs).map(([material, text]) => {
    const { usual, unit } = amount(text);
    const needed = measure({ value: usual, unit });
    return { material, amount: needed, usual: needed, unused: measure({ value: '0', unit }), by: [] };
  });
  const wants = atOnce(
    wanting({ requirements, pieces: new Map(), workspace, stock: errand.stock, cutting: 0 }),
  );
  if ('refused' in wants) throw new Error(JSON.stringify(wants));
  return buy(wants, workspace);
}

export function shopOf({ materials, program = {} }: Errand): Workspace {
  return aWorkspace({ program, materials, guides: [] });
}
