/** A value as the text of a JSON file: two spaces a level, a line end at the end. */
export function jsonText(value: unknown): string {
  return `${JSON.stringify(value, undefined, 2)}\n`;
}
