import type { ShownModule, ShownPreparation } from '../../src/showing/module/show-module.ts';
import type { Shown } from '../../src/showing/shown/shown.ts';
import { moduleWords } from '../../src/words/modules.ts';
import { proseBlock, type ProseSection } from '../page/prose-section.tsx';
import { textList } from '../page/lists.tsx';
import type { Content, Markup } from '../page/markup.ts';
import { part } from '../page/part.tsx';
import { isSaid, shows } from '../page/place.ts';

const { trainee: words } = moduleWords;

/**
 * What trainees do before they come: read, watch, bring, wear; and below it the texts themselves.
 *
 * @param toRead  Sections of the module's prose that the preparation names.
 */
export function modulePrepare(
  { bring, wear, prepare: items, prepareTotal, promised }: ShownModule,
  toRead: readonly ProseSection[],
): Content {
  if (items.length + bring.length + wear.length === 0) return null;
  return part(
    'prepare',
    words.prepare,
    <>
      {items.length > 0 ? <ul class="to-do">{items.map(toDo)}</ul> : null}
      {[
        [words.bring, bring],
        [words.wear, wear],
      ].map(([name, list]) => kit(name as string, list as readonly Shown[]))}
      {toRead.map(({ id, heading, content }) => (
        <section id={id} class="to-read" aria-labelledby={`${id}-head`}>
          <h3 id={`${id}-head`}>{heading}</h3>
          {proseBlock(content)}
        </section>
      ))}
    </>,
    <>
      {[prepareTotal, promised].filter(isSaid).map((text) => (
        <p {...shows(text)} />
      ))}
    </>,
  );
}

function toDo({ kind, what, takes, section, file, text }: ShownPreparation): Markup {
  const href = section === undefined ? file : `#text-${section}`;
  return (
    <li>
      <span {...shows(kind)} />
      <span>
        {href === undefined ? <span {...shows(what)} /> : <a href={href} {...shows(what)} />}
        {text === undefined ? null : (
          <>
            {' ('}
            <a href={text}>{words.transcript}</a>)
          </>
        )}
      </span>
      {isSaid(takes) ? <span class="takes" {...shows(takes)} /> : null}
    </li>
  );
}

function kit(name: string, things: readonly Shown[]): Content {
  if (things.length === 0) return null;
  return (
    <div class="bring">
      <h3>{name}</h3>
      {textList(things)}
    </div>
  );
}
