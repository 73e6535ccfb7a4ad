/** What pages add to authors' prose. */
export const proseWords = {
  /** What a frame holds that scrolls by itself. */
  table: 'Table',
  example: 'Example',
} as const;
