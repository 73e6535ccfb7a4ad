/**
 * What the planner finds worth telling, by its code, or `code.variant` where the cases differ. Facts stand in braces.
 */
export const planWarnings: Readonly<Record<string, string>> = {};
