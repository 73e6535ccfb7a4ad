import type { InPieces } from '../../core/in-pieces.ts';
import type { Tree } from '../../showing/figures/tree.ts';
import { elementOf } from './element-of.ts';
import { growRows } from './rows.ts';
import { isThere, textOf, valueAt } from './values-at.ts';

/**
 * Replaces all that follows a plan, or the part of an answer that is given, in small pieces of work: lists grow and
 * shrink, texts change, what is empty hides, pictures are drawn anew. What has a key that is none of it stays as it is.
 */
export function* refreshing(page: Document, plan: object, draw: Figures): InPieces<void> {
  for (const list of page.querySelectorAll('[data-rows]')) {
    if (list.isConnected && isOf(plan, list.getAttribute('data-rows')!)) growRows(list, plan);
    yield;
  }
  yield* each(page, '[data-shows]', (place, key) => showText(place, textOf(valueAt(plan, key))));
  yield* each(page, '[data-where]', (place, key) => {
    if (isOf(plan, key)) place.toggleAttribute('hidden', !isThere(plan, key));
  });
  for (const place of page.querySelectorAll('[data-draws]')) {
    redraw(page, place, plan, draw);
    yield;
  }
}

/** How to draw what a place asks for, by the name of the picture. */
export type Figures = Readonly<Record<string, (data: never) => Tree>>;

/** Whether a key leads into what is given, be there anything at its end or not. */
function isOf(plan: object, key: string): boolean {
  return Object.hasOwn(plan, /^[^.[]*/.exec(key)![0]);
}

/** So many places are a piece of work. */
const atATime = 100;

function* each(
  page: Document,
  selector: string,
  change: (place: Element, key: string) => void,
): InPieces<void> {
  const name = selector.slice(1, -1);
  let done = 0;
  for (const place of page.querySelectorAll(selector)) {
    change(place, place.getAttribute(name)!);
    done += 1;
    if (done % atATime === 0) yield;
  }
}

function showText(place: Element, text: string | undefined): void {
  if (text !== undefined && place.textContent !== text) place.textContent = text;
}

function redraw(page: Document, place: Element, plan: unknown, draw: Figures): void {
  const key = place.getAttribute('data-draws')!;
  const name = place.getAttribute('data-figure')!;
  const data = valueAt(plan, key);
  if (data === undefined) return;
  const picture = elementOf(page, (draw[name] as (data: unknown) => Tree)(data));
  picture.setAttribute('data-draws', key);
  picture.setAttribute('data-figure', name);
  place.replaceWith(picture);
}
