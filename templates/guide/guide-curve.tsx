import { drawn } from '../../src/rendering/drawn.ts';
import { curveKey } from '../../src/showing/figures/outlay-curve.ts';
import type { ShownCurve } from '../../src/showing/shown/shown-what-if.ts';
import { whatIfWords } from '../../src/words/what-if.ts';
import type { Content, Markup } from '../page/markup.ts';
import { blanks, draws, rowsOf, shows, where } from '../page/place.ts';
import { tableHead } from '../page/table.tsx';

const { curve: words } = whatIfWords;

/** What one model takes at other sizes of the batch: the sizes that fill their packs, a picture, every size below. */
export function guideCurve(curve: ShownCurve | undefined): Content {
  if (!curve) return null;
  return (
    <div class="other-sizes" {...where('curve.rows', true)}>
      <h3>{words.heading}</h3>
      <p>
        <strong {...shows(curve.full)} /> {words.says}
      </p>
      <div class="curve-frame">
        <p class="key" aria-hidden="true">
          <span>
            {drawn(curveKey('full'))}
            {words.keyFull}
          </span>
          <span>
            {drawn(curveKey('current'))}
            {words.keyCurrent}
          </span>
        </p>
        {draws('outlay-curve', 'curve.drawing', curve.drawing)}
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
      {tableHead([words.models, 'end'], [words.each, 'end'], words.note)}
      <tbody {...rowsOf('curve.rows', rows, sizeRow, blanks('models', 'each', 'note'))} />
    </table>
  );
}

function sizeRow({ models, each, note }: ShownCurve['rows'][number]): Markup {
  return (
    <tr>
      <th scope="row" class="end" {...shows(models)} />
      <td class="end" {...shows(each)} />
      <td {...shows(note)} />
    </tr>
  );
}
