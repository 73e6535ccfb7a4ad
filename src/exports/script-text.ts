/**
 * A classic script that sets one global: a page that was opened from a disk may load a script, but no data. `<` and the
 * two line ends that end a line of a script are escaped, so that no text can close anything.
 */
export function scriptText(name: string, value: unknown): string {
  const json = JSON.stringify(value).replace(
    /[<\u2028\u2029]/g,
    (mark) => `\\u${mark.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
  return `globalThis.${name} = ${json};\n`;
}
