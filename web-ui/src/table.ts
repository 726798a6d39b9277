/**
 * A table on this phone that never keeps anybody waiting: a database that does not open, or does not answer, counts as none,
 * and whoever uses it is told so. One that opens late is used from then on.
 */
import { type IDBPDatabase, openDB } from "idb";

/** A database that has not opened in this time counts as none, ms. */
export const OPEN_LIMIT = 2_000;
/** One that does not answer in this time, ms. */
const ANSWER_LIMIT = 2_000;

export interface TableEvents {
  /** Nothing is kept: a page that closes forgets. False again once the database has opened after all. */
  onlyInMemory(only: boolean): void;
  /** It has opened late, or keeps rows again: what came meanwhile is to be put now. */
  openedLate(): void;
}

export class Table<Row> {
  private db: IDBPDatabase | null = null;
  private readonly opened: Promise<void>;
  /** The last row could not be kept: its like are put again once one can. */
  private lost = false;

  constructor(
    database: string,
    private readonly name: string,
    keyPath: string,
    private readonly events: TableEvents,
  ) {
    let late = false;
    const opening = open(database, name, keyPath).then((db) => {
      this.db = db;
      if (!db) events.onlyInMemory(true);
      else if (late) {
        events.onlyInMemory(false);
        events.openedLate();
      }
    });
    this.opened = within(OPEN_LIMIT, opening, undefined).then(() => {
      if (this.db) return;
      late = true;
      events.onlyInMemory(true);
    });
  }

  /** Every row; none when nothing can be read. */
  async all(): Promise<Row[]> {
    await this.opened;
    return this.asks((db) => db.getAll(this.name), []);
  }

  async put(row: Row): Promise<void> {
    await this.opened;
    if (!this.db) return;
    const kept = await this.asks((db) => db.put(this.name, row).then(() => true), false);
    const again = kept && this.lost;
    this.lost = !kept;
    this.events.onlyInMemory(this.lost);
    if (again) this.events.openedLate();
  }

  async delete(key: string): Promise<void> {
    await this.opened;
    await this.asks((db) => db.delete(this.name, key), undefined);
  }

  private asks<T>(what: (db: IDBPDatabase) => Promise<T>, otherwise: T): Promise<T> {
    if (!this.db) return Promise.resolve(otherwise);
    try {
      return within(ANSWER_LIMIT, what(this.db), otherwise);
    } catch {
      return Promise.resolve(otherwise);
    }
  }
}

async function open(database: string, name: string, keyPath: string): Promise<IDBPDatabase | null> {
  try {
    return await openDB(database, 1, {
      upgrade(db) {
        db.createObjectStore(name, { keyPath });
      },
    });
  } catch {
    return null;
  }
}

/** What a promise gives, or something else when it fails or takes too long. */
function within<T>(limit: number, promise: Promise<T>, otherwise: T): Promise<T> {
  return new Promise((resolve) => {
    const timer = setTimeout(() => resolve(otherwise), limit);
    promise.then(
      (value) => {
        clearTimeout(timer);
        resolve(value);
      },
      () => {
        clearTimeout(timer);
        resolve(otherwise);
      },
    );
  });
}
