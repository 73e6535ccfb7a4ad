import type { Root } from 'hast';
import type {
  ShownNotBought,
  ShownOrder,
  ShownShoppingList,
  ShownSupplier,
  ShownToolToBuy,
} from '../src/showing/shown-sheets.ts';
import { sheetWords } from '../src/words/sheets.ts';
import type { Content, Markup } from './page.tsx';
import { scrolling } from './part.tsx';
import { isSaid, shows } from './place.ts';
import { type SheetFacts, box, sheetDocument, sheetHead, spanOf } from './sheet-frame.tsx';

export interface ShoppingSheetView extends SheetFacts {
  readonly list: ShownShoppingList;
}

const { shopping: words } = sheetWords;

/** What to order from whom: one table a supplier, a box to tick when ordered and one when it is there. */
export function shoppingSheet(view: ShoppingSheetView): Root {
  const { list } = view;
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
        {notes(list)}
        {list.suppliers.length > 0 ? list.suppliers.map(supplierPart) : <p>{words.nothing}</p>}
        <p class="total">
          <span>{words.total}</span> <b {...shows(list.total)} />
        </p>
        {list.others.length > 0 ? othersPart(list.others) : null}
        {list.tools.length > 0 ? toolsPart(list.tools) : null}
        <p class="defers" {...shows(view.plan.defers)} />
      </>
    ),
  });
}

function notes({ notes: all }: ShownShoppingList): Content {
  if (all.length === 0) return null;
  return (
    <section class="notes">
      <h2>{words.before}</h2>
      <ul>
        {all.map((note) => (
          <li {...shows(note)} />
        ))}
      </ul>
    </section>
  );
}

function supplierPart(supplier: ShownSupplier): Markup {
  const { name, when, orders } = supplier;
  const hasCodes = orders.some(({ code }) => isSaid(code));
  return (
    <section class="supplier">
      <h2>
        <span {...shows(name)} />
        {isSaid(when) ? <small {...shows(when)} /> : null}
      </h2>
      {scrolling(
        name.text,
        <table class="orders">
          <thead>
            <tr>
              <th scope="col" class="tick-cell">
                {words.ordered}
              </th>
              <th scope="col" class="tick-cell">
                {words.there}
              </th>
              <th scope="col" class="w-packs">
                {words.packs}
              </th>
              <th scope="col">{words.what}</th>
              {hasCodes ? (
                <th scope="col" class="w-code">
                  {words.code}
                </th>
              ) : null}
              <th scope="col" class="w-money end">
                {words.price}
              </th>
              <th scope="col" class="w-money end">
                {words.cost}
              </th>
              <th scope="col" class="w-needed end">
                {words.needed}
              </th>
              <th scope="col" class="w-needed end">
                {words.left}
              </th>
            </tr>
          </thead>
          <tbody>{orders.map((order) => orderRow(order, hasCodes))}</tbody>
        </table>,
      )}
      {sums(supplier)}
    </section>
  );
}

function orderRow(order: ShownOrder, hasCodes: boolean): Markup {
  const { name, must, packs, code, price, cost, needed, fromStock, left, beside } = order;
  return (
    <tr>
      <td class="tick-cell">{box()}</td>
      <td class="tick-cell">{box()}</td>
      <td class="packs" {...shows(packs)} />
      <th scope="row">
        <b {...shows(name)} />
        {spanOf(must, 'must')}
        {spanOf(beside, 'must')}
      </th>
      {hasCodes ? <td {...shows(code)} /> : null}
      <td class="end" {...shows(price)} />
      <td class="end cost" {...shows(cost)} />
      <td class="end">
        <span {...shows(needed)} />
        {spanOf(fromStock, 'must')}
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
    <section class="others">
      <h2>
        {words.others} <small>{words.othersSay}</small>
      </h2>
      {scrolling(
        words.others,
        <table>
          <thead>
            <tr>
              <td class="tick-cell" />
              <th scope="col">{words.what}</th>
              <th scope="col" class="w-needed end">
                {words.needed}
              </th>
              <th scope="col" class="w-lot">
                {words.why}
              </th>
              <th scope="col" class="w-needed end">
                {words.left}
              </th>
            </tr>
          </thead>
          <tbody>
            {others.map(({ name, must, needed, why, left }) => (
              <tr>
                <td class="tick-cell">{box()}</td>
                <th scope="row">
                  <b {...shows(name)} />
                  {spanOf(must, 'must')}
                </th>
                <td class="end" {...shows(needed)} />
                <td {...shows(why)} />
                <td class="end" {...shows(left)} />
              </tr>
            ))}
          </tbody>
        </table>,
      )}
    </section>
  );
}

function toolsPart(tools: readonly ShownToolToBuy[]): Markup {
  return (
    <section class="others">
      <h2>
        {words.tools} <small>{words.toolsSay}</small>
      </h2>
      {scrolling(
        words.tools,
        <table>
          <thead>
            <tr>
              <td class="tick-cell" />
              <th scope="col">{words.what}</th>
              <th scope="col" class="w-needed end">
                {words.count}
              </th>
              <th scope="col" class="w-needed end">
                {words.price}
              </th>
            </tr>
          </thead>
          <tbody>
            {tools.map(({ name, count, price }) => (
              <tr>
                <td class="tick-cell">{box()}</td>
                <th scope="row" {...shows(name)} />
                <td class="end" {...shows(count)} />
                <td class="end" {...shows(price)} />
              </tr>
            ))}
          </tbody>
        </table>,
      )}
    </section>
  );
}
