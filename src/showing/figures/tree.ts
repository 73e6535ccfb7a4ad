/** An element of a picture as plain data, so that a page may be drawn where it is built and again where it is read. */
export interface Tree {
  readonly tag: string;
  /** As they are written: `text-anchor`, `class`. */
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (Tree | string)[];
}

export function tree(tag: string, attributes: Tree['attributes'], children: Tree['children'] = []): Tree {
  return { tag, attributes, children };
}

/** A picture that fills its place and is passed over by readers that speak: a table beside it says the same. */
export function picture(name: string, attributes: Tree['attributes'], children: Tree['children']): Tree {
  return tree('svg', { class: name, ...attributes, 'aria-hidden': 'true', focusable: 'false' }, children);
}

/** Definitions that pictures of a page share: they take no room. */
export function definitions(children: Tree['children']): Tree {
  return picture('defs', { width: '0', height: '0' }, [tree('defs', {}, children)]);
}

/** Thousandths as a percentage: 125 -> "12.5%". Whole thousandths, so one digit is exact. */
export function percent(thousandths: number): string {
  return `${Math.round(thousandths) / 10}%`;
}
