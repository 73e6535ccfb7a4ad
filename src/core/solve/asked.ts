/**
 * What another program asks for, looked at before it is worked on. `name` says where in the question a value stands:
 * `pieces[2].width`.
 */

/** A list, as long as may be. @throws {TypeError} For anything else. */
export function askedList(name: string, value: unknown, atLeast = 0): readonly unknown[] {
  if (!Array.isArray(value)) throw new TypeError(`${name} must be a list, not ${shown(value)}.`);
  if (value.length < atLeast) throw new RangeError(`${name} must hold at least ${atLeast}.`);
  return value as readonly unknown[];
}

/** An object with named values. @throws {TypeError} For anything else. */
export function askedObject(name: string, value: unknown): Readonly<Record<string, unknown>> {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new TypeError(`${name} must be an object, not ${shown(value)}.`);
  return value as Readonly<Record<string, unknown>>;
}

/**
 * A whole number from `least` to `most`.
 *
 * @throws {TypeError} For what is no number. @throws {RangeError} For any other number.
 */
export function askedWhole(
  name: string,
  value: unknown,
  least: number,
  most = Number.MAX_SAFE_INTEGER,
): number {
  if (typeof value !== 'number') throw new TypeError(`${name} must be a whole number, not ${shown(value)}.`);
  if (!Number.isSafeInteger(value) || value < least || value > most)
    throw new RangeError(`${name} must be a whole number from ${least} to ${most}, not ${value}.`);
  return value;
}

/** One of some texts. @throws {TypeError} For anything else. */
export function askedOneOf(name: string, value: unknown, texts: readonly string[]): void {
  if (typeof value !== 'string' || !texts.includes(value))
    throw new TypeError(
      `${name} must be ${texts.map((text) => `"${text}"`).join(' or ')}, not ${shown(value)}.`,
    );
}

/** The same, or nothing. */
export function askedWholeOrNone(name: string, value: unknown, least: number): void {
  if (value !== undefined) askedWhole(name, value, least);
}

/** Yes or no. @throws {TypeError} For anything else. */
export function askedYesNo(name: string, value: unknown): void {
  if (typeof value !== 'boolean') throw new TypeError(`${name} must be true or false, not ${shown(value)}.`);
}

function shown(value: unknown): string {
  if (value === undefined) return 'left out';
  if (typeof value === 'string') return `the text "${value}"`;
  if (typeof value === 'bigint') return `the bigint ${value}n`;
  return Array.isArray(value) ? 'a list' : typeof value === 'object' && value ? 'an object' : String(value);
}
