import { fill } from '../../showing/text/fill.ts';
import type { PlannedGuide } from '../planned/planned-guides.ts';

/** "{guide} · bench sheet · {version} · {batch}", and the same for a guide that has no version. */
export interface HeadWords {
  readonly head: string;
  readonly headNoVersion: string;
}

/** What stands at the head of each printed page, for a batch of some models. */
export function marginTitle(
  { guide, line }: PlannedGuide,
  { head, headNoVersion }: HeadWords,
  batch: string,
): string {
  const version = guide.version.text;
  const facts = { guide: line.title.text, batch };
  return version === '' ? fill<string>(headNoVersion, facts) : fill<string>(head, { ...facts, version });
}
