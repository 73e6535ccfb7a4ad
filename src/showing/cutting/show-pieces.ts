import type { CutPiece, CuttingPlan, PlannedLine } from '../../core/plan/result.ts';
import { cuttingWords as words } from '../../words/cutting.ts';
import { planWords } from '../../words/plan.ts';
import type { CutAlike } from './cut-alike.ts';
import { fill, listed } from '../text/fill.ts';
import { areaNumbers, ruleNumber, showLength } from './cut-lengths.ts';
import { numbersText } from '../text/model-lists.ts';
import { lineAmong } from '../text/names.ts';
import { showCount } from '../text/numbers.ts';
import { pieceName } from './piece-name.ts';
import type { ShownPiece } from '../shown/shown-cutting.ts';
import { shown } from '../shown/shown.ts';
import type { Units } from '../text/systems.ts';

/** Pieces at places of their own: one, or along a length those that follow each other and are alike. */
interface Row {
  readonly pieces: readonly CutPiece[];
  /** From 1. */
  readonly numbers: readonly number[];
  /** Of each piece, on each of the sheets that are cut alike. */
  readonly models: readonly (number | undefined)[];
}

/** The table beside a drawing: which piece lies where, and for which model. */
export function showPieces(
  key: string,
  { layout, models }: CutAlike,
  by: CuttingPlan['by'],
  lines: readonly PlannedLine[],
  units: Units,
): readonly ShownPiece[] {
  const rows = layout.pieces.map((piece, i) => ({ pieces: [piece], numbers: [i + 1], models: models[i]! }));
  return (by === 'lengths' ? joined(rows) : rows).map((row, i) =>
    showRow(`${key}[${i}]`, row, by, lines, units),
  );
}

function joined(rows: readonly Row[]): readonly Row[] {
  return rows.reduce<Row[]>((all, row) => {
    const last = all.at(-1);
    if (!last || !isAlike(last.pieces[0]!, row.pieces[0]!)) return [...all, row];
    return [
      ...all.slice(0, -1),
      {
        pieces: [...last.pieces, ...row.pieces],
        numbers: [...last.numbers, ...row.numbers],
        models: [...last.models, ...row.models],
      },
    ];
  }, []);
}

function isAlike(a: CutPiece, b: CutPiece): boolean {
  return a.line === b.line && a.row === b.row && a.piece === b.piece && a.height.equals(b.height);
}

function showRow(
  key: string,
  { pieces, numbers, models }: Row,
  by: CuttingPlan['by'],
  lines: readonly PlannedLine[],
  units: Units,
): ShownPiece {
  const piece = pieces[0]!;
  const isPlaced = by !== 'lengths';
  const size = isPlaced ? areaNumbers(piece.width, piece.height, units) : showLength(piece.height, units);
  return {
    number: shown(`${key}.number`, numbersText(numbers)),
    piece: shown(`${key}.piece`, pieceName(piece, lines)),
    of: shown(`${key}.of`, lineAmong(lines, piece.line)),
    model: shown(`${key}.model`, isPlaced ? inOrder(models) : together(models)),
    size: shown(`${key}.size`, piece.turned ? fill(words.turned, { size }) : size),
    fromLeft: shown(`${key}.fromLeft`, isPlaced ? ruleNumber(piece.x, units) : ''),
    fromBottom: shown(`${key}.fromBottom`, isPlaced ? ruleNumber(piece.y, units) : ''),
  };
}

/** So many sheets cut alike have their models listed. */
const modelsListed = 6;

const modelText = (model: number | undefined): string =>
  model === undefined ? words.extra : showCount(model);

/** In the order of the sheets, since that is how they are cut: "1, 3 and 5". */
function inOrder(models: readonly (number | undefined)[]): string {
  const texts = models.map(modelText);
  const [first = planWords.none] = texts;
  if (new Set(texts).size === 1) return first;
  if (texts.length <= modelsListed) return listed(texts);
  return fill(words.manyModels, { first, last: texts.at(-1)! });
}

/** "1–12", "1–12 and spare". */
function together(models: readonly (number | undefined)[]): string {
  const known = [...new Set(models.filter((model) => model !== undefined))].sort((a, b) => a - b);
  const spare = models.includes(undefined) ? [words.extra] : [];
  return listed([...(known.length > 0 ? [numbersText(known)] : []), ...spare]);
}
