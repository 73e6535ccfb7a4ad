import type { OwnSettings } from './page-data.ts';
import { fieldNames, queryOf } from './fields.ts';
import type { Loaded } from './load-engine.ts';

/** What the panel asks for. */
export interface PanelReading {
  readonly settings: OwnSettings;
  /** Names of fields whose text means nothing. */
  readonly wrong: readonly string[];
  /** What an address held that means nothing here and has no field. */
  readonly unread: readonly string[];
}

export function readPanel(
  form: HTMLFormElement,
  unfielded: URLSearchParams,
  { engine, data }: Loaded,
): PanelReading {
  const query = new URLSearchParams([...queryOf(form), ...unfielded]);
  const { settings, unread } = engine.settingsFrom(query.toString(), data);
  const fields = fieldNames(form);
  return {
    settings,
    wrong: unread.filter(({ key }) => fields.includes(key)).map(({ key }) => key),
    unread: unread.filter(({ key }) => !fields.includes(key)).map(({ key, text }) => `${key}=${text}`),
  };
}
