import type { Place } from '../core/diagnostic.ts';
import type { Money } from '../core/model/values.ts';
import type { Check, Finding } from './check.ts';
import type { Context } from './lookup/context.ts';
import { pricedThings } from './lookup/priced-things.ts';

/** A currency that the program has no dated rate for. Told once, with all that is in it. */
export const currencyWithoutRate: Check = {
  code: 'currency-without-rate',
  gravity: 'incomplete',
  find: (context) => {
    const foreign = sumsOf(context).filter(({ money }) => !isKnown(money, context));
    const currencies = [...new Set(foreign.map(({ money }) => money.currency))];
    return currencies.map((currency) => finding(currency, foreign, context));
  },
};

interface Sum {
  readonly money: Money;
  readonly at: Place;
}

function isKnown({ currency }: Money, { workspace: { program } }: Context): boolean {
  return currency === program.currency || Object.hasOwn(program.exchange, currency);
}

function finding(
  currency: string,
  foreign: readonly Sum[],
  { workspace: { program }, origins }: Context,
): Finding {
  const places = foreign.filter(({ money }) => money.currency === currency).map(({ at }) => at);
  const hasRates = Object.keys(program.exchange).length > 0;
  return {
    variant: hasRates ? 'more' : undefined,
    places: [places[0]!, ...places.slice(1), origins.key(hasRates ? 'program/exchange' : 'program/currency')],
    facts: { currency, own: program.currency },
  };
}

/** Prices, what suppliers charge, the wage and stated costs. */
function sumsOf(context: Context): readonly Sum[] {
  const { program } = context.workspace;
  const charges = Object.entries(program.suppliers).flatMap(([id, { delivery, freeOver }]) => [
    ...sum(delivery, context, `suppliers/${id}/delivery`),
    ...sum(freeOver, context, `suppliers/${id}/free-over`),
  ]);
  const stated = context.guides.flatMap(({ guide: { states }, place }) =>
    states?.usedEach ? [{ money: states.usedEach.most, at: place('states', 'used-each') }] : [],
  );
  const prices = pricedThings(context).map(({ price, at }) => ({ money: price, at }));
  return [...prices, ...charges, ...sum(program.labour, context, 'labour'), ...stated];
}

function sum(money: Money | undefined, { origins }: Context, path: string): readonly Sum[] {
  return money ? [{ money, at: origins.at(`program/${path}`) }] : [];
}
