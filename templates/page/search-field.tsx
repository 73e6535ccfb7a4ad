import { searchWords as words } from '../../src/words/search.ts';
import type { Markup } from './markup.ts';

/**
 * The search field of every page; a script brings it to life, so without scripts it stays out of sight and keeps its
 * room.
 */
export function searchField(): Markup {
  return (
    <form class="find" role="search" data-find="" hidden="">
      <label class="unseen" for="find">
        {words.label}
      </label>
      <input
        id="find"
        type="search"
        name="q"
        autocomplete="off"
        spellcheck="false"
        enterkeyhint="search"
        placeholder={words.placeholder}
        aria-controls="found"
        aria-describedby="find-keys"
      />
      <button type="submit">{words.button}</button>
      <p class="unseen" id="find-keys">
        {words.keys}
      </p>
      <div id="found" class="found" hidden="">
        <p role="status" class="found-says" />
        <div class="found-results" />
      </div>
    </form>
  );
}
