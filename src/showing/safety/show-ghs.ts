import { ghsLabel, withoutLetters } from '../../core/model/ghs-label.ts';
import type { Material } from '../../core/model/material.ts';
import { hazardStatements, labelWords, pictogramNames } from '../../words/hazards.ts';
import { precautionaryStatements } from '../../words/precautions.ts';
import { properly } from '../text/author-text.ts';
import { fill, listed } from '../text/fill.ts';

/** The statement of a hazard code, or undefined where one part of it has none here: "Harmful if swallowed; Toxic if inhaled". */
export function hazardStatement(code: string): string | undefined {
  const found = code.split('+').map((part) => hazardStatements[withoutLetters(part)]);
  return found.includes(undefined) ? undefined : found.join('; ');
}

/** "Keep container tightly closed. (P233)"; joined codes that the table lacks are said one by one. */
export function precautionText(code: string): string {
  const parts = code.split('+').map((part) => precautionaryStatements[part]);
  const statement =
    precautionaryStatements[code] ?? (parts.includes(undefined) ? undefined : parts.join(' '));
  return statement === undefined ? code : fill(labelWords.said, { statement: properly(statement), code });
}

/** "Signal word of the label: Danger. Pictograms: flame and exclamation mark."; empty without a code. */
export function labelText({ hazards }: Pick<Material, 'hazards'>): string {
  if (hazards.length === 0) return '';
  const { signal, pictograms, open } = ghsLabel(hazards);
  const isOpenAltogether = open.length > 0 && signal === undefined && pictograms.length === 0;
  return [
    ...(isOpenAltogether ? [] : [signal ? fill(labelWords.signal, { signal }) : labelWords.noSignal]),
    ...(isOpenAltogether ? [] : [pictogramText(pictograms.map((pictogram) => pictogramNames[pictogram]))]),
    ...(open.length > 0 ? [fill(labelWords.open, { list: listed(open) })] : []),
  ].join(' ');
}

function pictogramText(names: readonly string[]): string {
  if (names.length === 0) return labelWords.noPictogram;
  const list = listed(names);
  return fill(names.length === 1 ? labelWords.pictogram : labelWords.pictograms, { list });
}
