import type { ShownAgendaItem } from '../../src/showing/session/shown-session.ts';
import type { Shown } from '../../src/showing/shown/shown.ts';
import type { Content, Markup } from '../page/markup.ts';
import { shows } from '../page/place.ts';
import { box } from '../sheets/sheet-frame.tsx';

/** What happens when, with what is said then. */
export function agendaTable(items: readonly ShownAgendaItem[]): Markup {
  return table(items, ({ takes, what, script }) => (
    <>
      <td class="takes" {...shows(takes)} />
      <th scope="row">
        <span {...shows(what)} />
        {said(script, (says) => (
          <li {...shows(says)} />
        ))}
      </th>
    </>
  ));
}

/** The same in the hand of who leads: a box to tick beside each thing that is said. */
export function agendaToTick(items: readonly ShownAgendaItem[]): Markup {
  return table(items, ({ takes, what, script }) => (
    <th scope="row">
      <b {...shows(what)} /> <small {...shows(takes)} />
      {said(script, (says) => (
        <li>
          {box()}
          <span {...shows(says)} />
        </li>
      ))}
    </th>
  ));
}

function table(items: readonly ShownAgendaItem[], cells: (item: ShownAgendaItem) => Markup): Markup {
  return (
    <table class="agenda">
      <tbody>
        {items.map((item) => (
          <tr>
            <td class="clock" {...shows(item.time)} />
            {cells(item)}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function said(script: readonly Shown[], line: (says: Shown) => Markup): Content {
  return script.length > 0 ? <ul class="script">{script.map(line)}</ul> : null;
}
