// SPDX-License-Identifier: GPL-3.0-or-later
// The crash journal: the newest unsaved state of each document that this browser has open, so that a
// kill or a reload loses nothing. It is no place to keep things: the file is the document.
//
// All pages opened from disk share one store, so every entry carries the journal's version, the
// document's id and a number of its own. Two documents never see each other's entries, and two windows
// of one document never overwrite each other's.
import { indexedStore, plainStore } from './store.js';

/**
 * @typedef {object} Entry
 * @property {string} key the document's, then a number of its own
 * @property {string} page the page it was edited in
 * @property {string} name of the scheme
 * @property {string} file it was opened from, or ""
 * @property {string} base mark of the text it began from
 * @property {string} text
 * @property {number} when milliseconds since 1970
 */
/** @typedef {import('./store.js').Store<Entry>} Store */

const version = 1; // of the entries' form

/** A number for a text: FNV-1a, 32 bits, in hex. @param {string} text */
export function mark(text) {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(16).padStart(8, '0');
}

/**
 * What the entries of one document begin with. A document without an id goes by its name and what it was
 * when it was opened.
 * @param {string} id @param {string} name @param {string} opened its text then
 */
export function documentKey(id, name, opened) {
  const own = id ? `id:${id}` : `name:${encodeURIComponent(name)}:${mark(opened)}`;
  return `breakwater-journal/${version}/${own}/`;
}

/** Is this one of our entries, whole? @param {any} entry @returns {entry is Entry} */
function whole(entry) {
  return ['key', 'page', 'name', 'file', 'base', 'text'].every((part) => typeof entry?.[part] === 'string')
    && Number.isFinite(entry.when);
}

export class Journal {
  /** @param {(words: string | null) => void} complain told once when nothing can be kept, and null when
   *   it can again */
  constructor(complain) {
    this.complain = complain;
    this.complained = false;
    this.page = ''; // its address and what it was begun with
    this.key = '';
    this.own = ''; // key of the entry being written
    this.name = this.file = this.base = '';
    /** The newest text that is surely on the disk. */
    this.kept = '';
    /** What is still to be written: only the newest counts. @type {Entry | null} */
    this.waiting = null;
    /** Ends when nothing waits any more. @type {Promise<void> | null} */
    this.working = null;
    /** Opened when it is first needed: a player's device keeps nothing. @type {Promise<Store | null> | null} */
    this.opened = null;
  }

  get store() {
    this.opened ??= this.#open();
    return this.opened;
  }

  /** The first store that works here. @returns {Promise<Store | null>} */
  async #open() {
    const reasons = [];
    for (const open of [indexedStore, plainStore]) {
      try {
        return await open();
      } catch (error) {
        reasons.push(error instanceof Error ? error.message : String(error));
      }
    }
    this.#refused(reasons[0]);
    return null;
  }

  /** @param {string} why */
  #refused(why) {
    if (this.complained) return;
    this.complained = true;
    this.complain('This browser keeps no working copy of your edits '
      + `(it says: ${why.replace(/\.$/, '')}). Nothing else is lost: save to a file often.`);
  }

  /** From now on entries are this document's, in an entry of its own.
   * @param {string} id @param {string} name @param {string} opened its text @param {string} file */
  about(id, name, opened, file) {
    this.key = documentKey(id, name, opened);
    if (this.page === '') this.page = `${location.origin}${location.pathname} ${this.key}`;
    this.#begin(name, file, mark(opened));
  }

  /** Goes on with what another page left. @param {Entry} entry */
  resume(entry) {
    this.key = entry.key.slice(0, entry.key.lastIndexOf('/') + 1);
    this.#begin(entry.name, entry.file, entry.base);
  }

  /** @param {string} name @param {string} file @param {string} base */
  #begin(name, file, base) {
    this.own = this.key + Math.random().toString(36).slice(2, 12);
    this.name = name;
    this.file = file;
    this.base = base;
    this.kept = '';
  }

  /** Work that was left behind, newest first: on this document, and on any that was open in this page.
   * @returns {Promise<Entry[]>} */
  async left() {
    const store = await this.store;
    if (!store) return [];
    try {
      const all = (await store.all(`breakwater-journal/${version}/`)).filter(whole);
      return all.filter((entry) => entry.key !== this.own
        && (entry.key.startsWith(this.key) || entry.page === this.page))
        .sort((a, b) => b.when - a.when);
    } catch (error) {
      this.#refused(error instanceof Error ? error.message : String(error));
      return [];
    }
  }

  /** Keeps the newest text; "": there is nothing unsaved any more. Ends when it is kept or refused.
   * @param {string} text */
  keep(text) {
    const { own, page, name, file, base } = this;
    this.waiting = { key: own, page, name, file, base, text, when: Date.now() };
    this.working ??= this.#work().finally(() => { this.working = null; });
    return this.working;
  }

  async #work() {
    const store = await this.store;
    while (this.waiting && store) {
      const entry = this.waiting;
      this.waiting = null;
      try {
        if (entry.text === '') await store.drop(entry.key);
        else await store.put(entry);
        this.kept = entry.text;
        if (this.complained) this.complain(null);
        this.complained = false;
      } catch (error) {
        this.#refused(error instanceof Error ? error.message : String(error));
      }
    }
  }

  /** @param {Entry} entry */
  async throwAway(entry) {
    await (await this.store)?.drop(entry.key).catch(() => {});
  }
}
