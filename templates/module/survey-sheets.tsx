import type { Root } from 'hast';
import type { ShownSurvey, ShownSurveyItem, ShownTeaching } from '../../src/showing/module/show-teaching.ts';
import { teachingWords } from '../../src/words/teaching.ts';
import { type ModuleSheetFacts, moduleSheet, onePage } from './module-sheet.tsx';
import type { Markup } from '../page/markup.ts';
import { isSaid, shows } from '../page/place.ts';
import { box } from '../sheets/sheet-frame.tsx';

const { survey: words, score } = teachingWords;

export interface SurveySheetsView extends ModuleSheetFacts {
  readonly teaching: ShownTeaching;
}

/** What is asked before and after, one to a page. */
export function surveySheets(view: SurveySheetsView): Root {
  return moduleSheet(view, {
    id: 'surveys',
    defersWithin: true,
    main: (
      <>
        <h1 class="unseen">{teachingWords.sheets.surveys}</h1>
        {view.teaching.surveys.map((survey) => surveySheet(survey, view))}
      </>
    ),
  });
}

function surveySheet({ title, items }: ShownSurvey, view: SurveySheetsView): Markup {
  return onePage(
    view,
    title.text,
    [words.code, score.date],
    <>
      <p class="how">{words.codeSays}</p>
      <ol class="asked">{items.map(asked)}</ol>
    </>,
  );
}

function asked({ ask, of, scale }: ShownSurveyItem): Markup {
  return (
    <li>
      <p>
        <b {...shows(ask)} /> {isSaid(of) ? <small {...shows(of)} /> : null}
      </p>
      {scale.length === 0 ? (
        <p class="own-words">{words.words}</p>
      ) : (
        <ul class="points">
          {scale.map(({ point, says }) => (
            <li>
              {box()}
              <b {...shows(point)} />
              <span {...shows(says)} />
            </li>
          ))}
        </ul>
      )}
    </li>
  );
}
