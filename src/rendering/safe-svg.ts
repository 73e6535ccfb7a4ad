import { attributesOf, type SvgTag, type SvgToken, tokensOf } from './svg-tokens.ts';

/** What a drawing is made of. Nothing here runs, moves, or asks another place. */
const elements = new Set(
  [
    'svg g defs symbol use path rect circle ellipse line polyline polygon text tspan textPath title desc',
    'linearGradient radialGradient stop clipPath mask pattern marker style',
  ].flatMap((names) => names.split(' ')),
);
const namespaces: Readonly<Record<string, string>> = {
  xmlns: 'http://www.w3.org/2000/svg',
  'xmlns:xlink': 'http://www.w3.org/1999/xlink',
};

/**
 * A drawing with nothing left in it that could run or load: other elements go with all that is in them, and so do
 * attributes that begin with `on`, addresses that leave the drawing, and styles that load. Undefined where the file
 * is not well-formed, or brings entities of its own.
 *
 * A page shows a drawing as a picture, where scripts never run; but its file may also be opened by itself.
 */
export function safeSvg(bytes: Uint8Array): Uint8Array | undefined {
  const tokens = tokensOf(new TextDecoder().decode(bytes));
  if (!tokens) return undefined;
  const kept = keptOf(tokens);
  return kept && kept.length > 0 ? new TextEncoder().encode(`${kept.join('').trim()}\n`) : undefined;
}

interface Open {
  readonly name: string;
  readonly isKept: boolean;
}

/** The text of what is kept; undefined where elements do not close in the order they opened. */
function keptOf(tokens: readonly SvgToken[]): readonly string[] | undefined {
  const kept: string[] = [];
  const open: Open[] = [];
  for (const token of tokens) {
    const inside = open.at(-1);
    if (token.kind === 'open') {
      const isKept = elements.has(token.name) && (inside?.isKept ?? token.name === 'svg');
      if (isKept) kept.push(opened(token, open.length === 0));
      if (!token.isEmpty) open.push({ name: token.name, isKept });
    } else if (token.kind === 'text') {
      if (inside?.isKept && isSafeText(inside.name, token.text)) kept.push(token.text);
    } else {
      if (open.pop()?.name !== token.name) return undefined;
      if (inside!.isKept) kept.push(`</${token.name}>`);
    }
  }
  return open.length === 0 ? kept : undefined;
}

function opened({ name, attributes, isEmpty }: SvgTag, isOuter: boolean): string {
  const safe = attributesOf(attributes).filter(
    ([key, value]) => isSafe(key, value) && !(isOuter && key === 'xmlns'),
  );
  const own = isOuter ? ([['xmlns', namespaces['xmlns']!]] as const) : [];
  const text = [...own, ...safe]
    .map(([key, value]) => ` ${key}="${value.replaceAll('"', '&quot;')}"`)
    .join('');
  return `<${name}${text}${isEmpty ? '/' : ''}>`;
}

function isSafe(key: string, value: string): boolean {
  const plain = decoded(value);
  if (key in namespaces) return plain === namespaces[key];
  if (key === 'href' || key === 'xlink:href') return plain.startsWith('#');
  return /^[a-z][a-zA-Z0-9-]*$/.test(key) && !/^on/i.test(key) && key !== 'src' && !loads(plain);
}

/** A style may name colours and lines, never another file. */
function isSafeText(element: string, text: string): boolean {
  return element !== 'style' || !loads(decoded(text));
}

function loads(text: string): boolean {
  return /@import|javascript:|expression\s*\(|\\|url\(\s*['"]?\s*(?!#)[^'"\s]/i.test(text);
}

function decoded(text: string): string {
  const named: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };
  return text.replace(
    /&(?:#x([0-9a-f]{1,6})|#(\d{1,7})|([a-z]+));/gi,
    (all, hex?: string, number?: string, name?: string) => {
      if (name !== undefined) return named[name] ?? all;
      const code = hex === undefined ? Number(number) : Number.parseInt(hex, 16);
      return code <= 0x10ffff ? String.fromCodePoint(code) : all;
    },
  );
}
