/**
 * Words for the dangers of products and tools. A statement is looked up by its code and by nothing else: which codes
 * a product has is what its supplier's safety data sheet says, never what this table might suggest.
 */

/** Where the statements come from, and what the table is not. Printed on the page about safety. */
export const aboutHazards = {
  source:
    'Hazard and precautionary statements of the Globally Harmonized System (GHS), UN GHS Rev. 10 (2023), Annex 3, as PubChem tabulates them; the precautionary statements that only labels in the EU carry, Regulation (EC) No 1272/2008, Annex IV, consolidated version of 1 September 2025. Signal words and pictograms follow from the codes by the rules of precedence (UN GHS, chapter 1.4): what they come to is compared with the label, which counts.',
  limits:
    'A selection: what craft and kitchen products usually carry. Where a statement asks for a detail (which organ, which effect), the detail stands in the supplier’s safety data sheet. Where the EU words a statement otherwise than the UN, the UN’s wording stands here and the label has its own. A code that is not listed here is printed as it is.',
} as const;

/**
 * GHS hazard statements by code, in the wording of the UN.
 *
 * @source UN GHS Rev. 10 (2023), Annex 3, through the PubChem table of codes; American spellings turned into the UN's.
 */
export const hazardStatements: Readonly<Record<string, string>> = {
  H220: 'Extremely flammable gas',
  H222: 'Extremely flammable aerosol',
  H223: 'Flammable aerosol',
  H225: 'Highly flammable liquid and vapour',
  H226: 'Flammable liquid and vapour',
  H228: 'Flammable solid',
  H229: 'Pressurized container: May burst if heated',
  H280: 'Contains gas under pressure; may explode if heated',
  H290: 'May be corrosive to metals',
  H301: 'Toxic if swallowed',
  H302: 'Harmful if swallowed',
  H304: 'May be fatal if swallowed and enters airways',
  H312: 'Harmful in contact with skin',
  H314: 'Causes severe skin burns and eye damage',
  H315: 'Causes skin irritation',
  H317: 'May cause an allergic skin reaction',
  H318: 'Causes serious eye damage',
  H319: 'Causes serious eye irritation',
  H320: 'Causes eye irritation',
  H331: 'Toxic if inhaled',
  H332: 'Harmful if inhaled',
  H334: 'May cause allergy or asthma symptoms or breathing difficulties if inhaled',
  H335: 'May cause respiratory irritation',
  H336: 'May cause drowsiness or dizziness',
  H351: 'Suspected of causing cancer',
  H360: 'May damage fertility or the unborn child',
  H361: 'Suspected of damaging fertility or the unborn child',
  H362: 'May cause harm to breast-fed children',
  H370: 'Causes damage to organs',
  H372: 'Causes damage to organs through prolonged or repeated exposure',
  H373: 'May cause damage to organs through prolonged or repeated exposure',
  H400: 'Very toxic to aquatic life',
  H410: 'Very toxic to aquatic life with long lasting effects',
  H411: 'Toxic to aquatic life with long lasting effects',
  H412: 'Harmful to aquatic life with long lasting effects',
  H413: 'May cause long lasting harmful effects to aquatic life',
};

/**
 * What the picture on a label shows, in words: a page says it and never draws it.
 *
 * @source UN GHS Rev. 10 (2023), Annex 1.
 */
export const pictogramNames = {
  GHS01: 'exploding bomb',
  GHS02: 'flame',
  GHS03: 'flame over circle',
  GHS04: 'gas cylinder',
  GHS05: 'corrosion',
  GHS06: 'skull and crossbones',
  GHS07: 'exclamation mark',
  GHS08: 'health hazard',
  GHS09: 'environment',
} as const;

/** What the label of a product says beside its statements. */
export const labelWords = {
  signal: 'Signal word of the label: {signal}.',
  noSignal: 'No signal word on the label.',
  pictogram: 'Pictogram: {list}.',
  pictograms: 'Pictograms: {list}.',
  noPictogram: 'No pictogram.',
  open: '{list}: the label itself says which.',
  said: '{statement} ({code})',
} as const;

/** Dangers that GHS has no code for, in our own words, as they stand after a product’s name. Common practice, no source. */
export const otherDangerWords: Readonly<Record<string, string>> = {
  'animal-tissue': 'animal tissue, carries germs; not everybody wishes to handle it',
  blade: 'a sharp blade, cuts',
  dust: 'fine dust, irritates eyes and airways',
  electrosurgery: 'electrosurgery, burns and makes sparks and smoke',
  'food-allergen': 'food allergen; tell everybody who touches it or breathes it in',
  'hot-liquid': 'hot liquid, scalds',
  'hot-surface': 'hot surface, burns',
  latex: 'natural rubber latex, may cause an allergic reaction',
  'looks-clinical': 'looks like what is used for patients, and may be taken for it',
  mould: 'grows mould; throw it away at the first sign',
  needle: 'a needle, pricks',
};
