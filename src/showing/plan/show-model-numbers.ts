import { showCount } from '../text/numbers.ts';
import { type Shown, shown } from '../shown/shown.ts';

/** The numbers 1..made. */
export function modelNumbers(key: string, made: number): readonly Shown[] {
  return Array.from({ length: made }, (_, i) => shown(`${key}[${i}]`, showCount(i + 1)));
}
