import { expect, it } from 'vitest';
import { plainLetters } from '../../src/core/plain-letters.ts';

// Unicode Standard Annex 15, NFKD: é is e and an acute, ﬁ is f and i; the rest is common spelling, no source.
it.each([
  ['Crépine', 'crepine'],
  ['CRÉPINE', 'crepine'],
  ['Größe', 'grosse'],
  ['GROẞE', 'grosse'],
  ['Œdème', 'oedeme'],
  ['æther', 'aether'],
  ['Øre', 'ore'],
  ['ﬁne ﬂow', 'fine flow'],
  ['Łódź', 'lodz'],
  ['½', '1⁄2'],
  ['', ''],
])('%s is compared as %s', (written, compared) => {
  expect(plainLetters(written)).toBe(compared);
});
