/** What a guide's page says of the files for other programs beside it. */
export const guideDataWords = {
  title: 'For other programs',
  says: 'As published, exact. This page holds the same as schema.org JSON-LD.',
  files: {
    'plan.json': 'The whole plan (JSON)',
    'shopping.csv': 'Shopping list (CSV)',
    'days.csv': 'Day list (CSV)',
  },
  noCalendar: 'No calendar: the reference week has no dates. With a start of your own this writes one:',
  command: 'benchwright plan {line}={batch} --start 2026-12-01T09:00 --format ics',
} as const;
