/** Ticking off steps at the bench. */
export const benchWords = {
  done: 'Step {number} done',
  progress: '{done} of {all} steps done',
  progressOne: '{done} of 1 step done',
  clear: 'Clear all ticks',
  bringBack: 'Bring the ticks back',
  keptHere: 'Ticks stay on this device, for this guide, version and batch alone.',
  awake: 'Keep the screen on',
  print: 'Print',

  ticked: 'Ticked {time}, by the clock of this device.',
  fromTheTick:
    'Counted from the tick: if your hands came off earlier, a limit ends earlier too. The sheet and “right when” come first.',
  ofRuns: 'It is done in several runs, and each has times of its own: go by the sheet.',
} as const;
