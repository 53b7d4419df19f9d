/* What this phone keeps, in IndexedDB. A promise here is fulfilled when the transaction is complete and on the disk,
   never earlier; the work inside one is done by callbacks alone, because a transaction that waits for anything else
   commits by itself. */

const NAME = "workshop";
const VERSION = 1;
export const REVISION = "revision"; // counts the writes, so that another tab's worker learns only what is new
let opened = null;

function upgrade(database) {
  const entries = database.createObjectStore("entries", { keyPath: "digest" });
  entries.createIndex("state", ["state", "counter"]);
  entries.createIndex("place", ["place", "counter"]);
  entries.createIndex("revision", "revision");
  const parts = database.createObjectStore("parts", { keyPath: "digest" });
  parts.createIndex("state", "state");
  parts.createIndex("revision", "revision");
  database.createObjectStore("meta");
  database.createObjectStore("keys");
}

function open() {
  return new Promise((done, failed) => {
    const request = indexedDB.open(NAME, VERSION);
    request.onupgradeneeded = () => upgrade(request.result);
    request.onerror = () => failed(request.error);
    request.onsuccess = () => {
      const database = request.result;
      const forget = () => { opened = null; };
      database.onversionchange = () => { database.close(); forget(); };
      database.onclose = forget;
      done(database);
    };
  });
}

function database() {
  opened ??= open().catch((fault) => { opened = null; throw fault; });
  return opened;
}

/* Transactions that began before a database was closed under them are begun once more. */
async function transaction(stores, mode, options) {
  try {
    return (await database()).transaction(stores, mode, options);
  } catch (fault) {
    if (fault.name !== "InvalidStateError") throw fault;
    opened = null;
    return (await database()).transaction(stores, mode, options);
  }
}

/* Do `work(stores by name)` in one transaction; what it returns, or what it puts into the object it returns, is
   given back once all is on the disk. */
export async function write(stores, work) {
  const under = await transaction(stores, "readwrite", { durability: "strict" });
  return new Promise((done, failed) => {
    let result;
    under.oncomplete = () => done(result);
    under.onabort = () => failed(under.error ?? new Error("not kept"));
    try {
      result = work(Object.fromEntries(stores.map((name) => [name, under.objectStore(name)])));
    } catch (fault) {
      under.abort();
      failed(fault);
    }
  });
}

function answer(request) {
  return new Promise((done, failed) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => failed(request.error);
  });
}

/* Read by one request: `read("entries", (store) => store.get(digest))`. */
export async function read(store, ask) {
  return answer(ask((await transaction([store], "readonly")).objectStore(store)));
}

export const get = (store, key) => read(store, (kept) => kept.get(key));
export const all = (store, range) => read(store, (kept) => kept.getAll(range));

export function meta(key) {
  return get("meta", key);
}

export function remember(said) {
  return write(["meta"], ({ meta: kept }) => {
    for (const [key, value] of Object.entries(said)) {
      if (value === undefined || value === null) kept.delete(key);
      else kept.put(value, key);
    }
  });
}

/* Inside a transaction that has `meta`: the number of this write, given to `then`. */
export function nextRevision(kept, then) {
  kept.get(REVISION).onsuccess = ({ target }) => {
    const revision = (target.result ?? 0) + 1;
    kept.put(revision, REVISION);
    then(revision);
  };
}

/* The rows of an index from a key on, or of one state. */
export function indexed(store, index, range) {
  return read(store, (kept) => kept.index(index).getAll(range));
}

export function counted(store, index, range) {
  return read(store, (kept) => kept.index(index).count(range));
}
