/** What came of a call. */
export const outcomeWords = {
  fine: '{all}: everything is there and adds up.',
  found: '{findings}.',
  refused: '{guides} cannot be planned before the errors are mended.',
  notPublished: 'Nothing was written: the workspace has errors.',
  published: '{edition}: {files} in {folder}',
  open: 'Open {page} in a browser.',
  standardOutput: 'what was to be printed',
  reading: 'Reading …',
  checking: 'Checking …',
  planning: 'Planning …',
  trying: 'Trying what changes would bring …',
  pictures: 'Photo {done} of {all} …',
  making: 'Making the pages …',
  writing: 'Writing {files} …',
  printing: 'Printing {done} of {all}: {name} …',
  printed: '{file}',
  noBrowser:
    'No browser of the Chromium family is found, and one is needed to make PDFs. Install Chromium, Chrome or Edge, or set CHROMIUM to the program; or print the sheets from the published pages with any browser, at 100 %.',
  noBrowserThere:
    'CHROMIUM is “{path}”, and no program is there. Set it to the program of a Chromium, Chrome or Edge, or unset it to look in the usual places.',
  notPrinted: 'The browser {browser} made no PDF of {name}: {reason}. Nothing was put into the folder.',
  fileTrouble: '{path}: {reason}. Nothing more was done.',
  bug: 'Benchwright made a mistake of its own, and stopped: {message}. Please report it, with the files it was working on; --trace says where it happened.',
} as const;

/** What the disk said, by its own code. */
export const diskWords: Readonly<Record<string, string>> = {
  EACCES: 'your account may not write or read there',
  EPERM: 'your account may not write or read there',
  EROFS: 'nothing can be written there',
  ENOSPC: 'the disk is full',
  EDQUOT: 'your share of the disk is full',
  EFBIG: 'the file would be larger than is allowed there',
  ENOTDIR: 'a folder was expected there, and a file is',
  EISDIR: 'a file was expected there, and a folder is',
  ENOENT: 'there is no such file',
  EEXIST: 'it is there already',
  EMFILE: 'too many files are open',
};

export const counts = {
  error: { one: '1 error', many: '{n} errors' },
  warning: { one: '1 warning', many: '{n} warnings' },
  note: { one: '1 note', many: '{n} notes' },
  guide: { one: '1 guide', many: '{n} guides' },
  module: { one: '1 module', many: '{n} modules' },
  material: { one: '1 material', many: '{n} materials' },
  tool: { one: '1 tool', many: '{n} tools' },
  file: { one: '1 file', many: '{n} files' },
} as const;
