import type { ShownDelivery, ShownMaterial, ShownPurchase } from '../src/showing/shown.ts';
import { pageWords } from '../src/words/pages.ts';
import type { GuideView } from './guide-page.tsx';
import type { Content, Markup } from './page.tsx';
import { part, scrolling } from './part.tsx';
import { isSaid, shows } from './place.ts';

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
        {plan.shopping.notes.length > 0 ? (
          <ul class="notes">
            {plan.shopping.notes.map((note) => (
              <li {...shows(note)} />
            ))}
          </ul>
        ) : null}
      </div>
      {worthKnowing(view)}
    </div>
  );
  return part('materials', words.materials, content, <p {...shows(line.count)} />);
}

function materialTable({ line, batch, root }: GuideView): Markup {
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
          <th scope="col" class="end">
            {batch}
          </th>
        </tr>
      </thead>
      <tbody>{line.materials.map((row) => materialRow(row, root, batch))}</tbody>
    </table>,
  );
}

function materialRow(
  { id, material, name, must, one, total, ingredientOf, note }: ShownMaterial,
  root: string,
  batch: string,
): Markup {
  const isGuide = material?.startsWith('guide:') ?? false;
  const leads =
    material === undefined || isGuide ? undefined : `${root}materials/index.html#material-${material}`;
  return (
    <tr
      class={ingredientOf === undefined ? undefined : 'ingredient'}
      id={ingredientOf === undefined ? `row-${id}` : undefined}
    >
      <th scope="row">
        {leads === undefined ? <span {...shows(name)} /> : <a href={leads} {...shows(name)} />}
        {isSaid(note) ? <span class="note" {...shows(note)} /> : null}
      </th>
      {isSaid(must) ? <td class="must" {...shows(must)} /> : <td class="must" />}
      <td class="end one" data-of={words.one} {...shows(one)} />
      <td class="end total" data-of={batch} {...shows(total)} />
    </tr>
  );
}

function purchaseTable({ plan, root }: GuideView): Markup {
  return scrolling(
    words.buy,
    <table class="purchases" aria-labelledby="to-buy">
      <thead>
        <tr>
          <th scope="col">{words.item}</th>
          <th scope="col">{words.packs}</th>
          <th scope="col" class="end">
            {words.needed}
          </th>
          <th scope="col" class="end">
            {words.left}
          </th>
          <th scope="col" class="end">
            {words.cost}
          </th>
        </tr>
      </thead>
      <tbody>{plan.shopping.rows.map((row) => purchaseRow(row, root))}</tbody>
      <tfoot>
        {plan.shopping.deliveries.map(deliveryRow)}
        <tr class="sum">
          <th scope="row" colspan="4">
            {words.outlay}
          </th>
          <td class="end total" {...shows(plan.shopping.total)} />
        </tr>
      </tfoot>
    </table>,
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
        {isSaid(supplier) ? <span class="must" {...shows(supplier)} /> : null}
      </td>
      <td class="end needed" data-of={words.needed} {...shows(needed)} />
      <td class="end left" data-of={words.left} {...shows(left)} />
      <td class="end cost" {...shows(cost)} />
    </tr>
  );
}

function deliveryRow({ name, when, charge }: ShownDelivery): Markup {
  return (
    <tr>
      <th scope="row">{words.delivery}</th>
      <td class="packs" colspan="3">
        <span {...shows(name)} />
        {isSaid(when) ? <span class="must" {...shows(when)} /> : null}
      </td>
      <td class="end cost" {...shows(charge)} />
    </tr>
  );
}

function worthKnowing({ plan }: GuideView): Content {
  if (plan.warnings.length === 0) return null;
  return (
    <div class="worth-knowing">
      <h3>{words.worthKnowing}</h3>
      <ul>
        {plan.warnings.map((warning) => (
          <li {...shows(warning)} />
        ))}
      </ul>
    </div>
  );
}
