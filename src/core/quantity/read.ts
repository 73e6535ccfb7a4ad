/** Every reader of an amount: text as an author types it -> an exact value, or what is wrong with it. */
export { readAmount, readQuantity, readTarget } from './read-amount.ts';
export { readHeat } from './read-heat.ts';
export { readLeading } from './read-leading.ts';
export {
  readCount,
  readDensity,
  readModels,
  readRatio,
  readShare,
  readUses,
  readYield,
} from './read-number.ts';
export { readHolding, readSheets, readSize } from './read-size.ts';
export type { Leading } from './read-leading.ts';
export type { Problem, ProblemCode, Reading } from './problem.ts';
