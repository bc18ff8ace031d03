// SPDX-License-Identifier: GPL-3.0-or-later
// Where entries of the journal and of the log lie: the browser's data base, written through to the disk
// before an entry counts as kept; where there is none, its plain store, which may lose the last seconds in
// a crash.

/**
 * @template {{key: string}} Entry
 * @typedef {object} Store
 * @property {(entry: Entry) => Promise<void>} put resolves when it is kept
 * @property {(key: string) => Promise<void>} drop
 * @property {(prefix: string) => Promise<Entry[]>} all whose keys begin so
 */

const base = 'breakwater-journal', shelf = 'work';
const patience = 10000; // ms: a data base that does not open by then never will, busy as the machine may be

/** @template T @param {IDBRequest<T>} request @returns {Promise<T>} */
function result(request) {
  return new Promise((done, fail) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => fail(request.error ?? new Error('no reason given'));
  });
}

/** @template {{key: string}} Entry @returns {Promise<Store<Entry>>} */
export async function indexedStore() {
  const opening = indexedDB.open(base, 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore(shelf, { keyPath: 'key' });
  const late = new Promise((_, fail) =>
    setTimeout(() => fail(new Error('its data base does not answer')), patience));
  const db = /** @type {IDBDatabase} */ (await Promise.race([result(opening), late]));
  db.onversionchange = () => db.close(); // a newer page wants another form

  /** @param {(shelf: IDBObjectStore) => void} change @returns {Promise<void>} */
  const write = (change) => new Promise((done, fail) => {
    const transaction = db.transaction(shelf, 'readwrite', { durability: 'strict' });
    transaction.oncomplete = () => done();
    transaction.onabort = () => fail(transaction.error ?? new Error('no reason given'));
    change(transaction.objectStore(shelf));
  });
  return {
    put: (entry) => write((shelf) => shelf.put(entry)),
    drop: (key) => write((shelf) => shelf.delete(key)),
    all: (prefix) => result(db.transaction(shelf).objectStore(shelf)
      .getAll(IDBKeyRange.bound(prefix, `${prefix}\uffff`))),
  };
}

/** @template {{key: string}} Entry @returns {Promise<Store<Entry>>} */
export async function plainStore() {
  const store = localStorage;
  store.setItem(base, ''); // throws where it is there but takes nothing
  store.removeItem(base);
  return {
    async put(entry) { store.setItem(entry.key, JSON.stringify(entry)); },
    async drop(key) { store.removeItem(key); },
    async all(prefix) {
      const keys = Array.from({ length: store.length }, (_, i) => store.key(i) ?? '');
      return keys.filter((key) => key.startsWith(prefix)).map((key) => JSON.parse(store.getItem(key) ?? ''));
    },
  };
}
