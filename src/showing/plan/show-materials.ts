import type { Basis } from '../../core/model/guide.ts';
import { guideUsed, isGuideUse } from '../../core/model/guide-use.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { MixNeed, PlannedLine, RowNeed } from '../../core/plan/result.ts';
import type { RowAt } from '../../core/plan/scale/step-uses.ts';
import { exact, zero } from '../../core/quantity/exact.ts';
import type { Measure } from '../../core/quantity/quantity.ts';
import { planWords } from '../../words/plan.ts';
import { showAsWritten } from '../text/amounts.ts';
import { properly } from '../text/author-text.ts';
import { counted, fill, inWords, noBreak } from '../text/fill.ts';
import { showCount, showRatio } from '../text/numbers.ts';
import { materialName, toolName, useName } from '../text/names.ts';
import { showFor, showSizeIn, showTotal } from './amounts-of-uses.ts';
import { shown } from '../shown/shown.ts';
import type { ShownMaterial } from '../shown/shown-plan.ts';

/** Rows of a line as its guide lists them; below the first row that uses a mix, what the mix is made of. */
export function showMaterials(
  key: string,
  line: PlannedLine,
  workspace: Workspace,
): readonly ShownMaterial[] {
  const mixed = new Set<string>();
  const rows = line.rows.flatMap((need) => {
    const row = line.at.materials[need.row]!;
    const mix = mixed.has(row.use) ? undefined : line.mixes.find((known) => known.mix === row.use);
    if (mix) mixed.add(mix.mix);
    return [rowTexts(row, need, line, workspace), ...(mix ? ingredientTexts(mix, line, workspace) : [])];
  });
  return rows.map((texts, i) => finished(`${key}[${i}]`, texts));
}

interface Texts {
  readonly id: string;
  readonly material?: string;
  readonly leadsTo?: string;
  readonly ingredientOf?: string;
  readonly name: string;
  readonly must: string;
  readonly one: string;
  readonly total: string;
  readonly notes: readonly string[];
}

function finished(
  key: string,
  { id, material, leadsTo, ingredientOf, notes, ...texts }: Texts,
): ShownMaterial {
  return {
    id,
    ...(material === undefined ? {} : { material }),
    ...(leadsTo === undefined ? {} : { leadsTo }),
    ...(ingredientOf === undefined ? { anchor: `row-${id}` } : { ingredientOf }),
    name: shown(`${key}.name`, texts.name),
    must: shown(`${key}.must`, texts.must),
    one: shown(`${key}.one`, texts.one),
    total: shown(`${key}.total`, texts.total),
    note: shown(`${key}.note`, notes.join(planWords.andAlso)),
  };
}

function rowTexts(row: RowAt, need: RowNeed, line: PlannedLine, workspace: Workspace): Texts {
  const isMix = line.at.mixes.some(({ id }) => id === row.use);
  const pieces = row.pieces.length > 0;
  return {
    id: row.id,
    ...(isMix || isGuideUse(row.use) ? {} : { material: row.use }),
    ...(isMix ? {} : { leadsTo: wayTo(row.use) }),
    name: useName(line.at, row.id, workspace),
    must: mustOf(row.use, workspace),
    one: rowOneText(row, need, line, workspace),
    total: pieces
      ? piecesText(row, new Map(need.pieces.map(({ piece, count }) => [piece, count])), workspace)
      : showTotal(line, row.id, workspace),
    notes: [
      ...rowNotes(row, line, workspace),
      ...(row.does === undefined ? usualNote(line, row.id, need, workspace) : []),
    ],
  };
}

function wayTo(use: string): string {
  return isGuideUse(use) ? `guides/${guideUsed(use)}/index.html` : `materials/index.html#material-${use}`;
}

/** What one model takes; of what does several, its share. */
function rowOneText(row: RowAt, need: RowNeed, line: PlannedLine, workspace: Workspace): string {
  if (row.pieces.length > 0) {
    return piecesText(row, new Map(row.pieces.map(({ id, count }) => [id, count])), workspace);
  }
  if (row.does === undefined) return oneText(line, row.id, need.one, workspace);
  return fill(planWords.materials.shareOf, { n: showCount(row.does), amount: wholeText(row) });
}

/** The amount of a row as its guide has it: what is bought whole. */
function wholeText({ amount }: RowAt): string {
  return amount ? showAsWritten({ value: amount.most, unit: amount.unit }) : '';
}

function doesNote(row: RowAt, does: number): readonly string[] {
  return [fill(planWords.materials.does, { amount: wholeText(row), models: counted(does, 'model') })];
}

function ingredientTexts(mix: MixNeed, line: PlannedLine, workspace: Workspace): readonly Texts[] {
  const written = line.at.mixes.find(({ id }) => id === mix.mix);
  return mix.ingredients.map((need, i) => {
    const until = written?.of[i]?.until;
    return {
      id: need.use,
      material: need.use,
      leadsTo: wayTo(need.use),
      ingredientOf: mix.mix,
      name: materialName(need.use, workspace),
      must: mustOf(need.use, workspace),
      one: oneText(line, need.use, need.one, workspace),
      total: showTotal(line, need.use, workspace),
      notes: [
        ...(until === undefined ? [] : [fill(planWords.materials.until, { sign: until })]),
        ...usualNote(line, need.use, need, workspace),
      ],
    };
  });
}

const mustOf = (id: string, workspace: Workspace): string =>
  workspace.materials[id]?.must.map(properly).join(planWords.listComma) ?? '';

/** What one model takes. A share of something counted stays a share: "1/12". */
function oneText(line: PlannedLine, use: string, one: Measure, workspace: Workspace): string {
  return one.unit === '' ? showRatio(one.value) : showFor(line, use, one, workspace);
}

/** "12 of 150 mm × 100 mm"; where a row has several kinds of pieces, each with its name. */
function piecesText(row: RowAt, counts: ReadonlyMap<string, number>, { program }: Workspace): string {
  const texts = row.pieces.map(({ id, size }) => {
    const facts = { count: showCount(counts.get(id) ?? 0), size: showSizeIn(program.units, size) };
    return row.pieces.length === 1
      ? fill(planWords.materials.pieces, facts)
      : fill(planWords.materials.namedPieces, { ...facts, piece: inWords(id) });
  });
  return texts.join(planWords.listComma);
}

function rowNotes(row: RowAt, line: PlannedLine, workspace: Workspace): readonly string[] {
  const { materials: words } = planWords;
  const leftBehind = line.at.mixes.find(({ id }) => id === row.use)?.leftBehind ?? '0';
  return [
    ...(row.does === undefined ? basisNote(row.for, workspace) : doesNote(row, row.does)),
    ...shareNote(words.waste, row.waste),
    ...shareNote(words.leftBehind, leftBehind),
  ];
}

const basisNotes: {
  readonly [P in Basis['per']]: (basis: Basis & { per: P }, workspace: Workspace) => readonly string[];
} = {
  model: () => [],
  part: ({ part }) => [fill(planWords.materials.perPart, { part: inWords(part) })],
  tool: ({ tool }, workspace) => [
    fill(planWords.materials.perTool, { tool: toolName(tool, workspace).toLowerCase() }),
  ],
  every: ({ models }) => [fill(planWords.materials.perEvery, { models: counted(models, 'model') })],
  batch: () => [planWords.materials.perBatch],
};

function basisNote(basis: Basis, workspace: Workspace): readonly string[] {
  const note = basisNotes[basis.per] as (basis: Basis, workspace: Workspace) => readonly string[];
  return note(basis, workspace);
}

function shareNote(
  sentence: (typeof planWords.materials)['waste' | 'leftBehind'],
  share: string,
): readonly string[] {
  const value = exact(share);
  if (value.equals(zero)) return [];
  return [fill(sentence, { share: `${showRatio(value.mul(100))}${noBreak}%` })];
}

/** Where a range was given: what is usually enough. */
function usualNote(
  line: PlannedLine,
  use: string,
  need: { readonly total: Measure; readonly usual: Measure },
  workspace: Workspace,
): readonly string[] {
  if (need.usual.value.equals(need.total.value)) return [];
  return [fill(planWords.materials.usually, { amount: showFor(line, use, need.usual, workspace) })];
}
