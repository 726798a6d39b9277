/**
 * A table on this phone that never keeps anybody waiting: a database that does not open, or does not answer, counts as none,
 * and whoever uses it is told so. One that opens late is used from then on.
 * Three requests of the browser's own interface: a library for them would be fetched by every phone before its first page.
 */

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
  private db: IDBDatabase | null = null;
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
    return this.asks("readonly", (rows) => rows.getAll(), []);
  }

  async put(row: Row): Promise<void> {
    await this.opened;
    if (!this.db) return;
    const kept = (await this.asks("readwrite", (rows) => rows.put(row), null)) !== null;
    const again = kept && this.lost;
    this.lost = !kept;
    this.events.onlyInMemory(this.lost);
    if (again) this.events.openedLate();
  }

  async delete(key: string): Promise<void> {
    await this.opened;
    await this.asks("readwrite", (rows) => rows.delete(key), undefined);
  }

  private asks<T, Else>(
    mode: IDBTransactionMode,
    what: (rows: IDBObjectStore) => IDBRequest<T>,
    otherwise: Else,
  ): Promise<T | Else> {
    const db = this.db;
    if (!db) return Promise.resolve(otherwise);
    return within(ANSWER_LIMIT, done(db, this.name, mode, what), otherwise);
  }
}

/** Null where the browser keeps nothing. */
function open(database: string, name: string, keyPath: string): Promise<IDBDatabase | null> {
  return new Promise((here) => {
    try {
      const asked = indexedDB.open(database, 1);
      asked.onupgradeneeded = () => asked.result.createObjectStore(name, { keyPath });
      asked.onsuccess = () => here(asked.result);
      asked.onerror = () => here(null);
    } catch {
      here(null);
    }
  });
}

/** What was asked of the rows, once all of it is written; a database that was closed meanwhile fails. */
function done<T>(
  db: IDBDatabase,
  name: string,
  mode: IDBTransactionMode,
  what: (rows: IDBObjectStore) => IDBRequest<T>,
): Promise<T> {
  return new Promise((resolve, reject) => {
    const all = db.transaction(name, mode);
    const asked = what(all.objectStore(name));
    all.oncomplete = () => resolve(asked.result);
    all.onabort = () => reject(all.error ?? new Error(`${name}: not written`));
  });
}

/** What a promise gives, or something else when it fails or takes too long. */
function within<T, Else>(limit: number, promise: Promise<T>, otherwise: Else): Promise<T | Else> {
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
