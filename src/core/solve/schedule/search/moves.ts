import type { Draw } from '../../draw.ts';
import type { Line } from './rules.ts';

/** A small change of a line. */
export type Move = (line: Line, draw: Draw) => Line;

/**
 * The ways to change a line: one job elsewhere, a whole family elsewhere, jobs of one kind put together, a stretch put
 * in order of kinds.
 *
 * @param familyOf  For each job all that go together with it.
 */
export function movesOf(familyOf: readonly (readonly number[])[], kinds: readonly number[]): readonly Move[] {
  const elsewhere: Move = (line, draw) => {
    const job = line[draw(line.length)]!;
    return moved(line, new Set([job]), draw);
  };
  const familyElsewhere: Move = (line, draw) => {
    const job = line[draw(line.length)]!;
    return moved(line, new Set(familyOf[job]), draw);
  };
  const together: Move = (line, draw) => {
    const [from, to] = stretch(line.length, draw);
    const kind = kinds[line[from]!];
    const inside = line.slice(from, to);
    return line.toSpliced(
      from,
      to - from,
      ...inside.filter((job) => kinds[job] === kind),
      ...inside.filter((job) => kinds[job] !== kind),
    );
  };
  const byKind: Move = (line, draw) => {
    const [from, to] = stretch(line.length, draw);
    const inside = line.slice(from, to);
    const first = new Map<number, number>();
    inside.forEach((job, place) => first.has(kinds[job]!) || first.set(kinds[job]!, place));
    inside.sort((a, b) => first.get(kinds[a]!)! - first.get(kinds[b]!)!);
    return line.toSpliced(from, to - from, ...inside);
  };
  return [elsewhere, familyElsewhere, together, byKind];
}

function moved(line: Line, jobs: ReadonlySet<number>, draw: Draw): Line {
  const rest = line.filter((job) => !jobs.has(job));
  return rest.toSpliced(draw(rest.length + 1), 0, ...line.filter((job) => jobs.has(job)));
}

/** A stretch of a line: short ones as often as long ones. */
function stretch(length: number, draw: Draw): [from: number, to: number] {
  const from = draw(length);
  const most = length >> draw(Math.max(1, Math.floor(Math.log2(length))));
  return [from, Math.min(length, from + 2 + draw(most))];
}
