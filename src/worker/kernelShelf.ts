import { KERNEL_FORMAT, onKernelBuilt, putKernel, type StoredKernel } from "../../engine/index.ts";

const database = "hindwire-kernels";
const rows = "kernels";
/** Newest kernels kept across visits: a dozen soils and frequencies with their bands, some 30 MB at most. */
const mostKept = 60;
/** No answer waits longer than this for what is on the shelf. */
const patience_ms = 250;

interface Row {
  readonly key: string;
  readonly kernel: StoredKernel;
  readonly stored_ms: number;
}

/**
 * Keeps the soil's tables in the browser's own database, so that the next visit need not compute them again: hands those
 * that are there to the engine, and puts away each that it builds. Where a browser has no database for a saved page, or
 * it is full, nothing is kept and nothing is lost but a tenth of a second.
 *
 * @returns when the engine has what there was, or has waited long enough
 */
export function kernelShelf(): Promise<void> {
  const opened = open();
  onKernelBuilt((key, kernel) => {
    opened.then((db) => db && store(db, { key: named(key), kernel, stored_ms: Date.now() })).catch(() => {});
  });
  const loaded = opened.then((db) => (db ? load(db) : undefined)).catch(() => {});
  return Promise.race([loaded, new Promise<void>((done) => setTimeout(done, patience_ms))]);
}

const named = (key: string) => `${KERNEL_FORMAT}:${key}`;

function open(): Promise<IDBDatabase | null> {
  return new Promise((done) => {
    try {
      const request = indexedDB.open(database, 1);
      request.onupgradeneeded = () => {
        request.result.createObjectStore(rows, { keyPath: "key" }).createIndex("stored_ms", "stored_ms");
      };
      request.onsuccess = () => done(request.result);
      request.onerror = () => done(null);
      request.onblocked = () => done(null);
    } catch {
      // No database here at all.
      done(null);
    }
  });
}

function load(db: IDBDatabase): Promise<void> {
  return new Promise((done, fail) => {
    const request: IDBRequest<Row[]> = db.transaction(rows).objectStore(rows).getAll();
    request.onerror = () => fail(request.error);
    request.onsuccess = () => {
      const prefix = named("");
      for (const row of request.result)
        if (row.key.startsWith(prefix)) putKernel(row.key.slice(prefix.length), row.kernel);
      done();
    };
  });
}

/** Puts one away and takes the oldest out, and with them all of an older format. */
function store(db: IDBDatabase, row: Row): void {
  const shelf = db.transaction(rows, "readwrite").objectStore(rows);
  shelf.put(row);
  const counted = shelf.count();
  counted.onsuccess = () => {
    let tooMany = counted.result - mostKept;
    if (tooMany <= 0) return;
    const oldest = shelf.index("stored_ms").openCursor();
    oldest.onsuccess = () => {
      const cursor = oldest.result;
      if (!cursor || tooMany-- <= 0) return;
      cursor.delete();
      cursor.continue();
    };
  };
}
