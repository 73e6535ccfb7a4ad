import type { Place } from '../../core/diagnostic.ts';
import type { IsoDate, Money } from '../../core/model/values.ts';
import type { Context } from './context.ts';

/** A price of the workspace. */
export interface Priced {
  /** "Gelatin powder". */
  readonly name: string;
  readonly price: Money;
  readonly priced?: IsoDate;
  readonly at: Place;
  /** Of its day; the price's where nobody says the day. */
  readonly dayAt: Place;
}

/** Prices of packs and tools. What is free has none that counts. */
export function pricedThings({ workspace, origins }: Context): readonly Priced[] {
  const packs = Object.values(workspace.materials).flatMap(({ id, name, packs, free }) =>
    free ? [] : packs.map((pack, i) => ({ ...pack, name, path: `materials/${id}/packs/${i}` })),
  );
  const tools = Object.values(workspace.tools).map((tool) => ({ ...tool, path: `tools/${tool.id}` }));
  return [...packs, ...tools].flatMap(({ name, price, priced, path }) => {
    const at = origins.at(`${path}/price`);
    if (!price) return [];
    return priced === undefined
      ? [{ name, price, at, dayAt: at }]
      : [{ name, price, priced, at, dayAt: origins.at(`${path}/priced`) }];
  });
}
