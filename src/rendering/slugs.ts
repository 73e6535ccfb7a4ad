/** Lower-case letters, digits and hyphens from any text: "Who comes first?" -> `who-comes-first`. Never empty. */
export function slugOf(text: string): string {
  const plain = text.normalize('NFKD').toLowerCase();
  return (
    plain
      .replace(/\p{M}/gu, '')
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-+|-+$/g, '') || 'section'
  );
}

/** Slugs that do not repeat within one page: the second `limits` is `limits-2`. */
export function freeSlugs(): (text: string) => string {
  const taken = new Set<string>();
  return (text) => {
    const wanted = slugOf(text);
    let slug = wanted;
    for (let n = 2; taken.has(slug); n++) slug = `${wanted}-${n}`;
    taken.add(slug);
    return slug;
  };
}
