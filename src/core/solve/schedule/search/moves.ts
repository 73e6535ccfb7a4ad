import type { Draw } from '../../draw.ts';
import type { Line } from './rules.ts';

/** A small change of a line: one job elsewhere, or the jobs of one kind in a stretch put together. */
export function changed(line: Line, kinds: readonly number[], draw: Draw): Line {
  const from = draw(line.length);
  if (draw(2) === 0) return line.toSpliced(from, 1).toSpliced(draw(line.length), 0, line[from]!);
  const most = line.length >> draw(Math.max(1, Math.floor(Math.log2(line.length))));
  const inside = line.slice(from, from + 2 + draw(most));
  const kind = kinds[inside[0]!];
  const [same, others] = [true, false].map((is) => inside.filter((job) => (kinds[job] === kind) === is));
  return line.toSpliced(from, inside.length, ...same!, ...others!);
}
