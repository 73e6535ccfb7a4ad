import type { FindablePage } from '../../src/exports/search-library.ts';

const models = [
  'needle block',
  'suture pad',
  'chest drain frame',
  'knot board',
  'airway trainer',
  'abscess pouch',
];
const stuffs = ['gelatin', 'psyllium', 'felt', 'foam', 'latex', 'agar', 'plywood', 'silicone', 'wax', 'clay'];
const acts = ['cut', 'pour', 'glue', 'press', 'chill', 'melt', 'sand', 'drill', 'label', 'wrap'];
const others =
  'water bench fridge scale board knife side edge layer warm cold slowly fully twice again under over until clear firm'.split(
    ' ',
  );
const steps = 8;

/** Invented guides with their steps, as many words to each as the guides of the demo have on average. */
export function manyGuides(count: number): readonly FindablePage[] {
  const pick = picker();
  const sentence = (length: number): string =>
    Array.from({ length }, () => pick([stuffs, acts, others][pick([0, 1, 2, 2, 2])]!)).join(' ');
  const guides = Array.from({ length: count }, (_, i) => ({
    href: `guides/guide-${i}/index.html`,
    title: `${pick(stuffs)} ${pick(models)} of kind ${i}`,
  }));
  return [
    ...guides.map((guide) => ({
      ...guide,
      kind: 'guide' as const,
      of: '',
      says: sentence(8),
      text: sentence(80),
    })),
    ...guides.flatMap(({ href, title }) =>
      Array.from({ length: steps }, (_, step) => ({
        href: `${href}#step-${step}`,
        kind: 'step' as const,
        title: `${pick(acts)} the ${pick(stuffs)}`,
        of: title,
        says: '',
        text: sentence(45),
      })),
    ),
  ];
}

/** Always the same row of picks. @source Marsaglia, Xorshift RNGs, J. Stat. Softw. 8 (2003): 13, 17, 5. */
function picker(): <T>(from: readonly T[]) => T {
  let state = 2_463_534_242;
  return (from) => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return from[(state >>> 0) % from.length]!;
  };
}
