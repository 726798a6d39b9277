/** What people read for names that the hub gives, in Spanish: a set-up S1 and a mark S1 on one page are two things. */

/** Set-up S1 is read PUESTA-1; a name of another kind stays as it is. */
export const setUpEs = (id: string): string => id.replace(/^S(?=\d+$)/, "PUESTA-");

/** Gravel patch G1 is read PARCHE-1. */
export const patchEs = (id: string): string => id.replace(/^G(?=\d+$)/, "PARCHE-");
