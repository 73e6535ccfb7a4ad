/** What decides when all is ready, how busy everything is, and when each model is ready. */
export const scheduleWords = {
  /** Planned backwards. */
  backwards: 'Planned backwards: for all to be ready by {by}, begin no later than {start}.',

  chain: {
    heading: 'What decides how long it takes',
    says: 'Each of these waits for the one before. To be quicker, change one of them; nothing else helps.',
    run: '{step}, run {n}',
    runs: '{step}, runs {list}',
    models: '{step}, {models}',
    more: '{n} more in between',
    then: ', then ',
  },
  /** Why a run did not begin earlier. */
  because: {
    start: 'the work begins here',
    step: 'follows the one before',
    stepWait: 'follows the one before, and its wait of {time}',
    limit: 'must come soon after the one before',
    builders: 'all builders were busy',
    place: 'no free place: {name}',
    tool: 'in use: {name}',
    apart: 'vapour and flame are kept apart',
    hours: 'waits for the next opening',
    delivery: 'waits for the delivery',
  },

  loads: {
    heading: 'How busy everything is',
    what: 'What',
    has: 'There are',
    peak: 'Most at once',
    busy: 'In use',
    builders: 'Builders',
    share: '{percent}\u00a0%',
    under: 'under 1\u00a0%',
    line: '{peak} of {has} at once, in use',
  },

  ready: {
    heading: 'When each is ready',
    models: 'models {list}',
    model: 'model {n}',
    between: '{from} to {to}',
    columns: { models: 'Models', ready: 'Ready', useBy: 'Use by' },
    says: 'ready {time}',
    until: 'use by {time}',
  },
} as const;
