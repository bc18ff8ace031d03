// SPDX-License-Identifier: GPL-3.0-or-later
// Breaks that are not in the team file yet, written through to the browser's disk. Keys carry the form's
// version and the team file's own mark, so that no break goes into another team's file.
import { indexedStore, plainStore } from './store.js';

/** @typedef {import('./team.js').Body} Body */
/**
 * @typedef {object} Held
 * @property {string} key
 * @property {Body} body
 * @property {number} number in the team file; 0: not known to be there
 * @property {'send' | 'change' | 'remove'} need what the team file still has to be told
 * @property {boolean} edited since it was first kept here
 * @property {number} when milliseconds since 1970
 * @property {string} refused the team file's words when it would not have it; ""
 */
/** @typedef {import('./store.js').Store<Held>} Store */

const version = 1; // of the form

/** @param {any} held @returns {held is Held} */
function whole(held) {
  return typeof held?.key === 'string' && typeof held.body?.id === 'string'
    && ['send', 'change', 'remove'].includes(held.need) && Number.isFinite(held.number);
}

export class Shelf {
  /** @param {string} mark of the team file @param {(words: string) => void} complain */
  constructor(mark, complain) {
    this.prefix = `breakwater-log/${version}/${mark}/`;
    this.complain = complain;
    /** @type {Promise<Store | null>} */
    this.store = this.#open();
  }

  /** @returns {Promise<Store | null>} */
  async #open() {
    let why = '';
    for (const open of [indexedStore, plainStore]) {
      try {
        return await open();
      } catch (error) {
        why ||= error instanceof Error ? error.message : String(error);
      }
    }
    this.#refused(why);
    return null;
  }

  /** @param {string} why */
  #refused(why) {
    this.complain(`This browser keeps nothing on its disk (it says: ${why.replace(/\.$/, '')}). `
      + 'Breaks that are not in the team file yet are lost when this page is closed.');
  }

  /** All that is held, in the order of logging. */
  async all() {
    try {
      const store = await this.store;
      return ((await store?.all(this.prefix)) ?? []).filter(whole).sort((a, b) => a.when - b.when);
    } catch (error) {
      this.#refused(/** @type {Error} */ (error).message);
      return [];
    }
  }

  /** Ends when it is on the disk, or when it was said that it cannot be. @param {Held} held */
  async put(held) {
    try {
      await (await this.store)?.put(held);
    } catch (error) {
      this.#refused(/** @type {Error} */ (error).message);
    }
  }

  /** @param {string} id of the break */
  async drop(id) {
    await (await this.store)?.drop(this.prefix + id).catch(() => {});
  }
}
