/** What people read for names that the hub gives: a set-up S1 and a mark S1 on one page are two things. Stored names stay. */

/** Set-up S1 is read SETUP-1; a name of another kind stays as it is. */
export const setUpEn = (id: string): string => id.replace(/^S(?=\d+$)/, "SETUP-");

/** Gravel patch G1 is read PATCH-1. */
export const patchEn = (id: string): string => id.replace(/^G(?=\d+$)/, "PATCH-");
