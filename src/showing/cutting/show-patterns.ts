import type { DrawingMeasure } from '../../core/quantity/drawing-measure.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { Plan, PlannedLine } from '../../core/plan/result.ts';
import type { Exact } from '../../core/quantity/exact.ts';
import { convert, measure } from '../../core/quantity/quantity.ts';
import { sheetWords } from '../../words/sheets.ts';
import { capital, counted, fill, inWords, listed } from '../text/fill.ts';
import { showArea } from './cut-lengths.ts';
import { place } from '../text/millimetres.ts';
import { materialName } from '../text/names.ts';
import { shown } from '../shown/shown.ts';
import type { Units } from '../text/systems.ts';
import type { ShownPattern, ShownPatterns, ShownUnprinted } from '../shown/shown-sheets.ts';
import { tilesOf } from './tiles.ts';

const { patterns: words } = sheetWords;

/** Plain rectangles on more sheets of paper than this are marked with a rule: paper stretches, and tape creeps. */
const mostTiles = 6;

/** The size of the drawing of each pattern, by the pattern's id; of one that states none, nothing. */
export type Drawings = Readonly<Record<string, DrawingMeasure | undefined>>;

type Row = PlannedLine['at']['materials'][number];
type PieceAt = Row['pieces'][number];

/** Something to print at 1:1: a drawing with all pieces that are cut by it, or one piece that is a plain rectangle. */
interface Outline {
  readonly id: string;
  readonly name: string;
  readonly cut: readonly string[];
  readonly width: Exact;
  readonly height: Exact;
  readonly mayTurn: boolean;
  readonly file?: string;
}

/** What is printed at 1:1 for one line of a plan: its drawings first, then the plain pieces. */
export function showPatterns(
  key: string,
  plan: Plan,
  index: number,
  drawings: Drawings,
  workspace: Workspace,
): ShownPatterns {
  const line = plan.lines[index]!;
  const outlines = [...drawnOutlines(line, drawings, workspace), ...plainOutlines(line, workspace)];
  const patterns = outlines.map((outline, i) =>
    showPattern(`${key}.patterns[${i}]`, outline, workspace.program.units),
  );
  const isPrinted = ({ file, tiles }: ShownPattern): boolean =>
    file !== undefined || tiles.length <= mostTiles;
  return {
    patterns: patterns.filter(isPrinted),
    unprinted: patterns.filter((pattern) => !isPrinted(pattern)).map(unprinted),
    unsized: shown(`${key}.unsized`, unsizedText(line, drawings)),
  };
}

function drawnOutlines(line: PlannedLine, drawings: Drawings, workspace: Workspace): readonly Outline[] {
  return line.at.patterns.flatMap(({ id, file }) => {
    const drawing = drawings[id];
    if (!drawing) return [];
    const pieces = piecesOf(line).filter(({ piece }) => piece.pattern === id);
    return [
      {
        id,
        file,
        name: capital(inWords(id)),
        cut: pieces.map(({ row, piece }) => cutText(row, piece, line, workspace)),
        width: drawing.width,
        height: drawing.height,
        mayTurn: pieces.every(({ piece }) => piece.turn),
      },
    ];
  });
}

/** What pieces are to be cut by and nobody can print: its drawing states no size in mm. */
function unsizedText({ at: { patterns } }: PlannedLine, drawings: Drawings): string {
  const names = patterns.filter(({ id }) => !drawings[id]).map(({ id }) => capital(inWords(id)));
  return names.length === 0 ? '' : fill(words.unsized, { patterns: listed(names) });
}

function plainOutlines(line: PlannedLine, workspace: Workspace): readonly Outline[] {
  return piecesOf(line)
    .filter(({ piece }) => piece.pattern === undefined && piece.size.sides.length === 2)
    .map(({ row, piece }) => ({
      id: `${row.id}-${piece.id}`,
      name: piece.id === row.use ? materialName(row.use, workspace) : capital(inWords(piece.id)),
      cut: [cutText(row, piece, line, workspace)],
      mayTurn: piece.turn,
      ...upright(piece),
    }));
}

/** As it takes fewest sheets of paper; a plain rectangle loses nothing by being turned. */
function upright({ size }: PieceAt): { readonly width: Exact; readonly height: Exact } {
  const [width, height] = size.sides.map((side) => convert(measure(side), 'mm').value);
  const [across, along] = [width!, height!];
  const tiles = (w: Exact, h: Exact): number => tilesOf('', place(w), place(h)).tiles.length;
  return tiles(along, across) < tiles(across, along)
    ? { width: along, height: across }
    : { width: across, height: along };
}

interface PieceOfRow {
  readonly row: Row;
  readonly piece: PieceAt;
}

function piecesOf({ at, rows }: PlannedLine): readonly PieceOfRow[] {
  return rows.flatMap((need) => {
    const row = at.materials[need.row]!;
    return row.pieces.map((piece) => ({ row, piece }));
  });
}

/** "4 pieces of Coated stretch fabric": for the whole batch. */
function cutText(row: Row, piece: PieceAt, line: PlannedLine, workspace: Workspace): string {
  const need = line.rows.find((known) => line.at.materials[known.row] === row);
  const count = need?.pieces.find((known) => known.piece === piece.id)?.count ?? 0;
  return fill(words.pieces, { count: counted(count, 'piece'), material: materialName(row.use, workspace) });
}

function showPattern(key: string, outline: Outline, units: Units): ShownPattern {
  const { id, name, cut, file, mayTurn } = outline;
  const [width, height] = [place(outline.width), place(outline.height)];
  return {
    id,
    name: shown(`${key}.name`, name),
    size: shown(`${key}.size`, showArea(outline.width, outline.height, units)),
    cut: shown(`${key}.cut`, cut.join(', ')),
    turn: shown(`${key}.turn`, mayTurn ? words.mayTurn : words.noTurn),
    ...(file === undefined ? {} : { file }),
    width,
    height,
    mayTurn,
    ...tilesOf(`${key}.tiles`, width, height),
  };
}

function unprinted({ name, size, cut }: ShownPattern): ShownUnprinted {
  return { name, size, cut };
}
