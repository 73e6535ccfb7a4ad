/** What a cutting plan says. Lengths are as a rule reads them, so that it can be laid on at once. */
export const cuttingWords = {
  /** "2 sheets of 600 mm × 450 mm and 1 sheet of 300 mm × 200 mm from stock; 83 % used." */
  says: '{what}; {used}.',
  used: {
    sheets: '{share} used',
    roll: '{share} of the strip used',
    lengths: '{share} used',
  },
  cutFrom: '{count} of {size}',
  cutFromStock: '{count} of {size} from stock',

  /** By what the bound is of; a length is an area where sheets are cut. */
  least: {
    cost: 'No cutting plan costs less.',
    sheets: 'No cutting plan takes fewer.',
    length: 'No cutting plan takes less.',
  },
  gap: {
    cost: 'A cutting plan that costs up to {gap} less may exist.',
    sheets: 'A cutting plan with up to {gap} fewer may exist.',
    length: 'A cutting plan that takes up to {gap} less may exist.',
  },

  one: { sheets: 'Sheet {n}', roll: 'Roll {n}', lengths: 'Length {n}' },
  alike: {
    sheets: 'Sheets {list}, all cut like this',
    roll: 'Rolls {list}, all cut like this',
    lengths: 'Lengths {list}, all cut like this',
  },
  sizeFromStock: '{size}, from stock',
  holds: '{count}\u00a0×\u00a0{piece}, {size}',
  /** Pieces that the guide gives no name. */
  holdsUnnamed: '{count}\u00a0of {size}',
  unnamed: 'Piece',
  pieceSize: '{piece} {size}',
  left: {
    sheets: '{area} left whole',
    roll: '{length} left on the roll',
    lengths: '{length} left',
  },
  millimetres: '{n}\u00a0mm',
  area: '{width}\u00a0×\u00a0{length}',
  turned: '{size}, turned',
  extra: 'spare',
  /** Models of so many sheets cut alike that they are not all listed: the first and the last. */
  manyModels: '{first} … {last}',

  /** Of the size of a piece, and where it lies. */
  sizeHead: { metric: 'Size, mm', US: 'Size, in', both: 'Size, mm (in)' },
  columns: {
    number: 'No.',
    piece: 'Piece',
    of: 'For',
    model: 'Model',
    fromLeft: 'From left',
    fromBottom: 'From bottom',
  },
} as const;
