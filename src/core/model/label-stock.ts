import { type Paper, papers } from './paper.ts';

/** A sheet of labels, in mm. The pitch is from the edge of one label to the same edge of the next. */
export interface LabelStock {
  readonly id: string;
  readonly paper: Paper;
  readonly across: number;
  readonly down: number;
  readonly width: number;
  readonly height: number;
  readonly pitchAcross: number;
  readonly pitchDown: number;
  readonly left: number;
  readonly top: number;
}

/**
 * The usual sheets of labels, the most usual of each paper first. Common practice, no source; the margins follow: what
 * is left of the paper stands half on each side. Those on Letter are whole fractions of an inch.
 */
export const labelStocks: readonly LabelStock[] = [
  stock('A4', [3, 7], [63.5, 38.1], [2.5, 0]),
  stock('A4', [2, 7], [99.1, 38.1], [2.5, 0]),
  stock('A4', [2, 4], [99.1, 67.7], [2.5, 0]),
  stock('Letter', [3, 10], [66.675, 25.4], [3.175, 0]),
  stock('Letter', [2, 7], [101.6, 33.8667], [4.7625, 0]),
  stock('Letter', [2, 5], [101.6, 50.8], [4.7625, 0]),
];

type Pair = readonly [across: number, down: number];

function stock(paper: Paper, [across, down]: Pair, [width, height]: Pair, gap: Pair): LabelStock {
  const [pitchAcross, pitchDown] = [width + gap[0], height + gap[1]];
  const [allAcross, allDown] = [across * pitchAcross - gap[0], down * pitchDown - gap[1]];
  return {
    id: `${paper.toLowerCase()}-${across}-by-${down}`,
    paper,
    across,
    down,
    width,
    height,
    pitchAcross,
    pitchDown,
    left: tidy((papers[paper].width - allAcross) / 2),
    top: tidy((papers[paper].height - allDown) / 2),
  };
}

/** To a thousandth of a millimetre, so that sums of decimals end. */
function tidy(length: number): number {
  return Math.round(length * 1000) / 1000;
}
