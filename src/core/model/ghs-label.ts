/** What a product's label carries beside its statements, as the precedence rules of GHS have it. */
export interface GhsLabel {
  /** Of the product; never a signal word of a caution, which speaks of the situation. */
  readonly signal?: GhsSignal;
  /** Sorted: `['GHS02', 'GHS07']`. */
  readonly pictograms: readonly Pictogram[];
  /** Codes that alone do not tell: unknown here, or of two categories with different signal words. */
  readonly open: readonly string[];
}

export const ghsSignals = ['Danger', 'Warning'] as const;
export type GhsSignal = (typeof ghsSignals)[number];
export type Pictogram = `GHS0${1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9}`;

/**
 * The signal word and the pictograms of a label with these hazard statements.
 *
 * Danger leaves no room for Warning. The skull leaves none for the exclamation mark; corrosion leaves none where that
 * is there for irritation alone; the health hazard of a respiratory sensitiser none where it is there for irritation or
 * skin sensitisation alone.
 *
 * @param codes  Hazard statement codes; several joined by + count as each of them, letters after them say which organ or
 *   effect and change nothing.
 * @source UN GHS Rev. 10 (2023), 1.4.10.5.3.1 (pictograms) and 1.4.10.5.3.2 (signal words).
 */
export function ghsLabel(codes: readonly string[]): GhsLabel {
  const parts = [...new Set(codes.flatMap((code) => code.split('+')).map(withoutLetters))];
  const signal = ghsSignals.find((word) => parts.some((code) => statements[code]?.[0] === word));
  return {
    ...(signal ? { signal } : {}),
    pictograms: pictogramsOf(parts),
    open: parts.filter((code) => statements[code] === undefined),
  };
}

/** `H360FD` -> `H360` */
export function withoutLetters(code: string): string {
  return code.replace(/^(H\d{3})[A-Za-z]+$/, '$1');
}

function pictogramsOf(parts: readonly string[]): readonly Pictogram[] {
  const all = [...new Set(parts.flatMap((code) => statements[code]?.[1] ?? []))].sort();
  return all.filter((pictogram) => pictogram !== 'GHS07' || !isLeftOut(parts, all));
}

/** Whether the exclamation mark gives way to a graver pictogram. */
function isLeftOut(parts: readonly string[], all: readonly Pictogram[]): boolean {
  const reasons = parts.filter((code) => statements[code]?.[1] === 'GHS07');
  const only = (...codes: string[]): boolean => reasons.every((code) => codes.includes(code));
  return (
    all.includes('GHS06') ||
    (all.includes('GHS05') && only('H315', 'H319')) ||
    (parts.includes('H334') && only('H315', 'H317', 'H319'))
  );
}

/**
 * Signal word and pictogram of each statement. H228 is not here, since its two categories have different words; H229 is
 * as it stands alone, for with H222 or H223 these bring the flame.
 *
 * @source UN GHS Rev. 10 (2023), Annex 1 and 3, as the PubChem table of codes has them.
 */
const statements: Readonly<Record<string, readonly [signal?: GhsSignal | undefined, pictogram?: Pictogram]>> =
  {
    H220: ['Danger', 'GHS02'],
    H222: ['Danger', 'GHS02'],
    H223: ['Warning', 'GHS02'],
    H225: ['Danger', 'GHS02'],
    H226: ['Warning', 'GHS02'],
    H229: ['Warning'],
    H280: ['Warning', 'GHS04'],
    H290: ['Warning', 'GHS05'],
    H301: ['Danger', 'GHS06'],
    H302: ['Warning', 'GHS07'],
    H304: ['Danger', 'GHS08'],
    H312: ['Warning', 'GHS07'],
    H314: ['Danger', 'GHS05'],
    H315: ['Warning', 'GHS07'],
    H317: ['Warning', 'GHS07'],
    H318: ['Danger', 'GHS05'],
    H319: ['Warning', 'GHS07'],
    H320: ['Warning'],
    H331: ['Danger', 'GHS06'],
    H332: ['Warning', 'GHS07'],
    H334: ['Danger', 'GHS08'],
    H335: ['Warning', 'GHS07'],
    H336: ['Warning', 'GHS07'],
    H351: ['Warning', 'GHS08'],
    H360: ['Danger', 'GHS08'],
    H361: ['Warning', 'GHS08'],
    H362: [],
    H370: ['Danger', 'GHS08'],
    H372: ['Danger', 'GHS08'],
    H373: ['Warning', 'GHS08'],
    H400: ['Warning', 'GHS09'],
    H410: ['Warning', 'GHS09'],
    H411: [undefined, 'GHS09'],
    H412: [],
    H413: [],
  };
