import { plannerWords as words } from '../../src/words/planner.ts';
import type { Content, Markup } from './markup.ts';

/** A panel in which a reader sets what a page is worked out for. */
export interface SettingsPanel {
  /** Of its heading. */
  readonly id: string;
  readonly heading: string;
  readonly says: string;
  /** By which its script finds it, and its data. */
  readonly data: Readonly<Record<`data-${string}`, string | undefined>>;
  /** The few usual settings. */
  readonly fields: Content;
  /** Shown while it is worked out, where that takes a while. */
  readonly working?: Content;
  /** The settings behind a press. */
  readonly more?: Content;
  /** Beside the button for all as published. */
  readonly acts?: Content;
}

/** Its heading, its fields in a row, what the page answers, and the way back. Shown where scripts run. */
export function settingsPanel(panel: SettingsPanel): Markup {
  const { id, heading, says, data, fields, working, more, acts } = panel;
  return (
    <section class="planner" aria-labelledby={id} {...data}>
      <form class="wrap" autocomplete="off" novalidate>
        <div class="planner-head">
          <h2 id={id}>{heading}</h2>
          <p class="remark">{says}</p>
        </div>
        <div class="planner-body">
          <div class="planner-row">{fields}</div>
          <p class="planner-says" role="status" />
          {working}
          <div class="planner-foot">
            {more}
            <p class="planner-acts">
              <button type="button" data-reset="" disabled>
                {words.reset}
              </button>
              {acts}
            </p>
          </div>
        </div>
      </form>
    </section>
  );
}
