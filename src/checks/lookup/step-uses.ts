import type { Place } from '../../core/diagnostic.ts';
import type { GuideAtLevel, Way } from './context.ts';

/**
 * Where a step names what it uses. A level keeps only the uses that it has, so they are counted among those written.
 *
 * @param step  Index into the steps of the level.
 * @param use   Index into what the step uses at that level; the step itself where its uses are unsaid.
 */
export function placeOfUse(read: GuideAtLevel, step: number, use: number, ...way: Way): Place {
  const asWritten = read.guide.steps[read.at.originOf.steps[step]!]!.uses;
  const here = read.at.steps[step]!.uses;
  if (!asWritten || !here) return read.place('steps', step);
  const kept = new Set(here.map(({ material }) => material));
  const indexes = asWritten.flatMap(({ material }, i) => (kept.has(material) ? [i] : []));
  return read.place('steps', step, 'uses', indexes[use]!, ...way);
}
