import type { CutLayout, CutPiece, CuttingPlan, PlannedLine } from '../core/plan/result.ts';
import { cuttingWords as words } from '../words/cutting.ts';
import { planWords } from '../words/plan.ts';
import type { CutAlike } from './cut-alike.ts';
import { drawCut } from './draw-cut.ts';
import { fill } from './fill.ts';
import { showArea, showLength, showMillimetres } from './millimetres.ts';
import { numbersText } from './model-lists.ts';
import { showCount } from './numbers.ts';
import { pieceName } from './piece-name.ts';
import { showPieces } from './show-pieces.ts';
import type { ShownLayout } from './shown-cutting.ts';
import { shown } from './shown.ts';

type By = CuttingPlan['by'];

/** One sheet, roll or length, or several cut alike: what lies where, to read and to draw. */
export function showLayout(key: string, alike: CutAlike, by: By, lines: readonly PlannedLine[]): ShownLayout {
  const { numbers, layout } = alike;
  return {
    title: shown(`${key}.title`, titleText(numbers, by)),
    size: shown(`${key}.size`, sizeText(layout, by)),
    holds: shown(`${key}.holds`, holdsText(layout, by)),
    left: shown(`${key}.left`, leftText(layout, by)),
    pieces: showPieces(`${key}.pieces`, alike, by, lines),
    drawing: drawCut(`${key}.drawing`, layout, by),
  };
}

function titleText(numbers: readonly number[], by: By): string {
  return numbers.length === 1
    ? fill(words.one[by], { n: showCount(numbers[0]!) })
    : fill(words.alike[by], { list: numbersText(numbers) });
}

function sizeText({ pack, width, length }: CutLayout, by: By): string {
  const size = by === 'lengths' ? showLength(length) : showArea(width, length);
  return pack === undefined ? fill(words.sizeFromStock, { size }) : size;
}

function leftText({ width, length, used }: CutLayout, by: By): string {
  const left = length.sub(used);
  if (left.compare(0) <= 0) return '';
  return fill<string>(words.left[by], {
    width: showMillimetres(width),
    length: by === 'sheets' ? showMillimetres(left) : showLength(left),
  });
}

/** How many of each piece, in the order in which they lie. */
function holdsText({ pieces }: CutLayout, by: By): string {
  const kinds = pieces.map((piece) => ({ piece: pieceName(piece), size: sizeAsWritten(piece, by) }));
  const names = [...new Set(kinds.map(({ piece, size }) => `${piece} ${size}`))];
  const texts = names.map((name) => {
    const alike = kinds.filter(({ piece, size }) => `${piece} ${size}` === name);
    return fill(words.holds, { ...alike[0]!, count: showCount(alike.length) });
  });
  return texts.join(planWords.andAlso);
}

/** As it is written: a turned one is no other piece. */
function sizeAsWritten({ width, height, turned }: CutPiece, by: By): string {
  if (by === 'lengths') return showLength(height);
  return turned ? showArea(height, width) : showArea(width, height);
}
