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
  const kind = plain(ending).slice(0, 12);
  return kind === '' ? name : `${name}.${kind}`;
}

/** A name that nothing in a folder has yet, which is then taken: `film.mp4`, `film-2.mp4`. */
export function freeName(name: string, taken: Set<string>): string {
  const [, stem = name, ending = ''] = /^(.*?)(\.[^.]*)?$/s.exec(name) ?? [];
  let free = name;
  for (let n = 2; taken.has(free); n++) free = `${stem}-${n}${ending}`;
  taken.add(free);
  return free;
}
