import type { Root } from 'hast';
import type { Shown } from '../../src/showing/shown/shown.ts';
import { moduleWords } from '../../src/words/modules.ts';
import { teachingWords } from '../../src/words/teaching.ts';
import { type ModuleSheetFacts, moduleSheet, moduleSheetHead, sheetPart } from './module-sheet.tsx';
import { type Careful, careful, isCareful } from './sheet-careful.tsx';
import { textList } from '../page/lists.tsx';
import type { Content } from '../page/markup.ts';
import { shows } from '../page/place.ts';

const { sheets: titles } = teachingWords;
const { trainee } = moduleWords;

export interface HandOutView extends ModuleSheetFacts, Careful {
  readonly day: readonly { readonly what: Shown; readonly takes: Shown }[];
}

/** The trainees' page on paper: one side where it can. */
export function handOut(view: HandOutView): Root {
  const { module, day } = view;
  const notices = module.notices.map(({ says }) => says);
  const part = (heading: string, content: Content): Content =>
    content === null ? null : sheetPart(heading, content);
  return moduleSheet(view, {
    id: 'hand-out',
    defersWithin: isCareful(view),
    main: (
      <>
        {moduleSheetHead(view, module.title.text, [], titles['hand-out'])}
        <div class="two-columns">
          {part(trainee.careful, isCareful(view) ? careful(view, trainee.carefulSays) : null)}
          {part(trainee.figures.booked, textList([module.booked, module.where], 'plain'))}
          {part(trainee.aims, aims(module))}
          {part(trainee.prepare, preparation(module))}
          {part(trainee.bring, textList(module.bring, 'plain'))}
          {part(trainee.wear, textList(module.wear, 'plain'))}
          {part(trainee.day, dayList(day))}
          {part(trainee.judged, textList(module.judged, 'plain'))}
          {part(trainee.notices, textList(notices, 'plain'))}
        </div>
      </>
    ),
  });
}

function aims({ objectives }: HandOutView['module']): Content {
  if (objectives.length === 0) return null;
  return (
    <ol>
      {objectives.map(({ does, howWell }) => (
        <li>
          <b {...shows(does)} /> <span {...shows(howWell)} />
        </li>
      ))}
    </ol>
  );
}

function preparation({ prepare }: HandOutView['module']): Content {
  if (prepare.length === 0) return null;
  return (
    <ul class="plain">
      {prepare.map(({ kind, what, takes }) => (
        <li>
          <span {...shows(kind)} />: <b {...shows(what)} /> <span {...shows(takes)} />
        </li>
      ))}
    </ul>
  );
}

function dayList(day: HandOutView['day']): Content {
  if (day.length === 0) return null;
  return (
    <ul class="day">
      {day.map(({ what, takes }) => (
        <li>
          <span {...shows(what)} /> <b {...shows(takes)} />
        </li>
      ))}
    </ul>
  );
}
