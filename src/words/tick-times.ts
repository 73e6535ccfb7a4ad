/** What follows from when a step is ticked off. */
export const tickTimeWords = {
  notBefore: 'Next step not before {time}.',
  limit: 'Hands off the next step by {time}.',
  limitBefore: 'Hands off “{step}” by {time}.',
  clears: 'No flame and no hot tool before {time}.',
} as const;
