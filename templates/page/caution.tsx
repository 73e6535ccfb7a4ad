import { s } from 'hastscript';
import type { Element, Properties } from 'hast';
import type { Shown } from '../../src/showing/shown/shown.ts';
import type { ShownCaution } from '../../src/showing/shown/shown-plan.ts';
import { textList } from './lists.tsx';
import type { Markup } from './markup.ts';
import { isSaid, shows } from './place.ts';

/**
 * A caution as ANSI Z535.6 sets it: signal word with the safety alert symbol (none on a notice, which is not about
 * injury), then the hazard, the harm, and how to avoid it.
 *
 * @param id      Where links to this caution lead; left out where the same caution stands a second time.
 * @param number  What a sheet calls it by above the acts.
 * @param more    Other properties of its element.
 */
export function cautionPanel(
  caution: ShownCaution,
  id?: string,
  number?: Shown,
  more: Properties = {},
): Markup {
  const { signal, word, hazard, harm, avoid, steps } = caution;
  return (
    <li class={`caution signal-${signal}`} id={id} {...more}>
      <p class="signal">
        {signal === 'notice' ? null : alertSymbol()}
        <strong {...shows(word)} />
        {number ? <b class="caution-number" {...shows(number)} /> : null}
        {isSaid(steps) ? <span class="of-steps" {...shows(steps)} /> : null}
      </p>
      <p class="hazard">
        <strong {...shows(hazard)} />
        {isSaid(harm) ? <span class="harm" {...shows(harm)} /> : null}
      </p>
      {textList(avoid, 'avoid')}
    </li>
  );
}

/** The safety alert symbol of ANSI Z535: a triangle with an exclamation mark. */
export function alertSymbol(): Element {
  return s('svg', { className: ['alert'], viewBox: '0 0 26 23', ariaHidden: 'true', focusable: 'false' }, [
    s('path', { className: ['alert-ground'], d: 'M13 1 25 22H1z' }),
    s('path', { className: ['alert-mark'], d: 'M11.6 7.5h2.8l-.5 7.6h-1.8zM11.6 16.6h2.8v2.8h-2.8z' }),
  ]);
}
