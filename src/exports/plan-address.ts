import type { OwnSettings } from '../core/plan/own/own-settings.ts';
import type { PageData } from '../core/plan/own/page-data.ts';
import type { SettingText } from './setting-text.ts';
import { singleSettings, tableSettings } from './setting-texts.ts';

/** What an address says that means nothing for the guide: the name of the setting, and its text. */
export interface Unread {
  readonly key: string;
  readonly text: string;
}

/**
 * Settings as the query of an address, by the names that the command line has for them; a setting of a level, a tool or
 * a material has its id behind a colon. What is as published is left out; empty where all is.
 *
 *     batch=12&batch:deep=4&ready-by=2026-12-01T09:00&stock:gelatin-powder=240+g&pack:gelatin-powder=1+kg+at+11+GBP
 */
export function addressOf(own: OwnSettings, page: PageData): string {
  const all = [...Object.entries(singleSettings), ...Object.entries(tableSettings)];
  const pairs = all.flatMap(([name, setting]) =>
    setting.print(own, page).map(([id, text]) => [id === '' ? name : `${name}:${id}`, text] as const),
  );
  return pairs.map(([key, text]) => `${key}=${encoded(text)}`).join('&');
}

/** Readable, and as short as the rules for addresses allow. @source RFC 3986 (2005), section 3.4. */
function encoded(text: string): string {
  return encodeURIComponent(text).replace(/%(?:20|2C|2F|3A)/g, (code) => plain[code]!);
}
const plain: Readonly<Record<string, string>> = { '%20': '+', '%2C': ',', '%2F': '/', '%3A': ':' };

/**
 * The settings that an address holds, and what of it means nothing for the guide. Names that are no settings are passed
 * over: others may have put them there.
 *
 * @param query  With or without its question mark.
 */
export function settingsFrom(
  query: string,
  page: PageData,
): { readonly settings: OwnSettings; readonly unread: readonly Unread[] } {
  const unread: Unread[] = [];
  let settings: OwnSettings = {};
  for (const [key, text] of new URLSearchParams(query)) {
    const [, name = '', id] = /^([^:]*)(?::(.*))?$/s.exec(key)!;
    const setting = settingOf(id === undefined ? singleSettings : tableSettings, name);
    const read = setting?.read(text, settings, page, id ?? '');
    if (read) settings = read;
    else if (setting) unread.push({ key, text });
  }
  return { settings, unread };
}

function settingOf(table: Readonly<Record<string, SettingText>>, name: string): SettingText | undefined {
  return Object.hasOwn(table, name) ? table[name] : undefined;
}
