/** What pages add to authors' prose. */
export const proseWords = {
  /** Says what a frame holds that scrolls by itself. */
  table: 'Table',
} as const;
