import { plannerWords as words } from '../../words/planner.ts';
import { askedOf, chooseTimes, momentOf } from './fields.ts';

/** The panel on the page, and what its buttons do to its fields. */
export interface Panel {
  readonly form: HTMLFormElement;
  readonly guide: string;
  /** Empty where the guide has none. */
  readonly level: string;
  /** The way from the page to its data. */
  readonly file: string;
}

/** What holds the fields: all that marks and sentences need. */
type Form = Pick<Panel, 'form'>;

export function panelOf(page: Document): Panel | undefined {
  const place = page.querySelector<HTMLElement>('[data-planner]');
  const form = place?.querySelector('form');
  if (!place || !form) return undefined;
  place.classList.add('is-awake');
  const { planner: guide = '', level = '', file = '' } = place.dataset;
  return { form, guide, level, file };
}

/**
 * Calls back at every change of a field.
 *
 * @param isFinal  Whether nothing more will be typed into it just now.
 */
export function onChange({ form }: Panel, changed: (isFinal: boolean) => void): void {
  form.addEventListener('input', ({ target }) => {
    const times = (target as Element).closest<HTMLSelectElement>('[data-times]');
    if (times) chooseTimes(form, times.value);
    changed(false);
  });
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    changed(true);
  });
  form.addEventListener('click', ({ target }) => {
    const button = (target as Element).closest('button');
    if (button?.dataset['step'] !== undefined) step(form, button, 1);
    else if (button?.dataset['back'] !== undefined) backToWeek(form);
    else return;
    changed(false);
  });
}

/** Calls back once, when somebody comes to a field or button. */
export function onFirstFocus({ form }: Panel, come: () => void): void {
  form.addEventListener('focusin', come, { once: true });
}

/** One more or one fewer in the field of a button, and never fewer than the least. */
export function step(form: HTMLFormElement, { dataset }: HTMLButtonElement, least: number): void {
  const field = form.querySelector<HTMLInputElement>(`#${CSS.escape(dataset['for']!)}`)!;
  const now = /^\d{1,9}$/.test(field.value) ? Number(field.value) : Number(field.defaultValue);
  field.value = String(Math.max(least, now + Number(dataset['step'])));
}

/** The field for the day goes, and its button with it: the choice takes the focus. */
function backToWeek(form: HTMLFormElement): void {
  momentOf(form).value = '';
  chooseTimes(form, '');
  form.querySelector<HTMLSelectElement>('[data-times]')!.focus();
}

/** One sentence for each change, read aloud where the page is read aloud. */
export function say({ form }: Form, sentence: string): void {
  form.querySelector('[role=status]')!.textContent = sentence;
}

/** Whether it takes so long that the page says so; not read aloud, since the answer will be. */
export function markWorking({ form }: Form, isWorking: boolean): void {
  form.querySelector('.planner-working')!.toggleAttribute('hidden', !isWorking);
}

/** Whether the numbers of the page are still those from before the last change. */
export function markOld({ form }: Form, isOld: boolean): void {
  form.ownerDocument.documentElement.toggleAttribute('data-old', isOld);
}

/** Whether what other sizes of the batch cost is still that of before: it is worked out after the plan. */
export function markOldSizes({ form }: Form, isOld: boolean): void {
  form.ownerDocument.querySelector('.other-sizes')?.toggleAttribute('data-old', isOld);
}

/** Whether anything is other than published. */
export function markChanged({ form }: Form, isChanged: boolean): void {
  form.querySelector<HTMLButtonElement>('[data-reset]')!.disabled = !isChanged;
  for (const note of form.ownerDocument.querySelectorAll('[data-if-changed]')) {
    note.toggleAttribute('hidden', !isChanged);
  }
}

/** What came of a change: whether it is as published, and what of the address was left out. */
export function answerText(sentence: string, query: string, unread: readonly string[]): string {
  const answer = query === '' ? words.published.replace('{answer}', sentence) : sentence;
  return unread.length === 0 ? answer : `${answer} ${words.unread.replace('{list}', unread.join(', '))}`;
}

/** What is wrong with some fields, and that the numbers are old. */
export function wrongText({ form }: Form, names: readonly string[]): string {
  const sentences = names.map((name) => {
    const { label, help } = askedOf(form, name);
    return words.wrong.replace('{field}', label).replace('{help}', help);
  });
  return [...sentences, words.old].join(' ');
}
