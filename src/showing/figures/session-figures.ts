import { groupTable, rotationTable } from './rotation-table.ts';

/** The tables that follow the people of a session, by the name that their place on its page has for them. */
export const sessionFigures = {
  'group-table': groupTable,
  'rotation-table': rotationTable,
} as const;
