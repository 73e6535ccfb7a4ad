import type { IsoDate } from '../../core/model/values.ts';
import { libraryWords } from '../../words/library.ts';
import { asSentence } from '../text/author-text.ts';
import { showRecordDate } from '../text/dates.ts';
import { capital, fill } from '../text/fill.ts';
import { type Shown, shown } from '../shown/shown.ts';

/** Where a guide or a module comes from, and who stands for it. */
export interface ShownOrigin {
  /** "version 1.2.0". Empty where there is none. */
  readonly version: Shown;
  /** "1.2.0" */
  readonly number: Shown;
  /** "Approved by the lead for skills teaching, 3 August 2026, until 3 August 2027". */
  readonly approval: Shown;
  readonly licence: Shown;
  readonly history: readonly { readonly version: Shown; readonly on: Shown; readonly what: Shown }[];
  readonly sources: readonly Shown[];
}

interface Origin {
  readonly version?: string;
  readonly approved?: { readonly by?: string; readonly on?: IsoDate; readonly until?: IsoDate };
  readonly licence?: string;
  readonly history: readonly { readonly version: string; readonly on?: IsoDate; readonly what: string }[];
  readonly sources: readonly string[];
}

export function showOrigin(key: string, of: Origin): ShownOrigin {
  const { version } = of;
  return {
    version: shown(`${key}.version`, version === undefined ? '' : fill(libraryWords.version, { version })),
    number: shown(`${key}.number`, version ?? ''),
    approval: shown(`${key}.approval`, approvalText(of.approved)),
    licence: shown(`${key}.licence`, of.licence ?? ''),
    history: of.history.map(({ version, on, what }, i) => ({
      version: shown(`${key}.history[${i}].version`, version),
      on: shown(`${key}.history[${i}].on`, on === undefined ? '' : showRecordDate(on)),
      what: shown(`${key}.history[${i}].what`, asSentence(capital(what))),
    })),
    sources: of.sources.map((source, i) => shown(`${key}.sources[${i}]`, asSentence(source))),
  };
}

function approvalText(approved: Origin['approved']): string {
  if (!approved) return '';
  const { by, on, until } = approved;
  return [
    by === undefined ? libraryWords.approved : fill(libraryWords.approvedBy, { by }),
    on === undefined ? '' : fill(libraryWords.approvedOn, { date: showRecordDate(on) }),
    until === undefined ? '' : fill(libraryWords.approvedUntil, { date: showRecordDate(until) }),
  ].join('');
}
