import { labelStocks } from '../../core/model/label-stock.ts';
import { htmlBytes } from '../../rendering/html.ts';
import { labelStyles } from '../../rendering/label-styles.ts';
import { qrCode } from '../../rendering/qr-code.ts';
import { cutCautions } from '../../showing/safety/cut-cautions.ts';
import { labelPages, showChoice } from '../../showing/sheets/label-pages.ts';
import { showBenchCautions } from '../../showing/safety/show-bench-cautions.ts';
import { showLabels } from '../../showing/sheets/show-labels.ts';
import { modelNumbers } from '../../showing/plan/show-model-numbers.ts';
import { showPatterns } from '../../showing/cutting/show-patterns.ts';
import { showRecord } from '../../showing/sheets/show-record.ts';
import { showShoppingList } from '../../showing/shopping/show-shopping-list.ts';
import { sheetWords } from '../../words/sheets.ts';
import { benchSheet } from '../../../templates/sheets/bench-sheet.tsx';
import { cuttingSheet } from '../../../templates/sheets/cutting-sheet.tsx';
import { labelsSheet } from '../../../templates/sheets/labels-sheet.tsx';
import type { Link } from '../../../templates/page/lists.tsx';
import { patternsSheet } from '../../../templates/sheets/patterns-sheet.tsx';
import { recordSheet } from '../../../templates/sheets/record-sheet.tsx';
import { shoppingSheet } from '../../../templates/sheets/shopping-sheet.tsx';
import { renderSheetProse } from '../prose/guide-prose.ts';
import { patternDrawings } from '../pictures/pattern-drawings.ts';
import type { PlannedGuide } from '../planned/planned-guides.ts';
import { type SheetContext, sheetFacts } from './sheet-context.ts';
import { sheetMargins } from './sheet-margins.ts';
import type { Files } from '../paths/files.ts';
import { webAddress } from '../paths/web-address.ts';

export type SheetId = keyof typeof sheetWords.names;

/** A sheet that a guide has, and the way to it from the guide's page. */
export interface SheetLink extends Link {
  readonly id: SheetId;
}

/** One kind of sheet: a document of its own in a folder of its name. */
interface Sheet {
  readonly isThere?: (planned: PlannedGuide) => boolean;
  /** By path below the folder. */
  readonly make: (context: SheetContext) => Files;
}

/** Every sheet, in the order in which they are wanted: before the bench, at the bench, after it. */
const sheets: Readonly<Record<SheetId, Sheet>> = {
  'bench-sheet': { make: benchFiles },
  'shopping-list': { make: shoppingFiles },
  'cutting-plan': { isThere: ({ plan }) => plan.cutting.length > 0, make: cuttingFiles },
  patterns: { isThere: hasPatterns, make: patternFiles },
  labels: { isThere: hasModels, make: labelFiles },
  'batch-record': { isThere: hasModels, make: recordFiles },
};
export const sheetIds = Object.keys(sheets) as readonly SheetId[];

/** The sheets that a guide has at its level, for the list on its page. */
export function sheetLinks(planned: PlannedGuide): readonly SheetLink[] {
  return sheetIds
    .filter((id) => sheets[id].isThere?.(planned) ?? true)
    .map((id) => ({ id, name: sheetWords.names[id], href: `${id}/index.html` }));
}

/** The sheets of a guide at one level, by path below the folder of its page. */
export function sheetPages(context: SheetContext, wanted: readonly SheetId[] = sheetIds): Files {
  const there = sheetLinks(context.planned).filter(({ id }) => wanted.includes(id));
  return new Map(
    there.flatMap(({ id }) =>
      [...sheets[id].make(context)].map(([path, bytes]) => [`${id}/${path}`, bytes] as const),
    ),
  );
}

function hasModels({ made }: PlannedGuide): boolean {
  return made > 0;
}

function hasPatterns({ line, written, computed }: PlannedGuide): boolean {
  const rows = computed.lines[0]!.at.materials;
  const isFlat = rows.some(({ pieces }) => pieces.some(({ size }) => size.sides.length === 2));
  return line.isFinished !== true && (isFlat || written.patterns.length > 0);
}

function benchFiles(context: SheetContext): Files {
  const { planned, read } = context;
  const sheet = benchSheet({
    ...sheetFacts(context, 'bench-sheet', sheetWords),
    models: modelNumbers('models', planned.made),
    cautions: showBenchCautions('bench', planned.line),
    steps: renderSheetProse(planned, read.documents[planned.written.id]!).steps,
  });
  return new Map([
    ['index.html', htmlBytes(sheet)],
    ['head.css', sheetMargins(context, sheetWords)],
  ]);
}

function cuttingFiles(context: SheetContext): Files {
  const { plan, line } = context.planned;
  const sheet = cuttingSheet({
    ...sheetFacts(context, 'cutting-plan', sheetWords.cutting),
    cautions: cutCautions(plan, line),
  });
  return new Map([
    ['index.html', htmlBytes(sheet)],
    ['head.css', sheetMargins(context, sheetWords.cutting)],
  ]);
}

function shoppingFiles(context: SheetContext): Files {
  const list = showShoppingList('list', context.planned.computed, context.workspace);
  const sheet = shoppingSheet({ ...sheetFacts(context, 'shopping-list', sheetWords.shopping), list });
  return new Map([
    ['index.html', htmlBytes(sheet)],
    ['head.css', sheetMargins(context, sheetWords.shopping)],
  ]);
}

function recordFiles(context: SheetContext): Files {
  const record = showRecord('record', context.planned.computed, 0, context.workspace);
  const sheet = recordSheet({ ...sheetFacts(context, 'batch-record', sheetWords.record), record });
  return new Map([
    ['index.html', htmlBytes(sheet)],
    ['head.css', sheetMargins(context, sheetWords.record)],
  ]);
}

function patternFiles(context: SheetContext): Files {
  const { planned, read, workspace } = context;
  const drawings = patternDrawings(planned.written, read);
  const measures = Object.fromEntries(drawings.map(({ id, measure }) => [id, measure]));
  const sheet = patternsSheet({
    ...sheetFacts(context, 'patterns'),
    patterns: showPatterns('patterns', planned.computed, 0, measures, workspace),
    drawings: Object.fromEntries(drawings.map(({ file, name }) => [file, name])),
  });
  return new Map([
    ['index.html', htmlBytes(sheet)],
    ['head.css', sheetMargins(context, sheetWords.patterns)],
    ...drawings.map(({ name, bytes }) => [name, bytes] as const),
  ]);
}

function labelFiles(context: SheetContext): Files {
  const { planned, workspace, paper } = context;
  const stock = labelStocks.find((known) => known.paper === paper)!;
  const labels = showLabels('labels', planned.computed, 0, planned.guide, workspace);
  const address = webAddress(workspace.program, planned);
  const sheet = labelsSheet({
    ...sheetFacts(context, 'labels'),
    labels,
    choices: labelStocks.map(showChoice),
    chosen: showChoice(stock),
    pages: labelPages(labels, stock),
    ...(address === undefined ? {} : { codeOfLabel: qrCode(address, sheetWords.scan) }),
  });
  return new Map([
    ['index.html', htmlBytes(sheet)],
    ['head.css', new TextEncoder().encode(labelStyles(labelStocks))],
  ]);
}
