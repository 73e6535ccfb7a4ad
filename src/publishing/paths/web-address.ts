import type { Program } from '../../core/model/program.ts';
import type { PlannedGuide } from '../planned/planned-guides.ts';

/**
 * Where a guide's page will stand on the web: for codes on paper. Undefined where the program does not say where its
 * site will be. Of the two editions it is the one that everybody may read.
 */
export function webAddress(
  { address }: Pick<Program, 'address'>,
  { folder }: Pick<PlannedGuide, 'folder'>,
): string | undefined {
  return address === undefined ? undefined : `${address.replace(/\/+$/, '')}/trainees/${folder}/index.html`;
}
