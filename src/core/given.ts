/** The same, but that what may be left out may be undefined. */
type PerhapsWithout<T> = {
  readonly [K in keyof T]: Record<never, never> extends Pick<T, K> ? T[K] | undefined : T[K];
};

/** Without the fields that are undefined: left out is left out, not present and empty. */
export function given<T extends object>(fields: PerhapsWithout<T>): T {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as T;
}
