import type { Root } from 'hast';
import type { Paper } from '../../core/model/paper.ts';
import { htmlBytes } from '../../rendering/html.ts';
import { pageMargins } from '../../rendering/page-margins.ts';
import { fill } from '../../showing/text/fill.ts';
import { sheetWords } from '../../words/sheets.ts';
import { teachingWords } from '../../words/teaching.ts';
import { scoreSheets } from '../../../templates/module/score-sheets.tsx';
import { handOut } from '../../../templates/module/hand-out.tsx';
import { matrixSheet, sessionPlanSheet, timetableSheet } from '../../../templates/module/session-sheets.tsx';
import { surveySheets } from '../../../templates/module/survey-sheets.tsx';
import type { ShownModuleParts } from '../planned/module-parts.ts';
import { rootFrom } from '../paths/paths.ts';
import type { Files } from '../paths/files.ts';

export type ModuleSheetId = keyof typeof teachingWords.sheets;

interface ModuleSheet {
  /** Only in the staff edition. */
  readonly isForStaff: boolean;
  readonly isThere?: (parts: ShownModuleParts) => boolean;
  readonly make: (parts: ShownModuleParts, facts: SheetPlace) => Root;
}

interface SheetPlace {
  readonly language: string;
  readonly root: string;
  readonly back: string;
}

/** Every sheet of a module, in the order in which they are wanted. */
const sheets: Readonly<Record<ModuleSheetId, ModuleSheet>> = {
  'hand-out': { isForStaff: false, make: (parts, place) => handOut({ ...parts, ...place }) },
  'session-plan': { isForStaff: true, make: (parts, place) => sessionPlanSheet({ ...parts, ...place }) },
  timetable: {
    isForStaff: true,
    isThere: ({ session }) => session.circuits.length > 0,
    make: (parts, place) => timetableSheet({ ...parts, ...place }),
  },
  'score-sheets': {
    isForStaff: true,
    isThere: ({ teaching }) => teaching.scoreSheets.length > 0,
    make: (parts, place) => scoreSheets({ ...parts, ...place }),
  },
  surveys: {
    isForStaff: true,
    isThere: ({ teaching }) => teaching.surveys.length > 0,
    make: (parts, place) => surveySheets({ ...parts, ...place }),
  },
  matrix: { isForStaff: true, make: (parts, place) => matrixSheet({ ...parts, ...place }) },
};

/** The sheets that there are, in order. */
export function moduleSheetIds(parts: ShownModuleParts, isForStaff: boolean): readonly ModuleSheetId[] {
  const ids = Object.keys(sheets) as ModuleSheetId[];
  return ids.filter((id) => {
    const sheet = sheets[id];
    return (isForStaff || !sheet.isForStaff) && (sheet.isThere?.(parts) ?? true);
  });
}

/** What the pages of a module's sheets are. */
interface Printed {
  /** BCP 47. */
  readonly language: string;
  readonly program: string;
  /** Known where they are printed at once; else the reader's printer decides. */
  readonly paper?: Paper;
}

/** Sheets of a module by path below its folder, each in a folder of its name. */
export function moduleSheetFiles(
  parts: ShownModuleParts,
  ids: readonly ModuleSheetId[],
  printed: Printed,
): Files {
  const { language } = printed;
  return new Map(
    ids.flatMap((id) => {
      const place = { language, root: rootFrom(`${parts.folder}/${id}`), back: '../index.html' };
      return [
        [`${id}/index.html`, htmlBytes(sheets[id].make(parts, place))] as const,
        [`${id}/head.css`, margins(parts, id, printed)] as const,
      ];
    }),
  );
}

function margins({ module }: ShownModuleParts, id: ModuleSheetId, { program, paper }: Printed): Uint8Array {
  const texts = { module: module.title.text, sheet: teachingWords.sheets[id].toLowerCase() };
  const version = module.version.text;
  const title =
    version === ''
      ? fill(teachingWords.headNoVersion, texts)
      : fill(teachingWords.head, { ...texts, version });
  const style = pageMargins({ title, program, page: sheetWords.page, ...(paper ? { paper } : {}) });
  return new TextEncoder().encode(style);
}
