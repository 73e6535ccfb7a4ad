import { pageWords } from '../../src/words/pages.ts';
import type { Content } from './markup.ts';
import type { Site } from './site.ts';

/** What the program itself says of its policy, and where that is to be read; nothing where it says neither. */
export function policyNote({ policy }: Site): Content {
  if (policy?.note === undefined && policy?.link === undefined) return null;
  return (
    <p class="policy">
      {policy.note ?? null}{' '}
      {policy.link === undefined ? null : (
        <a href={policy.link} rel="noreferrer">
          {pageWords.policy}
        </a>
      )}
    </p>
  );
}
