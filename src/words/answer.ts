/** What a page answers after each change of its settings. */
export const answerWords = {
  ready: '{what}: {outlay} to buy, ready {ready}.',
  backwards: '{what}: {outlay} to buy, begin {begin}, ready {ready}.',
  noSchedule: '{what}: {outlay} to buy. {none}',
} as const;
