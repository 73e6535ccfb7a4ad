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
  /** Why a run did not begin earlier; planned backwards, why those before it did not begin later. */
  because: {
    start: 'the work begins here',
    /** The first of those that decide, where it need not have waited for the work before it. */
    slack: 'nothing before it holds it up',
    step: 'follows the one before',
    stepWait: 'follows the one before, after its wait of {time}',
    limit: 'must come soon after the one before',
    builders: 'waits for a builder',
    place: 'waits for a place: {name}',
    tool: 'waits for a tool: {name}',
    apart: 'vapour and flame are kept apart',
    hours: 'waits for the next opening',
    delivery: 'waits for the delivery',
  },

  /** What the marks in the picture of a schedule stand for. */
  keys: { 'hands-on': 'Hands-on', wait: 'Wait', closed: 'Closed' },

  loads: {
    heading: 'How busy everything is',
    what: 'What',
    has: 'There are',
    peak: 'Most at once',
    busy: 'In use',
    builders: 'Builders',
    /** In a terminal, where only those are named that are scarce. */
    short: 'How busy the builders are, and what is scarce',
    line: '{peak} of {has} at once',
    ofHours: 'busy for {busy} of their hours',
    ofTime: 'in use for {busy} of the time',
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
