import type { ShownGuide } from '../../src/showing/library/show-guide.ts';
import type { ShownLine, ShownStep } from '../../src/showing/shown/shown-plan.ts';
import { benchWords as words } from '../../src/words/bench.ts';
import type { Markup } from '../page/markup.ts';
import { said, shows } from '../page/place.ts';

/**
 * How far the work is, for which batch, and what helps at the bench. Hidden: a script shows it where ticks can be kept.
 */
export function benchBar({ guide, line }: { readonly guide: ShownGuide; readonly line: ShownLine }): Markup {
  return (
    <div
      class="bench"
      data-bench={guide.id}
      data-level={guide.level?.id ?? ''}
      data-version={guide.number.text}
      hidden
    >
      <p class="bench-count" role="status" />
      <p class="bench-batch" data-bench-batch="" {...shows(line.count)} />
      <div class="bench-controls">
        <label class="switch" data-awake="" hidden>
          <input type="checkbox" role="switch" />
          <span>{words.awake}</span>
        </label>
        <button type="button" data-clear="" disabled>
          {words.clear}
        </button>
      </div>
      <p class="bench-note">{words.keptHere}</p>
    </div>
  );
}

/** The box that ticks a step off, and what follows from when it was ticked. Hidden until a script keeps it. */
export function benchTick({ id, number, tickTimes }: ShownStep): Markup {
  return (
    <div class="tick" data-tick={id} hidden>
      <label>
        <input type="checkbox" />
        <span>{said(words.done, { number: number.text })}</span>
      </label>
      <div class="tick-says">
        <p data-says={words.ticked} hidden />
        {tickTimes.map(({ minutes, rounds, says }) => (
          <p
            class="tick-time"
            data-says={says}
            data-minutes={minutes}
            data-rounds={rounds}
            data-when="one-run"
            hidden
          />
        ))}
        {tickTimes.length > 0 ? (
          <p class="tick-note" data-says={words.fromTheTick} data-when="one-run" hidden />
        ) : null}
        {tickTimes.length > 0 ? (
          <p class="tick-note" data-says={words.ofRuns} data-when="runs" hidden />
        ) : null}
      </div>
    </div>
  );
}

/** Prints the page it stands on; hidden where nothing would happen. */
export function printButton(): Markup {
  return (
    <button type="button" class="print-button" data-print="" hidden>
      {words.print}
    </button>
  );
}
