import { catalogueWords as words } from '../../words/catalogue.ts';
import {
  type Choices,
  type Facet,
  countsOf,
  isChosen,
  readChoices,
  withoutChoice,
  writeChoices,
} from './choices.ts';
import { startFold } from './fold.ts';
import { said } from '../said.ts';

/** The parts of the catalogue's page. */
interface Parts {
  readonly page: Document;
  readonly form: HTMLFormElement;
  readonly list: HTMLElement;
  readonly says: HTMLElement;
  readonly noMatch: HTMLElement;
  readonly orders: readonly HTMLInputElement[];
  readonly boxes: readonly HTMLInputElement[];
  readonly facets: readonly Facet[];
  readonly rows: readonly Row[];
}
interface Row {
  readonly element: HTMLElement;
  readonly has: ReadonlySet<string>;
  readonly ranks: Readonly<Record<string, number>>;
}

/** Brings the choices of the catalogue to life: the address is read first, then follows every choice. */
export function startCatalogue(page: Document): void {
  const parts = partsOf(page);
  if (!parts) return;
  const { form, orders } = parts;
  const query = page.location.search;
  tick(parts, readChoices(query, parts.facets));
  const asked = new URLSearchParams(query).get('sort');
  for (const order of orders) order.checked = order.value === (asked ?? orders[0]?.value);
  form.hidden = false;
  page.querySelector<HTMLElement>('[data-order]')!.hidden = false;
  const follow = (): void => {
    show(parts);
    remember(page, writeChoices(chosen(parts), orderOf(parts), orders[0]!.value));
  };
  for (const control of [...parts.boxes, ...orders]) control.addEventListener('change', follow);
  form.addEventListener('submit', (event) => event.preventDefault());
  form.addEventListener('reset', (event) => {
    event.preventDefault();
    tick(parts, new Map());
    follow();
    parts.boxes[0]?.closest('details')?.querySelector('summary')?.focus();
  });
  startFold(page, form);
  show(parts);
}

function partsOf(page: Document): Parts | undefined {
  const form = page.querySelector<HTMLFormElement>('[data-choices]');
  if (!form) return undefined;
  const boxes = [...form.querySelectorAll<HTMLInputElement>('input[type=checkbox]')];
  return {
    page,
    form,
    boxes,
    list: page.querySelector<HTMLElement>('.guides')!,
    says: page.querySelector<HTMLElement>('.match')!,
    noMatch: page.querySelector<HTMLElement>('.no-match')!,
    orders: [...page.querySelectorAll<HTMLInputElement>('[data-order] input')],
    facets: [...form.querySelectorAll<HTMLElement>('.choice')].map((group) => facetOf(group)),
    rows: [...page.querySelectorAll<HTMLElement>('.guide-row')].map((element) => ({
      element,
      has: new Set(element.dataset['has']?.split(' ')),
      ranks: JSON.parse(element.dataset['ranks'] ?? '{}') as Record<string, number>,
    })),
  };
}

function facetOf(group: HTMLElement): Facet {
  const boxes = [...group.querySelectorAll('input')];
  return {
    id: boxes[0]!.name,
    keeps: group.dataset['keeps'] === 'none' ? 'none' : 'any',
    values: boxes.map(({ value }) => value),
  };
}

function chosen({ boxes }: Parts): Choices {
  const choices = new Map<string, Set<string>>();
  for (const { name, value } of boxes.filter(({ checked }) => checked)) {
    choices.set(name, (choices.get(name) ?? new Set()).add(value));
  }
  return choices;
}

/** Sets the boxes; a group with a choice is opened. */
function tick({ boxes }: Parts, choices: Choices): void {
  for (const box of boxes) {
    box.checked = choices.get(box.name)?.has(box.value) ?? false;
    if (box.checked) box.closest('details')!.open = true;
  }
}

const orderOf = ({ orders }: Parts): string =>
  orders.find(({ checked }) => checked)?.value ?? orders[0]!.value;

/** The list, the counts and the sentence, as the boxes stand. */
function show(parts: Parts): void {
  const { rows, list, facets, says, form } = parts;
  const choices = chosen(parts);
  const order = orderOf(parts);
  const stays = (row: Row): boolean => isChosen(row.has, choices, facets);
  for (const row of rows) row.element.hidden = !stays(row);
  list.append(...[...rows].sort((a, b) => a.ranks[order]! - b.ranks[order]!).map(({ element }) => element));
  showCounts(parts, choices);
  says.textContent = matchSentence(rows.filter(stays).length, rows.length, choices.size > 0);
  form.querySelector<HTMLButtonElement>('.clear')!.disabled = choices.size === 0;
  showWayOn(parts, choices);
}

function matchSentence(count: number, all: number, isNarrowed: boolean): string {
  if (!isNarrowed) return all === 1 ? words.all.one : said(words.all.many, { all: String(all) });
  if (count === 0) return words.none;
  return said(count === 1 ? words.match.one : words.match.many, { count: String(count), all: String(all) });
}

function showCounts({ boxes, rows, facets, form }: Parts, choices: Choices): void {
  const counts = countsOf(
    rows.map(({ has }) => has),
    choices,
    facets,
  );
  for (const box of boxes) {
    const count = counts.get(`${box.name}:${box.value}`) ?? 0;
    const label = box.closest('label')!;
    label.querySelector('.count')!.textContent = String(count);
    label.classList.toggle('is-empty', count === 0 && !box.checked);
  }
  for (const { id } of facets) {
    const size = choices.get(id)?.size ?? 0;
    form.querySelector(`#by-${id} .chosen`)!.textContent = size === 0 ? '' : String(size);
  }
}

/** Where no guide is left: the choices that, taken away alone, bring some back. */
function showWayOn(parts: Parts, choices: Choices): void {
  const { page, noMatch, rows, facets, boxes } = parts;
  const isSome = (left: Choices): boolean => rows.some(({ has }) => isChosen(has, left, facets));
  noMatch.hidden = isSome(choices);
  if (noMatch.hidden) return;
  const ticked = boxes.filter(({ checked }) => checked);
  const helpful = ticked.filter(({ name, value }) => isSome(withoutChoice(choices, name, value)));
  const buttons = helpful.map((box) => wayButton(page, said(words.without, { choice: nameOf(box) }), [box]));
  const clear = wayButton(page, words.clear, ticked);
  noMatch.querySelector('ul')!.replaceChildren(...[...buttons, clear].map((button) => inItem(page, button)));
}

function wayButton(page: Document, text: string, boxes: readonly HTMLInputElement[]): HTMLElement {
  const button = Object.assign(page.createElement('button'), { type: 'button', textContent: text });
  button.addEventListener('click', () => {
    for (const box of boxes) box.checked = false;
    boxes[0]?.dispatchEvent(new Event('change'));
    page.querySelector<HTMLElement>('.guide-row:not([hidden]) a')?.focus();
  });
  return button;
}

function inItem(page: Document, content: HTMLElement): HTMLElement {
  const item = page.createElement('li');
  item.append(content);
  return item;
}

/** What a box offers: its text alone, without notes and counts. */
function nameOf(box: HTMLInputElement): string {
  return box.closest('label')?.querySelector('.option')?.firstChild?.textContent ?? box.value;
}

/** The choices in the address, so that the list can be sent on; some hosts forbid it, which does no harm. */
function remember(page: Document, query: string): void {
  try {
    page.defaultView?.history.replaceState(null, '', query === '' ? page.location.pathname : query);
  } catch {
    return;
  }
}
