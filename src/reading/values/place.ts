import type { Rational } from '../../core/model/values.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import type { ZoneTable } from '../../core/time/zone.ts';
import { means, wrong } from './plain-words.ts';
import type { TextReader } from '../sheet/written.ts';
import { zoneTable } from '../zone-table.ts';

/** A language tag by BCP 47, in its usual spelling: `en-gb` -> `en-GB`. */
export const readLocale: TextReader<string> = (text) => {
  const tag = canonicalTag(text.trim());
  if (tag) return means(tag);
  const near = canonicalTag(text.trim().replaceAll('_', '-'));
  return wrong('locale-unreadable', near ? { near } : {}, near ? 'near' : undefined);
};

function canonicalTag(text: string): string | undefined {
  try {
    return Intl.getCanonicalLocales(text)[0];
  } catch {
    return undefined;
  }
}

/** A time zone by its IANA name, as the table of its offsets. */
export const readZone: TextReader<ZoneTable> = (text) => {
  const table = zoneTable(text.trim());
  if (table) return means(table);
  const near = zoneOfPlace(text);
  return near === undefined ? wrong('zone-unknown') : wrong('zone-unknown', { near }, 'near');
};

/** `Europe/Dublin` of “Dublin”. */
function zoneOfPlace(text: string): string | undefined {
  const place = text.trim().replaceAll(/\s+/g, '_');
  return parts.map((part) => `${part}/${place}`).find((zone) => zoneTable(zone) !== undefined);
}
const parts = ['Africa', 'America', 'Asia', 'Atlantic', 'Australia', 'Europe', 'Indian', 'Pacific'];

/** A plain number above zero: a rate of exchange. */
export const readDecimal: TextReader<Rational> = (text) => {
  const number = readQuantity(text);
  if (!number.ok) return number;
  if (number.value.unit !== '') return wrong('unit-not-here', { unit: number.value.unit });
  return /^(-|0$)/.test(number.value.value) ? wrong('amount-zero') : means(number.value.value);
};
