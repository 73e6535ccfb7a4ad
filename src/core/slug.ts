import { plainLetters } from './plain-letters.ts';

/** What an id of these words would be: `Oil & spray` -> `oil-spray`. Empty where no letter of it fits. */
export function asId(text: string): string {
  return plainLetters(text)
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
}

/**
 * Slugs of headings that do not repeat within one text: the second `limits` is `limits-2`. A heading without Latin
 * letters or digits is a `section`.
 */
export function freeSlugs(): (heading: string) => string {
  const taken = new Set<string>();
  return (heading) => {
    const wanted = asId(heading) || 'section';
    let slug = wanted;
    for (let n = 2; taken.has(slug); n++) slug = `${wanted}-${n}`;
    taken.add(slug);
    return slug;
  };
}
