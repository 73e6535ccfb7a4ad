/** What stands at a key of a plan. `[2]` counts along a list, `[]` stands for all of it, and a name for the item of that id. */
export function valuesAt(plan: unknown, key: string): readonly unknown[] {
  return partsOf(key).reduce<readonly unknown[]>(
    (all, part) => all.flatMap((value) => stepInto(value, part)),
    [plan],
  );
}

/** The one thing at a key without `[]`; `undefined` where nothing is. */
export function valueAt(plan: unknown, key: string): unknown {
  return valuesAt(plan, key)[0];
}

/** Whether any of it is said or listed: a text or a list that is empty is not there. */
export function isThere(plan: unknown, key: string): boolean {
  return valuesAt(plan, key).some((value) => {
    if (Array.isArray(value)) return value.length > 0;
    return value !== undefined && textOf(value) !== '';
  });
}

/** The letters of a finished text, or of a plain field; `undefined` where it has none. */
export function textOf(value: unknown): string | undefined {
  if (isObject(value)) return typeof value['text'] === 'string' ? value['text'] : undefined;
  return value === undefined ? undefined : String(value);
}

function partsOf(key: string): readonly string[] {
  return key.match(/\[\d*\]|[^.[\]]+/g) ?? [];
}

function stepInto(value: unknown, part: string): readonly unknown[] {
  if (part === '[]') return Array.isArray(value) ? value : [];
  const name = part.replace(/[[\]]/g, '');
  const next = Array.isArray(value) && name === part ? itemOf(value, name) : fieldOf(value, name);
  return next === undefined ? [] : [next];
}

function itemOf(list: readonly unknown[], id: string): unknown {
  return list.find((item) => isObject(item) && item['id'] === id);
}

function fieldOf(value: unknown, name: string): unknown {
  return isObject(value) && Object.hasOwn(value, name) ? value[name] : undefined;
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}
