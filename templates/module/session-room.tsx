import type { ShownCircuit, ShownStation } from '../../src/showing/session/shown-session.ts';
import { sessionWords } from '../../src/words/session.ts';
import { teachingWords } from '../../src/words/teaching.ts';
import { textList } from '../page/lists.tsx';
import type { Markup } from '../page/markup.ts';
import { scrolling } from '../page/part.tsx';
import { isSaid, shows, tabulates } from '../page/place.ts';

const { page: words } = teachingWords;

/** Circuits, each twice: for the wall by round, for the hand by group. */
export function circuitTables(circuits: readonly ShownCircuit[]): Markup {
  return <>{circuits.map(circuitTwice)}</>;
}

function circuitTwice(circuit: ShownCircuit): Markup {
  const key = `session.circuits.${circuit.id}`;
  return (
    <div class="circuit">
      <h3 {...shows(circuit.name)} />
      <p {...shows(circuit.says)} />
      {scrolling(circuit.name.text, tabulates('rotation-table', key, circuit))}
      {scrolling(sessionWords.circuit.group, tabulates('group-table', key, circuit))}
    </div>
  );
}

/** What stands at each station, and what is done there. */
export function stationList(stations: readonly ShownStation[]): Markup {
  return <ul class="rooms">{stations.map(stationRow)}</ul>;
}

function stationRow(station: ShownStation): Markup {
  const { name, seats, takes, reset, ledSays, models, tools, meanwhile } = station;
  return (
    <li>
      <h3 {...shows(name)} />
      {[seats, takes, reset, ledSays].filter(isSaid).map((text) => (
        <p {...shows(text)} />
      ))}
      {textList([...models.map(({ says }) => says), ...tools], 'plain')}
      {meanwhile.length > 0 ? (
        <p class="meanwhile">
          {words.meanwhile}{' '}
          {meanwhile.map((text) => (
            <span {...shows(text)} />
          ))}
        </p>
      ) : null}
    </li>
  );
}
