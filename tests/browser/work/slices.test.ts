import { describe, expect, it } from 'vitest';
import { runInSlices } from '../../../src/browser/work/slices.ts';

/** A page whose clock goes on by as much as each piece of work takes. */
function aPage() {
  let clock = 0;
  const turns: (() => void)[] = [];
  const slices: number[] = [];
  return {
    slices,
    slicing: { now: () => clock, later: (goOn: () => void) => void turns.push(goOn), budget: 8 },
    takes: (milliseconds: number) => (clock += milliseconds),
    live: () => {
      for (let turn = turns.shift(); turn; turn = turns.shift()) {
        const began = clock;
        turn();
        slices.push(clock - began);
      }
    },
    turn: () => turns.shift()!(),
  };
}

function* work(page: ReturnType<typeof aPage>, pieces: number, each: number) {
  for (let piece = 0; piece < pieces; piece++) {
    page.takes(each);
    yield;
  }
  return 'done';
}

const never = (fault: unknown) => expect.unreachable(String(fault));

describe('work in slices', () => {
  it('rests after eight milliseconds, and ends with what the work comes to', () => {
    const page = aPage();
    const results: string[] = [];
    runInSlices(work(page, 10, 3), page.slicing, (result) => results.push(result), never);
    expect(results).toEqual([]);
    page.live();
    expect(results).toEqual(['done']);
    expect(page.slices).toEqual([9, 9, 9, 3]);
  });

  it('does nothing any more once it is stopped', () => {
    const page = aPage();
    const results: string[] = [];
    const stop = runInSlices(work(page, 10, 3), page.slicing, (result) => results.push(result), never);
    page.turn();
    stop();
    page.live();
    expect(results).toEqual([]);
    expect(page.slices).toEqual([0]);
  });

  it('hands on what the work throws', () => {
    const page = aPage();
    const faults: unknown[] = [];
    function* failing() {
      yield;
      throw new Error('no tin');
    }
    runInSlices(
      failing(),
      page.slicing,
      () => expect.unreachable(),
      (fault) => faults.push(fault),
    );
    page.live();
    expect(faults).toEqual([new Error('no tin')]);
  });
});
