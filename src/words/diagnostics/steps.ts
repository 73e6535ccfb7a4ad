import type { ProblemFamily } from './sentences.ts';

/** Steps that cannot be done as they are written: their order, their limits, their places and tools. */
export const stepFindings: ProblemFamily = {
  'hold-limit-broken': {
    says: '“{step}” waits {wait}, and “{next}” must be done within {limit}, counted from the same moment.',
    why: 'Both count from when hands leave “{step}”. Whoever set the limit decides about it; it is not to be stretched to fit.',
    write: 'wait: …   short enough for {handsOn} of “{next}” as well',
  },
  'hold-limit-broken.hands-on': {
    says: '“{step}” waits {wait} and “{next}” takes {handsOn}, together more than the {limit} within which “{next}” must be done.',
    why: 'The limit counts from when hands leave “{step}” to when they leave “{next}”, for a single model. Whoever set it decides about it; it is not to be stretched to fit.',
    write: 'wait: …   short enough for {handsOn} of “{next}” as well',
  },
  'hold-limit-broken.no-wait': {
    says: '“{next}” takes {handsOn}, more than the {limit} within which it must be done after “{step}”.',
    why: 'The limit counts to when hands leave “{next}”, for a single model. Whoever set it decides about it; it is not to be stretched to fit.',
    write: 'hands-on: …   at “{next}”, with more hands or in smaller steps',
  },
  'hold-limit-without-next': {
    says: '“{step}” has a hold limit, and no step comes after it.',
    why: 'A hold limit says by when the next step must be done. How long the finished model is good stands under keeps.',
    write: 'after: [{id}]   at the step that must be done in time',
  },
  'hold-limit-without-next.step': {
    says: '“{step}” has a hold limit for “{next}”, which does not come after it.',
    write: 'after: [{id}]   at “{next}”',
  },
  'more-than-there-is.builders': {
    says: 'The step “{step}” takes {takes} people at once, and the program has {has}.',
    why: 'No schedule can be made with it; amounts and costs can.',
    write: 'builders: …   in program.yaml, if as many can be there',
  },
  'more-than-there-is.place': {
    says: 'One run of the step “{step}” takes {takes} of the place “{place}” at once, and the program has {has}.',
    why: 'No schedule can be made with it; amounts and costs can.',
    write: '{place}: …   below stations in program.yaml, if there are as many; or smaller runs of the step',
  },
  'step-without-time': {
    says: 'The step “{step}” takes no time, so a plan passes over it.',
    why: 'Only a step with hands-on time or a wait stands in the schedule.',
    write: 'hands-on: …',
  },
  'steps-in-a-circle': {
    says: 'The steps {steps} come after each other in a circle, so none of them can begin.',
    write: 'after: …   at the step that comes first: [] where nothing comes before it',
  },
  'steps-in-a-circle.itself': {
    says: 'The step “{step}” comes after itself, so it can never begin.',
    write: 'after: …   without the step itself: [] where nothing comes before it',
  },
  'tool-held-backwards': {
    says: '{tool} is held from “{from}” to “{to}”, but “{to}” comes first.',
    write: 'from: {toId}\nto: {fromId}',
  },
  'tool-held-backwards.apart': {
    says: '{tool} is held from “{from}” to “{to}”, but “{to}” does not come after “{from}”.',
    write: 'after: [{fromId}]   at “{to}”, beside what it comes after already',
  },
  'tool-held-backwards.level': {
    says: '{tool} is held from “{from}” to “{to}”, but the level {level} has no step “{gone}”.',
    write: 'only: [{levels}]   at this row of the tools, with a row of its own for {level}',
  },
  'unlisted-station': {
    says: 'The steps use the place “{station}”, and the program does not say how many of it there are.',
    why: 'Until it does, plans take it as unlimited.',
    write: '{station}: …   below stations in program.yaml',
  },
  'unlisted-station.near': {
    says: 'The steps use the place “{station}”, which the program does not list; “{near}” comes near it.',
    why: 'Until it does, plans take it as unlimited.',
    write: '{near}: …\n{station}: …   below stations in program.yaml, if it is another place',
  },
};
