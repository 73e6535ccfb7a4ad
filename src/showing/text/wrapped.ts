/** A text broken at blanks into lines of at most so many letters; a longer word has a line of its own. */
export function wrapped(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ').filter((one) => one !== '')) {
    if (line !== '' && line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return line === '' ? lines : [...lines, line];
}

/** Without line ends, tabs and whatever else would move the cursor of a terminal. */
export function printable(text: string): string {
  return text
    .replaceAll(/[\n\t]/g, ' ')
    .replaceAll(/[\0-\x1F\x7F-\x9F\u202A-\u202E\u2066-\u2069]/g, '\uFFFD');
}
