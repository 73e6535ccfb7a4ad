import type { CutLayout, CutPiece, CuttingPlan, Plan, PlannedLine } from '../../core/plan/result.ts';
import type { Exact } from '../../core/quantity/exact.ts';
import { cuttingWords as words } from '../../words/cutting.ts';
import { planWords } from '../../words/plan.ts';
import type { nouns } from '../../words/units.ts';
import type { CutAlike } from './cut-alike.ts';
import { drawCut } from './draw-cut.ts';
import { counted, fill } from '../text/fill.ts';
import { showArea, showLength } from './cut-lengths.ts';
import { numbersText } from '../text/model-lists.ts';
import { showCount } from '../text/numbers.ts';
import { offcutOf } from './offcut.ts';
import { isNamed, pieceName } from './piece-name.ts';
import { showPieces } from './show-pieces.ts';
import type { ShownLayout } from '../shown/shown-cutting.ts';
import { shown } from '../shown/shown.ts';
import { type Units, firstSystem } from '../text/systems.ts';

type By = CuttingPlan['by'];

/** One sheet, roll or length, or several cut alike: what lies where, to read and to draw. */
export function showLayout(
  key: string,
  alike: CutAlike,
  cutting: CuttingPlan,
  plan: Plan,
  units: Units,
): ShownLayout {
  const { numbers, layout } = alike;
  const { by } = cutting;
  const holds = holdsText(layout, by, plan.lines, units);
  const left = leftText(layout, offcutOf(layout, cutting, plan), by, units);
  return {
    title: shown(`${key}.title`, titleText(numbers, by)),
    what: shown(`${key}.what`, whatText(layout, numbers.length, by, units)),
    size: shown(`${key}.size`, sizeText(layout, by, units)),
    holds: shown(`${key}.holds`, holds),
    left: shown(`${key}.left`, left),
    sizeHead: shown(`${key}.sizeHead`, words.sizeHead[units]),
    caption: shown(`${key}.caption`, captionText(by === 'lengths' ? [holds, left] : [left])),
    pieces: showPieces(`${key}.pieces`, alike, by, plan.lines, units),
    drawing: drawCut(`${key}.drawing`, layout, by, plan.lines, firstSystem(units)),
  };
}

/** What is counted. */
export const sheetNouns = { sheets: 'sheet', roll: 'roll', lengths: 'length' } as const satisfies Record<
  By,
  keyof typeof nouns
>;

/** "2 sheets of 600 mm × 450 mm", "1 length of 320 mm from stock". */
export function whatText({ pack, width, length }: CutLayout, count: number, by: By, units: Units): string {
  return fill(pack === undefined ? words.cutFromStock : words.cutFrom, {
    count: counted(count, sheetNouns[by]),
    size: lengthsText(width, length, by, units),
  });
}

function titleText(numbers: readonly number[], by: By): string {
  return numbers.length === 1
    ? fill(words.one[by], { n: showCount(numbers[0]!) })
    : fill(words.alike[by], { list: numbersText(numbers) });
}

function sizeText({ pack, width, length }: CutLayout, by: By, units: Units): string {
  const size = lengthsText(width, length, by, units);
  return pack === undefined ? fill(words.sizeFromStock, { size }) : size;
}

function lengthsText(width: Exact, length: Exact, by: By, units: Units): string {
  return by === 'lengths' ? showLength(length, units) : showArea(width, length, units);
}

function leftText({ width }: CutLayout, left: Exact, by: By, units: Units): string {
  if (left.n === 0n) return '';
  return fill<string>(words.left[by], {
    area: showArea(width, left, units),
    length: showLength(left, units),
  });
}

function captionText(texts: readonly string[]): string {
  return texts.filter((text) => text !== '').join(planWords.andAlso);
}

/** How many of each piece, in the order in which they lie. */
function holdsText({ pieces }: CutLayout, by: By, lines: readonly PlannedLine[], units: Units): string {
  const counts = new Map<string, { readonly piece: CutPiece; readonly count: number }>();
  for (const piece of pieces) {
    const kind = `${pieceName(piece, lines)} ${sizeAsWritten(piece, by, units)}`;
    counts.set(kind, { piece, count: (counts.get(kind)?.count ?? 0) + 1 });
  }
  const texts = [...counts.values()].map(({ piece, count }) =>
    fill(isNamed(piece, lines) ? words.holds : words.holdsUnnamed, {
      piece: pieceName(piece, lines),
      count: showCount(count),
      size: sizeAsWritten(piece, by, units),
    }),
  );
  return texts.join(planWords.andAlso);
}

/** As it is written: a turned one is no other piece. */
function sizeAsWritten({ width, height, turned }: CutPiece, by: By, units: Units): string {
  const [across, along] = turned ? [height, width] : [width, height];
  return lengthsText(across, by === 'lengths' ? height : along, by, units);
}
