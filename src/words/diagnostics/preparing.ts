import type { ProblemFamily } from './sentences.ts';

/** What trainees read, watch and do before they come. */
export const preparingFindings: ProblemFamily = {
  'film-without-words': {
    says: 'The film “{text}” has neither captions nor a transcript, and not everybody hears it.',
    write: 'text: …   the file of its captions or of its transcript, beside the module',
  },
  'missing-module-file': {
    says: 'The module “{module}” names the file “{file}”, which is not in the folder {folder}.',
    write: '{key}: …   a file beside the module',
  },
  'missing-module-file.near': {
    says: 'The module “{module}” names the file “{file}”, which is not in the folder {folder}; “{near}” comes near it.',
    write: '{paste}',
  },
  'module-file-kind-unknown': {
    says: 'The file {file} is none of the kinds that are handed out to trainees.',
    why: 'A browser would open it as a page of the site, or few programs could open it. These are handed out: {kinds}.',
    write: '{key}: …   a film, a sound, captions or a document of one of these kinds',
  },
  'missing-module-text': {
    says: 'Trainees are to read “{name}”, and the module has no text of that heading.',
    write: 'read: …   one of: {known}',
  },
  'missing-module-text.near': {
    says: 'Trainees are to read “{name}”, and the module has no text of that heading; “{near}” comes near it.',
    write: 'read: {near}',
  },
  'missing-module-text.none': {
    says: 'Trainees are to read “{name}”, and the module has no text under a heading.',
    write: '## {words}   and below it what they read',
  },
  'preparation-over-promise': {
    says: 'To prepare for “{module}” takes {sum}, and trainees are promised {promised} at most.',
    write: 'promised: {sum}   or less to prepare',
  },
  'reading-longer-than-stated': {
    says: 'The text “{text}” has {words} words, which take longer to read than the {stated} that are said.',
    why: 'Counted at {rate} words a minute, a little slower than people read for themselves (Brysbaert 2019: 238).',
    write: 'takes: {minutes} min   or a shorter text',
  },
  'reading-too-hard': {
    says: 'The texts of “{module}” read as in school year {grade}; texts for everybody read as in year 8 or below.',
    why: 'By the formula of Flesch and Kincaid (1975): {length} words a sentence, {syllables} syllables a word. It counts how long words and sentences are and knows nothing of what they mean; syllables are counted by rule, in English alone. Take it to the nearest year.',
    act: 'shorter sentences, shorter words; the longest sentence is “{text}”',
  },
};
