/** The next number of a fixed row: whole, from 0 up to below `below`. */
export type Draw = (below: number) => number;

/**
 * Numbers that look like chance and are the same in every run.
 *
 * @source Marsaglia, Xorshift RNGs, Journal of Statistical Software 8(14), 2003: the triple 13, 17, 5 (from memory).
 */
export function drawer(): Draw {
  let state = 2463534242;
  return (below) => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) % below;
  };
}
