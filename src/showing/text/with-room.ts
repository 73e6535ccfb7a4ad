/** Of labels in the order in which they matter: each that is not near one before it that is kept. */
export function withRoom<T>(inOrder: readonly T[], isNear: (a: T, b: T) => boolean): readonly T[] {
  return inOrder.reduce<readonly T[]>(
    (kept, next) => (kept.some((known) => isNear(known, next)) ? kept : [...kept, next]),
    [],
  );
}
