import type { Workspace } from '../../core/model/workspace.ts';
import { courseJsonLd } from '../../exports/course-json-ld.ts';
import { scriptData } from '../../exports/how-to-json-ld.ts';
import { jsonText } from '../../exports/json-text.ts';
import { scoreSheetCsv, surveyCsv } from '../../exports/result-templates.ts';
import { sessionJson } from '../../exports/session-json.ts';
import { timetableCsv } from '../../exports/timetable-csv.ts';
import { courseTexts } from '../../showing/session/course-texts.ts';
import { timetableOf } from '../../showing/session/timetable.ts';
import { teachingWords } from '../../words/teaching.ts';
import type { Link } from '../../../templates/page/lists.tsx';
import type { PlannedModule } from '../planned/planned-modules.ts';
import type { Files } from '../paths/files.ts';
import { webAddress } from '../paths/web-address.ts';

type FileName = keyof typeof teachingWords.files;

/** What stands beside the instructors' page for other programs, by name. For the staff edition alone. */
export function sessionDataFiles({ module, cohort }: PlannedModule, workspace: Workspace): Files {
  const texts: Readonly<Record<FileName, string | undefined>> = {
    'session.json': jsonText(sessionJson(module, cohort, workspace.program)),
    'timetable.csv': timetableCsv(timetableOf(module, cohort, workspace)),
    'score-sheet.csv': scoreSheetCsv(module),
    'survey-before.csv': surveyCsv(module, 'before'),
    'survey-after.csv': surveyCsv(module, 'after'),
  };
  return new Map(
    Object.entries(texts).flatMap(([name, text]) =>
      text === undefined ? [] : [[name, new TextEncoder().encode(text)] as const],
    ),
  );
}

/** Those files with their names, for the page that offers them. */
export function sessionDataLinks(files: Files): readonly Link[] {
  return [...files.keys()].map((href) => ({ href, name: teachingWords.files[href as FileName] }));
}

/** A module in the terms of schema.org, ready to stand in a script element. */
export function moduleJsonLd({ module, folder, guides }: PlannedModule, workspace: Workspace): string {
  const { program } = workspace;
  const at = (page: { readonly folder: string } | undefined) => {
    const address = page && webAddress(program, page);
    return address === undefined ? {} : { address };
  };
  const texts = courseTexts(module, workspace);
  const resources = texts.resources.map((resource) =>
    'id' in resource
      ? { ...resource, ...at(guides.find(({ written }) => written.id === resource.id)) }
      : resource,
  );
  return scriptData(courseJsonLd({ ...texts, resources, ...at({ folder }) }, program));
}
