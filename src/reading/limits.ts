/** How much a file may hold. Far above any guide; what is over is refused, never half read. The manual lists them. */
export const limits = {
  /** Bytes of a Markdown file: 1 MB. */
  markdownBytes: 1_000_000,
  /** Bytes of front matter, or of a whole `.yaml` file: 64 kB. */
  frontMatterBytes: 64_000,
  /** Bytes of a photo or a pattern: 20 MB. */
  fileBytes: 20_000_000,
  /** Points of a photo, across times down: 120 million. */
  photoPoints: 120_000_000,
  /** Lists in lists, quotes in quotes, brackets in brackets. */
  nesting: 100,
  /** Columns of a table. */
  tableColumns: 100,
  /** How long one Markdown file may take to parse, by the count of what is in it. */
  parsingSeconds: 5,
  /** Bytes of a table of judges: 64 kB. */
  tableBytes: 64_000,
  /** People in the cohort of a module, of all kinds. */
  people: 1000,
  /** Guides in a workspace. */
  guides: 10_000,
  /** Folders in folders. */
  folders: 20,
  /** Files in a workspace. */
  files: 100_000,
  /** Bytes of all files of a workspace: 2 GB. */
  allBytes: 2_000_000_000,
} as const;
