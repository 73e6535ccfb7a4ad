/** Files by path, as they will stand in the folder. */
export type Files = ReadonlyMap<string, Uint8Array>;

export const editions = ['trainees', 'staff'] as const;
export type Edition = (typeof editions)[number];
