import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makePlan } from '../../src/core/plan/plan.ts';
import type { Plan, PlannedSchedule } from '../../src/core/plan/result.ts';
import { csvText } from '../../src/exports/csv-text.ts';
import { dayListCsv } from '../../src/exports/day-list-csv.ts';
import { shoppingCsv } from '../../src/exports/shopping-csv.ts';
import { workOfEach } from '../../src/showing/schedule/work-of-each.ts';
import { aProgram } from '../core/plan/a-workspace.ts';
import { gelatinRoom } from '../core/plan/gelatin-block.ts';

const tableOf = (text: string) => parse(text, { bom: true, columns: true }) as Record<string, string>[];
const planOf = (settings = {}) =>
  makePlan(gelatinRoom, [{ guide: 'needle-block', wanted: 4 }], { today: '2026-11-25', ...settings }) as Plan;

describe('a table as CSV', () => {
  it('is as RFC 4180 (2005) has it: CR LF, quotes doubled, cells with commas and line ends quoted', () => {
    expect(
      csvText(
        ['a', 'b'],
        [
          ['x,y', 'say "so"'],
          ['two\nlines', undefined],
        ],
      ),
    ).toBe('\uFEFFa,b\r\n"x,y","say ""so"""\r\n"two\nlines",\r\n');
  });

  it.each(['=1+1', '+44 20', '-2', '@sum', '\tx', '\rx'])(
    'puts an apostrophe before %j, which a spreadsheet would take for a formula',
    (text) => {
      const [row] = parse(csvText(['a'], [[text]]), { bom: true, from: 2 }) as string[][];
      expect(row).toEqual([`'${text}`]);
    },
  );

  // OWASP, CSV Injection: the field separator too may begin a cell (from memory)
  it.each([
    ['a;=1+1', "a;'=1+1"],
    ['a\t@sum', "a\t'@sum"],
    ['a\n-1', "a\n'-1"],
    ['a;"=1+1', `a;'"=1+1`],
    ['6; -5 °C', '6; -5 °C'],
    ['a=b, c-d', 'a=b, c-d'],
  ])(
    'guards in %j what would begin a cell where semicolons, tabs or line ends part them',
    (text, guarded) => {
      const [row] = parse(csvText(['a'], [[text]]), {
        bom: true,
        from: 2,
        record_delimiter: '\r\n',
      }) as string[][];
      expect(row).toEqual([guarded]);
    },
  );

  it('leaves numbers as they are, those below zero too', () => {
    expect(csvText(['a'], [[-2.5], ['6.40'], [12]])).toBe('\uFEFFa\r\n-2.5\r\n6.40\r\n12\r\n');
  });

  it('is read back as it was written', () => {
    const cell = fc
      .string({ unit: 'grapheme' })
      .filter((text) => !/^[=+\-@\t\r＝＋－＠]|[;\t\r\n]"*[=+\-@]/.test(text));
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1 }), (rows) => {
        const read = parse(csvText(['a', 'b'], rows), {
          bom: true,
          from: 2,
          record_delimiter: '\r\n',
        }) as string[][];
        expect(read).toEqual(rows);
      }),
    );
  });
});

describe('the shopping list', () => {
  it('has a row for each pack, with decimals, and bare numbers for counts and prices', () => {
    const rows = tableOf(shoppingCsv(planOf(), gelatinRoom));
    expect(rows[0]).toMatchObject({
      Material: 'Gelatin powder',
      // 10080/19 g and 8920/19 g, to a thousandth
      Needed: '530.527 g',
      'From stock': '0 g',
      'Packs to buy': '2',
      'A pack holds': '500 g',
      Supplier: 'a craft shop',
      'Price of a pack': '6.40',
      Price: '12.80',
      Currency: 'GBP',
      'Left over': '469.473 g',
    });
    expect(rows.at(-1)).toMatchObject({ Material: 'Delivery', Price: '4.95', Currency: 'GBP' });
  });

  it('says of what is at hand that none is to buy', () => {
    const stock = { 'gelatin-powder': { value: '1', unit: 'kg' } };
    const [gelatin] = tableOf(shoppingCsv(planOf({ stock }), gelatinRoom));
    expect(gelatin).toMatchObject({ 'From stock': '530.526 g', 'Packs to buy': '0', 'A pack holds': '' });
  });
});

describe('the day lists', () => {
  const listOf = (settings = {}) => {
    const plan = planOf(settings);
    const schedule = plan.schedule as PlannedSchedule;
    return tableOf(dayListCsv(workOfEach(plan, schedule), schedule, gelatinRoom.program.zone));
  };

  it('count the days of the reference week', () => {
    const [first, second] = listOf();
    expect(first).toMatchObject({ Day: '1', From: '16:10', Builder: '1', Guide: 'Needle block' });
    // begun as late as the night of the fridge lets it: 10 + 8 + 20 + 12 min to 17:00; melt from 16:20 to 16:28
    expect(second).toMatchObject({
      Day: '1',
      From: '16:20',
      'Until day': '1',
      Until: '16:28',
      Work: 'Melt, all 4',
      'Waits until day': '1',
      'Waits until': '16:48',
    });
  });

  it('have dates, and times by the clock on the wall, where the plan has', () => {
    expect(listOf({ start: '2026-11-26T16:00' })[0]).toMatchObject({ Day: '2026-12-01', From: '16:10' });
    const zone = aProgram().zone;
    const minute = Date.UTC(2026, 6, 1, 8) / 60_000;
    const work = { from: minute, until: minute + 30, guide: 'g', work: 'w' };
    // British summer time
    expect(tableOf(dayListCsv([work], { clock: 'dated', start: minute }, zone))[0]).toMatchObject({
      Day: '2026-07-01',
      From: '09:00',
      Until: '09:30',
      Builder: '',
    });
  });
});
