// SPDX-License-Identifier: GPL-3.0-or-later
// Unsaved work of an earlier visit, offered in words and never taken up or thrown away by itself.
import { clock } from './clock.js';
import { find, write } from './dom.js';

/** @typedef {import('./files.js').Files} Files */
/** @typedef {import('./journal.js').Entry} Entry */

export class Left {
  /** @param {Files} files */
  constructor(files) {
    this.files = files;
    /** @type {Entry[]} */
    this.entries = [];
    /** The last one thrown away, while it can be brought back. @type {Entry | null} */
    this.thrown = null;
    this.box = find('left', HTMLDivElement);
    this.words = find('left-words', HTMLParagraphElement);
    this.takeUp = find('left-take', HTMLButtonElement);
    this.away = find('left-away', HTMLButtonElement);
    this.takeUp.addEventListener('click', () => this.#take());
    this.away.addEventListener('click', () => this.#throw());
  }

  /** Looks for work left on the document that is open. */
  async look() {
    const { text } = this.files.board.history;
    delete this.box.dataset.looked;
    const entries = await this.files.journal.left();
    if (text !== this.files.board.history.text) return; // overtaken by another opening
    this.entries = entries.filter((entry) => entry.text !== text);
    this.thrown = null;
    this.#show();
    this.box.dataset.looked = 'true';
  }

  #show() {
    const entry = this.thrown ?? this.entries[0];
    this.box.hidden = !entry;
    if (!entry) return;
    const about = `of ${clock(entry.when)} on ${entry.name}`;
    const { journal } = this.files;
    const other = entry.key.startsWith(journal.key) && entry.base !== journal.base
      ? ' It began from another version of this file.' : '';
    write(this.words, this.thrown ? `Thrown away: the work ${about}.` : `Unsaved work ${about}.${other}`);
    write(this.takeUp, this.thrown ? 'Bring it back' : 'Take it up');
    write(this.away, this.thrown ? 'Let it go' : 'Throw it away');
  }

  async #take() {
    const { files } = this, entry = this.thrown ?? this.entries[0];
    if (!await files.resume(entry)) return;
    this.entries = this.entries.filter((one) => one !== entry);
    this.thrown = null;
    this.#show();
    this.#next(`Taken up: the work of ${clock(entry.when)} on ${entry.name}. It is in no file yet.`);
  }

  async #throw() {
    if (this.thrown) {
      this.thrown = null;
    } else {
      this.thrown = this.entries.shift() ?? null;
      if (this.thrown) await this.files.journal.throwAway(this.thrown);
    }
    this.#show();
    this.#next('');
  }

  /** A button that went away must not take the focus with it. @param {string} words */
  #next(words) {
    if (words) this.files.board.say(words);
    if (this.box.hidden) find('save', HTMLButtonElement).focus();
  }
}
