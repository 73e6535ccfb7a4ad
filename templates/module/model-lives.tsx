import type { ShownLife } from '../../src/showing/session/show-lives.ts';
import type { ShownSession } from '../../src/showing/session/shown-session.ts';
import { sessionWords } from '../../src/words/session.ts';
import { careRow } from '../guide/guide-in-use.tsx';
import type { Content, Markup } from '../page/markup.ts';
import { part } from '../page/part.tsx';
import { isSaid, shows } from '../page/place.ts';

/** What the models of a session take before, between and after uses, and what one use costs. For staff. */
export function modelLives({ care: { setUp, after } }: ShownSession, lives: readonly ShownLife[]): Content {
  if (lives.length === 0) return null;
  return part(
    'lives',
    sessionWords.headings.lives,
    <>
      {[setUp, after].map((text) => (
        <p {...shows(text)} />
      ))}
      {lives.map(life)}
    </>,
  );
}

function life({ name, care, perUse }: ShownLife): Markup {
  return (
    <div>
      <h3 {...shows(name)} />
      <dl class="care">{care.map(careRow)}</dl>
      {isSaid(perUse) ? <p {...shows(perUse)} /> : null}
    </div>
  );
}
