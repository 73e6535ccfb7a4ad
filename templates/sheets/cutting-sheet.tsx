import type { Root } from 'hast';
import { drawn } from '../../src/rendering/drawn.ts';
import { offcutHatching } from '../../src/showing/figures/cut-layout.ts';
import type { ShownCaution } from '../../src/showing/shown/shown-plan.ts';
import { sheetWords } from '../../src/words/sheets.ts';
import { cutMaterials } from '../page/cut-layout.tsx';
import { cautionSection } from './sheet-cautions.tsx';
import { type SheetFacts, sheetDocument, sheetHead } from './sheet-frame.tsx';

/** The cutting plan of a guide at one level, to print and to cut by. */
export interface CuttingSheetView extends SheetFacts {
  /** Of the steps that cut. */
  readonly cautions: readonly ShownCaution[];
}

const { cutting: words } = sheetWords;

/**
 * The cutting plan as a sheet of its own: cautions of the steps that cut, then each sheet, roll and length as a picture
 * with its table, a box to tick at each piece.
 */
export function cuttingSheet(view: CuttingSheetView): Root {
  return sheetDocument(view, {
    title: words.title,
    kind: 'cutting-sheet',
    main: (
      <>
        {drawn(offcutHatching)}
        {sheetHead(view, {
          title: words.title,
          fields: [sheetWords.batchNumber, sheetWords.date, words.cutBy, sheetWords.checkedBy],
        })}
        <p class="how">{words.say}</p>
        {cautionSection(view.cautions, view.plan.defers)}
        <div {...cutMaterials(view.plan.cutting, true)} />
      </>
    ),
  });
}
