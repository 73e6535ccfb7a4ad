import type { Place } from '../../core/diagnostic.ts';
import type { ProsePlace } from '../../core/model/prose.ts';
import { lineText, type Source } from '../text/source.ts';

/** A position in the prose as a place with its line. */
export function prosePlace(source: Source, at: ProsePlace): Place {
  return { file: source.file, ...at, text: lineText(source, at.line) };
}
