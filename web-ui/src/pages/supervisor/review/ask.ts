/** What the review asks the hub for. */
import { type Got, get } from "../../../hub";
import type { Moment, Review, ToldDays } from "../../../wire";

/** Which day; the newest when empty. */
function query(day: string, more: Record<string, string | number> = {}): string {
  const asked = new URLSearchParams(day ? { day } : {});
  for (const [name, value] of Object.entries(more)) asked.set(name, String(value));
  return `?${asked}`;
}

export const days = (): Promise<Got<string[]>> => get("/api/days");
export const review = (day: string): Promise<Got<Review>> => get(`/api/review${query(day)}`);
export const moment = (day: string, at: number): Promise<Got<Moment>> =>
  get(`/api/replay${query(day, { at: Math.round(at) })}`);
/** What every screen showed once an entry was taken: an entry may have been made long before. */
export const momentOf = (day: string, seq: number): Promise<Got<Moment>> =>
  get(`/api/replay${query(day, { seq })}`);

export interface WhoTold {
  machine: string;
  x: number;
  y: number;
  from: number;
  to: number;
}

export const whoTold = (asked: WhoTold): Promise<Got<ToldDays>> =>
  get(`/api/who-told${query("", { ...asked })}`);
export const whoToldSheet = (asked: WhoTold, language: string): string =>
  `/api/report/who-told${query("", { ...asked, language })}`;
export const sheet = (kind: string, day: string, language: string): string =>
  `/api/report/${kind}${query(day, { language })}`;
export const table = (name: string, day: string): string => `/api/table/${name}${query(day)}`;
