import { plannerWords as words } from '../../src/words/planner.ts';
import type { Markup } from './markup.ts';
import { said } from './place.ts';

/** A whole number with a button on either side, wide enough for a gloved finger. */
export function stepper(name: string, label: string, value: string, help: string): Markup {
  const id = idOf(name);
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <div class="stepper">
        <button type="button" data-step="-1" data-for={id} aria-label={said(words.fewer, { what: label })}>
          −
        </button>
        <input
          id={id}
          name={name}
          value={value}
          inputmode="numeric"
          required={value !== ''}
          aria-describedby={`${id}-help`}
        />
        <button type="button" data-step="1" data-for={id} aria-label={said(words.more, { what: label })}>
          +
        </button>
      </div>
      <span class="help" id={`${id}-help`}>
        {help}
      </span>
    </div>
  );
}

interface Written {
  readonly name: string;
  readonly label: string;
  /** What it is of, where several have the same label: said to those who do not see it beside. */
  readonly of?: string;
  readonly value: string;
  readonly help: string;
  /** Typed with the keys for a number. */
  readonly isNumber?: boolean;
}

/** A text to type. */
export function written({ name, label, of, value, help, isNumber = false }: Written): Markup {
  const id = idOf(name);
  return (
    <div class={isNumber ? 'field is-number' : 'field'}>
      <label for={id}>
        {label}
        {of === undefined ? null : <span class="unseen">: {of}</span>}
      </label>
      <input
        id={id}
        name={name}
        value={value}
        inputmode={isNumber ? 'numeric' : undefined}
        aria-describedby={`${id}-help`}
      />
      <span class="help" id={`${id}-help`}>
        {help}
      </span>
    </div>
  );
}

/** One of a few. */
export function choice(
  name: string,
  label: string,
  chosen: string,
  options: readonly (readonly [value: string, name: string])[],
): Markup {
  const id = idOf(name);
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select id={id} name={name}>
        {options.map(([value, text]) => (
          <option value={value} selected={value === chosen}>
            {text}
          </option>
        ))}
      </select>
    </div>
  );
}

function idOf(name: string): string {
  return `set-${name.replace(':', '-')}`;
}
