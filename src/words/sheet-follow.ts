/** What a sheet says that was asked to follow other settings than those it was published with. */
export const sheetFollowWords = {
  working: 'Working out this sheet for your settings … Its numbers are still those that were published.',
  set: 'For other settings than published: {settings}. The code leads to the guide as published.',
  never: 'This sheet does not follow settings; benchwright print makes it with them.',
  asPublished: 'The numbers on this sheet are those that were published.',
} as const;
