import type { JSX } from 'hastscript/jsx-runtime';

export type Markup = JSX.Element;
/** Markup, or nothing where there is nothing to say. */
export type Content = Markup | null;
