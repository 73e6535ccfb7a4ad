import { cutLayout } from './cut-layout.ts';
import { outlayCurve } from './outlay-curve.ts';
import { scheduleStrip } from './schedule-strip.ts';

/** The pictures that follow the plan, by the name that their place on a page has for them. */
export const figures = {
  'cut-layout': cutLayout,
  'outlay-curve': outlayCurve,
  'schedule-strip': scheduleStrip,
} as const;

export type FigureName = keyof typeof figures;
