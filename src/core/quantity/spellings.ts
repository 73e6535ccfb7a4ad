import type { Unit } from './units.ts';

/** What a keyboard types instead of the symbol. Reading alone needs it, so it stands apart from the units. */
const typed: Readonly<Record<string, readonly string[]>> = {
  mm: ['millimetre', 'millimetres', 'millimeter', 'millimeters'],
  cm: ['centimetre', 'centimetres', 'centimeter', 'centimeters'],
  m: ['metre', 'metres', 'meter', 'meters'],
  µm: ['μm', 'um', 'micrometre', 'micrometres', 'micrometer', 'micrometers'],
  in: ['in.', 'inch', 'inches', '"', '″'],
  ft: ['ft.', 'foot', 'feet', "'", '′'],
  yd: ['yd.', 'yard', 'yards'],
  'mm²': ['mm2', 'mm^2', 'sq mm'],
  'cm²': ['cm2', 'cm^2', 'sq cm'],
  'dm²': ['dm2', 'dm^2'],
  'm²': ['m2', 'm^2', 'sq m'],
  'in²': ['in2', 'in^2', 'sq in'],
  'ft²': ['ft2', 'ft^2', 'sq ft'],
  mL: ['ml', 'millilitre', 'millilitres', 'milliliter', 'milliliters'],
  L: ['l', 'litre', 'litres', 'liter', 'liters'],
  µL: ['μL', 'uL', 'µl', 'μl', 'ul', 'microlitre', 'microlitres', 'microliters'],
  cL: ['cl', 'centilitre', 'centilitres'],
  dL: ['dl', 'decilitre', 'decilitres'],
  'mm³': ['mm3', 'mm^3', 'cu mm'],
  'cm³': ['cm3', 'cm^3', 'cc', 'cu cm'],
  'dm³': ['dm3', 'dm^3'],
  'm³': ['m3', 'm^3', 'cu m'],
  'in³': ['in3', 'in^3', 'cu in'],
  g: ['gm', 'gram', 'grams', 'gramme', 'grammes'],
  kg: ['Kg', 'kilo', 'kilos', 'kilogram', 'kilograms'],
  mg: ['milligram', 'milligrams'],
  µg: ['μg', 'ug', 'mcg', 'microgram', 'micrograms'],
  grain: ['grains'],
  oz: ['oz.', 'ounce', 'ounces'],
  lb: ['lb.', 'lbs', 'lbs.', 'pound', 'pounds'],
  s: ['sec', 'secs', 'second', 'seconds'],
  min: ['min.', 'mins', 'minute', 'minutes'],
  h: ['hr', 'hrs', 'hour', 'hours'],
  d: ['day', 'days'],
  weeks: ['week', 'wk', 'wks'],
  N: ['newton', 'newtons'],
  '°C': ['° C', 'ºC', '℃', 'C', 'deg C', 'degC', 'degrees C', 'degrees Celsius', 'Celsius', 'centigrade'],
  '°F': ['° F', 'ºF', '℉', 'F', 'deg F', 'degF', 'degrees F', 'degrees Fahrenheit', 'Fahrenheit'],
  '%': ['percent', 'per cent'],
};

/** Kitchen measures without their system. */
const kitchen: Readonly<Record<string, readonly string[]>> = {
  cup: ['cup', 'cups'],
  tbsp: ['tbsp', 'tbsps', 'tbs', 'tablespoon', 'tablespoons'],
  tsp: ['tsp', 'tsps', 'teaspoon', 'teaspoons'],
  'fl oz': ['fl oz', 'fl. oz.', 'fl oz.', 'floz', 'fluid ounce', 'fluid ounces'],
  pint: ['pint', 'pints', 'pt'],
  quart: ['quart', 'quarts', 'qt'],
  gallon: ['gallon', 'gallons', 'gal'],
};
const prefixes: Readonly<Record<string, readonly string[]>> = {
  US: ['US', 'U.S.', 'us'],
  imp: ['imp', 'imp.', 'imperial', 'UK'],
  metric: ['metric'],
};

/** Every way to write a unit, its symbol first: `mL`, `ml`, `millilitre`, ... */
export function spellingsOf({ symbol }: Unit): readonly string[] {
  const found = /^(US|imp|metric) (.+)$/.exec(symbol);
  const ofKitchen = found
    ? prefixes[found[1]!]!.flatMap((prefix) => kitchen[found[2]!]!.map((measure) => `${prefix} ${measure}`))
    : [];
  return [...new Set([symbol, ...(typed[symbol] ?? []), ...ofKitchen])];
}
