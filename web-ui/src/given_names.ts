/** What people read for names that the hub gives: set-up S1 and mark S1 on one page are two things. Stored names stay. */
import { t } from "./words";

/** Set-up S1 is read SETUP-1; a name that the hub did not give stays as it is. */
export const setUpName = (id: string): string => read(id, /^S(\d+)$/, t().names.setUp);

/** Gravel patch G1 is read PATCH-1; a name that the hub did not give stays as it is. */
export const patchName = (id: string): string => read(id, /^G(\d+)$/, t().names.patch);

function read(id: string, given: RegExp, name: (number: string) => string): string {
  const number = given.exec(id)?.[1];
  return number === undefined ? id : name(number);
}
