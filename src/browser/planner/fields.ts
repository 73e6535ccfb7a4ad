type Field = HTMLInputElement | HTMLSelectElement;

/** The fields of the panel as the query of an address: what differs from the published page, each by its name. */
export function queryOf(form: HTMLFormElement): URLSearchParams {
  const changed = fieldsOf(form).filter(isChanged);
  return new URLSearchParams(changed.map(({ name, value }) => [name, value.trim()]));
}

/** The names of the settings that have a field. */
export function fieldNames(form: HTMLFormElement): readonly string[] {
  return fieldsOf(form).map(({ name }) => name);
}

/** Sets all fields to what a query says; those that it does not name to what is published. */
export function setFields(form: HTMLFormElement, query: URLSearchParams): void {
  form.reset();
  const times = form.querySelector<HTMLSelectElement>('[data-times]')!;
  const chosen = [...times.options].map(({ value }) => value).find((name) => name !== '' && query.has(name));
  chooseTimes(form, chosen ?? '');
  for (const field of fieldsOf(form)) {
    const text = query.get(field.name);
    if (text !== null) field.value = valueFor(field, text);
  }
}

/** The field for a day and a time has the name of what is chosen: from a start, or ready by. */
export function chooseTimes(form: HTMLFormElement, name: string): void {
  form.querySelector<HTMLSelectElement>('[data-times]')!.value = name;
  form.querySelector<HTMLElement>('[data-moment]')!.hidden = name === '';
  momentOf(form).name = name;
}

export function momentOf(form: HTMLFormElement): HTMLInputElement {
  return form.querySelector<HTMLInputElement>('[data-moment] input')!;
}

/** Marks the fields of these names as wrong and all others as right. */
export function markWrong(form: HTMLFormElement, names: readonly string[]): void {
  for (const field of fieldsOf(form)) {
    const isWrong = names.includes(field.name);
    if (isWrong) field.setAttribute('aria-invalid', 'true');
    else field.removeAttribute('aria-invalid');
    if (isWrong) field.closest('details')?.setAttribute('open', '');
  }
}

/** What is asked of a field, by its label: "Good models", "A whole number from 1 to 10,000." */
export function askedOf(
  form: HTMLFormElement,
  name: string,
): { readonly label: string; readonly help: string } {
  const field = fieldsOf(form).find((known) => known.name === name);
  const described = form.ownerDocument.getElementById(field?.getAttribute('aria-describedby') ?? '');
  return { label: textIn(field?.labels?.[0]) || name, help: textIn(described) };
}

function fieldsOf(form: HTMLFormElement): readonly Field[] {
  return [...form.querySelectorAll<Field>('input, select')].filter(({ name }) => name !== '');
}

/** An emptied field is as published, but for one that must say something, and a day that is typed in part. */
function isChanged(field: Field): boolean {
  const isEmpty = field.value.trim() === '';
  return isEmpty ? field.required || field.validity.badInput : field.value.trim() !== publishedIn(field);
}

function publishedIn(field: Field): string {
  if (field instanceof HTMLInputElement) return field.defaultValue;
  return [...field.options].find(({ defaultSelected }) => defaultSelected)?.value ?? '';
}

/** Choices are compared without regard to capitals, as the address writes them. */
function valueFor(field: Field, text: string): string {
  if (field instanceof HTMLInputElement) return text;
  const option = [...field.options].find(({ value }) => value.toLowerCase() === text.toLowerCase());
  return option?.value ?? field.value;
}

function textIn(element: Element | null | undefined): string {
  return element?.textContent?.trim() ?? '';
}
