import type { ShownMatrix } from '../../src/showing/module/show-matrix.ts';
import { teachingWords } from '../../src/words/teaching.ts';
import { textList } from '../page/lists.tsx';
import type { Markup } from '../page/markup.ts';
import { shows } from '../page/place.ts';

const { matrix: words } = teachingWords;

/** Each objective: where it is practised, and by what anybody can tell. A mark is a letter, so that ink shows it too. */
export function matrixTable({ columns, rows }: ShownMatrix): Markup {
  return (
    <table class="objectives">
      <thead>
        <tr>
          <th scope="col">{words.objective}</th>
          <th scope="col">{words.shown}</th>
          {columns.map((column) => (
            <th scope="col" class="middle" {...shows(column)} />
          ))}
          <th scope="col">{words.assessed}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ objective, shownBy, practised, assessed }) => (
          <tr>
            <th scope="row" {...shows(objective)} />
            <td {...shows(shownBy)} />
            {practised.map((is) => (
              <td class="middle">{is ? practisedMark() : null}</td>
            ))}
            <td>{textList(assessed, 'plain') ?? words.none}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function practisedMark(): Markup {
  return (
    <span class="practised" role="img" aria-label={words.practised}>
      ×
    </span>
  );
}
