import type { OwnSettings } from '../core/plan/own/own-settings.ts';
import type { PageData } from '../core/plan/own/page-data.ts';

/** A setting of a page as text: of the whole plan, or of one level, tool or material by its id. */
export interface SettingText {
  /** The settings with this one; `undefined` where the text means nothing for the guide. */
  readonly read: (text: string, own: OwnSettings, page: PageData, id: string) => OwnSettings | undefined;
  /** By id what differs from what is published; the id of a setting of the whole plan is empty. */
  readonly print: (own: OwnSettings, page: PageData) => readonly (readonly [id: string, text: string])[];
}

/** How one value is read and written. */
interface Text<T> {
  readonly read: (text: string, page: PageData, id: string) => T | undefined;
  readonly print: (value: T) => string;
  /** What holds where nothing is set; left out where that is nothing. */
  readonly published?: (page: PageData, id: string) => T | undefined;
}

type Tables = 'along' | 'owned' | 'packs' | 'stock';
type Single = Exclude<keyof OwnSettings, Tables>;
type Rows<K extends Tables> = NonNullable<OwnSettings[K]>[string];

/** A setting of the whole plan. */
export function single<K extends Single>(key: K, text: Text<NonNullable<OwnSettings[K]>>): SettingText {
  return {
    read: (written, own, page) => {
      const value = text.read(written, page, '');
      return value === undefined ? undefined : { ...own, [key]: value };
    },
    print: ({ [key]: value }, page) => (value === undefined ? [] : changed(text, value, page, '')),
  };
}

/** A setting of one level, tool or material. */
export function table<K extends Tables>(key: K, text: Text<Rows<K>>): SettingText {
  const rowsOf = (own: OwnSettings) => (own[key] ?? {}) as Readonly<Record<string, Rows<K>>>;
  return {
    read: (written, own, page, id) => {
      const value = text.read(written, page, id);
      return value === undefined ? undefined : { ...own, [key]: { ...rowsOf(own), [id]: value } };
    },
    print: (own, page) =>
      Object.entries(rowsOf(own)).flatMap(([id, value]) => changed(text, value, page, id)),
  };
}

function changed<T>(text: Text<T>, value: T, page: PageData, id: string): (readonly [string, string])[] {
  const published = text.published?.(page, id);
  const written = text.print(value);
  return published !== undefined && text.print(published) === written ? [] : [[id, written]];
}
