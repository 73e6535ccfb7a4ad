import { textOf, valueAt } from './values-at.ts';

const keyed = ['data-shows', 'data-rows', 'data-where', 'data-draws'];

/**
 * The rows of a list anew, one for each item of the plan, made from the blank row in its `<template>`: the index of the
 * item in its keys, its fields in its attributes. The head of a table stays, and what has `data-stays`.
 */
export function growRows(list: Element, plan: unknown): void {
  const blank = blankOf(list);
  if (!blank) return;
  for (const row of rowsBefore(blank)) row.remove();
  addRows(list, blank, plan);
}

function blankOf(list: Element): HTMLTemplateElement | undefined {
  return [...list.children].find((child): child is HTMLTemplateElement => child.localName === 'template');
}

function rowsBefore(blank: Element): readonly Element[] {
  const all = [...blank.parentElement!.children];
  return all
    .slice(0, all.indexOf(blank))
    .filter((row) => row.localName !== 'thead' && !row.hasAttribute('data-stays'));
}

function addRows(list: Element, blank: HTMLTemplateElement, plan: unknown): void {
  const items = valueAt(plan, list.getAttribute('data-rows')!);
  if (!Array.isArray(items)) return;
  items.forEach((item: unknown, index) => {
    const row = blank.content.cloneNode(true) as DocumentFragment;
    writeIndex(row, index);
    fillAttributes(row, item);
    for (const inner of row.querySelectorAll('[data-rows]')) addRows(inner, blankOf(inner)!, plan);
    list.insertBefore(row, blank);
  });
}

/** The index into the first empty brackets of each key, those of blank rows within it included. */
function writeIndex(row: DocumentFragment, index: number): void {
  for (const place of row.querySelectorAll(keyed.map((name) => `[${name}]`).join())) {
    for (const name of keyed) {
      const key = place.getAttribute(name);
      if (key !== null) place.setAttribute(name, key.replace('[]', `[${index}]`));
    }
  }
  for (const inner of row.querySelectorAll('template')) writeIndex(inner.content, index);
}

/** `{material}` in an attribute becomes that field of the item; where it has none, the attribute goes. */
function fillAttributes(row: DocumentFragment, item: unknown): void {
  for (const place of row.querySelectorAll('*')) {
    for (const { name, value } of [...place.attributes].filter((attribute) =>
      attribute.value.includes('{'),
    )) {
      const field = /\{(\w+)\}/.exec(value)![1]!;
      const text = textOf(valueAt(item, field));
      if (text === undefined) place.removeAttribute(name);
      else place.setAttribute(name, value.replace(`{${field}}`, text));
    }
  }
}
