import { guideDataWords as words } from '../../src/words/guide-data.ts';
import { type Link, linkList } from '../page/lists.tsx';
import type { Content, Markup } from '../page/markup.ts';

/** What a guide's page offers to other programs. */
export interface GuideData {
  readonly files: readonly Link[];
  /** What writes a calendar with dates; absent where there is no schedule. */
  readonly command?: string;
  /** Ready to stand in a script element. */
  readonly jsonLd: string;
}

/**
 * The guide as JSON-LD: data, which no browser runs. It says what the steps say, so it stands right after them: a page
 * that is packed for the way remembers a stretch of itself and no more.
 */
export function howTo({ jsonLd }: GuideData): Markup {
  return <script type="application/ld+json">{jsonLd}</script>;
}

/** Files beside the page, and what writes a calendar. */
export function guideData({ files, command }: GuideData): Markup {
  return (
    <section id="data" class="data" aria-labelledby="data-head">
      <h2 id="data-head">{words.title}</h2>
      <div>
        {linkList(files)}
        <p class="remark">{words.says}</p>
        {calendar(command)}
      </div>
    </section>
  );
}

function calendar(command: string | undefined): Content {
  if (command === undefined) return null;
  return (
    <p class="remark">
      {`${words.noCalendar} `}
      <code>{command}</code>
    </p>
  );
}
