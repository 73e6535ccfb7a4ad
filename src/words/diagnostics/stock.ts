import type { ProblemFamily } from './sentences.ts';

/** A stock file that names what the workspace has not, or counts it in another way. */
export const stockProblems: ProblemFamily = {
  'stock-unknown': {
    says: 'The stock file has “{material}”, and the workspace has no such material.',
    why: 'Its materials: {known}.',
    act: 'the id of a material, which is the name of its file without .yaml',
  },
  'stock-unknown.near': {
    says: 'The stock file has “{material}”, and the workspace has no such material; “{near}” comes near it.',
    write: '{near}:',
  },
  'stock-not-comparable': {
    says: '{material} is in stock in {unit} and sold in {sold}, and nothing says how the two compare.',
    write: '{put}…   in {sold}',
  },
};
