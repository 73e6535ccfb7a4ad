import { firstAtOnce } from '../../rendering/figures.ts';
import { htmlBytes } from '../../rendering/html.ts';
import { capital, fill, inWords } from '../../showing/text/fill.ts';
import { teachingWords } from '../../words/teaching.ts';
import { sessionPage } from '../../../templates/module/module-session-page.tsx';
import type { ModuleContext } from './module-context.ts';
import { renderModuleProse, shownTo } from '../prose/module-prose.ts';
import { sessionDataFiles, sessionDataLinks } from './module-data.ts';
import { moduleSheetIds } from './module-sheets.ts';
import { rootFrom } from '../paths/paths.ts';
import type { PlannedModule } from '../planned/planned-modules.ts';
import { sessionData } from '../guides/planner-data.ts';
import { picturesOf } from '../pictures/published-pictures.ts';
import type { Files } from '../paths/files.ts';

/** What instructors need to run a module, by path below its folder. For the staff edition alone. */
export function sessionFiles(planned: PlannedModule, context: ModuleContext): Files {
  const { module, folder, cohort, shown } = planned;
  const { site, workspace, read, today } = context;
  const pictures = picturesOf({ folder, of: shownTo('staff', module) }, context.pictures);
  const prose = renderModuleProse(module, read.moduleDocuments[module.id]!, workspace, pictures, '../');
  const data = sessionDataFiles(planned, workspace);
  const page = sessionPage({
    ...shown,
    site,
    root: rootFrom(`${folder}/session`),
    sections: prose.staff,
    fields: {
      module: module.id,
      data: 'session-data.js',
      people: cohort.people.map(({ id, count }) => ({
        id,
        name: capital(inWords(id)),
        count: String(count),
      })),
      instructors: cohort.instructors.there === undefined ? '' : String(cohort.instructors.there),
    },
    sheets: moduleSheetIds(shown, true).map((id) => ({
      name: teachingWords.sheets[id],
      href: `../${id}/index.html`,
    })),
    files: sessionDataLinks(data),
    command: fill(teachingWords.page.command, { module: module.id }),
  });
  return new Map([
    ['session/index.html', htmlBytes(firstAtOnce(page))],
    ['session/session-data.js', sessionData(module, workspace, today)],
    ...[...data].map(([name, bytes]) => [`session/${name}`, bytes] as const),
    ...[...pictures.values()].flat().map(({ name, bytes }) => [name, bytes] as const),
  ]);
}
