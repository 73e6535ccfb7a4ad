import { given } from '../core/given.ts';
import type { IsoDate } from '../core/model/values.ts';
import type { PlanSettings } from '../core/plan/demand.ts';
import type { StockRead } from '../reading/stock.ts';
import { type Fault, fault } from './fault.ts';
import type { Values } from './options.ts';

/** Options that do not go together. */
export function faultsOfSettings(values: Values): readonly Fault[] {
  const { start, format = 'text', list, group } = values;
  const readyBy = values['ready-by'];
  const beside = (['margin', 'good-until'] as const).filter((name) => values[name] !== undefined);
  return [
    ...(start !== undefined && readyBy !== undefined ? [fault('start-and-ready-by')] : []),
    ...(readyBy === undefined ? beside.map((name) => fault('needs-ready-by', { option: `--${name}` })) : []),
    ...(format === 'ics' && (start ?? readyBy) === undefined ? [fault('ics-needs-dates')] : []),
    ...(list !== undefined && format !== 'csv' ? [fault('list-without-csv', { format })] : []),
    ...(group !== undefined && format !== 'ics' ? [fault('group-without-ics', { format })] : []),
  ];
}

/** What a call sets of a plan; the rest is as the program has it. */
export function settingsOf(values: Values, today: IsoDate, { stock, finished }: StockRead): PlanSettings {
  const { builders, spares, start, 'ready-by': readyBy, margin, 'good-until': goodUntil, effort } = values;
  const own = { builders, spares, start, readyBy, margin, goodUntil, effort };
  return given<PlanSettings>({ today, stock, finished, ...own });
}
