import type { ShownCatalogue, ShownFacet, ShownOption } from '../../src/showing/shown/shown-catalogue.ts';
import { catalogueWords as words } from '../../src/words/catalogue.ts';
import type { Markup } from '../page/markup.ts';
import { isSaid } from '../page/place.ts';

/** Groups that stand open from the beginning. */
const open: readonly ShownFacet['id'][] = ['skill', 'cost', 'build'];

/**
 * The ruler at the side: by what to choose among the guides. Without scripts it stays out of sight, since nothing would
 * come of a choice.
 */
export function catalogueChoices({ facets }: ShownCatalogue): Markup {
  return (
    <form class="choices" id="choices" data-choices="" aria-label={words.choose} hidden="">
      <button type="button" class="choices-toggle" aria-expanded="false" aria-controls="choice-groups">
        {words.choose}
      </button>
      <div id="choice-groups" class="choice-groups">
        <p class="remark">{words.chooseSays}</p>
        {facets.map(group)}
        <button type="reset" class="clear" disabled="">
          {words.clear}
        </button>
      </div>
    </form>
  );
}

function group(facet: ShownFacet): Markup {
  const { id, name, says, keeps, options } = facet;
  return (
    <details class="choice" id={`by-${id}`} data-keeps={keeps} open={open.includes(id) ? true : undefined}>
      <summary>
        <span class="choice-name">{name.text}</span>
        <span class="chosen" />
      </summary>
      <fieldset>
        <legend class="unseen">{name.text}</legend>
        {isSaid(says) ? <p class="remark">{says.text}</p> : null}
        <ul>{options.map((option) => choice(id, option))}</ul>
      </fieldset>
    </details>
  );
}

function choice(facet: string, { value, name, note, count }: ShownOption): Markup {
  return (
    <li>
      <label>
        <input type="checkbox" name={facet} value={value} />
        <span class="option">
          {name.text}
          {isSaid(note) ? <span class="option-note">{note.text}</span> : null}
        </span>
        <span class="count">{count.text}</span>
      </label>
    </li>
  );
}

/** The order of the list; belongs to the form of the choices, wherever it stands. */
export function catalogueOrder(): Markup {
  return (
    <fieldset class="order" data-order="" hidden="">
      <legend>{words.order}</legend>
      {Object.entries(words.orders).map(([id, name], i) => (
        <label>
          <input type="radio" form="choices" name="sort" value={id} checked={i === 0 ? true : undefined} />
          <span>{name}</span>
        </label>
      ))}
    </fieldset>
  );
}
