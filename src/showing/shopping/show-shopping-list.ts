import type { Workspace } from '../../core/model/workspace.ts';
import { inCurrency } from '../../core/money/money.ts';
import type { Plan, Purchase } from '../../core/plan/result.ts';
import { planWords } from '../../words/plan.ts';
import { sheetWords } from '../../words/sheets.ts';
import { properly } from '../text/author-text.ts';
import { fill, listed } from '../text/fill.ts';
import { materialDangers, toolDangers } from '../safety/product-dangers.ts';
import { showMoney, showSum } from '../text/money.ts';
import { materialName, supplierName, toolName } from '../text/names.ts';
import { showCount } from '../text/numbers.ts';
import { showDeliveries } from './show-deliveries.ts';
import { leftText } from './show-left.ts';
import { amountToBuy, type BoughtPack, packsOf, packText } from './show-shopping.ts';
import { showShoppingNotes } from './show-shopping-notes.ts';
import { shown } from '../shown/shown.ts';
import type {
  ShownNotBought,
  ShownOrder,
  ShownShoppingList,
  ShownSupplier,
  ShownToolToBuy,
} from '../shown/shown-sheets.ts';

const { shopping: words } = sheetWords;

/** A plan's purchases by supplier, one row for each size of pack: a list to order by and to tick. */
export function showShoppingList(key: string, plan: Plan, workspace: Workspace): ShownShoppingList {
  const { program } = workspace;
  const deliveries = showDeliveries(`${key}.deliveries`, plan, workspace);
  return {
    suppliers: deliveries.map(({ name, when, goods, charge }, i) => ({
      name,
      when,
      goods,
      delivery: charge,
      orders: ordersOf(`${key}.suppliers[${i}].orders`, plan.deliveries[i]!.supplier, plan, workspace),
      sum: sumOf(`${key}.suppliers[${i}].sum`, plan.deliveries[i]!, plan, workspace),
    })),
    others: plan.purchases
      .filter(({ packs }) => packs.length === 0)
      .map((purchase, i) => notBought(`${key}.others[${i}]`, purchase, plan, workspace)),
    tools: toolsToBuy(`${key}.tools`, plan, workspace),
    total: shown(`${key}.total`, showSum(plan.cost.outlay, program, plan.cost.complete, 'up')),
    notes: showShoppingNotes(`${key}.notes`, plan, workspace),
  };
}

/** What one supplier gets; at least so much, where the price of a pack is missing. */
function sumOf(
  key: string,
  { supplier, goods, charge }: Plan['deliveries'][number],
  plan: Plan,
  workspace: Workspace,
): ShownSupplier['sum'] {
  const isKnown = boughtFrom(supplier, plan, workspace).every(({ pack }) => pack.price !== undefined);
  return shown(key, showSum(goods.add(charge), workspace.program, isKnown, 'up'));
}

interface Order extends BoughtPack {
  readonly purchase: Purchase;
}

function boughtFrom(supplier: string | undefined, plan: Plan, workspace: Workspace): readonly Order[] {
  return plan.purchases.flatMap((purchase) =>
    packsOf(purchase, workspace)
      .filter(({ pack }) => pack.from === supplier)
      .map((bought) => ({ ...bought, purchase })),
  );
}

function ordersOf(
  key: string,
  supplier: string | undefined,
  plan: Plan,
  workspace: Workspace,
): readonly ShownOrder[] {
  return boughtFrom(supplier, plan, workspace).map((order, i) =>
    showOrder(`${key}[${i}]`, order, plan, workspace),
  );
}

function showOrder(key: string, order: Order, plan: Plan, workspace: Workspace): ShownOrder {
  const { pack, count, purchase } = order;
  const { price, cost } = pricesOf(order, workspace);
  return {
    material: purchase.material,
    ...aboutMaterial(key, purchase, plan, workspace),
    packs: shown(`${key}.packs`, packText({ pack, count })),
    code: shown(`${key}.code`, pack.code ?? ''),
    price: shown(`${key}.price`, price),
    cost: shown(`${key}.cost`, cost),
    fromStock: shown(`${key}.fromStock`, stockText(purchase, plan, workspace)),
    beside: shown(`${key}.beside`, besideText(order, workspace)),
  };
}

/** What is said of a material, wherever its packs are from. */
function aboutMaterial(key: string, purchase: Purchase, plan: Plan, workspace: Workspace) {
  const { material } = purchase;
  const must = workspace.materials[material]?.must ?? [];
  return {
    name: shown(`${key}.name`, materialName(material, workspace)),
    must: shown(`${key}.must`, must.map(properly).join(planWords.listComma)),
    dangers: shown(`${key}.dangers`, materialDangers(material, workspace)),
    needed: shown(`${key}.needed`, amountToBuy(purchase.needed, material, plan, workspace)),
    left: shown(`${key}.left`, leftText(purchase, plan, workspace)),
  };
}

function pricesOf({ pack, count }: BoughtPack, { program }: Workspace): Record<'price' | 'cost', string> {
  const each = pack.price && inCurrency(pack.price, program);
  if (!each) return { price: planWords.shopping.noPrice, cost: planWords.shopping.noPrice };
  return { price: showMoney(each, program, 'up'), cost: showMoney(each.mul(count), program, 'up') };
}

function stockText({ fromStock, material }: Purchase, plan: Plan, workspace: Workspace): string {
  if (fromStock.value.n === 0n) return '';
  return fill(planWords.shopping.fromStock, { amount: amountToBuy(fromStock, material, plan, workspace) });
}

/** The other packs of the same material, with where they are from. */
function besideText({ purchase, pack }: Order, workspace: Workspace): string {
  const others = packsOf(purchase, workspace).filter((bought) => bought.pack !== pack);
  if (others.length === 0) return '';
  const texts = others.map((other) =>
    fill(words.packFrom, {
      packs: packText(other),
      supplier:
        other.pack.from === undefined
          ? planWords.shopping.noSupplier
          : supplierName(other.pack.from, workspace.program),
    }),
  );
  return fill(words.beside, { others: listed(texts) });
}

function notBought(key: string, purchase: Purchase, plan: Plan, workspace: Workspace): ShownNotBought {
  return {
    material: purchase.material,
    ...aboutMaterial(key, purchase, plan, workspace),
    why: shown(`${key}.why`, whyNotBought(purchase, plan, workspace)),
  };
}

function whyNotBought(purchase: Purchase, plan: Plan, workspace: Workspace): string {
  const material = workspace.materials[purchase.material];
  const stock = stockText(purchase, plan, workspace);
  if (material?.free) return planWords.shopping.free;
  if (stock !== '') return stock;
  return material && material.packs.length > 0 ? planWords.none : planWords.shopping.noPack;
}

function toolsToBuy(key: string, { tools }: Plan, workspace: Workspace): readonly ShownToolToBuy[] {
  return tools
    .filter(({ toBuy }) => toBuy > 0)
    .map(({ tool, toBuy }, i) => ({
      id: tool,
      name: shown(`${key}[${i}].name`, toolName(tool, workspace)),
      dangers: shown(`${key}[${i}].dangers`, toolDangers(tool, workspace)),
      count: shown(`${key}[${i}].count`, showCount(toBuy)),
      price: shown(`${key}[${i}].price`, priceOfTool(tool, workspace)),
    }));
}

function priceOfTool(tool: string, { tools, program }: Workspace): string {
  const price = tools[tool]?.price;
  const each = price && inCurrency(price, program);
  return each ? showMoney(each, program, 'up') : planWords.shopping.noPrice;
}
