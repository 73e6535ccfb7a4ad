import type { ProblemFamily } from './sentences.ts';

/** Figures that a guide states and that the computation does not bear out. */
export const statedFindings: ProblemFamily = {
  'stated-build-time-wrong': {
    says: '“{guide}” says that {models} are ready in {stated}, but it takes {computed}.',
    why: 'Computed for {models} models, builders: {builders}, in a week without closed days, from the first hands-on to the last model ready, with all materials at hand.',
    write: 'ready-in: {computed}',
  },
  'stated-build-time-wrong.long': {
    says: '“{guide}” says that {models} are ready in {stated}, more than a working day above the {computed} that it takes.',
    why: 'Computed for {models} models, builders: {builders}, in a week without closed days, from the first hands-on to the last model ready, with all materials at hand.',
    write: 'ready-in: {computed}',
  },
  'stated-cost-wrong': {
    says: '“{guide}” says that a model uses {stated} of materials, but it uses {computed}.',
    why: 'Computed for {models} models at the price of each material’s first pack, waste included. Stated and computed may differ by a tenth.',
    write: 'used-each: {computed}',
  },
  'stated-hands-on-wrong': {
    says: '“{guide}” says {stated} of hands-on for {models} models, but it takes {computed}.',
    why: 'Computed over all models and all people. Stated and computed may differ by a tenth.',
    write: 'hands-on: {computed}',
  },
};
