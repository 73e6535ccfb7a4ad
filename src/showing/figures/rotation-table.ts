import { sessionWords } from '../../words/session.ts';
import type { ShownCircuit } from '../session/shown-session.ts';
import { type Tree, tree } from './tree.ts';

const { circuit: words } = sessionWords;

/** Who is where, for the wall: a row for each round, a column for each station. */
export function rotationTable({ columns, rounds }: ShownCircuit): Tree {
  return tree('table', { class: 'rotation' }, [
    tree('thead', {}, [
      tree('tr', {}, [head(words.rounds), head(words.time), ...columns.map(({ name }) => head(name.text))]),
    ]),
    tree(
      'tbody',
      {},
      rounds.map(({ name, time, cells }) =>
        tree('tr', {}, [
          tree('th', { scope: 'row' }, [name.text]),
          tree('td', { class: 'clock' }, [time.text]),
          ...cells.map(({ text }, i) => tree('td', columns[i]!.isRest ? { class: 'rest' } : {}, [text])),
        ]),
      ),
    ),
  ]);
}

/** The same for the hand: a row for each group, a column for each round. */
export function groupTable({ rounds, groups }: ShownCircuit): Tree {
  return tree('table', { class: 'rotation by-group' }, [
    tree('thead', {}, [tree('tr', {}, [head(words.group), ...rounds.map(({ time }) => head(time.text))])]),
    tree(
      'tbody',
      {},
      groups.map(({ name, size, places }) =>
        tree('tr', {}, [
          tree('th', { scope: 'row' }, [name.text, tree('span', { class: 'size' }, [size.text])]),
          ...places.map(({ place, isRest }) => tree('td', isRest ? { class: 'rest' } : {}, [place.text])),
        ]),
      ),
    ),
  ]);
}

function head(text: string): Tree {
  return tree('th', { scope: 'col' }, [text]);
}
