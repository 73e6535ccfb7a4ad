import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const folder = new URL('../../templates/styles/', import.meta.url);
const styles = readdirSync(folder)
  .filter((name) => name.endsWith('.css'))
  .map(
    (name) => [name, readFileSync(new URL(name, folder), 'utf8').replace(/\/\*[\s\S]*?\*\//g, '')] as const,
  );

describe('styles', () => {
  /** Sides by the reading direction alone: a page from right to left is then mirrored by itself. */
  const physical = new RegExp(
    [
      '(^|[\\s;{])(margin|padding|border)-(left|right)(-\\w+)*\\s*:',
      '(^|[\\s;{])(left|right)\\s*:',
      '(text-align|float|clear)\\s*:\\s*(left|right)\\b',
      '(^|[\\s;{])border-(top|bottom)-(left|right)-radius\\s*:',
      '(^|[\\s;{])scroll-(margin|padding)-(left|right)\\s*:',
    ].join('|'),
    'g',
  );
  it.each(styles)('%s names no left and no right side, but for the printed margin of a page', (_, css) => {
    const screen = css.replace(/@page[^{]*\{(?:[^{}]|\{[^{}]*\})*\}/g, '');
    expect(screen.match(physical) ?? []).toEqual([]);
  });

  it('a background that lies at a left or right edge changes over where one reads from right to left', () => {
    const alone = styles.flatMap(([name, css]) =>
      [...css.matchAll(/([^{}]+)\{([^{}]*)\}/g)]
        .filter(([, , body]) => /background[^;]*\b(left|right)\b/.test(body!))
        .map(([, selector]) => selector!.trim().split(/\s*,\s*/))
        .flat()
        .filter((selector) => !selector.startsWith("[dir='rtl']"))
        .map((selector) => selector.split(/[.:]/)[1] ?? selector)
        .filter((part) => !new RegExp(`\\[dir='rtl'\\][^{]*\\.${part}\\b`).test(css))
        .map((part) => `${name}: .${part}`),
    );
    expect(alone).toEqual([]);
  });
});

describe('colours', () => {
  const tokens = styles.find(([name]) => name === '_tokens.css')![1];
  const [light, dark] = [
    tokensOf(tokens.slice(0, tokens.indexOf('@media'))),
    tokensOf(tokens.slice(tokens.indexOf('prefers-color-scheme: dark'), tokens.indexOf('@media print'))),
  ];
  const themes = { light, dark: { ...light, ...dark } } as const;

  /** Text on its ground: at least 4.5:1. @source WCAG 2.2, 1.4.3. */
  const texts = [
    ['ink', 'paper'],
    ['ink', 'sheet'],
    ['ink', 'tint'],
    ['muted', 'paper'],
    ['muted', 'sheet'],
    ['muted', 'tint'],
    ['green', 'paper'],
    ['green', 'sheet'],
    ['green', 'tint'],
    ['mat-ink', 'mat'],
    ['mat-soft', 'mat'],
    ['lime', 'mat'],
    ['lime-ink', 'lime'],
  ] as const;
  /** Edges of controls, marks of a chart, the ring of the keyboard: at least 3:1. @source WCAG 2.2, 1.4.11. */
  const marks = [
    ['edge', 'paper'],
    ['edge', 'sheet'],
    ['edge', 'tint'],
    ['hands', 'paper'],
    ['waits', 'paper'],
    ['hands', 'sheet'],
    ['waits', 'sheet'],
    ['focus', 'paper'],
    ['focus', 'sheet'],
    ['focus', 'tint'],
    ['lime', 'mat'],
  ] as const;

  const rows = (pairs: readonly (readonly [string, string])[], least: number) =>
    Object.entries(themes).flatMap(([theme, colours]) =>
      pairs.map(([on, ground]) => [theme, on, ground, colours[on], colours[ground], least] as const),
    );
  it.each([...rows(texts, 4.5), ...rows(marks, 3)])(
    'in the %s theme %s can be told from %s',
    (_, __, ___, on, ground, least) => {
      expect(contrast(on!, ground!)).toBeGreaterThanOrEqual(least);
    },
  );

  it('are reckoned as the standard says', () => {
    // WCAG 2.2, contrast ratio: black on white is 21; #767676 on white is the lightest grey that passes (common knowledge).
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
    expect(contrast('#767676', '#fff')).toBeGreaterThan(4.5);
    expect(contrast('#777777', '#fff')).toBeLessThan(4.5);
  });
});

function tokensOf(css: string): Readonly<Record<string, string>> {
  return Object.fromEntries(
    [...css.matchAll(/--([\w-]+):\s*(#[0-9a-f]{3,6})\b/gi)].map(([, name, hex]) => [name!, hex!]),
  );
}

/** @source WCAG 2.2, definitions of contrast ratio and relative luminance. */
function contrast(a: string, b: string): number {
  const [x, y] = [luminance(a), luminance(b)];
  return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05);
}

function luminance(hex: string): number {
  const full = hex.length === 4 ? hex.replace(/[0-9a-f]/gi, '$&$&') : hex;
  const [r, g, b] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(full.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}
