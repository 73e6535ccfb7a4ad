import type { GuideAt, UsedInUse } from '../../model/guide.ts';
import type { Workspace } from '../../model/workspace.ts';
import type { AtLevel } from '../../model/values.ts';
import { type Exact, exact, zero } from '../../quantity/exact.ts';
import { type Line, forEachGood } from '../demand/line.ts';
import { unitPrice } from '../supply/offers.ts';
import { usedByPart } from './parts.ts';
import { plus } from './used.ts';

/**
 * What one use of one model costs: over its parts, used by the uses each lasts, and what is replaced between uses.
 *
 * @param rows  Used cost of each row, of all models of the line.
 * @returns `undefined` where the guide does not say how long the model, or one of its parts, lasts.
 */
export function costPerUse(line: Line, rows: readonly Exact[], workspace: Workspace): Exact | undefined {
  const { at } = line;
  const whole = [{ lasts: at.lasts, used: rows.reduce(plus, zero) }];
  const parts = at.parts.length === 0 ? whole : usedByPart(line, rows);
  const worn = parts.flatMap(({ lasts, used }) =>
    lasts === undefined ? [] : [forEachGood(line, used).div(exact(lasts))],
  );
  return worn.length < parts.length ? undefined : worn.reduce(plus, betweenUses(at, workspace));
}

function betweenUses({ inUse }: GuideAt, workspace: Workspace): Exact {
  const uses = inUse.between?.uses ?? [];
  return uses.map((use) => priceOfUse(use, workspace)).reduce(plus, zero);
}

function priceOfUse({ material, amount }: AtLevel<UsedInUse>, { materials, program }: Workspace): Exact {
  const price = unitPrice(materials[material]!, amount.unit, program);
  return exact(amount.usual).mul(price ?? zero);
}
