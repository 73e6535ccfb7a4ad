/** The guides of the demo workspace, in the order of the alphabet. */
export const demoGuides = [
  'abscess-pouch',
  'chest-drain-frame',
  'knot-board',
  'neck-airway-trainer',
  'needle-block',
  'suture-pad',
];
