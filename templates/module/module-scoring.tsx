import type { ShownScoreSheet, ShownTeaching } from '../../src/showing/module/show-teaching.ts';
import { teachingWords } from '../../src/words/teaching.ts';
import { textList } from '../page/lists.tsx';
import type { Content, Markup } from '../page/markup.ts';
import { part } from '../page/part.tsx';
import { isSaid, shows } from '../page/place.ts';

const { page: words, score, survey } = teachingWords;

/** What is scored at each station, what raters agree on before, and what is asked before and after. */
export function moduleScoring({ scoreSheets, raterNotes, passMark, surveys }: ShownTeaching): Content {
  if (scoreSheets.length + raterNotes.length + surveys.length === 0) return null;
  return part(
    'scoring',
    words.scoring,
    <>
      {raterNotes.length > 0 ? (
        <div class="rater-notes">
          <h3>{words.raterNotes}</h3>
          {textList(raterNotes)}
        </div>
      ) : null}
      {isSaid(passMark) ? (
        <p>
          <strong>{words.passMark}</strong> <span {...shows(passMark)} />
        </p>
      ) : null}
      {scoreSheets.map(scored)}
      {surveys.map(({ title, items }) => (
        <div>
          <h3 {...shows(title)} />
          <ul class="plain">
            {items.map(({ ask, of }) => (
              <li>
                <span {...shows(ask)} /> {isSaid(of) ? <span class="of" {...shows(of)} /> : null}
              </li>
            ))}
          </ul>
        </div>
      ))}
      {surveys.length > 0 ? <p class="remark">{survey.confidence}</p> : null}
    </>,
  );
}

function scored({ name, items, ratings, penalties, limit }: ShownScoreSheet): Markup {
  return (
    <div>
      <h3>
        <span {...shows(name)} /> {isSaid(limit) ? <span class="level" {...shows(limit)} /> : null}
      </h3>
      <table class="scored">
        <tbody>
          {items.map(({ says, weight, critical }) => (
            <tr>
              <th scope="row">
                <span {...shows(says)} />
                {isSaid(critical) ? <strong class="critical" {...shows(critical)} /> : null}
              </th>
              <td class="end">
                {score.weight} <span {...shows(weight)} />
              </td>
            </tr>
          ))}
          {penalties.map(({ when, adds }) => (
            <tr>
              <th scope="row" {...shows(when)} />
              <td class="end" {...shows(adds)} />
            </tr>
          ))}
        </tbody>
      </table>
      {ratings.map(({ says, anchors }) => (
        <dl class="anchors-of">
          <dt {...shows(says)} />
          {anchors
            .filter((anchor) => isSaid(anchor.says))
            .map((anchor) => (
              <dd>
                <strong {...shows(anchor.point)} /> <span {...shows(anchor.says)} />
              </dd>
            ))}
        </dl>
      ))}
    </div>
  );
}
