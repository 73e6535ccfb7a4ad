/** From a folder of the edition back to the edition's own: `guides/needle-block` -> `../../`. */
export function rootFrom(folder: string): string {
  return folder === '' ? '' : '../'.repeat(folder.split('/').length);
}

/** Windows keeps these for devices. @source Microsoft Learn, "Naming Files, Paths, and Namespaces" (from memory). */
const deviceNames = /^(con|prn|aux|nul|com\d|lpt\d)$/;

/** A file name that every disk, archive and learning-management system takes: `Photo 1.JPG` -> `photo-1.jpg`. */
export function safeFileName(file: string): string {
  const [, stem = file, ending = ''] = /^(.*)\.([^./]+)$/s.exec(file) ?? [];
  const plain = (text: string): string =>
    text
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-+|-+$/g, '');
  const known = plain(stem).slice(0, 60) || 'file';
  const name = deviceNames.test(known) ? `${known}-file` : known;
  return ending === '' ? name : `${name}.${plain(ending)}`;
}

/** The same, and no name that is taken already; it is taken from then on. */
export function freeFileName(file: string, taken: Set<string>): string {
  const [, stem = '', ending = ''] = /^(.*?)(\.[^.]*)?$/s.exec(safeFileName(file)) ?? [];
  return freeName(stem, ending, taken);
}

/** `pour.jpg`, or `pour-2.jpg` where that is taken. */
export function freeName(stem: string, ending: string, taken: Set<string>): string {
  let free = stem + ending;
  for (let n = 2; taken.has(free); n++) free = `${stem}-${n}${ending}`;
  taken.add(free);
  return free;
}
