// SPDX-License-Identifier: GPL-3.0-or-later
// Scheme files in and out, and the picture. The file is the document: nothing is kept elsewhere.
import { picture } from './easel.js';
import { find } from './dom.js';
import { textOf } from './feed.js';

/** @typedef {import('./board.js').Board} Board */

const magnify = 3; // pixels of a picture for each CSS px of the chart

/** Letters, digits and dashes only. @param {string} name */
function fileName(name) {
  const plain = name.toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '');
  return plain || 'scheme';
}

/** @param {Blob} blob @param {string} name */
function download(blob, name) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000);
}

export class Files {
  /** @param {Board} board */
  constructor(board) {
    this.board = board;
    this.name = '';     // of the file that was opened
    this.kept = '';     // the text that is in a file
    this.when = '';
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
      if (board.history.text !== this.kept) event.preventDefault();
    });
    board.changed = () => this.tell();
  }

  /** The example that the page brings. @param {string} text */
  begin(text) {
    this.board.open(text);
    this.kept = this.board.history.text;
    this.tell();
  }

  /** @param {File} file */
  async open(file) {
    const read = textOf(new Uint8Array(await file.arrayBuffer()));
    if ('refused' in read) {
      this.board.warn(`Not opened: ${read.refused}.`);
      return;
    }
    if (!this.board.open(read.text)) return;
    this.name = file.name;
    this.when = '';
    this.kept = this.board.history.text;
    this.tell();
    this.board.say(`Opened ${file.name}.`);
  }

  save() {
    const name = this.name || `${fileName(this.title())}.json`;
    const bytes = this.board.core.save();
    download(new Blob([bytes], { type: 'application/json' }), name);
    this.name = name;
    this.kept = this.board.history.text;
    const now = new Date();
    this.when = now.toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' });
    this.tell();
    this.board.say(`Saved as ${name}.`);
  }

  title() {
    return find('scheme-name', HTMLSpanElement).textContent ?? '';
  }

  /** What is true of the file: a download is handed to the browser, and that much is said. */
  tell() {
    const changed = this.board.history.text !== this.kept;
    if (changed) this.line.textContent = this.when
      ? `Changed since ${this.name} was handed to the browser's downloads at ${this.when}.`
      : 'Changed, not saved yet.';
    else if (this.when) this.line.textContent =
      `Saved: ${this.name} was handed to the browser's downloads at ${this.when}.`;
    else this.line.textContent = this.name ? `${this.name}, unchanged.` : 'The example scheme, unchanged.';
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
