import { describe, expect, it } from 'vitest';
import { cohortOf } from '../../../../src/core/plan/cohort/cohort.ts';
import { demandOf } from '../../../../src/core/plan/cohort/model-needs.ts';
import { aGuide, time } from '../a-workspace.ts';
import { aModule, aStation } from './a-module.ts';

const circuit = ['a', 'b', 'c', 'd', 'e'];
const item = (id: string, more: object = {}) => ({ id, stations: [], script: [], ...more });
const day = aModule({
  stations: circuit.map((id) => aStation(id)),
  session: {
    booked: time('3 h'),
    agenda: [
      item('brief', { takes: time('15 min') }),
      item('circuit', { stations: circuit }),
      item('debrief', { takes: 'the rest' as const }),
    ],
  },
});

describe('a session of 20 trainees in groups of 4, five stations of 25 min with 5 min to change', () => {
  it('has a brief, a circuit of 145 min, and the rest of 3 h', () => {
    const { items, over } = cohortOf(day, {}).agenda;
    expect(items.map(({ id, start, end }) => [id, start, end])).toEqual([
      ['brief', 0, 15],
      ['circuit', 15, 160],
      ['debrief', 160, 180],
    ]);
    expect(over).toBe(0);
  });

  it('overruns by 10 min with 21 trainees: a sixth group wants a sixth round', () => {
    // 15 + 175 = 190 of 180 min
    expect(cohortOf(day, {}, { people: { trainees: 21 } }).agenda.over).toBe(10);
  });
});

it('a circuit is as long as its rounds, though it says that it takes the rest', () => {
  // booked 180: brief 15, circuit 5 x 25 + 4 x 5 = 145
  const agenda = [
    item('brief', { takes: time('15 min') }),
    item('circuit', { stations: circuit, takes: 'the rest' as const }),
  ];
  const { items, over } = cohortOf({ ...day, session: { booked: time('3 h'), agenda } }, {}).agenda;
  expect(items.map(({ start, end }) => [start, end])).toEqual([
    [0, 15],
    [15, 160],
  ]);
  expect(over).toBe(0);
});

it('people of any name are counted as the reader says', () => {
  const people = [{ id: 'constructor', count: 7, as: ['trainees' as const] }];
  const module = aModule({ cohort: { people } });
  expect(cohortOf(module, {}).people[0]!.count).toBe(7);
  expect(cohortOf(module, {}, { people: { constructor: 3 } }).people[0]!.count).toBe(3);
});

describe('models', () => {
  const seatPolicy = { guide: 'block', uses: 3, share: 'seat' as const, besides: {} };
  const at = (models: object) =>
    aModule({ stations: [aStation('a', { models: [{ ...seatPolicy, ...models }] })] });
  const block = (lasts: string) => ({ block: aGuide('block', { lasts }) });

  it('that stay at their seat: 2 seats x 30 uses, 12 uses a model', () => {
    expect(cohortOf(at({}), block('12')).models).toEqual([
      { guide: 'block', models: 6, uses: 60, besides: {}, spares: 0, parts: [] },
    ]);
  });

  it('are not put before empty seats: 2 people at 6 seats use 2', () => {
    const { models } = at({ share: 'mixed', uses: 1 }).stations[0]!;
    const module = aModule({ stations: [aStation('a', { seats: 6, atOne: 1, models })] });
    expect(cohortOf(module, block('12'), { people: { trainees: 2 } }).models[0]!.models).toBe(2);
    // in pairs of two they use one
    const inPairs = { ...module, stations: [aStation('a', { seats: 6, models })] };
    expect(cohortOf(inPairs, block('12'), { people: { trainees: 2 } }).models[0]!.models).toBe(1);
  });

  it('for a demonstration and a pilot come on top', () => {
    expect(cohortOf(at({ besides: { demonstration: 1, pilot: 2 } }), block('12')).models[0]!.models).toBe(9);
  });

  it('for nobody are none, and ask for none', () => {
    expect(demandOf(cohortOf(at({}), block('12'), { people: { trainees: 0 } }).models)).toEqual([]);
  });

  it('of seniors who try them out are counted by themselves', () => {
    const module = at({ share: 'own' });
    const people = [...module.cohort.people, { id: 'seniors', count: 3, as: ['try-out' as const] }];
    const withSeniors = { ...module, cohort: { ...module.cohort, people } };
    expect(cohortOf(withSeniors, block('12')).models[0]!.models).toBe(23);
    const raters = people.map((kind) =>
      kind.id === 'seniors' ? { ...kind, as: ['raters' as const] } : kind,
    );
    const judged = { ...module, cohort: { ...module.cohort, people: raters } };
    expect(cohortOf(judged, block('12')).models[0]!.models).toBe(20);
  });

  it('with a part that wears sooner want more of that part alone', () => {
    // frames: 2 at once; skins: 60 uses, 4 each
    const frame = aGuide('block', {
      parts: [
        { id: 'frame', name: 'Frame', lasts: '500' },
        { id: 'skin', name: 'Skin', lasts: '4' },
      ],
    });
    const { models } = cohortOf(at({ share: 'mixed' }), { block: frame });
    expect(models).toEqual([
      {
        guide: 'block',
        models: 2,
        uses: 60,
        besides: {},
        spares: 0,
        parts: [{ part: 'skin', count: 15, spares: 0 }],
      },
    ]);
    expect(demandOf(models)).toEqual([
      { guide: 'block', wanted: 2 },
      { guide: 'block', part: 'skin', wanted: 13 },
    ]);
    // one spare frame at least; a tenth of 13 skins is 2
    const [spare] = cohortOf(at({ share: 'mixed' }), { block: frame }, { spares: '1/10' }).models;
    expect(spare).toMatchObject({ spares: 1, parts: [{ spares: 2 }] });
  });

  it('of the usual level stand together, whether or not the level is named', () => {
    const levels = [
      { id: 'shallow', name: 'Shallow', usual: false },
      { id: 'deep', name: 'Deep', usual: true },
    ];
    const named = [seatPolicy, { ...seatPolicy, level: 'deep', besides: { demonstration: 1 } }];
    const module = aModule({ stations: [aStation('a', { models: named })] });
    expect(cohortOf(module, { block: aGuide('block', { levels, lasts: '12' }) }).models).toEqual([
      {
        guide: 'block',
        level: 'deep',
        models: 13,
        uses: 120,
        besides: { demonstration: 1 },
        spares: 0,
        parts: [],
      },
    ]);
  });
});

it('instructors: one for so many trainees, and one for each station that is led', () => {
  const led = aModule({
    cohort: { ratio: 8, people: [{ id: 'trainees', count: 20, as: ['trainees'] }], instructors: 2 },
    stations: circuit.map((id) => aStation(id, { led: id < 'c' })),
  });
  expect(cohortOf(led, {}).instructors).toEqual({ needed: 3, there: 2 });
  const more = { ...led, stations: circuit.map((id) => aStation(id, { led: id < 'e' })) };
  expect(cohortOf(more, {}).instructors.needed).toBe(4);
});

it('tools are counted by seat, person and station, all stations at once', () => {
  const tools = [
    { use: 'probe', count: 1, each: 'station' as const },
    { use: 'needle', count: 3, each: 'person' as const },
    { use: 'drape', count: 1, each: 'seat' as const },
  ];
  const module = aModule({ stations: [aStation('a', { tools }), aStation('b', { tools })] });
  expect([...cohortOf(module, {}).tools]).toEqual([
    ['probe', 2],
    ['needle', 24],
    ['drape', 4],
  ]);
  // 20 trainees with 3 needles at each of two stations
  expect(cohortOf(module, {}).toolsInAll.get('needle')).toBe(120);
});

it('tools for each person are not laid at empty places', () => {
  const tools = [{ use: 'needle', count: 1, each: 'person' as const }];
  const module = aModule({
    cohort: { people: [{ id: 'trainees', count: 5, as: ['trainees'] }], group: 5 },
    stations: [aStation('a', { seats: 'as needed', tools })],
  });
  expect(cohortOf(module, {}).seats.get('a')).toBe(3);
  expect(cohortOf(module, {}).tools.get('needle')).toBe(5);
});

// in-use of the guides by hand: blocks 10 min to set up, 2 min between uses, 6 min afterwards; pads 4, 7 and 1 min
describe('what the models take besides their use', () => {
  const guides = {
    block: aGuide('block', {
      lasts: '12',
      inUse: {
        setUp: { takes: time('10 min'), uses: [] },
        between: { takes: time('2 min'), uses: [] },
        after: { takes: time('6 min'), uses: [] },
        renew: [],
      },
    }),
    pad: aGuide('pad', {
      lasts: '3',
      inUse: {
        setUp: { takes: time('4 min'), uses: [] },
        between: { takes: time('7 min'), uses: [] },
        after: { takes: time('1 min'), uses: [] },
        renew: [],
      },
    }),
  };
  const of = (guide: string) => [{ guide, uses: 2, share: 'mixed' as const, besides: {} }];
  const stations = [
    aStation('a', { models: of('block') }),
    aStation('b', { models: of('pad') }),
    aStation('c', { models: of('pad'), reset: time('90 s') }),
  ];
  const module = aModule({
    stations,
    session: {
      booked: time('4 h'),
      agenda: [item('circuit', { stations: ['a', 'b', 'c'] }), item('clear-up', { takes: time('5 min') })],
    },
  });

  it('is as long as the longest station, before and after', () => {
    expect(cohortOf(module, guides).care).toMatchObject({ setUp: 10, after: 6, clearUp: 5 });
    expect(cohortOf(module, {}).care).toMatchObject({ setUp: 0, after: 0 });
  });

  it('between two groups is what the station says, else its guide, within the change-over', () => {
    expect(cohortOf(module, guides).care.resets).toEqual([
      { station: 'a', minutes: 2, within: 5 },
      { station: 'b', minutes: 7, within: 5 },
      { station: 'c', minutes: 2, within: 5 },
    ]);
  });

  it('is nothing between groups where only one comes', () => {
    const alone = { ...module, stations: stations.slice(0, 1) };
    const agenda = [item('turn', { stations: ['a'] })];
    const one = { ...alone, session: { booked: time('1 h'), agenda } };
    expect(cohortOf(one, guides, { people: { trainees: 4 } }).care.resets).toEqual([]);
  });

  it('counts the uses that all make of one guide together', () => {
    // 20 trainees, 2 uses each, at two stations
    expect(cohortOf(module, guides).models.map(({ guide, uses }) => [guide, uses])).toEqual([
      ['block', 40],
      ['pad', 80],
    ]);
  });
});
