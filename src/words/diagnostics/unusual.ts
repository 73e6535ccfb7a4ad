import type { ProblemFamily } from './sentences.ts';

/** Figures outside what published models show. Nothing needs to be wrong. */
export const unusualFindings: ProblemFamily = {
  'unusual-cost.high': {
    says: 'A model of “{guide}” uses {used} of materials, more than published models of this kind do.',
    why: 'Published: {least} (Khantasa-Ard, Cureus 2024;16:e71182) to {most} (the dearest of six home-made blocks, “A comparison of homemade vascular access ultrasound phantom models for peripheral intravenous catheter insertion”). It may be right: look whether an amount or a price slipped.',
    act: 'nothing, if it is right; else the amount or the price that slipped',
  },
  'unusual-cost.low': {
    says: 'A model of “{guide}” uses {used} of materials, less than published models of this kind do.',
    why: 'Published: {least} (Khantasa-Ard, Cureus 2024;16:e71182) to {most} (the dearest of six home-made blocks, “A comparison of homemade vascular access ultrasound phantom models for peripheral intravenous catheter insertion”). It may be right: look whether an amount or a price slipped.',
    act: 'nothing, if it is right; else the amount or the price that slipped',
  },
  'unusual-hands-on.high': {
    says: 'A model of “{guide}” takes {each} of hands-on, more than published models of this kind do.',
    why: 'Published: about 5 min (Schmitt et al. 2023) to 120 min (the slowest of six home-made blocks, “A comparison of homemade vascular access ultrasound phantom models for peripheral intravenous catheter insertion”). Worked out over {models} models. It may be right: look whether a time slipped.',
    act: 'nothing, if it is right; else the time that slipped',
  },
  'unusual-hands-on.low': {
    says: 'A model of “{guide}” takes {each} of hands-on, less than published models of this kind do.',
    why: 'Published: about 5 min (Schmitt et al. 2023) to 120 min (the slowest of six home-made blocks, “A comparison of homemade vascular access ultrasound phantom models for peripheral intravenous catheter insertion”). Worked out over {models} models. It may be right: look whether a time slipped.',
    act: 'nothing, if it is right; else the time that slipped',
  },
  'unusual-life': {
    says: '{name} lasts {uses} uses, more than any published model does.',
    why: 'Published: up to 1000 uses (Kouyoumjian, SAGE Open Medicine 2023). It may be right: look whether the number slipped.',
    act: 'nothing, if it is right; else the number of uses that was counted',
  },
};
