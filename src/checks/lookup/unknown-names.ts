import type { Place } from '../../core/diagnostic.ts';
import type { LinkKind } from '../../core/model/prose.ts';
import { nearName } from '../../core/near-name.ts';
import type { Finding } from '../check.ts';
import type { GuideRead, ModuleRead, Places, Way } from './context.ts';
import { inWords } from './names.ts';

/** Somewhere a thing is named by its id. */
export interface Reference {
  readonly name: string;
  readonly place: Place;
  /** Begins a sentence: "The step “Pour”". */
  readonly who: string;
  /** What to write there for an id: `from: pour`. */
  readonly put: (id: string) => string;
  /** Index of the section of a link. */
  readonly section?: number;
}

/**
 * Names that lead nowhere, each once with all its places: variant `near` where a known one comes near it, `none` where
 * there is nothing that could be named.
 *
 * @param isKnown  Whether a name leads somewhere; `known` alone where left out.
 */
export function unknownNames(
  references: readonly Reference[],
  known: readonly string[],
  isKnown: (name: string) => boolean = (name) => known.includes(name),
): readonly Finding[] {
  const lost = references.filter(({ name }) => !isKnown(name));
  const names = [...new Set(lost.map(({ name }) => name))];
  return names.map((name) =>
    unknownName(lost.filter((one) => one.name === name) as [Reference, ...Reference[]], known),
  );
}

function unknownName(
  [first, ...others]: readonly [Reference, ...Reference[]],
  known: readonly string[],
): Finding {
  const near = nearName(first.name, known);
  const facts = { name: first.name, who: first.who, known: known.join(', '), paste: first.put(near ?? '…') };
  return {
    variant: near ? 'near' : known.length === 0 ? 'none' : undefined,
    places: [first.place, ...others.map(({ place }) => place)],
    facts: near ? { ...facts, near } : facts,
  };
}

/** A name under a key of its own: `from: pour`. */
export function namedAt(
  read: Places,
  name: string | undefined,
  who: string,
  ...way: Way
): readonly Reference[] {
  const key = way.at(-1);
  if (name === undefined) return [];
  return [{ name, place: read.place(...way), who, put: (id) => `${key}: ${id}` }];
}

/** Names in a list: `[pour, unmould]`. */
export function namedIn(
  read: Places,
  names: readonly string[],
  who: string,
  ...way: Way
): readonly Reference[] {
  return names.map((name, i) => ({ name, place: read.place(...way, i), who, put: (id: string) => id }));
}

/** Names that links of the prose lead to. */
export function linkedTo(read: GuideRead | ModuleRead, kind: LinkKind): readonly Reference[] {
  const { prose } = 'guide' in read ? read.guide : read.module;
  const links = prose.links.filter((link) => link.kind === kind);
  return links.map(({ target, text, at, section }) => ({
    name: target,
    place: read.prose(at),
    who: `The link “${text}”`,
    put: (id) => `[${text}](${kind}:${id})`,
    section,
  }));
}

/** How sentences begin that speak of a row: "The caution “hot-gel”". */
export function the(noun: string, name: string): string {
  return `The ${noun} “${name}”`;
}

/** The same of a tool, by its id. */
export function theTool(id: string): string {
  return the('tool', inWords(id));
}
