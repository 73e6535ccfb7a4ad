import { safetyWords } from './safety.ts';

/**
 * The published list of what is said in a session: the brief and the clear-up of a module name the id, or write words
 * of their own. `{list}` stands for what the models and tools of the session hold that somebody may react to.
 *
 * @source University of Tennessee, procedure SIM109 (2019), asks for the first and for the pockets; the rest is common
 *   practice, no source.
 */
export const scriptWords: Readonly<Record<string, string>> = Object.freeze({
  'training-only': safetyWords.trainingOnly,
  allergens: 'In this room: {list}. Tell us now if you react to any of it.',
  pockets: 'Turn out your pockets: nothing leaves the room.',
  'sharps-count': 'Count blades and needles, station by station, against what was given out.',
});

/** What is said in place of those whose `{list}` is empty. */
export const scriptWordsOfNone: Readonly<Record<string, string>> = Object.freeze({
  allergens: 'Nothing is named here that people often react to; tell us now what you react to.',
});
