// SPDX-License-Identifier: GPL-3.0-or-later
// Scheme files in and out. The file is the document; what is in none yet is told, and kept in the crash
// journal meanwhile.
import { clock } from './clock.js';
import { About } from './core.js';
import { find, write } from './dom.js';
import { Journal } from './journal.js';
import { Left } from './left.js';
import { downloads, filePicker } from './savers.js';
import { textOf } from './feed.js';

/** @typedef {import('./board.js').Board} Board */
/** @typedef {import('./savers.js').Saver} Saver */

const manyEdits = 10, longTime = 10 * 60 * 1000; // ms: unsaved, the coach is asked to save
const minute = 60 * 1000;

/** Letters, digits and dashes only. @param {string} name */
export function fileName(name) {
  const plain = name.toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '');
  return plain || 'scheme';
}

export class Files {
  /** @param {Board} board @param {boolean} [guest] a player's device: nothing of it is kept */
  constructor(board, guest = false) {
    this.board = board;
    this.guest = guest;
    this.name = '';     // of the file
    this.kept = '';     // the text that is in it
    this.saved = '';    // how it came there, in words; "" when it was only opened
    this.seen = '';     // the text at the last change
    this.edits = 0;     // since it was kept
    this.since = 0;     // when the first of them was made
    this.nagged = false;
    this.opening = false; // a document: what changes then is no edit
    this.line = find('saved', HTMLParagraphElement);
    /** Ways to save, best first. @type {Saver[]} */
    this.savers = [filePicker(), downloads()];
    this.journal = new Journal((words) => {
      const line = find('keeping', HTMLParagraphElement);
      line.hidden = words === null;
      write(line, words ?? '');
    });
    this.left = new Left(this);
    this.#wire();
    board.changed = () => this.#changed();
  }

  #wire() {
    const { board } = this;
    const input = find('file', HTMLInputElement);
    find('open', HTMLButtonElement).addEventListener('click', () => input.click());
    input.addEventListener('change', () => {
      const file = input.files?.[0];
      input.value = '';
      if (file) this.open(file);
    });
    find('save', HTMLButtonElement).addEventListener('click', () => this.save());
    find('save-as', HTMLButtonElement).addEventListener('click', () => {
      for (const saver of this.savers) saver.forget?.();
      this.save();
    });
    document.addEventListener('dragover', (event) => event.preventDefault());
    document.addEventListener('drop', (event) => {
      event.preventDefault();
      const file = event.dataTransfer?.files[0];
      if (file) this.open(file);
    });
    addEventListener('beforeunload', (event) => {
      if (board.history.text !== this.kept && !this.guest) event.preventDefault();
    });
    setInterval(() => this.tell(), minute);
  }

  /** One more way to save, tried by its rank. @param {Saver} saver */
  offer(saver) {
    this.savers.push(saver);
    this.savers.sort((a, b) => a.rank - b.rank);
  }

  /** The example that the page brings. @param {string} text */
  begin(text) {
    this.#put(text);
    this.#opened('');
  }

  /** Opens a text on the board. @param {string} text */
  #put(text) {
    this.opening = true;
    const taken = this.board.open(text);
    this.opening = false;
    return taken;
  }

  /** @param {File} file */
  async open(file) {
    if (!this.openBytes(new Uint8Array(await file.arrayBuffer()), file.name)) return;
    this.board.say(`Opened ${file.name}.`);
  }

  /** True when it was a scheme. @param {Uint8Array} bytes @param {string} name of the file */
  openBytes(bytes, name) {
    const read = textOf(this.board.core, bytes);
    if ('refused' in read) this.board.warn(`Not opened: ${read.refused}.`);
    if ('refused' in read || !this.#put(read.text)) return false;
    for (const saver of this.savers) saver.forget?.(); // another file than the one saved to before
    this.#opened(name);
    return true;
  }

  /** @param {string} file */
  #opened(file) {
    const { core, history } = this.board;
    const id = core.about(About.id), name = core.about(About.name);
    this.name = file;
    this.#inFile('');
    this.journal.about(id, name, history.text, file);
    if (!this.guest) this.left.look();
  }

  /** What is on the board is in a file now. @param {string} saved how, in words */
  #inFile(saved) {
    this.kept = this.seen = this.board.history.text;
    this.saved = saved;
    this.edits = 0;
    this.nagged = false;
    this.tell();
  }

  #changed() {
    const { text } = this.board.history;
    if (this.opening) return;
    if (text === this.seen) return this.tell();
    this.seen = text;
    if (text === this.kept) this.edits = 0;
    else if (this.edits++ === 0) this.since = Date.now();
    this.#keep(text === this.kept ? '' : text);
    this.tell();
  }

  /** @param {string} text */
  async #keep(text) {
    if (!this.guest) await this.journal.keep(text);
    this.tell();
  }

  /** Puts work that was left behind on the board, in no file yet: on the document that is open as an edit,
   * so that Undo leads back; another document is opened. True when it could be taken.
   * @param {import('./journal.js').Entry} entry */
  async resume(entry) {
    const { board, journal } = this;
    if (entry.key.startsWith(journal.key)) {
      if (!board.adopt(entry.text)) return false;
    } else {
      if (!this.#put(entry.text)) return false;
      journal.resume(entry);
      this.name = entry.file;
      this.#inFile('');
      this.kept = '';
      this.edits = 1;
    }
    this.since = entry.when;
    await this.#keep(board.history.text);
    if (journal.kept === board.history.text) await journal.throwAway(entry); // it has a new copy now
    return true;
  }

  async save() {
    const { board } = this, bytes = board.core.save(), { text } = board.history;
    const name = this.name || `${this.baseName()}.json`;
    const troubles = [];
    for (const saver of this.savers.filter((saver) => saver.can())) {
      try {
        const { name: now, words } = await saver.save(name, bytes);
        this.name = now;
        this.#wasSaved(text, `${words} at ${clock(Date.now())}`);
        board.warn(troubles.length > 0 ? `${troubles.join(' ')} Instead ${words}.` : null);
        return;
      } catch (error) {
        if (error instanceof DOMException && error.name === 'AbortError') {
          board.say('Not saved: no file was chosen.');
          return;
        }
        troubles.push(`Not saved the usual way (${error instanceof Error ? error.message : error}).`);
      }
    }
    board.warn(`${troubles.join(' ')} What you did is still on the board.`);
  }

  /** What files of this scheme are called, without an ending. */
  baseName() {
    return fileName(find('scheme-name', HTMLSpanElement).textContent ?? '');
  }

  /** @param {string} text that was saved; the board may have gone on meanwhile @param {string} words */
  #wasSaved(text, words) {
    if (text === this.board.history.text) {
      this.#inFile(words);
      this.#keep('');
    } else {
      this.kept = text;
      this.saved = words;
      this.edits = 1;
      this.since = Date.now();
      this.tell();
    }
    this.board.say(`Saved: ${words}.`);
  }

  /** What is true of the file. */
  tell() {
    const { history } = this.board, changed = history.text !== this.kept;
    const kept = this.journal.kept === history.text ? ' A working copy is kept in this browser.' : '';
    const nag = changed && !this.guest && (this.edits >= manyEdits || Date.now() - this.since >= longTime);
    this.line.classList.toggle('nag', nag);
    find('save-as', HTMLButtonElement).hidden = !this.saved
      || !this.savers.some((saver) => saver.forget && saver.can());
    write(this.line, this.#words(changed, nag) + (changed ? kept : ''));
    if (nag && !this.nagged) this.board.say(`${this.#amount()}, in no file yet.`);
    this.nagged = nag;
  }

  /** @param {boolean} changed @param {boolean} nag */
  #words(changed, nag) {
    if (!changed && this.saved) return `Saved: ${this.saved}.`;
    if (!changed) return this.name ? `${this.name}, unchanged.` : 'The example scheme, unchanged.';
    if (this.guest) return `${this.name}, changed here; nothing of that is kept.`;
    if (nag) return `${this.#amount()} since ${clock(this.since)}, in no file yet: press Save.`;
    if (this.saved) return `Changed since ${this.saved}.`;
    return this.name ? `${this.name}, changed, not saved yet.` : 'Changed, not saved yet.';
  }

  #amount() {
    return this.edits === 1 ? 'Changed' : `${this.edits} edits`;
  }
}
