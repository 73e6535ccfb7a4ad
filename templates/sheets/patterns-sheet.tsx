import type { Root } from 'hast';
import { type OutlineToDraw, gauge, patternTile, tileMap } from '../../src/rendering/pattern-tile.ts';
import type { ShownPattern, ShownPatterns, ShownTile } from '../../src/showing/shown/shown-sheets.ts';
import { overlap, tileRoom } from '../../src/showing/cutting/tiles.ts';
import { sheetWords } from '../../src/words/sheets.ts';
import type { Content, Markup } from '../page/markup.ts';
import { scrolling } from '../page/part.tsx';
import { isSaid, said, shows } from '../page/place.ts';
import { type SheetFacts, sheetDocument, sheetHead, headingThatSays } from './sheet-frame.tsx';

export interface PatternsSheetView extends SheetFacts {
  readonly patterns: ShownPatterns;
  /** Where the drawing of a pattern lies, by the name the guide gives its file. */
  readonly drawings: Readonly<Record<string, string>>;
}

const { patterns: words } = sheetWords;
const room = { ...tileRoom, overlap };

/** Outlines at 1:1, a tile a page, each with a bar of 100 mm to measure; first what there is and how it joins. */
export function patternsSheet(view: PatternsSheetView): Root {
  const { patterns } = view;
  return sheetDocument(view, {
    title: words.title,
    kind: 'patterns-sheet',
    defersAbove: true,
    main: (
      <>
        <section class="first-page">
          {sheetHead(view, { title: words.title })}
          {howToPrint()}
          {overview(patterns)}
          {isSaid(patterns.unsized) ? <p class="unsized" {...shows(patterns.unsized)} /> : null}
          {unprinted(patterns)}
        </section>
        {patterns.patterns.flatMap((pattern) => pattern.tiles.map((tile) => tilePage(pattern, tile, view)))}
      </>
    ),
  });
}

function howToPrint(): Markup {
  return (
    <div class="at-size">
      <p>
        <strong>{words.print}</strong> {words.printSay}
      </p>
      {gauge(words.bar)}
      <p>{words.bar}</p>
      <p>{words.joins}</p>
    </div>
  );
}

function overview({ patterns }: ShownPatterns): Content {
  if (patterns.length === 0) return null;
  return (
    <section>
      <h2>{words.overview}</h2>
      {scrolling(
        words.overview,
        <table>
          <thead>
            <tr>
              {[words.piece, words.size, words.cut, words.pages].map((name) => (
                <th scope="col">{name}</th>
              ))}
            </tr>
          </thead>
          <tbody>
            {patterns.map(({ name, size, cut, turn, range }) => (
              <tr>
                <th scope="row">
                  <b {...shows(name)} />
                </th>
                <td {...shows(size)} />
                <td>
                  <span {...shows(cut)} /> <span class="must" {...shows(turn)} />
                </td>
                <td {...shows(range)} />
              </tr>
            ))}
          </tbody>
        </table>,
      )}
    </section>
  );
}

function unprinted({ unprinted: all }: ShownPatterns): Content {
  if (all.length === 0) return null;
  return (
    <section>
      {headingThatSays(words.unprinted, words.unprintedSay)}
      {scrolling(
        words.unprinted,
        <table>
          <thead>
            <tr>
              {[words.piece, words.size, words.cut].map((name) => (
                <th scope="col">{name}</th>
              ))}
            </tr>
          </thead>
          <tbody>
            {all.map(({ name, size, cut }) => (
              <tr>
                <th scope="row">
                  <b {...shows(name)} />
                </th>
                <td {...shows(size)} />
                <td {...shows(cut)} />
              </tr>
            ))}
          </tbody>
        </table>,
      )}
    </section>
  );
}

function tilePage(pattern: ShownPattern, tile: ShownTile, view: PatternsSheetView): Markup {
  const { name, size, cut, turn, tiles, columns, rows } = pattern;
  const label = said(words.outlineOf, { name: name.text, tile: tile.name.text });
  return (
    <section class="tile-page">
      <header>
        <h2>
          <span {...shows(name)} /> <small {...shows(size)} />
        </h2>
        <p class="tile-name">
          {tiles.length > 1 ? <b {...shows(tile.name)} /> : null} <span {...shows(tile.of)} />
        </p>
        <p class="tile-says">
          {[view.guide.title, view.guide.version, cut, turn].filter(isSaid).map((text) => (
            <span {...shows(text)} />
          ))}
        </p>
      </header>
      {patternTile(outlineOf(pattern, view), tile, room, label)}
      <footer>
        <div>
          {gauge(words.bar)}
          <p>
            <strong>{words.print}.</strong> {words.bar}
          </p>
        </div>
        {tiles.length > 1 ? tileMap({ columns, rows }, tile, words.map) : null}
        <p class="training" {...shows(view.plan.trainingOnly)} />
      </footer>
    </section>
  );
}

function outlineOf(
  { width, height, mayTurn, file, name, size }: ShownPattern,
  { drawings }: PatternsSheetView,
): OutlineToDraw {
  const address = file === undefined ? undefined : drawings[file];
  return {
    width,
    height,
    mayTurn,
    name: name.text,
    size: size.text,
    along: words.along,
    ...(address === undefined ? {} : { address }),
  };
}
