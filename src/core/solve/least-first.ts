/** A waiting line from which the least item comes out first. */
export interface LeastFirst<T> {
  add(item: T): void;
  /** Takes out the least item; `undefined` when none waits. */
  next(): T | undefined;
}

/**
 * An empty waiting line in the order of `compare` (as for `sort`).
 *
 * @source Binary heap; Cormen, Leiserson, Rivest and Stein, Introduction to Algorithms, "Priority queues" (from memory).
 */
export function leastFirst<T>(compare: (a: T, b: T) => number): LeastFirst<T> {
  const items: T[] = [];
  const swap = (a: number, b: number): void => {
    [items[a], items[b]] = [items[b]!, items[a]!];
  };
  const isBelow = (a: number, b: number): boolean => a < items.length && compare(items[a]!, items[b]!) < 0;

  const rise = (at: number): void => {
    for (let parent = (at - 1) >> 1; at > 0 && isBelow(at, parent); parent = (at - 1) >> 1) {
      swap(at, parent);
      at = parent;
    }
  };
  const sink = (at: number): void => {
    for (;;) {
      const [left, right] = [2 * at + 1, 2 * at + 2];
      const child = isBelow(right, left) ? right : left;
      if (!isBelow(child, at)) return;
      swap(at, child);
      at = child;
    }
  };

  return {
    add(item) {
      items.push(item);
      rise(items.length - 1);
    },
    next() {
      if (items.length > 1) swap(0, items.length - 1);
      const least = items.pop();
      sink(0);
      return least;
    },
  };
}
