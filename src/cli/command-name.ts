/** Every command, in the order of the alphabet. */
export const commandNames = ['check', 'help', 'plan', 'print', 'publish'] as const;
export type CommandName = (typeof commandNames)[number];
