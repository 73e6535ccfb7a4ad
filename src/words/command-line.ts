/** What the command line says of itself. Facts stand in braces. */

/** Help: of the program, then of each command. An example is what to type, and what comes of it. */
export const helpWords = {
  about:
    'Benchwright checks, computes and publishes guides to bench models. A guide says how to build one; Benchwright says whether it adds up, what to buy, what it costs, and who does what when.',
  usage: 'benchwright COMMAND [OPTIONS]',
  commands: 'Commands',
  options: 'Options',
  examples: 'Examples',
  workspace:
    'WORKSPACE is a folder with a program.yaml; left out, it is the nearest one upwards from the current folder.',
  exit: 'Exit status: 0 fine; 1 the content has errors; 2 the call was wrong; 3 proven impossible, or nothing found.',
  more: 'benchwright help COMMAND says more of each.',
} as const;

export interface CommandWords {
  readonly usage: string;
  /** In the list of commands. */
  readonly does: string;
  readonly more: readonly string[];
  readonly examples: readonly (readonly [type: string, does: string])[];
  /** Options that mean more here than elsewhere. */
  readonly options?: Readonly<Record<string, OptionWords>>;
}

export const commandWords: Readonly<Record<'check' | 'help' | 'plan' | 'print' | 'publish', CommandWords>> = {
  check: {
    usage: 'benchwright check [WORKSPACE]',
    does: 'is everything there, and does it add up?',
    more: [
      'Reads every file of the workspace and tells all that is missing or does not add up, by file and line, with what to write instead.',
      'Findings go to standard output. The status is 1 where there is an error; warnings alone leave it 0.',
    ],
    examples: [
      ['benchwright check', 'the workspace of the current folder'],
      [
        'benchwright check content/quillmoor --today 2026-11-25',
        'as of that day: prices and reviews grow old',
      ],
      ['benchwright check --format json', 'for another program'],
    ],
  },
  plan: {
    usage: 'benchwright plan GUIDE[:LEVEL][/PART][=N]... | MODULE',
    does: 'what to buy, what it costs, who does what when',
    more: [
      'Plans so many good models of one guide or of several together. Without a number it is the batch that the guide itself speaks of, else one; without a level, the usual one. With a part, only the steps for that part are done.',
      'Of a module it prints the session first: groups, who is at which station when, models, instructors, tools. All its models are one plan, with the spares of the program. With --ready-by they are ready when the session begins and good until it ends; a day alone means before that day, and until it is over.',
      'Without --start or --ready-by the plan is in the reference week: it begins at the first opening of the working week, materials at hand, and no day is closed. --start plans forwards: everything ready as early as can be, and begun no earlier than that needs. --ready-by plans backwards: everything begun as late as can be.',
      'A guide with errors is not planned. What a plan leaves over can be kept in a stock file, and the next plan takes from it; finished models count too.',
      'The plan goes to standard output, what is wrong or to be known of its guides to standard error: as text, or with --format json as one JSON document. The text ends with what single changes would bring, such as one more builder, unless there are more than 300 runs; in JSON that stands only with --what-if.',
      '--format csv prints one table for a spreadsheet, the shopping list or with --list days who does what when, of a module also with --list timetable who is where. --format ics prints a calendar of orders, deliveries, work, and when everything is ready; it needs dates. Exported again for the same start or ready-by, an event whose step, models and builder are unchanged takes the place of the earlier one; what is no longer planned stays in your calendar until you delete it. Of a module with --group it is the calendar of one group: when it is where, for its trainees.',
      'The status is 3 where it is proven that the work cannot be done as asked, or no way was found; what to buy is told all the same. A plan of too many runs to be scheduled says so and ends with 0, but has no day list and no calendar.',
    ],
    examples: [
      ['benchwright plan needle-block=12', 'twelve good ones of the usual level'],
      ['benchwright plan needle-block:deep=4 suture-pad=20 --builders 1', 'two guides, one person'],
      ['benchwright plan needle-block --batch 12 --spares 10 %', 'twelve, and two spares'],
      ['benchwright plan needle-block=12 --start 2026-11-30T09:00', 'with dates, forwards'],
      [
        'benchwright plan needle-block=12 --ready-by 2026-12-04T09:00 --margin 2h',
        'backwards: all ready two hours before Friday, 09:00',
      ],
      ['benchwright plan chest-drain-frame/skin=8', 'eight new skins for frames that are there'],
      ['benchwright plan needle-block=12 --stock cupboard.yaml --format json', 'for another program'],
      [
        'benchwright plan first-stitches --people trainees=20,seniors=2 --instructors 3',
        'a module for other people than it says',
      ],
      [
        'benchwright plan first-stitches --ready-by 2026-12-04T13:00',
        'the session begins on Friday, 13:00, and all its models are ready',
      ],
      [
        'benchwright plan needle-block=12 --format csv > shopping.csv',
        'the shopping list, for a spreadsheet',
      ],
      [
        'benchwright plan needle-block=12 --format csv --list days > days.csv',
        'who does what when, for a spreadsheet',
      ],
      ['benchwright plan needle-block=12 --ready-by 2026-12-04 --format ics > plan.ics', 'for a calendar'],
      [
        'benchwright plan knots --ready-by 2026-12-04T13:00 --format ics --group 2',
        'when and where group 2 of the module knots is, for its trainees',
      ],
    ],
    options: {
      format: {
        takes: 'NAME',
        does: 'text; json for other programs; csv for a spreadsheet; ics for a calendar',
        wants: 'text, json, csv or ics',
      },
    },
  },
  print: {
    usage: 'benchwright print GUIDE[:LEVEL][/PART][=N]... | MODULE',
    does: 'its sheets as PDF: bench sheet, shopping list, patterns, labels …',
    more: [
      'Plans each guide by itself, and makes a PDF of each of its sheets: bench-sheet, shopping-list, cutting-plan, patterns (at full size), labels, and batch-record. They are those of the published page, for the batch, dates and stock that you name.',
      'Of a module: hand-out, session-plan, timetable, score-sheets, surveys and matrix, for the people and the day that you name. All but the first are for staff.',
      'It needs a browser of the Chromium family: the one that CHROMIUM names, else the first that is found. Nothing leaves this machine.',
      'All PDFs are made before the first is put into DIR, so a call that fails leaves DIR as it was. Print them at 100 %; patterns and labels have a bar or an outline to measure.',
      'The status is 3 where there is no browser, where it makes no PDF, or where the work cannot be done as asked; sheets without times are made all the same.',
    ],
    examples: [
      ['benchwright print needle-block', 'all sheets of the batch that the guide speaks of'],
      [
        'benchwright print needle-block:deep --batch 12 --sheets bench-sheet,labels',
        'two sheets, for twelve',
      ],
      ['benchwright print suture-pad --paper Letter --out paper', 'on Letter, into the folder paper'],
      [
        'benchwright print needle-block=12 --ready-by 2026-12-04T09:00',
        'with dates: labels say until when each is good',
      ],
      [
        'benchwright print first-stitches --people trainees=20 --sheets timetable,score-sheets',
        'two sheets of a module, for twenty',
      ],
    ],
    options: {
      out: { takes: 'DIR', does: 'the folder to put them into; else sheets', wants: 'a folder' },
    },
  },
  publish: {
    usage: 'benchwright publish [WORKSPACE]',
    does: 'the site, as plain files',
    more: [
      'Writes two editions side by side: DIR/trainees, and DIR/staff with what only instructors may see. Each opens in a browser from the disk, a web host or a USB stick.',
      'Any error: nothing is written, and the old site stays as it is. A folder that publish did not make is never emptied.',
    ],
    examples: [
      ['benchwright publish', 'into the folder site of the current folder'],
      ['benchwright publish content/quillmoor --out site --edition trainees', 'one edition alone'],
    ],
  },
  help: {
    usage: 'benchwright help [COMMAND]',
    does: 'options and examples',
    more: [],
    examples: [['benchwright help plan', 'all that plan can do']],
  },
};

/** What an option stands for in a call, what it does, and what its value has to be. */
export interface OptionWords {
  readonly takes?: string;
  readonly does: string;
  /** After "takes …, and not …". */
  readonly wants?: string;
}

export const optionWords = {
  batch: {
    takes: 'N',
    does: 'good models of each guide that says no number itself',
    wants: 'a whole number from 1 to 10,000',
  },
  builders: {
    takes: 'N',
    does: 'people who build; else as many as the program has',
    wants: 'a whole number from 1 to 100',
  },
  effort: {
    takes: 'X',
    does: 'search X times as much for a better schedule; 1/4 is quicker',
    wants: 'a number above 0, such as 4 or 1/2',
  },
  edition: { takes: 'NAME', does: 'trainees or staff alone; else both', wants: 'trainees or staff' },
  format: { takes: 'NAME', does: 'text, or json for other programs', wants: 'text or json' },
  'good-until': {
    takes: 'TIME',
    does: 'until when all models must be good; else --ready-by, or the end of the session of a module',
    wants: 'a day or a time, such as 2026-12-04 or 2026-12-04T17:00',
  },
  group: {
    takes: 'N',
    does: 'of the calendar of a module: when that group is where, without the building; else as instructors see it',
    wants: 'the number of a group, a whole number from 1 to 1,000',
  },
  help: { does: 'what the command can do' },
  instructors: {
    takes: 'N',
    does: 'of a module: instructors that are there; else as many as it says',
    wants: 'a whole number from 0 to 1,000',
  },
  list: {
    takes: 'NAME',
    does: 'of csv: shopping, days, or of a module timetable; else shopping',
    wants: 'shopping, days or timetable',
  },
  margin: {
    takes: 'TIME',
    does: 'be ready so long before --ready-by',
    wants: 'a length of time up to a year, such as 2h, 30min or "2 h 30 min"',
  },
  out: { takes: 'DIR', does: 'the folder to write into; else site', wants: 'a folder' },
  units: {
    takes: 'NAME',
    does: 'metric, us or both; else those of the program',
    wants: 'metric, us or both',
  },
  paper: { takes: 'NAME', does: 'A4 or Letter; else that of the program', wants: 'A4 or Letter' },
  people: {
    takes: 'KIND=N',
    does: 'of a module: how many come of each kind of people, with commas between; else as many as it says',
    wants: 'kinds of people, each once and with a whole number up to 1,000: trainees=20,seniors=2',
  },
  'ready-by': {
    takes: 'TIME',
    does: 'all is ready by then, and nothing begins earlier than it must; by the clock of the program',
    wants: 'a day or a time, such as 2026-12-04 or 2026-12-04T09:00',
  },
  sheets: {
    takes: 'NAMES',
    does: 'some of them, with commas between: bench-sheet,labels; else all',
    wants:
      'names of sheets with commas between: of a guide bench-sheet, shopping-list, cutting-plan, patterns, labels and batch-record; of a module hand-out, session-plan, timetable, score-sheets, surveys and matrix',
  },
  spares: {
    takes: 'RATE',
    does: 'add so many spares, one at least; else none, of a module as many as the program says',
    wants: 'a share, such as 10 %',
  },
  start: {
    takes: 'TIME',
    does: 'orders go out then, and work begins then with what is at hand; by the clock of the program',
    wants: 'a day or a time, such as 2026-11-30 or 2026-11-30T09:00',
  },
  stock: {
    takes: 'FILE',
    does: 'what is at hand: materials with their amounts, and finished models, in YAML or JSON',
    wants: 'a file',
  },
  today: {
    takes: 'DATE',
    does: 'count that day as today, where a day matters',
    wants: 'a day, such as 2026-11-25',
  },
  trace: { does: 'of a fault of Benchwright itself, also where in the program it happened' },
  'what-if': {
    does: 'also what single changes would bring, and of one guide other batch sizes, however long that takes',
  },
  version: { does: 'which version this is' },
  workspace: { takes: 'DIR', does: 'the workspace, where WORKSPACE is not named', wants: 'a folder' },
} as const satisfies Readonly<Record<string, OptionWords>>;

/** Calls that cannot be followed. */
export const callFaults = {
  'unknown-command': 'There is no command “{command}”. The commands are {known}.',
  'unknown-command.near': 'There is no command “{command}”. Did you mean {near}?',
  'unknown-option': '{command} has no option {option}.',
  'unknown-option.near': '{command} has no option {option}. Did you mean {near}?',
  'option-twice': '{option} stands twice.',
  'option-without-value': '{option} takes {wants}, and none follows.',
  'option-value': '{option} takes {wants}, and not “{value}”.',
  'option-takes-nothing': '{option} takes nothing, and “{value}” follows it.',
  'too-many-words': '{command} does not know what to do with “{word}”.',
  'workspace-twice': 'Two workspaces are named: {first} and {second}.',
  'no-workspace': 'No workspace is here: neither {folder} nor a folder above it has a program.yaml.',
  'no-workspace-there': '{folder} is no workspace: it has no program.yaml.',
  'no-guide': 'Nothing is named that could be planned. The guides are {known}.',
  'no-guide.none': 'Nothing is named that could be planned, and the workspace has no guide that can be read.',
  'demand-unreadable':
    '“{text}” is not a guide to plan. Write GUIDE, GUIDE=N, GUIDE:LEVEL=N or GUIDE/PART=N.',
  'demand-number': '“{text}”: after = comes a whole number from 1 to 10,000.',
  'batch-twice': '“{text}” and --batch {batch} both say how many.',
  'unknown-guide': 'There is no guide “{guide}”. The guides are {known}.',
  'unknown-guide.near': 'There is no guide “{guide}”. Did you mean {near}?',
  'unknown-people': '{module} has no people “{people}”. It has {known}.',
  'unknown-people.near': '{module} has no people “{people}”. Did you mean {near}?',
  'module-with-others': '{module} is a module, and is planned by itself: name it alone.',
  'module-with-number':
    '{module} is a module: how many models it takes follows from its people. Write no number, level, part or --batch; --people says who comes.',
  'needs-module': '{option} speaks of a module, and none is to be planned.',
  'nobody-practises': 'Nobody is left to practise in {module}. Let at least one come of: {kinds}.',
  'unknown-level': '{guide} has no level “{level}”. Its levels are {known}.',
  'unknown-level.near': '{guide} has no level “{level}”. Did you mean {near}?',
  'unknown-level.none': '{guide} has no levels, so “{level}” means nothing there.',
  'unknown-part': '{guide} has no part “{part}”. Its parts are {known}.',
  'unknown-part.near': '{guide} has no part “{part}”. Did you mean {near}?',
  'unknown-part.none': '{guide} has no parts, so “{part}” means nothing there.',
  'start-and-ready-by':
    '--start plans forwards and --ready-by backwards, and both are set. Leave one of them out.',
  'needs-ready-by': '{option} means something only beside --ready-by, and there is none.',
  'ics-needs-dates':
    'A calendar needs dates, and the plan is in the reference week. Add --start or --ready-by.',
  'list-without-csv': '--list chooses a table of --format csv, and the format is {format}.',
  'group-without-ics': '--group chooses the calendar of one group, and the format is {format}.',
  'group-without-time':
    'The calendar of a group needs the time at which its session begins. Say --ready-by with it, such as 2026-12-04T13:00.',
  'unknown-group': '{module} has no group {group}. It has {groups}.',
  'unknown-group.none': '{module} has no group {group}: nobody goes round its stations.',
  'out-among-content':
    '--out {folder} is among the {kind} of the workspace, where the files of the site would be read as content. Name a folder beside them.',
  'no-such-file': '{file} cannot be opened.',
  'no-such-sheet': '{guides} has none of these sheets: {sheets}.',
  'day-of-environment': 'SOURCE_DATE_EPOCH is “{value}”, and has to be whole seconds since 1970.',
} as const;

export const callWords = {
  seeHelp: 'benchwright help {command} says what it can do.',
  seeHelpAll: 'benchwright help says what it can do.',
} as const;
