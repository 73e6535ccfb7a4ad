import type { ProblemFamily } from './sentences.ts';

/** The fences, and YAML that cannot be made sense of or is not let in. */
export const frontMatterProblems: ProblemFamily = {
  'front-matter-fence.none': {
    says: 'The file {file} does not begin with its front matter.',
    why: 'The title, the materials and the steps stand at the top, between two lines of three dashes.',
    write: '---\ntitle: …\nmaterials: …\nsteps: …\n---',
  },
  'front-matter-fence.opening': {
    says: 'The first line of {file} has more than three dashes: “{text}”.',
    why: 'Nothing may follow them, so that nothing in a file can choose what reads it.',
    write: '---',
  },
  'front-matter-fence.unclosed': {
    says: 'The front matter of {file} is never closed.',
    why: 'Without a second line of three dashes, the whole text would be taken for it.',
    write: '---   on a line of its own, between the front matter and the text',
  },
  'front-matter-fence.closing': {
    says: 'This line begins with three dashes and so closes the front matter, but it goes on: “{text}”.',
    write: '---   where the front matter ends; else begin the line with something else',
  },
  'too-nested': {
    says: 'More than {most} brackets or lists stand in one another here.',
    act: 'a closing bracket for each opening one',
  },
  'front-matter-unreadable.empty': {
    says: 'The file {file} says nothing: it has no keys.',
    write: 'name: …   or title: … in a guide, and what else it needs',
  },
  'front-matter-unreadable.no-keys': {
    says: 'The file {file} is not made of keys with values.',
    why: 'Each line begins with a key, a colon and a blank.',
    write: 'name: …   or title: … in a guide, and what else it needs',
  },
  'front-matter-unreadable.backslash': {
    says: 'Inside double quotes a backslash begins a special character, and there is none like this.',
    write: "'…'   single quotes in place of the double ones",
  },
  'front-matter-unreadable.unclosed': {
    says: 'A bracket that is opened here, or above, is not closed.',
    act: 'a ] at the end of the list, or a } at the end of the braces',
  },
  'front-matter-unreadable.quotes-wanted': {
    says: 'A value that begins with this sign needs quotes.',
    write: '"{text}"',
  },
  'front-matter-unreadable.colon-in-value': {
    says: 'This value has a colon and a blank in it, so it is taken for a key and a value.',
    write: '"{text}"',
  },
  'front-matter-unreadable.two-lines': {
    says: 'The line below this value is further right, and belongs neither to it nor to a key of its own.',
    act: 'the line below it as far left as this key, or with the value above in quotes',
  },
  'front-matter-unreadable.indent': {
    says: 'This line is not as far right as the lines that it belongs to.',
    act: 'the same blanks before each key of one set',
  },
  'front-matter-unreadable.long-key': {
    says: 'This key has more than a thousand letters.',
    act: 'a colon and a blank after the key',
  },
  'front-matter-unreadable.no-colon': {
    says: 'This key has no colon and no value.',
    write: '{firstWord}: …   a colon, a blank and its value',
  },
  'front-matter-unreadable.quote': {
    says: 'A quote that is opened here, or above, is not closed.',
    write: '{text}"   where the text ends',
  },
  'front-matter-unreadable.several-documents': {
    says: 'A line of three dashes or dots inside the file begins a second one, which would be lost.',
    act: 'the lines without it',
  },
  'front-matter-unreadable.tab': {
    says: 'This line begins with a tab.',
    why: 'How far a line is indented says what it belongs to, and a tab has no width of its own.',
    act: 'two blanks for each step to the right',
  },
  'front-matter-unreadable.directive': {
    says: 'A line that begins with % is no part of a file here.',
    act: 'the file without it',
  },
  'front-matter-unreadable.extra-bracket': {
    says: 'A bracket is closed here that was never opened.',
    act: 'the line without it; in quotes, if it is part of the text',
  },
  'front-matter-unreadable.after-end': {
    says: 'A value ends with its closing quote or bracket, and something stands after it: “{text}”.',
    act: 'quotes round the whole value, and single ones where it holds double ones',
  },
  'front-matter-unreadable.comma': {
    says: 'Between two commas, or before the first, nothing stands.',
    act: 'the list with one comma between two values',
  },
  'front-matter-unreadable.dash-for-key': {
    says: 'A dash begins an entry of a list, and here a key belongs.',
    act: 'the dash further right, below the key that the list belongs to',
  },
  'front-matter-unreadable.list-on-line': {
    says: 'A list that begins with a dash begins on a line of its own.',
    write: '[…]   in brackets; or each dash on a line of its own',
  },
  'front-matter-unreadable': {
    says: 'From here on the front matter cannot be made sense of.',
    why: 'Most often a quote or a bracket is not closed, or a line is indented differently from its neighbours.',
  },
  'repeated-key': {
    says: 'The key “{key}” stands here a second time, and one of the two would be lost.',
    act: 'one of the two, with all that belongs to it',
  },
  'refused-yaml.alias': {
    says: '“{text}” stands for a text somewhere else, and is not read.',
    why: 'A guide says each thing where it is used, so that what is shown is what is meant. A star at the beginning of a text wants quotes.',
    write: '"{text}"   if it is text',
  },
  'refused-yaml.anchor': {
    says: '“{text}” would give a name to what follows, and is not read.',
    why: 'A guide says each thing where it is used, so that what is shown is what is meant. An & at the beginning of a text wants quotes.',
    write: '"{text} …"   if it is text',
  },
  'refused-yaml.tag': {
    says: '“{text}” would change how the value after it is read, and is not let in.',
    why: 'Every value is read as the text that stands there. An exclamation mark at the beginning of a text wants quotes.',
    write: '"{text} …"   if it is text; else the value without it',
  },
  'refused-yaml.key': {
    says: 'This key is a list, or braces, or begins with a question mark.',
    act: 'a key of one or two words, and a colon',
  },
  'refused-yaml.merge': {
    says: 'The key << would put the keys of another place in here, and is not read.',
    act: 'those keys themselves',
  },
  'refused-yaml.reserved-name': {
    says: '“{text}” cannot be a key: programs have it as a name of their own.',
    act: 'another name',
  },
  'text-cut-short': {
    says: 'Only “{kept}” is left of this value, because a # after a blank begins a comment.',
    write: '"{text}"   if the # belongs to the text; else a blank after the #',
  },
  'key-without-value': {
    says: '“{text}” stands in braces without a value.',
    why: 'In braces every key has a colon and a value, and a comma parts two keys.',
    write: '{text}: …   a colon, a blank and its value',
  },
  'key-without-value.comma': {
    says: 'The value of “{key}” ends at its comma, and “{text}” is taken for a key without a value.',
    why: 'In braces a comma parts two keys, unless the text stands in quotes.',
    write: '{key}: "{value}, {text}"',
  },
};
