import type { Properties } from 'hast';
import type { Content, Markup } from './markup.ts';

/**
 * A part of a page: its heading in the margin, with a remark below it where there is one, and its content beside.
 *
 * @param more  Other properties of its element, such as `where` gives.
 */
export function part(
  id: string,
  heading: string,
  content: Content,
  remark?: Content,
  more: Properties = {},
): Markup {
  return (
    <section id={id} class="part" aria-labelledby={`${id}-head`} {...more}>
      <div class="part-head">
        <h2 id={`${id}-head`}>{heading}</h2>
        {remark ? <div class="remark">{remark}</div> : null}
      </div>
      <div class="part-body">{content}</div>
    </section>
  );
}

/** A frame that scrolls by itself where its table is wider than the page; its name says what it holds. */
export function scrolling(name: string, table: Markup, more: Properties = {}): Markup {
  return (
    <div class="scroll" role="group" tabindex="0" aria-label={name} {...more}>
      {table}
    </div>
  );
}

/** An entry of a list of names and values. */
export function named(name: string, value: Markup): Markup {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{value}</dd>
    </div>
  );
}
