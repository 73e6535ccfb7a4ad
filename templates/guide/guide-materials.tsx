import type {
  ShownDelivery,
  ShownMaterial,
  ShownPlan,
  ShownPurchase,
} from '../../src/showing/shown/shown-plan.ts';
import { pageWords } from '../../src/words/pages.ts';
import type { GuideView } from './guide-view.ts';
import type { Content, Markup } from '../page/markup.ts';
import { part, scrolling } from '../page/part.tsx';
import { blank, blanks, rowsOf, shows, where } from '../page/place.ts';
import { tableHead } from '../page/table.tsx';

const { guide: words } = pageWords;

/** What goes in, for one model and for all; then what to buy, in whole packs. */
export function guideMaterials(view: GuideView): Content {
  const { line, plan } = view;
  if (line.materials.length === 0) return null;
  const content = (
    <div class="stack">
      {materialTable(view)}
      <div class="to-buy">
        <h3 id="to-buy">{words.buy}</h3>
        {purchaseTable(view)}
        <ul
          class="notes"
          {...texts('shopping.notes', plan.shopping.notes)}
          {...where('shopping.notes', plan.shopping.notes.length > 0)}
        />
      </div>
      {worthKnowing(plan)}
    </div>
  );
  return part('materials', words.materials, content, <p {...shows(line.count)} />);
}

function texts(key: string, all: readonly ShownPlan['warnings'][number][]) {
  return rowsOf(key, all, (text) => <li {...shows(text)} />, blank);
}

function materialTable({ line, root }: GuideView): Markup {
  const row = (material: ShownMaterial): Markup => materialRow(material, root);
  return scrolling(
    words.materials,
    <table class="amounts">
      <thead>
        <tr>
          <th scope="col">{words.item}</th>
          <th scope="col">{words.must}</th>
          <th scope="col" class="end">
            {words.one}
          </th>
          <th scope="col" class="end" {...shows(line.models)} />
        </tr>
      </thead>
      <tbody {...rowsOf('lines[0].materials', line.materials, row, blankMaterial)} />
    </table>,
  );
}

function materialRow(
  { anchor, leadsTo, name, must, one, total, ingredientOf, note }: ShownMaterial,
  root: string,
): Markup {
  return (
    <tr id={anchor} data-in={ingredientOf}>
      <th scope="row">
        <a href={leadsTo === undefined ? undefined : `${root}${leadsTo}`} {...shows(name)} />
        <span class="note" {...shows(note)} />
      </th>
      <td class="must" {...shows(must)} />
      <td class="end one" data-of={words.one} {...shows(one)} />
      <td class="end total" data-of={words.all} {...shows(total)} />
    </tr>
  );
}

function blankMaterial(key: string): ShownMaterial {
  return {
    id: '{id}',
    anchor: '{anchor}',
    leadsTo: '{leadsTo}',
    ingredientOf: '{ingredientOf}',
    ...blanks('name', 'must', 'one', 'total', 'note')(key),
  };
}

/** What to buy, in whole packs, with deliveries and the sum. */
export function purchaseTable({ plan: { shopping }, root }: Pick<GuideView, 'plan' | 'root'>): Markup {
  const row = (purchase: ShownPurchase): Markup => purchaseRow(purchase, root);
  return scrolling(
    words.buy,
    <table class="purchases" aria-labelledby="to-buy">
      {tableHead(words.item, words.packs, [words.needed, 'end'], [words.left, 'end'], [words.cost, 'end'])}
      <tbody {...rowsOf('shopping.rows', shopping.rows, row, blankPurchase)} />
      <tfoot
        {...rowsOf('shopping.deliveries', shopping.deliveries, deliveryRow, blankDelivery, [
          sumRow(shopping),
        ])}
      />
    </table>,
  );
}

function sumRow({ total }: ShownPlan['shopping']): Markup {
  return (
    <tr class="sum">
      <th scope="row" colspan="4">
        {words.outlay}
      </th>
      <td class="end total" {...shows(total)} />
    </tr>
  );
}

function purchaseRow(
  { material, name, packs, supplier, needed, left, cost }: ShownPurchase,
  root: string,
): Markup {
  return (
    <tr>
      <th scope="row">
        <a href={`${root}materials/index.html#material-${material}`} {...shows(name)} />
      </th>
      <td class="packs">
        <span {...shows(packs)} />
        <span class="must" {...shows(supplier)} />
      </td>
      <td class="end needed" data-of={words.needed} {...shows(needed)} />
      <td class="end left" data-of={words.left} {...shows(left)} />
      <td class="end cost" {...shows(cost)} />
    </tr>
  );
}

function blankPurchase(key: string): ShownPurchase {
  const shown = blanks('name', 'needed', 'fromStock', 'packs', 'supplier', 'cost', 'left');
  return { material: '{material}', ...shown(key) };
}

function deliveryRow({ name, when, charge }: ShownDelivery): Markup {
  return (
    <tr>
      <th scope="row">{words.delivery}</th>
      <td class="packs" colspan="3">
        <span {...shows(name)} />
        <span class="must" {...shows(when)} />
      </td>
      <td class="end cost" {...shows(charge)} />
    </tr>
  );
}

const blankDelivery = blanks('name', 'goods', 'charge', 'when');

export function worthKnowing({ warnings }: ShownPlan): Markup {
  return (
    <div class="worth-knowing" {...where('warnings', warnings.length > 0)}>
      <h3>{words.worthKnowing}</h3>
      <ul {...texts('warnings', warnings)} />
    </div>
  );
}
