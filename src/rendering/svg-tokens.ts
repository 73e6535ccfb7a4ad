/** What a drawing is written in: an opening tag, a closing one, or text between. */
export type SvgToken =
  | SvgTag
  | { readonly kind: 'close'; readonly name: string }
  | { readonly kind: 'text'; readonly text: string };
export interface SvgTag {
  readonly kind: 'open';
  readonly name: string;
  /** As written, between the name and the end of the tag. */
  readonly attributes: string;
  readonly isEmpty: boolean;
}

/**
 * A drawing cut into its tags and texts, in one pass. Comments and processing instructions are left out.
 *
 * @returns Undefined where it is not well-formed, or has a document type with a part of its own (where entities are
 *   made), or an entity that XML does not know by itself.
 */
export function tokensOf(source: string): readonly SvgToken[] | undefined {
  const tokens: SvgToken[] = [];
  for (let at = 0; at < source.length;) {
    const skipped = skip(source, at);
    if (skipped === undefined) return undefined;
    if (skipped > at) {
      at = skipped;
      continue;
    }
    const end = source[at] === '<' ? source.indexOf('>', at) + 1 : nextTag(source, at);
    const token = end > at ? tokenOf(source.slice(at, end)) : undefined;
    if (!token) return undefined;
    tokens.push(token);
    at = end;
  }
  return tokens;
}

/** What is passed over, by how it begins and ends. */
const passedOver = [
  { begins: '<!--', ends: '-->' },
  { begins: '<?', ends: '?>' },
  { begins: '<!DOCTYPE', ends: '>' },
] as const;

/** Where to go on after what is passed over here: `at` itself where nothing is; undefined where it may not stand. */
function skip(source: string, at: number): number | undefined {
  const here = passedOver.find(({ begins }) => source.startsWith(begins, at));
  if (!here) return source.startsWith('<!', at) ? undefined : at;
  const end = source.indexOf(here.ends, at);
  const isOpen = end < 0 || (here.begins === '<!DOCTYPE' && source.slice(at, end).includes('['));
  return isOpen ? undefined : end + here.ends.length;
}

function nextTag(source: string, at: number): number {
  const next = source.indexOf('<', at);
  return next < 0 ? source.length : next;
}

function tokenOf(text: string): SvgToken | undefined {
  if (!text.startsWith('<')) return knowsEntities(text) ? { kind: 'text', text } : undefined;
  const [, name] = /^<\/([\w:.-]+)\s*>$/.exec(text) ?? [];
  if (name !== undefined) return { kind: 'close', name };
  const [, opened, attributes = '', slash] =
    /^<([A-Za-z][\w:.-]*)((?:\s+[\w:.-]+\s*=\s*(?:"[^"<]*"|'[^'<]*'))*)\s*(\/?)>$/.exec(text) ?? [];
  if (opened === undefined || !knowsEntities(attributes)) return undefined;
  return { kind: 'open', name: opened, attributes, isEmpty: slash === '/' };
}

/** Only the five entities of XML itself, and numbers. */
function knowsEntities(text: string): boolean {
  return !/&(?!(?:amp|lt|gt|quot|apos|#\d{1,7}|#x[0-9a-fA-F]{1,6});)/.test(text);
}

/** Names and values of a tag's attributes. */
export function attributesOf(text: string): readonly (readonly [key: string, value: string])[] {
  return [...text.matchAll(/([\w:.-]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g)].map(
    ([, key = '', double, single]) => [key, double ?? single ?? ''] as const,
  );
}
