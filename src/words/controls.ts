/**
 * The published list of controls: what keeps people from harm at a step. A guide names the id (`heat-gloves`), or
 * writes words of its own. The list says what, never how good: ratings and limits are for the supplier's safety data
 * sheet and the program's own policy.
 *
 * Common practice, no source.
 */
export const controlWords: Readonly<Record<string, string>> = {
  apron: 'Wear an apron',
  'clear-floor': 'Keep the floor dry and clear',
  'closed-shoes': 'Wear closed shoes',
  'cold-chain': 'Keep it cold: out of the fridge only while you work on it',
  'cover-surfaces': 'Cover the surfaces around',
  'cut-resistant-gloves': 'Wear cut-resistant gloves',
  'cutting-mat': 'Cut on a cutting mat, away from your hand',
  'eye-protection': 'Wear eye protection',
  'hair-tied': 'Tie hair back, no loose sleeves',
  'heat-gloves': 'Wear heat-proof gloves',
  'label-it': 'Label it: what it is, who made it, when',
  'long-sleeves': 'Wear long sleeves',
  mask: 'Wear a mask',
  'never-alone': 'Two people: nobody does this alone',
  'nitrile-gloves': 'Wear nitrile gloves',
  'no-food': 'No food or drink at the bench',
  'no-ignition-sources': 'No flame, spark or hot tool near',
  'non-latex-gloves': 'Wear gloves without latex',
  outdoors: 'Work outdoors',
  'sharps-container': 'Blades and needles go into a sharps container',
  'stable-surface': 'Work on a firm, level surface',
  'surface-disinfection': 'Disinfect the surfaces afterwards',
  ventilation: 'Open a window or switch the extraction on',
  'wash-hands': 'Wash your hands afterwards',
};
