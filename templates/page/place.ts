import type { Element, ElementContent } from 'hast';
import { h } from 'hastscript';
import { type FigureName, figures } from '../../src/showing/figures/figures.ts';
import { sessionFigures } from '../../src/showing/figures/session-figures.ts';
import type { Tree } from '../../src/showing/figures/tree.ts';
import type { ShownCircuit } from '../../src/showing/session/shown-session.ts';
import { type Shown, shown } from '../../src/showing/shown/shown.ts';
import { drawn } from '../../src/rendering/drawn.ts';
import type { Markup } from './markup.ts';

/**
 * A finished text as the properties of the element that holds it, with its key: `<dd {...shows(fact.value)} />`. The
 * browser finds the element by its key and replaces the text. A place that may stay empty is hidden while it is.
 */
export function shows({ key, text }: Shown): { readonly dataShows: string; readonly children: string } {
  return { dataShows: key, children: text };
}

/** Whether there is anything to show. */
export function isSaid({ text }: Shown): boolean {
  return text !== '';
}

/** A sentence of the catalogue with its blanks filled by texts that are finished already. */
export function said(sentence: string, texts: Readonly<Record<string, string>>): string {
  return sentence.replace(/\{(\w+)\}/g, (blank, name: string) => texts[name] ?? blank);
}

/**
 * A list that follows the plan: its rows, and a blank one from which the browser makes others. What stands behind the
 * blank one stays, and before it the head of a table and what has `data-stays`. The rows themselves have no keys: the
 * browser never changes them, it makes others.
 *
 *     <ul {...rowsOf('shopping.notes', notes, noteRow, blank)} />
 *
 * @param row    Of an item and its key.
 * @param empty  The item of the blank row: its keys have empty brackets for the index; `{material}` in an attribute
 *   stands for a field of the item, and the attribute is left out where there is no such field.
 */
export function rowsOf<T>(
  key: string,
  items: readonly T[],
  row: (item: T, key: string) => Markup,
  empty: (key: string) => T,
  behind: readonly Markup[] = [],
): { readonly dataRows: string; readonly children: Markup[] } {
  const rows = items.map((item, i) => withoutKeys(row(item, `${key}[${i}]`) as Element));
  const blankKey = `${key}[]`;
  return { dataRows: key, children: [...rows, h('template', row(empty(blankKey), blankKey)), ...behind] };
}

const keys: readonly string[] = ['dataShows', 'dataRows', 'dataWhere', 'dataDraws', 'dataFigure'];

function withoutKeys<T extends ElementContent>(node: T): T {
  if (node.type !== 'element') return node;
  const properties = Object.entries(node.properties).filter(([name]) => !keys.includes(name));
  const children = node.children.filter((child) => !isSpare(child)).map(withoutKeys);
  return { ...node, properties: Object.fromEntries(properties), children };
}

/** Blank rows, and places of texts that say nothing; a cell keeps its place. */
function isSpare(node: ElementContent): boolean {
  if (node.type !== 'element') return false;
  const { tagName, properties, children } = node;
  const isSilent = children.every((child) => child.type === 'text' && child.value === '');
  return tagName === 'template' || ('dataShows' in properties && isSilent && !/^t[dh]$/.test(tagName));
}

/** The text of a blank row that is one text. */
export function blank(key: string): Shown {
  return shown(key, '');
}

/** The texts of a blank row that has several: `blanks('name', 'need')`. */
export function blanks<K extends string>(...names: readonly K[]): (key: string) => Record<K, Shown> {
  return (key) =>
    Object.fromEntries(names.map((name) => [name, blank(`${key}.${name}`)])) as Record<K, Shown>;
}

/** What is hidden while a list or a text of the plan is empty; empty brackets in the key stand for any of a list. */
export function where(
  key: string,
  isThere: boolean,
): { readonly dataWhere: string; readonly hidden: boolean } {
  return { dataWhere: key, hidden: !isThere };
}

/** A picture that follows the plan: the browser draws it anew. Empty where there is nothing to draw yet. */
export function draws<N extends FigureName>(
  name: N,
  key: string,
  data: Parameters<(typeof figures)[N]>[0] | undefined,
): Element {
  const draw = figures[name] as (data: Parameters<(typeof figures)[N]>[0]) => Tree;
  return placeDrawn(data ? drawn(draw(data)) : h('div'), name, key);
}

/** The same of a table that follows the people of a session. */
export function tabulates(name: keyof typeof sessionFigures, key: string, circuit: ShownCircuit): Element {
  return placeDrawn(drawn(sessionFigures[name](circuit)), name, key);
}

function placeDrawn({ properties, ...picture }: Element, name: string, key: string): Element {
  return { ...picture, properties: { ...properties, dataDraws: key, dataFigure: name } };
}
