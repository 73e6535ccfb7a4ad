import { otherDangerWords } from '../../words/hazards.ts';
import { inWords } from '../text/fill.ts';
import { hazardStatement } from './show-ghs.ts';

/** "Flammable aerosol (H223)", "a sharp blade, cuts"; a code without a statement stands as it is. */
export function dangerText(danger: string): string {
  const statement = hazardStatement(danger);
  if (statement !== undefined) return `${statement} (${danger})`;
  return otherDangerWords[danger] ?? (/^(EU)?H\d/.test(danger) ? danger : inWords(danger));
}
