import type { RatingScale } from '../core/model/module.ts';
import type { Check } from './check.ts';

/**
 * A rating scale that leaves raters to guess what its ends or its middle mean.
 *
 * @source Common practice, no source: each point, or at least both ends and the middle, is said in words.
 */
export const scaleWithoutAnchors: Check = {
  code: 'scale-without-anchors',
  gravity: 'incomplete',
  find: ({ modules }) =>
    modules.flatMap(({ module: { scoring }, place }) =>
      (scoring?.ratings ?? []).flatMap((rating, i) =>
        missingAnchors(rating).map(({ variant, point }) => ({
          variant,
          places: [place('scoring', 'ratings', i, 'anchors')] as const,
          facts: { rating: rating.id, point },
        })),
      ),
    ),
};

/** At most one thing a scale: points that are no numbers, fewer than two, or nothing in the middle. */
function missingAnchors({ anchors }: RatingScale): readonly { variant: string; point: string }[] {
  const keys = Object.keys(anchors);
  const odd = keys.find((key) => !/^\d+$/.test(key));
  if (odd !== undefined) return [{ variant: 'points', point: odd }];
  const points = keys.map(Number);
  if (points.length < 2) return [{ variant: 'ends', point: '' }];
  const sum = Math.min(...points) + Math.max(...points);
  const middle = [Math.floor(sum / 2), Math.ceil(sum / 2)];
  const isSaid = middle.some((point) => points.includes(point));
  return isSaid ? [] : [{ variant: 'middle', point: String(middle[0]) }];
}
