import type { Path, Raw, Sheet } from './sheet.ts';

/** What to call a record of each list. */
const nouns: Readonly<Record<string, string>> = {
  cautions: 'caution',
  checks: 'check',
  history: 'history entry',
  instead: 'substitute',
  keeps: 'way of keeping',
  levels: 'level',
  materials: 'material',
  mixes: 'mix',
  of: 'ingredient',
  packs: 'pack',
  parts: 'part',
  patterns: 'pattern',
  pieces: 'piece',
  renew: 'renewal',
  steps: 'step',
  tools: 'tool',
  uses: 'use',
};

/** What to call one entry of a list of texts: the sentence quotes it, so it needs no number. */
const oneOf: Readonly<Record<string, string>> = {
  after: 'step before',
  also: 'danger',
  avoid: 'way to avoid it',
  closed: 'closed day',
  controls: 'control',
  days: 'working day',
  hazards: 'hazard statement',
  hours: 'stretch of working hours',
  in: 'step in which it is held',
  must: 'demand',
  'not-with': 'material that it must not meet',
  only: 'level',
  room: 'condition of the room',
  sources: 'source',
};

/** What to call the value of a key; a key that is neither here nor a word of its own is quoted. */
const spoken: Readonly<Record<string, string>> = {
  ...Object.fromEntries(
    [
      ...[
        'amount',
        'approved',
        'count',
        'currency',
        'density',
        'exchange',
        'form',
        'gap',
        'harm',
        'hazard',
        'heading',
      ],
      ...[
        'labour',
        'length',
        'licence',
        'link',
        'locale',
        'mix',
        'name',
        'note',
        'paper',
        'policy',
        'price',
        'rate',
      ],
      ...[
        'ratio',
        'signal',
        'size',
        'source',
        'status',
        'summary',
        'target',
        'title',
        'version',
        'wait',
        'waste',
        'weight',
      ],
    ].map((noun) => [noun, noun]),
  ),
  'a-use-is': 'use',
  'arrives-in': 'delivery time',
  as: 'time by the directions',
  at: 'place',
  builders: 'number of builders',
  'clears-in': 'time to clear',
  delivery: 'delivery charge',
  does: 'number of models',
  for: 'basis',
  'free-over': 'sum for free delivery',
  'hands-on': 'hands-on time',
  holds: 'holding',
  'if-cold': 'time in the cold',
  'if-damp': 'time in the damp',
  'if-hot': 'time in the heat',
  'if-not': 'remedy',
  'in-use': 'life after the build',
  is: 'value',
  keeps: 'keeping',
  lasts: 'life',
  'left-behind': 'share left behind',
  makes: 'amount made',
  on: 'date',
  once: 'time of a run',
  people: 'number of people',
  priced: 'date of the price',
  reads: 'reading',
  'ready-in': 'stated build time',
  set: 'settings',
  spares: 'share of spares',
  states: 'stated figures',
  takes: 'time it takes',
  'time-zone': 'time zone',
  'use-within': 'hold limit',
  'used-each': 'stated cost',
  usual: 'usual value',
  'waits-at': 'places to wait',
  work: 'working hours',
  yields: 'yield',
};

/**
 * How a sentence names the value at a path: the last key, and the chain of records round it.
 *
 *     steps/2/wait           ->  key "wait", what "wait of step pour"
 *     steps/2/watched        ->  key "watched", what "key “watched” of step pour"
 *     materials/0/amount     ->  key "amount", what "amount of material gel"
 *     packs/0/price          ->  key "price", what "price of pack 1"
 */
export function nameOfPath(path: Path, sheet: Sheet): PathName {
  const last = path.at(-1);
  const key = String(path.findLast((step) => typeof step === 'string') ?? '');
  const what = chain(path, sheet.values).reverse().join(' of ');
  const put = typeof last === 'string' ? `${last}: ` : '';
  return { key, what, put, inWhat: what === '' ? '' : ` in ${what}` };
}

export interface PathName {
  readonly key: string;
  readonly what: string;
  /** What stands before the value in its line: `wait: `; nothing in a list. */
  readonly put: string;
  /** " in step pour"; empty at the top of a file. */
  readonly inWhat: string;
}

function chain(path: Path, top: Raw): string[] {
  const names: string[] = [];
  let value: Raw | undefined = top;
  for (const [index, step] of path.entries()) {
    value = below(value, step);
    const list = path[index - 1];
    if (typeof step === 'string') names.push(spoken[step] ?? `key “${step}”`);
    else names.splice(-1, 1, recordName(String(list), value, step));
  }
  return names;
}

function recordName(list: string, record: Raw | undefined, index: number): string {
  const noun = nouns[list];
  if (!noun) return oneOf[list] ?? `entry ${index + 1} of ${list}`;
  const called = ['id', 'use', 'material', 'version', 'at'].map((key) => below(record, key));
  const name =
    called.find((text) => typeof text === 'string' && text !== '') ??
    (typeof record === 'string' ? record : undefined);
  return `${noun} ${typeof name === 'string' ? name : index + 1}`;
}

function below(value: Raw | undefined, step: string | number): Raw | undefined {
  if (typeof value !== 'object') return undefined;
  return Object.hasOwn(value, step) ? (value as Readonly<Record<string | number, Raw>>)[step] : undefined;
}
