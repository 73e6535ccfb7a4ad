/** Places in a line, of which some are taken. */
export interface Row {
  readonly isTaken: Uint8Array;
  /** None before it is taken. */
  first: number;
}

export function row(length: number): Row {
  return { isTaken: new Uint8Array(length), first: length };
}

export function take(row: Row, place: number): void {
  row.isTaken[place] = 1;
  if (place < row.first) row.first = place;
}

/** Frees the first place that is taken; -1 where none is. */
export function freeFirst(row: Row): number {
  const place = row.isTaken.indexOf(1, row.first);
  if (place < 0) row.first = row.isTaken.length;
  else {
    row.isTaken[place] = 0;
    row.first = place + 1;
  }
  return place;
}

export function freeAll(row: Row): void {
  row.isTaken.fill(0);
  row.first = row.isTaken.length;
}
