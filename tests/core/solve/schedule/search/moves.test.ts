import { expect, it } from 'vitest';
import { drawer } from '../../../../../src/core/solve/draw.ts';
import { changed } from '../../../../../src/core/solve/schedule/search/moves.ts';
import type { Line } from '../../../../../src/core/solve/schedule/search/rules.ts';

// eight jobs, by turns of two kinds
const line = [0, 1, 2, 3, 4, 5, 6, 7];
const kinds = [0, 1, 0, 1, 0, 1, 0, 1];
function tried(): Line[] {
  const draw = drawer();
  return Array.from({ length: 1000 }, () => changed(line, kinds, draw));
}

const without = (of: Line, job: number): Line => of.filter((other) => other !== job);
const isMoved = (of: Line): boolean =>
  line.some((job) => String(without(of, job)) === String(without(line, job)));

/** From the first to the last job that has another place than before; empty where none has. */
function stretchOf(of: Line): Line {
  const changed = line.filter((job, place) => of[place] !== job);
  return changed.length === 0 ? [] : of.slice(changed[0]!, changed.at(-1)! + 1);
}
const isTogether = (of: Line): boolean => {
  const stretch = stretchOf(of).map((job) => kinds[job]!);
  return stretch.filter((kind, at) => at > 0 && kind !== stretch[at - 1]).length <= 1;
};

it('a change of a line keeps all jobs, and moves one of them or puts those of one kind in a stretch together', () => {
  const isWhole = (of: Line): boolean => String(of.toSorted((a, b) => a - b)) === String(line);
  expect(tried().filter((of) => !isWhole(of) || !(isMoved(of) || isTogether(of)))).toEqual([]);
});
it('a job can go anywhere', () => {
  const places = tried()
    .filter(isMoved)
    .flatMap((of) => line.map((job) => `${job} at ${of.indexOf(job)}`));
  expect(new Set(places).size).toBe(64);
});
it('what is put together begins with the kind that comes first, in the order of the line', () => {
  const together = tried().filter((of) => !isMoved(of));
  expect(together.map(String)).toContain('0,2,4,6,1,3,5,7');
  expect(together.map(String)).toContain('0,1,3,5,7,2,4,6');
  for (const of of together) {
    const first = of.findIndex((job, place) => job !== line[place]);
    expect(kinds[of[first]!]).toBe(kinds[line[first - 1]!]);
    for (const kind of [0, 1]) {
      const ofKind = (job: number): boolean => kinds[job] === kind;
      expect(of.filter(ofKind)).toEqual(line.filter(ofKind));
    }
  }
});
