/** What a change would bring: proposals where there is no schedule, rows of what-if, other sizes of a batch. */
export const whatIfWords = {
  /** Each has been tried: "With 3 builders all would be ready Tue 1 December, 12:30." */
  helps: {
    heading: 'What would help',
    builders: 'With {builders} all would be ready {time}.',
    place: 'With {count} of “{name}” all would be ready {time}.',
    tool: 'With {count} of “{name}” all would be ready {time}.',
    notice: 'Begun and ordered {duration} earlier, all would be ready {time}.',
    later: 'With {duration} more, all would be ready {time}.',
    fewer: 'With {models} of “{guide}” instead of {planned}, all would be ready {time}.',
  },

  /** One thing changed, everything else as it was. */
  changes: {
    heading: 'What if',
    oneBuilderMore: 'One more builder',
    buildersMore: '{n} more builders',
    oneBuilderFewer: 'One builder fewer',
    buildersFewer: '{n} builders fewer',
    many: '{n} of “{name}”',
    oneMore: 'One more of “{name}”',
    manyMore: '{n} more of “{name}”',
    notice: 'Begun and ordered {duration} earlier',
    later: 'Ready {duration} later',
    fewer: '{models} fewer',
    fewerOf: '{models} fewer of “{guide}”',
    more: '{models} more',
    moreOf: '{models} more of “{guide}”',
  },
  brings: {
    ready: 'ready {time}',
    begins: 'begin {time}',
    instead: '{then} instead of {now}',
    sameReady: 'ready no earlier',
    sameBegins: 'begin at the same time',
    none: 'no schedule',
  },
  costs: {
    same: 'nothing more to buy',
    more: '{amount} more to buy',
    less: '{amount} less to buy',
  },
  sentence: '{change}: {brings}; {costs}.',
  /** What brings nothing: one change, or several. */
  idle: '{change}: {brings}.',
  allIdle: '{brings} with any of these: {changes}.',
  columns: { change: 'Changed', brings: 'Then', costs: 'To buy' },

  curve: {
    heading: 'Other batch sizes',
    says: 'Outlay for each good model. It falls while packs are used up, and jumps where one more must be opened.',
    full: 'Packs are full at {sizes} models.',
    fullMany: 'Packs are full at {sizes} and {more} more sizes; cheapest for each at {best}.',
    neverFull: 'No size up to {most} fills its packs.',
    models: 'Models',
    each: 'Outlay, each',
    note: 'Packs',
    isFull: 'full',
    isCurrent: 'this batch',
    keyFull: 'packs are full',
    keyCurrent: 'this batch',
    all: 'Every size as a table',
  },
} as const;
