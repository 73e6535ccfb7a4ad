import { readFileSync } from 'node:fs';
import type { PhrasingContent, TableCell } from 'mdast';
import { parse } from 'yaml';
import { z } from 'zod';
import { parseMarkdown } from '../../src/reading/prose/markdown.ts';
import { guideShape, handsOnShape, stepUseShape, waitShape } from '../../src/reading/shape/guide-shape.ts';
import { materialShape } from '../../src/reading/shape/material-shape.ts';
import { moduleShape } from '../../src/reading/shape/module-shape.ts';
import { programShape } from '../../src/reading/shape/program-shape.ts';
import { finishedShape } from '../../src/reading/shape/stock-shape.ts';
import { toolShape } from '../../src/reading/shape/tool-shape.ts';
import { plainText } from '../../src/rendering/prose.ts';

type Shape = z.ZodType;
type Value = string | readonly Value[] | { readonly [key: string]: Value };

/** The shapes by the files that tables of the manual name. What a step leaves open to its readers is put in. */
export const shapes: Readonly<Record<string, Shape>> = {
  'program.yaml': programShape,
  'materials/ID.yaml': materialShape,
  'tools/ID.yaml': toolShape,
  'stock.yaml': z.strictObject({ models: finishedShape }),
  'guide.md': guideShape.extend({
    steps: z.array(
      guideShape.shape.steps.element.extend({
        'hands-on': handsOnShape.optional(),
        wait: waitShape.optional(),
        uses: z.array(stepUseShape).optional(),
      }),
    ),
  }),
  'module.md': moduleShape,
};

/** A row of a table of keys. */
export interface KeyRow {
  readonly file: string;
  /** Where its table stands: `materials/pieces`; more than one where several keys say the same. */
  readonly at: readonly string[];
  readonly example: Value;
  readonly means: string;
  readonly needed: string;
}

/** All rows of the tables of a page whose first heading says, in code, where its keys stand. */
export function keyRowsOf(page: string): readonly KeyRow[] {
  const text = readFileSync(new URL(`../../content/manual/${page}`, import.meta.url), 'utf8');
  let file = '';
  return parseMarkdown(text, 0).children.flatMap((node) => {
    if (node.type !== 'table') return [];
    const [head, ...rows] = node.children;
    const { file: named, at } = placeOf(head!.children[0]!);
    file = named ?? file;
    return at.length === 0 ? [] : rows.map(({ children }) => rowOf(children, file, at));
  });
}

function rowOf(cells: readonly TableCell[], file: string, at: readonly string[]): KeyRow {
  const [written, means, needed] = cells.map((cell) => plainText(cell));
  const [code] = cells[0]!.children;
  const example = parse(code?.type === 'inlineCode' ? code.value : written!, { schema: 'failsafe' }) as Value;
  return { file, at, example, means: means!, needed: isStrong(cells[2]) ? `**${needed}**` : needed! };
}

const isStrong = (cell: TableCell | undefined): boolean =>
  cell?.children.length === 1 && cell.children[0]!.type === 'strong';

/** "each of `in-use`, `between` or `after`, `uses`" -> `in-use/between/uses`, `in-use/after/uses`. */
function placeOf({ children }: TableCell): { readonly file?: string; readonly at: readonly string[] } {
  let file: string | undefined;
  let levels: string[][] = [];
  let before: PhrasingContent | undefined;
  for (const node of children) {
    if (node.type === 'inlineCode') {
      if (Object.hasOwn(shapes, node.value)) [file, levels] = [node.value, []];
      else if (before?.type === 'text' && before.value.trim() === 'or') levels.at(-1)!.push(node.value);
      else levels.push([node.value]);
    }
    before = node;
  }
  const isOfKeys = file !== undefined || levels.length > 0;
  const at = levels.reduce(
    (paths, names) => paths.flatMap((path) => names.map((name) => join(path, name))),
    [''],
  );
  return { ...(file === undefined ? {} : { file }), at: isOfKeys ? at : [] };
}

const join = (path: string, name: string): string => (path === '' ? name : `${path}/${name}`);

/** A key of a shape: `materials/pieces/size`. What stands under keys of the author's own has their map's path. */
export interface Key {
  readonly path: string;
  /** Whether it holds keys of its own. */
  readonly isGroup: boolean;
  /** Absent where its shape leaves that to a reader. */
  readonly isNeeded?: boolean;
}

export function keysOf(shape: Shape, path = ''): readonly Key[] {
  const inner = within(shape);
  if (!(inner instanceof z.ZodObject)) return [];
  return Object.entries(inner.shape).flatMap(([name, own]) => {
    const below = keysOf(own as Shape, join(path, name));
    const needed = own instanceof z.ZodCustom ? {} : { isNeeded: !(own instanceof z.ZodOptional) };
    return [{ path: join(path, name), isGroup: below.length > 0, ...needed }, ...below];
  });
}

/** The keys that an example of a row is about. */
export function keysIn(example: Value, shape: Shape, path: string): readonly string[] {
  const inner = shapeOf(shape);
  if (isMap(example) && inner instanceof z.ZodArray) return keysIn(example, inner.element as Shape, path);
  if (!isMap(example) || !(inner instanceof z.ZodObject || inner instanceof z.ZodRecord)) return [path];
  if (inner instanceof z.ZodRecord) {
    const own = inner.valueType as Shape;
    const isOfRecords = within(own) instanceof z.ZodObject;
    return isOfRecords ? Object.values(example).flatMap((value) => keysIn(value, own, path)) : [path];
  }
  return Object.entries(example).flatMap(([key, value]) => {
    const own = inner.shape[key] as Shape | undefined;
    return own ? keysIn(value, own, join(path, key)) : [join(path, key)];
  });
}

/** The shape at a path, of the records of lists and of maps by the author's own keys. */
export function shapeAt(shape: Shape, path: string): Shape {
  const names = path === '' ? [] : path.split('/');
  return names.reduce((at, name) => (within(at) as z.ZodObject).shape[name] as Shape, shape);
}

/** The smallest sound file of each kind with a record in every list, so that any row can be put into it. */
const sound: Readonly<Record<string, string>> = {
  'program.yaml': `
    name: Harbour Skills Room
    currency: GBP
    time-zone: Europe/London
    exchange: { USD: { rate: 0.79, on: 2026-10-01 } }
    suppliers: { craft-shop: { name: a craft shop } }`,
  'materials/ID.yaml': `
    name: Gelatin powder
    density: { is: 0.6 g/mL }
    packs: [{ holds: 500 g }]
    instead: [{ use: agar-powder }]`,
  'tools/ID.yaml': 'name: Loaf tin',
  'guide.md': `
    title: Practice strap
    levels: [{ id: shallow }]
    parts: [{ id: skin }]
    keeps: [{ for: 5 d, at: fridge }]
    mixes: [{ id: gel, makes: 1.2 L, of: [{ use: water, amount: 8–14 g }] }]
    materials: [{ use: gel, amount: 8–14 g }, { use: felt, pieces: [{ id: skin, size: 150 mm x 100 mm }] }]
    patterns: [{ id: stencil, file: stencil.svg }]
    tools: [{ use: stockpot, held: { from: melt, to: pour } }]
    steps: [{ id: melt, wait: { usual: 12 h }, uses: [{ material: gel }] }]
    checks: [{ id: grey, ask: Grey? }]
    cautions: [{ id: hot, signal: warning, hazard: hot gel }]
    in-use: { renew: [{ id: remelt, materials: [{ material: water, amount: 60 mL }] }],
      set-up: { uses: [{ material: tape, amount: 150 mm }] } }
    states: { for: 4 models }
    history: [{ version: 1.0.0, what: first version }]`,
  'module.md': `
    title: First straps
    objectives: [{ id: lash, does: lash a strap }]
    activities: [{ id: show, what: An instructor shows it. }]
    prepare: [{ read: the-knots }]
    cohort: { people: [{ id: trainees, count: 12 }] }
    session: { booked: 3 h, agenda: [{ id: brief }] }
    stations: [{ id: lashing, takes: 20 min, models: [{ guide: strap }], tools: [{ use: scissors }] }]
    scoring: { items: [{ id: holds, says: It holds }], ratings: [{ id: flow }], penalties: [{ when: late, adds: 30 s }] }
    surveys: { items: [{ id: sure, ask: How sure? }] }
    self-check: [{ ask: Which?, choices: [this, that], right: 1, because: It is. }]
    history: [{ version: 1.0.0, what: First issue. }]`,
};

/** Keys of which a record has one alone. */
const ways = [
  ['amount', 'count', 'length', 'pieces'],
  ['size', 'length'],
  ['read', 'watch', 'do'],
];

type Keyed = Readonly<Record<string, Value>>;

/** A sound file with the example of a row in its place. */
export function fileWith({ file, at, example }: KeyRow): Value {
  const names = at[0] === '' ? [] : at[0]!.split('/');
  const inPlace = names.reduceRight<Value>((value, name) => ({ [name]: value }), example);
  return merged(parse(sound[file]!, { schema: 'failsafe' }) as Value, inPlace);
}

/** One value with another put into it: into the record of a list that has its key, and of keys that exclude each other one. */
function merged(into: Value | undefined, value: Value): Value {
  if (!isMap(value)) return value;
  if (Array.isArray(into)) {
    const [key] = Object.keys(value);
    const index = Math.max(
      0,
      into.findIndex((record) => isMap(record as Value) && key! in (record as Keyed)),
    );
    return into.map((record, i) => (i === index ? merged(record as Value, value) : (record as Value)));
  }
  const record = isMap(into) ? into : {};
  const others = ways.filter((all) => all.some((key) => key in value)).flat();
  const kept = Object.entries(record).filter(([key]) => key in value || !others.includes(key));
  const put = Object.entries(value).map(([key, own]) => [key, merged(record[key], own)] as const);
  return Object.fromEntries([...kept, ...put]);
}

const isMap = (value: Value | undefined): value is Keyed =>
  typeof value === 'object' && !Array.isArray(value);

function shapeOf(shape: Shape): Shape {
  return shape instanceof z.ZodOptional ? shapeOf(shape.unwrap() as Shape) : shape;
}

/** The shape of one record: of a list, or under keys of the author's own. */
function within(shape: Shape): Shape {
  const inner = shapeOf(shape);
  if (inner instanceof z.ZodArray) return within(inner.element as Shape);
  return inner instanceof z.ZodRecord ? within(inner.valueType as Shape) : inner;
}
