import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { scheduleStrip, stripRow } from '../../src/showing/figures/schedule-strip.ts';
import type { Tree } from '../../src/showing/figures/tree.ts';

type Rgb = readonly [number, number, number];
type Matrix = readonly [Rgb, Rgb, Rgb];

/**
 * What a colour becomes for who has no cones of one kind, in linear light.
 *
 * @source Machado, Oliveira, Fernandes, "A Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE
 * Transactions on Visualization and Computer Graphics 15 (6), 2009, table of severity 1.0 (from memory; rows sum to 1).
 */
const kinds: Readonly<Record<string, Matrix>> = {
  'no red cones': [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  'no green cones': [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  'no blue cones': [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

const style = (name: string): string =>
  readFileSync(new URL(`../../templates/styles/${name}.css`, import.meta.url), 'utf8');
const tokens = style('_tokens');
const [lightPart = '', darkPart = ''] = tokens.split('@media (prefers-color-scheme: dark)');
const themes = {
  light: tokensOf(lightPart),
  dark: { ...tokensOf(lightPart), ...tokensOf(darkPart.split('@media')[0]!) },
};

describe('series that touch in a picture', () => {
  /** The name of the colour that a class is filled with. */
  const fillOf = (css: string, selector: string): string =>
    new RegExp(`${selector.replaceAll('.', '\\.')} \\{\\s*fill: var\\(--(\\w+)\\)`).exec(css)![1]!;
  const pairs = [
    [
      'hands-on and waits on the rule of the catalogue',
      fillOf(style('_catalogue'), '.time-rule .hands'),
      fillOf(style('_catalogue'), '.time-rule .waits'),
    ],
    [
      'hands-on and closed time in the schedule',
      fillOf(style('_schedule'), '.bar-hands-on'),
      fillOf(style('_schedule'), '.bar-closed'),
    ],
    ['hands-on and its ground in the schedule', fillOf(style('_schedule'), '.bar-hands-on'), 'sheet'],
    ['what decides and its ground in the schedule', fillOf(style('_schedule'), '.bar-decides'), 'sheet'],
  ] as const;
  const rows = Object.entries(themes).flatMap(([theme, colours]) =>
    Object.entries(kinds).flatMap(([kind, matrix]) =>
      pairs.map(([name, a, b]) => [name, kind, theme, matrix, colours[a]!, colours[b]!] as const),
    ),
  );
  it.each(rows)('%s can be told apart with %s, %s', (_name, _kind, _theme, matrix, a, b) => {
    expect(difference(seenWith(matrix, a), seenWith(matrix, b))).toBeGreaterThanOrEqual(15);
  });

  it('waits are hatched wherever the schedule draws them, and nothing else is', () => {
    const kindsOfBar = ['hands-on', 'wait'] as const;
    const row = stripRow(
      { bars: kindsOfBar.map((kind, i) => ({ kind, from: i * 100, to: i * 100 + 50 })), decides: [] },
      [{ from: 500, to: 600 }],
      [],
    );
    const strip = scheduleStrip({ rows: [], closed: [], ticks: [] });
    for (const drawing of [row, strip]) {
      const bars = barsIn(drawing);
      expect(bars.filter(([, fill]) => fill?.startsWith('url(#')).map(([name]) => name)).toEqual([
        'bar-wait',
      ]);
      expect(bars.map(([name]) => name)).toContain('bar-hands-on');
    }
  });

  it('are compared as the standards say', () => {
    // L* of white is 100 and of black 0; red and green of the same lightness fall together without red cones.
    expect(difference(linear('#ffffff'), linear('#000000'))).toBeCloseTo(100, 1);
    const [red, green] = ['#b04a3a', '#6b6b2e'];
    const seen = (kind: string): number =>
      difference(seenWith(kinds[kind]!, red!), seenWith(kinds[kind]!, green!));
    expect(seen('no green cones')).toBeLessThan(difference(linear(red!), linear(green!)) / 2);
    for (const matrix of Object.values(kinds))
      for (const row of matrix) expect(row[0] + row[1] + row[2]).toBeCloseTo(1, 5);
  });
});

function barsIn(drawing: Tree): readonly (readonly [name: string, fill: string | undefined])[] {
  const own = drawing.attributes['class'] ?? '';
  const below = drawing.children.flatMap((child) => (typeof child === 'string' ? [] : barsIn(child)));
  return own.startsWith('bar-') ? [[own, drawing.attributes['fill']], ...below] : below;
}

function tokensOf(css: string): Readonly<Record<string, string>> {
  return Object.fromEntries(
    [...css.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})\b/gi)].map(([, name, hex]) => [name!, hex!]),
  );
}

/** @source IEC 61966-2-1:1999 (sRGB). */
function linear(hex: string): Rgb {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return [r!, g!, b!];
}

function seenWith(matrix: Matrix, hex: string): Rgb {
  return times(matrix, linear(hex)).map((part) => Math.min(1, Math.max(0, part))) as unknown as Rgb;
}

function times(matrix: Matrix, [r, g, b]: Rgb): Rgb {
  return matrix.map(([x, y, z]) => x * r + y * g + z * b) as unknown as Rgb;
}

const toXyz: Matrix = [
  [0.4124564, 0.3575761, 0.1804375],
  [0.2126729, 0.7151522, 0.072175],
  [0.0193339, 0.119192, 0.9503041],
];
/** D65. */
const white: Rgb = [0.95047, 1, 1.08883];

/** The difference of two colours, ΔE*ab. @source CIE 15:2004, section 8.2 (CIELAB, 1976). */
function difference(one: Rgb, other: Rgb): number {
  const [a, b] = [lab(one), lab(other)];
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

function lab(colour: Rgb): Rgb {
  const [x, y, z] = times(toXyz, colour).map((part, i) => {
    const share = part / white[i]!;
    return share > (6 / 29) ** 3 ? Math.cbrt(share) : (share * (29 / 6) ** 2) / 3 + 4 / 29;
  });
  return [116 * y! - 16, 500 * (x! - y!), 200 * (y! - z!)];
}
