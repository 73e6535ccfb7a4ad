/** The register of hazards: the page on safety, and its table for other programs. */
export const registerWords = {
  situations: {
    heat: { name: 'Heat above 45 °C', danger: 'Burns and scalds' },
    ignition: { name: 'Flame, spark or hot wire', danger: 'Sets vapour and gas alight' },
  },
  setting: '{name} {value}',
  sheet: 'of {date}, {age} old',
  sheetUndated: 'without a date',
  noSheet: 'none named',
  caution: '{word}: {hazard}',
  file: 'All of it as a table (CSV)',
  columns: {
    kind: 'Kind',
    name: 'What',
    dangers: 'Dangers',
    label: 'Label',
    precautions: 'Precautions of the label',
    guide: 'Guide',
    step: 'Step',
    what: 'Setting',
    controls: 'Controls',
    cautions: 'Cautions',
    dataSheet: 'Safety data sheet',
    link: 'Where it is',
  },
  kinds: { material: 'material', tool: 'tool', heat: 'heat', ignition: 'ignition' },
} as const;
