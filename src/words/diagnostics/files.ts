import type { ProblemFamily } from './sentences.ts';

/** Files that are missing, misnamed, too large, or no text. */
export const fileProblems: ProblemFamily = {
  'no-program': {
    says: 'This folder has no program.yaml, so it is not a workspace yet.',
    why: 'It says whose guides these are; every plan counts with its money, its clock and its hours.',
    write:
      'name: …   the name of your training program\ncurrency: …   the code of your money, such as GBP\ntime-zone: …   your place on the clock, such as Europe/London',
  },
  'no-program.empty': {
    says: 'This folder is empty: a workspace begins with a file program.yaml.',
    why: 'It says whose guides these are; every plan counts with its money, its clock and its hours.',
    write:
      'name: …   the name of your training program\ncurrency: …   the code of your money, such as GBP\ntime-zone: …   your place on the clock, such as Europe/London',
  },
  'no-program.ending': {
    says: 'The file program.yml is passed over, because its name has to be program.yaml.',
    write: 'program.yaml   as the name of the file',
  },
  'no-program.no-folder': { says: 'There is no folder {folder}.' },
  'guide-without-file': {
    says: 'The folder {folder} holds no guide.md, so its guide is passed over.',
    write: '{file}   as the name of the guide’s own file',
  },
  'file-misplaced.ending': {
    says: 'The file {file} is passed over, because the name of such a file ends in .yaml.',
    write: '{better}   as its name',
  },
  'file-misplaced.deep': {
    says: 'The file {file} is passed over, because it stands in a folder of its own.',
    write: '{better}   as its place',
  },
  'file-misplaced.guide': {
    says: 'The file {file} is passed over, because a guide stands in a folder of its own, with its photos beside it.',
    write: '{better}   as its place',
  },
  'file-misplaced.module': {
    says: 'The file {file} is passed over, because a module stands in a folder of its own, with its films beside it.',
    write: '{better}   as its place',
  },
  'file-refused.outside': {
    says: 'The file {file} is a link to something outside the workspace, and is not read.',
    why: 'A workspace is read, copied and published as one folder; what lies elsewhere is not part of it.',
    act: 'a copy of the file itself, in place of the link',
  },
  'file-refused.not-a-file': {
    says: 'What stands at {file} is no regular file, and is not read.',
    act: 'a copy of the file itself in its place',
  },
  'file-refused.unreadable': {
    says: 'The file {file} cannot be opened.',
    why: 'It is a link that leads nowhere, or your account may not read it.',
  },
  'file-refused.too-large': {
    says: 'The file {file} is larger than {most}, and is not read.',
    write: 'a smaller copy of it   a photo of 2000 points a side is plenty',
  },
  'file-too-large': {
    says: 'The file {file} has {size}; no more than {most} of such a file are read.',
    act: 'two files in its place, or less text in this one',
  },
  'file-too-large.front-matter': {
    says: 'The front matter of {file} has {size}; no more than {most} of it are read.',
    write: 'what is prose below the second ---',
  },
  'too-many-files': {
    says: 'This folder holds more than {most} files, and the rest is not read.',
    act: 'another folder for what is not part of the workspace',
  },
  'too-many-files.bytes': {
    says: 'The files of this folder are more than {most} together; this one and those after it are not read.',
    act: 'smaller photos and films, or another folder for what is not part of the workspace',
  },
  'too-many-guides': { says: 'This workspace has {count} guides; no more than {most} are read.' },
  'not-utf-8': {
    says: 'The file {file} is not saved as UTF-8: its letters cannot be told from here on.',
    act: 'the file again from your editor, saved with the encoding UTF-8',
  },
  'not-utf-8.utf-16': {
    says: 'The file {file} is saved as UTF-16, which is not read here.',
    act: 'the file again from your editor, saved with the encoding UTF-8',
  },
  'hidden-character': {
    says: 'There is a character here that nobody sees ({character}).',
    why: 'It may hide in the middle of a number or a name, and then what is read is not what is shown.',
    act: 'the line again by hand, without it',
  },
  'hidden-character.direction': {
    says: 'There is a hidden character here that turns round the direction of the text ({character}).',
    why: 'With it, a line shows something else than it says.',
    act: 'the line again by hand, without it',
  },
};
