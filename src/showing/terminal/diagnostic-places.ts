import type { Place } from '../../core/diagnostic.ts';
import { printable } from '../text/wrapped.ts';

const indent = '  ';
const gap = '     ';
/** Below this, an excerpt says nothing; it then has a line of its own. */
const leastRoom = 24;
const mostPlaces = 6;

/**
 * Each place of a diagnostic: where it is, what stands there, and what of it is meant. Long lines are cut round it.
 *
 *       guides/needle-block/guide.md:14:13     amount: 120 mL
 *                                                      ======
 */
export function showPlaces(places: readonly Place[], width: number): string[] {
  const shown = places.slice(0, mostPlaces).map((place) => ({ place, where: whereOf(place) }));
  const widest = Math.max(0, ...shown.map(({ where }) => where.length));
  const lines = shown.flatMap(({ place, where }) => showPlace(place, where, widest, width));
  const more = places.length - shown.length;
  return more > 0 ? [...lines, `${indent}and ${more} more`] : lines;
}

function whereOf({ file, line, column }: Place): string {
  return `${printable(file)}:${line}:${column}`;
}

function showPlace(place: Place, where: string, widest: number, width: number): string[] {
  if (place.text.trim() === '') return [indent + where];
  const beside = indent.length + widest + gap.length;
  const fits = width - beside >= leastRoom;
  const left = fits ? beside : indent.length * 2;
  const { text, before, length } = excerptOf(place, width - left);
  const underline = ' '.repeat(left + before) + '='.repeat(length);
  const first = fits ? (indent + where).padEnd(left) + text : `${' '.repeat(left)}${text}`;
  return fits ? [first, underline] : [indent + where, first, underline];
}

/** The line without its indent, cut where it does not fit so that what is meant stays in view. */
function excerptOf(
  { text, column, length }: Place,
  room: number,
): { text: string; before: number; length: number } {
  const letters = [...printable(text.trimEnd())];
  const start = [...text.slice(0, column - 1)].length;
  const marked = Math.max(1, [...text.slice(column - 1, column - 1 + length)].length);
  const lead = letters.findIndex((letter) => letter !== ' ');
  const from = start + marked - lead <= room ? lead : Math.max(lead, start - Math.floor(room / 3));
  const cutLeft = from > lead;
  const cutRight = letters.length - from > room;
  const kept = letters.slice(from, from + room);
  if (cutLeft) kept[0] = '…';
  if (cutRight) kept[room - 1] = '…';
  const before = Math.max(0, start - from);
  return { text: kept.join(''), before, length: Math.max(1, Math.min(marked, room - before)) };
}
