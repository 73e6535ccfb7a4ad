import type { Check, Finding } from './check.ts';
import type { ModuleRead } from './lookup/context.ts';

/** A brief that comes after people have begun to practise, or a debrief or clear-up that comes before they have done. */
export const agendaOutOfOrder: Check = {
  code: 'agenda-out-of-order',
  gravity: 'incomplete',
  find: ({ modules }) => modules.flatMap(ofModule),
};

function ofModule({ module: { session }, place }: ModuleRead): readonly Finding[] {
  const agenda = session?.agenda ?? [];
  const circuits = agenda.flatMap(({ stations }, i) => (stations.length > 0 ? [i] : []));
  const [first, last] = [circuits[0], circuits.at(-1)];
  if (first === undefined || last === undefined) return [];
  const isMisplaced = {
    brief: (i: number) => i > first,
    debrief: isBefore(last),
    'clear-up': isBefore(last),
  };
  return (['brief', 'debrief', 'clear-up'] as const).flatMap((id): readonly Finding[] => {
    const index = agenda.findIndex((item) => item.id === id);
    if (index < 0 || !isMisplaced[id](index)) return [];
    const circuit = id === 'brief' ? first : last;
    const places = [index, circuit].map((i) => place('session', 'agenda', i, 'id'));
    const variant = id === 'brief' ? 'late' : 'early';
    return [{ variant, places: [places[0]!, places[1]!], facts: { item: id, circuit: agenda[circuit]!.id } }];
  });
}

const isBefore = (last: number) => (index: number) => index < last;
