import type { Root } from 'hast';
import type {
  ShownNotBought,
  ShownOrder,
  ShownShoppingList,
  ShownSupplier,
  ShownToolToBuy,
} from '../../src/showing/shown/shown-sheets.ts';
import type { Shown } from '../../src/showing/shown/shown.ts';
import { sheetWords } from '../../src/words/sheets.ts';
import type { Content, Markup } from '../page/markup.ts';
import { scrolling } from '../page/part.tsx';
import { blank, blanks, isSaid, rowsOf, shows, where } from '../page/place.ts';
import { type SheetFacts, box, sheetDocument, sheetHead, headingThatSays } from './sheet-frame.tsx';
import { tableHead } from '../page/table.tsx';

export interface ShoppingSheetView extends SheetFacts {
  readonly list: ShownShoppingList;
}

const { shopping: words } = sheetWords;

/** What to order from whom: one table a supplier, a box to tick when ordered and one when it is there. */
export function shoppingSheet(view: ShoppingSheetView): Root {
  const { list } = view;
  const hasCodes = list.suppliers.some(({ orders }) => orders.some(({ code }) => isSaid(code)));
  const supplier = (one: ShownSupplier, key: string): Markup => supplierPart(one, key, hasCodes);
  return sheetDocument(view, {
    title: words.title,
    kind: 'shopping-sheet',
    main: (
      <>
        {sheetHead(view, {
          title: words.title,
          fields: [sheetWords.batchNumber, sheetWords.date, words.orderedBy, sheetWords.checkedBy],
        })}
        <p class="how">{words.say}</p>
        <p class="defers" {...shows(view.plan.defers)} />
        {notes(list)}
        <div {...rowsOf('list.suppliers', list.suppliers, supplier, blankSupplier)} />
        {list.suppliers.length > 0 ? null : <p>{words.nothing}</p>}
        <p class="total">
          <span>{words.total}</span> <b {...shows(list.total)} />
        </p>
        {othersPart(list.others)}
        {toolsPart(list.tools)}
      </>
    ),
  });
}

function notes({ notes: all }: ShownShoppingList): Content {
  const row = (note: Shown): Markup => <li {...shows(note)} />;
  return (
    <section class="notes" {...where('list.notes', all.length > 0)}>
      <h2>{words.before}</h2>
      <ul {...rowsOf('list.notes', all, row, blank)} />
    </section>
  );
}

function supplierPart(supplier: ShownSupplier, key: string, hasCodes: boolean): Markup {
  const { name, when, orders } = supplier;
  const row = (order: ShownOrder): Markup => orderRow(order, hasCodes);
  return (
    <section class="supplier">
      <h2>
        <span {...shows(name)} />
        <small {...shows(when)} />
      </h2>
      {scrolling(
        name.text,
        <table class="orders">
          {tableHead(
            [words.ordered, 'tick-cell'],
            [words.there, 'tick-cell'],
            [words.packs, 'w-packs'],
            words.what,
            ...(hasCodes ? [[words.code, 'w-code'] as const] : []),
            [words.price, 'w-money end'],
            [words.cost, 'w-money end'],
            [words.needed, 'w-needed end'],
            [words.left, 'w-needed end'],
          )}
          <tbody {...rowsOf(`${key}.orders`, orders, row, blankOrder)} />
        </table>,
      )}
      {sums(supplier)}
    </section>
  );
}

function orderRow(order: ShownOrder, hasCodes: boolean): Markup {
  const { name, must, dangers, packs, code, price, cost, needed, fromStock, left, beside } = order;
  return (
    <tr>
      <td class="tick-cell">{box()}</td>
      <td class="tick-cell">{box()}</td>
      <td class="packs" {...shows(packs)} />
      <th scope="row">
        <b {...shows(name)} />
        <span class="must" {...shows(must)} />
        <span class="dangers" {...shows(dangers)} />
        <span class="must" {...shows(beside)} />
      </th>
      {hasCodes ? <td {...shows(code)} /> : null}
      <td class="end" {...shows(price)} />
      <td class="end cost" {...shows(cost)} />
      <td class="end">
        <span {...shows(needed)} />
        <span class="must" {...shows(fromStock)} />
      </td>
      <td class="end" {...shows(left)} />
    </tr>
  );
}

function sums({ goods, delivery, sum }: ShownSupplier): Markup {
  return (
    <p class="sums">
      <span>
        {words.goods} <b {...shows(goods)} />
      </span>
      <span>
        {words.delivery} <b {...shows(delivery)} />
      </span>
      <span>
        {words.sum} <b {...shows(sum)} />
      </span>
    </p>
  );
}

function othersPart(others: readonly ShownNotBought[]): Markup {
  return (
    <section class="others" {...where('list.others', others.length > 0)}>
      {headingThatSays(words.others, words.othersSay)}
      {scrolling(
        words.others,
        <table>
          {tableHead(
            [undefined, 'tick-cell'],
            words.what,
            [words.needed, 'w-needed end'],
            [words.why, 'w-lot'],
            [words.left, 'w-needed end'],
          )}
          <tbody {...rowsOf('list.others', others, otherRow, blankOther)} />
        </table>,
      )}
    </section>
  );
}

function toolsPart(tools: readonly ShownToolToBuy[]): Markup {
  return (
    <section class="others" {...where('list.tools', tools.length > 0)}>
      {headingThatSays(words.tools, words.toolsSay)}
      {scrolling(
        words.tools,
        <table>
          {tableHead(
            [undefined, 'tick-cell'],
            words.what,
            [words.count, 'w-needed end'],
            [words.price, 'w-needed end'],
          )}
          <tbody {...rowsOf('list.tools', tools, toolRow, blankTool)} />
        </table>,
      )}
    </section>
  );
}

type Other = Omit<ShownNotBought, 'material'>;

function otherRow({ name, must, dangers, needed, why, left }: Other): Markup {
  return (
    <tr>
      <td class="tick-cell">{box()}</td>
      <th scope="row">
        <b {...shows(name)} />
        <span class="must" {...shows(must)} />
        <span class="dangers" {...shows(dangers)} />
      </th>
      <td class="end" {...shows(needed)} />
      <td {...shows(why)} />
      <td class="end" {...shows(left)} />
    </tr>
  );
}

function toolRow({ name, dangers, count, price }: Omit<ShownToolToBuy, 'id'>): Markup {
  return (
    <tr>
      <td class="tick-cell">{box()}</td>
      <th scope="row">
        <b {...shows(name)} />
        <span class="dangers" {...shows(dangers)} />
      </th>
      <td class="end" {...shows(count)} />
      <td class="end" {...shows(price)} />
    </tr>
  );
}

const blankOther = blanks('name', 'must', 'dangers', 'needed', 'why', 'left');
const blankTool = blanks('name', 'dangers', 'count', 'price');

function blankOrder(key: string): ShownOrder {
  const texts = blanks(
    'name',
    'must',
    'dangers',
    'packs',
    'code',
    'price',
    'cost',
    'needed',
    'fromStock',
    'left',
    'beside',
  )(key);
  return { material: '', ...texts };
}

function blankSupplier(key: string): ShownSupplier {
  return { ...blanks('name', 'when', 'goods', 'delivery', 'sum')(key), orders: [] };
}
