import { curveKey, curvePicture } from '../src/rendering/outlay-curve.ts';
import type { ShownCurve } from '../src/showing/shown-what-if.ts';
import { whatIfWords } from '../src/words/what-if.ts';
import type { Content, Markup } from './page.tsx';
import { isSaid, shows } from './place.ts';

const { curve: words } = whatIfWords;

/** What one model takes at other sizes of the batch: the sizes that fill their packs, a picture, every size below. */
export function guideCurve(curve: ShownCurve | undefined): Content {
  if (!curve) return null;
  return (
    <div class="other-sizes">
      <h3>{words.heading}</h3>
      <p>
        <strong {...shows(curve.full)} /> {words.says}
      </p>
      <div class="curve-frame">
        <p class="key" aria-hidden="true">
          <span>
            {curveKey('full')}
            {words.keyFull}
          </span>
          <span>
            {curveKey('current')}
            {words.keyCurrent}
          </span>
        </p>
        {curvePicture(curve.drawing)}
        <p class="curve-foot" aria-hidden="true">
          {words.models}
        </p>
      </div>
      <details>
        <summary>{words.all}</summary>
        {sizesTable(curve)}
      </details>
    </div>
  );
}

function sizesTable({ rows }: ShownCurve): Markup {
  return (
    <table class="sizes">
      <thead>
        <tr>
          <th scope="col" class="end">
            {words.models}
          </th>
          <th scope="col" class="end">
            {words.each}
          </th>
          <th scope="col">{words.note}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ models, each, note }) => (
          <tr>
            <th scope="row" class="end" {...shows(models)} />
            <td class="end" {...shows(each)} />
            {isSaid(note) ? <td {...shows(note)} /> : <td />}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
