import { planWords } from '../../words/plan.ts';
import { sessionWords } from '../../words/session.ts';
import { type Column, inColumns, indented } from '../terminal/columns.ts';
import { fill } from '../text/fill.ts';
import { apart, hanging, isSaid, left, paragraphs, right, wrapping } from '../terminal/plan-text-parts.ts';
import { wrapped } from '../text/wrapped.ts';
import type { ShownLife } from './show-lives.ts';
import type { ShownCircuit, ShownSession, ShownStation } from './shown-session.ts';

const { headings } = sessionWords;

/** So many stations stand side by side in a terminal; of more, each round is a list. */
const mostColumns = 5;

/**
 * A session as the command line prints it: what happens when, who is where, what stands ready. Plain text in aligned
 * columns, no line above `width`. Ends with a line end.
 */
export function sessionText(session: ShownSession, width = 80, lives: readonly ShownLife[] = []): string {
  const inner = width - 2;
  const blocks = [
    [...wrapped(session.title.text, width), ...apart(indented(factLines(session, inner)))],
    block(headings.agenda, agendaLines(session, inner)),
    ...session.circuits.map((circuit) => block(circuit.name.text, circuitLines(circuit, inner))),
    block(headings.stations, stationLines(session, inner)),
    block(headings.models, modelLines(session, inner)),
    block(headings.lives, lifeLines(session, lives, inner)),
    block(headings.tools, toolLines(session, inner)),
    block(
      headings.notes,
      session.notes.flatMap(({ text }) => hanging('-', text, inner)),
    ),
  ];
  const texts = blocks.filter((lines) => lines.length > 0).map((lines) => lines.join('\n'));
  return `${texts.join('\n\n')}\n`;
}

/** A heading and what stands below it; nothing where nothing does. */
function block(heading: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : [heading, ...indented(lines)];
}

function factLines({ facts, people, instructors }: ShownSession, width: number): readonly string[] {
  const { does, heading } = sessionWords.people;
  const rows = [
    ...people.map(({ says, as }, i) => [
      i === 0 ? heading : '',
      fill(does, { people: says.text, does: as.text }),
    ]),
    ...facts.map(({ id, name, value }) => [
      name.text,
      [value, ...(id === 'instructors' ? instructors.because : [])]
        .map(({ text }) => text)
        .join(planWords.andAlso),
    ]),
  ];
  return inColumns([left, wrapping], rows, width);
}

/** What is said then stands below it. */
function agendaLines({ agenda }: ShownSession, width: number): readonly string[] {
  const rows = agenda.flatMap(({ time, takes, what, script }) => [
    [time.text, takes.text, what.text],
    ...script.map(({ text }) => ['', '', text]),
  ]);
  return inColumns([right, right, wrapping], rows, width);
}

function circuitLines({ says, columns, rounds }: ShownCircuit, width: number): readonly string[] {
  const { time } = sessionWords.circuit;
  const isGrid = columns.length <= mostColumns;
  const head = [time, ...columns.map(({ name }) => name.text)];
  const grid = rounds.map((round) => [round.time.text, ...round.cells.map(({ text }) => text)]);
  const lists = rounds.map((round) => [
    round.time.text,
    round.cells
      .map(({ text }, i) => fill(sessionWords.circuit.at, { station: columns[i]!.name.text, group: text }))
      .join(planWords.andAlso),
  ]);
  const across: readonly Column[] = columns.map(() => wrapping);
  return [
    ...paragraphs([says], width),
    ...(isGrid
      ? inColumns([right, ...across], [head, ...grid], width)
      : inColumns([right, wrapping], lists, width)),
  ];
}

function stationLines({ stations }: ShownSession, width: number): readonly string[] {
  return stations.flatMap((station) => [
    ...wrapped(station.name.text, width),
    ...indented(saysOf(station).flatMap((text) => hanging('-', text, width - 2))),
  ]);
}

function saysOf({ seats, takes, reset, ledSays, models, tools, meanwhile }: ShownStation): readonly string[] {
  const room = [seats, takes, reset].filter(isSaid).map(({ text }) => text);
  const things = [...models.map(({ says }) => says.text), ...tools.map(({ text }) => text)];
  return [
    room.join(planWords.andAlso),
    ...things,
    ledSays.text,
    ...meanwhile.map(({ text }) => fill(sessionWords.station.meanwhile, { text })),
  ];
}

/** Each guide's models: how many, which, what for, and how they are shared. */
function modelLines({ models }: ShownSession, width: number): readonly string[] {
  const rows = models.map(({ name, count, of, share, parts }) => [
    count.text,
    name.text,
    [of, share, ...parts].map(({ text }) => text).join(planWords.andAlso),
  ]);
  return inColumns([right, wrapping, wrapping], rows, width);
}

/** When to begin, then what each model takes and what one use of it costs. */
function lifeLines(
  { care: { setUp, after } }: ShownSession,
  lives: readonly ShownLife[],
  width: number,
): readonly string[] {
  const { takes: timed, takesUnsaid } = sessionWords.care;
  return [
    ...paragraphs([setUp, after], width),
    ...lives.flatMap(({ name, care, perUse }) => {
      const says = care.map((part) => {
        const texts = { name: part.name.text, says: part.says.map(({ text }) => text).join(' ') };
        return isSaid(part.takes)
          ? fill(timed, { ...texts, time: part.takes.text })
          : fill(takesUnsaid, texts);
      });
      const rows = [...says, perUse.text].filter((text) => text !== '');
      if (rows.length === 0) return [];
      return [
        ...wrapped(name.text, width),
        ...indented(rows.flatMap((text) => hanging('-', text, width - 2))),
      ];
    }),
  ];
}

function toolLines({ tools }: ShownSession, width: number): readonly string[] {
  const rows = tools.map(({ name, count }) => [name.text, count.text]);
  return inColumns([wrapping, left], rows, width);
}
