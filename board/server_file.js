// SPDX-License-Identifier: GPL-3.0-or-later
// The coach's file on the computer that serves the page: read from there, and written over only while it
// is still what was read.
import { button, make, pane } from './panes.js';
import { download } from './savers.js';

/** @typedef {import('./files.js').Files} Files */
/** @typedef {import('./server.js').Server} Server */
/** @typedef {import('./server.js').Refused} Refused */

export class ServerFile {
  /** @param {Files} files @param {Server} server */
  constructor(files, server) {
    this.files = files;
    this.server = server;
    this.tag = ''; // of the text in the server's file; '' while another is on the board
    /** @type {HTMLDialogElement | undefined} */
    this.pane = undefined;
    files.offer({
      rank: 5, // what was read from there goes back there
      can: () => this.tag !== '',
      save: (name, bytes) => this.#save(name, bytes),
      forget: () => { this.tag = ''; },
    });
  }

  /** The coach's file, or the one the coach shares; the example where there is none.
   * @param {string} example */
  async begin(example) {
    const { hello } = this.server;
    if (hello.rights === 'nobody' || !hello.scheme || !await this.fetch()) this.files.begin(example);
  }

  /** The server's file onto the board; true when it could be read. */
  async fetch() {
    const { server, files } = this;
    try {
      const { text, tag } = await server.load();
      const name = server.hello.name || 'The coach\'s scheme';
      if (!files.openBytes(new TextEncoder().encode(text), name)) return false;
      this.tag = server.coach ? tag : '';
      return true;
    } catch (error) {
      files.board.warn(`Not opened: ${/** @type {Error} */ (error).message}`);
      return false;
    }
  }

  /** @param {string} name @param {Uint8Array<ArrayBuffer>} bytes */
  async #save(name, bytes) {
    try {
      this.tag = await this.server.save(new TextDecoder().decode(bytes), this.tag);
    } catch (error) {
      if (/** @type {Refused} */ (error).status !== 412) throw error;
      this.#conflict(name, bytes);
      throw new DOMException('The file is another by now.', 'AbortError');
    }
    return { name, words: `${name} was written` };
  }

  /** The file was edited elsewhere: neither that nor this is lost.
   * @param {string} name @param {Uint8Array<ArrayBuffer>} bytes */
  #conflict(name, bytes) {
    this.pane?.remove();
    this.pane = pane('conflict-pane', 'Not saved', [
      make('p', 'The file was changed or taken away since this page read it. Save a copy of what is on '
        + 'the board first; opening the file again puts it aside.'),
      button('Save a copy', () => {
        download(new Blob([bytes], { type: 'application/json' }), `copy-of-${name}`);
        this.files.board.say(`copy-of-${name} was handed to the browser's downloads.`);
      }),
      button('Open the file again', () => {
        this.pane?.close();
        this.fetch();
      }),
    ]);
    this.pane.showModal();
  }
}
