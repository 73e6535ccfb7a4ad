export { calendarWords, currencySigns } from './calendar.ts';
export { controlWords } from './controls.ts';
export { aboutHazards, hazardStatements, otherDangerWords } from './hazards.ts';
export { pageWords } from './pages.ts';
export { planTextWords } from './plan-text.ts';
export { planWords } from './plan.ts';
export { safetyWords } from './safety.ts';
export { scriptWords } from './script.ts';
export { nouns, numberMarks, timeUnits } from './units.ts';
