// SPDX-License-Identifier: GPL-3.0-or-later
// Scheme files in and out, and the picture. The file is the document: nothing is kept elsewhere.
import { picture } from './easel.js';
import { find } from './dom.js';
import { button, make, pane } from './panes.js';
import { textOf } from './feed.js';

/** @typedef {import('./board.js').Board} Board */

const magnify = 3; // pixels of a picture for each CSS px of the chart

/** @typedef {import('./server.js').Server} Server */
/** @typedef {import('./server.js').Refused} Refused */

/** Letters, digits and dashes only. @param {string} name */
function fileName(name) {
  const plain = name.toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '');
  return plain || 'scheme';
}

/** Hands a file to the browser's downloads. @param {Blob} blob @param {string} name */
export function download(blob, name) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000);
}

export class Files {
  /** @param {Board} board @param {Server | null} [server] */
  constructor(board, server = null) {
    this.board = board;
    this.server = server;
    this.guest = server?.hello.shared ?? false; // a player's device: nothing of it is kept
    this.tag = '';      // of the text in the server's file; '' while another is on the board
    this.name = '';     // of the file that was opened
    this.kept = '';     // the text that is in a file
    this.when = '';
    /** @type {HTMLDialogElement | undefined} */
    this.pane = undefined;
    this.line = find('saved', HTMLParagraphElement);
    const input = find('file', HTMLInputElement);
    find('open', HTMLButtonElement).addEventListener('click', () => input.click());
    input.addEventListener('change', () => {
      const file = input.files?.[0];
      input.value = '';
      if (file) this.open(file);
    });
    find('save', HTMLButtonElement).addEventListener('click', () => this.save());
    find('picture', HTMLButtonElement).addEventListener('click', () => this.picture());
    document.addEventListener('dragover', (event) => event.preventDefault());
    document.addEventListener('drop', (event) => {
      event.preventDefault();
      const file = event.dataTransfer?.files[0];
      if (file) this.open(file);
    });
    addEventListener('beforeunload', (event) => {
      if (board.history.text !== this.kept && !this.guest) event.preventDefault();
    });
    board.changed = () => this.tell();
  }

  /** The example that the page brings. @param {string} text */
  begin(text) {
    this.board.open(text);
    this.kept = this.board.history.text;
    this.tell();
  }

  /** The coach's file, or the one the coach shares; the example where there is none.
   * @param {string} example */
  async beginServed(example) {
    const { hello } = /** @type {Server} */ (this.server);
    if (hello.rights === 'nobody' || !hello.scheme) return this.begin(example);
    await this.fetch();
    if (!this.name) this.begin(example);
  }

  /** The server's file onto the board. */
  async fetch() {
    const server = /** @type {Server} */ (this.server);
    try {
      const { text, tag } = await server.load();
      const read = textOf(new TextEncoder().encode(text));
      if ('refused' in read) throw new Error(`${read.refused}.`);
      if (!this.board.open(read.text)) return;
      this.name = server.hello.name || 'The coach\'s scheme';
      this.tag = server.coach ? tag : '';
      this.when = '';
      this.kept = this.board.history.text;
      this.tell();
    } catch (error) {
      this.board.warn(`Not opened: ${/** @type {Error} */ (error).message}`);
    }
  }

  /** @param {File} file */
  async open(file) {
    const read = textOf(new Uint8Array(await file.arrayBuffer()));
    if ('refused' in read) {
      this.board.warn(`Not opened: ${read.refused}.`);
      return;
    }
    if (!this.board.open(read.text)) return;
    this.tag = '';
    this.name = file.name;
    this.when = '';
    this.kept = this.board.history.text;
    this.tell();
    this.board.say(`Opened ${file.name}.`);
  }

  save() {
    if (this.tag) this.put();
    else this.handOver();
  }

  /** Into the server's file. What was read from it, and nothing else, is written over. */
  async put() {
    const text = this.board.history.text;
    try {
      this.tag = await /** @type {Server} */ (this.server).save(text, this.tag);
    } catch (error) {
      const refused = /** @type {Refused} */ (error);
      if (refused.status === 412) this.conflict();
      else this.board.warn(`Not saved: ${refused.message}`);
      return;
    }
    this.board.warn(null);
    this.kept = text;
    this.stamp();
    this.tell();
    this.board.say(`Saved to ${this.name}.`);
  }

  /** The file was edited elsewhere: neither that nor this is lost. */
  conflict() {
    this.pane ??= pane('conflict-pane', 'Not saved', [
      make('p', 'The file was changed or taken away since this page read it. Save a copy of what is on '
        + 'the board first; opening the file again puts it aside.'),
      button('Save a copy', () => this.handOver(`copy-of-${this.name}`)),
      button('Open the file again', () => {
        this.pane?.close();
        this.fetch();
      }),
    ]);
    this.pane.showModal();
  }

  stamp() {
    this.when = new Date().toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' });
  }

  /** To the browser's downloads. @param {string} [copy] its name, when it is only a copy */
  handOver(copy) {
    const name = copy ?? (this.name || `${this.baseName()}.json`);
    const bytes = this.board.core.save();
    download(new Blob([bytes], { type: 'application/json' }), name);
    this.board.say(`Saved as ${name}.`);
    if (copy) return;
    this.name = name;
    this.kept = this.board.history.text;
    this.stamp();
    this.tell();
  }

  /** What files of this scheme are called, without an ending. */
  baseName() {
    return fileName(this.title());
  }

  title() {
    return find('scheme-name', HTMLSpanElement).textContent ?? '';
  }

  /** What is true of the file: a download is handed to the browser, and that much is said. */
  tell() {
    const changed = this.board.history.text !== this.kept;
    if (this.tag) this.line.textContent = this.tellServed(changed);
    else if (this.guest && changed) this.line.textContent = `${this.name}, changed here; nothing of that is kept.`;
    else if (changed) this.line.textContent = this.when
      ? `Changed since ${this.name} was handed to the browser's downloads at ${this.when}.`
      : 'Changed, not saved yet.';
    else if (this.when) this.line.textContent =
      `Saved: ${this.name} was handed to the browser's downloads at ${this.when}.`;
    else this.line.textContent = this.name ? `${this.name}, unchanged.` : 'The example scheme, unchanged.';
  }

  /** Of the server's file. @param {boolean} changed */
  tellServed(changed) {
    if (changed) return this.when ? `Changed since ${this.name} was saved at ${this.when}.`
      : `${this.name}, changed, not saved yet.`;
    return this.when ? `Saved to ${this.name} at ${this.when}.` : `${this.name}, unchanged.`;
  }

  async picture() {
    this.board.field.draw();
    const canvas = picture(this.board, this.board.field.scale, magnify);
    /** @type {Blob | null} */
    const blob = await new Promise((done) => canvas.toBlob(done));
    if (!blob) {
      this.board.warn('The picture could not be made: this browser gave no image.');
      return;
    }
    const name = `${fileName(this.board.view.title)}.png`;
    download(blob, name);
    this.board.say(`Picture handed over as ${name}.`);
  }
}
