/** What may stand in an address; of a level, a tool or a material with its id behind a colon. */
export const settingNames: readonly string[] = [
  'batch',
  'builders',
  'good-until',
  'labour',
  'margin',
  'owned',
  'pack',
  'paper',
  'part',
  'ready-by',
  'start',
  'stock',
  'units',
];

/** Whether a name in an address is that of a setting: others may have put more there. */
export function isSetting(name: string): boolean {
  return settingNames.includes(name.split(':', 1)[0]!);
}
