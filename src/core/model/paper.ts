/** What sheets are printed on. */
export type Paper = 'A4' | 'Letter';

/** In mm. ISO 216; ANSI/ASME Y14.1 (from memory). */
export const papers: Readonly<Record<Paper, { readonly width: number; readonly height: number }>> = {
  A4: { width: 210, height: 297 },
  Letter: { width: 215.9, height: 279.4 },
};
