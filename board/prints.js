// SPDX-License-Identifier: GPL-3.0-or-later
// PDFs that the program makes of the scheme on the board.
import { button, make, pane } from './panes.js';
import { find } from './dom.js';

/** @typedef {import('./server.js').Server} Server */
/** @typedef {import('./server.js').Kind} Kind */

/** @type {{kind: Kind, name: string, about: string}[]} */
const prints = [
  { kind: 'book', name: 'Picture book', about: 'Where everyone stands, for every stage and ball.' },
  { kind: 'report', name: 'Test report', about: 'What a break is worth, and what beats the scheme. Takes a while.' },
  { kind: 'strip', name: 'Best answer', about: 'What beats the scheme in the usual break, moment by moment.' },
];

export class Prints {
  /** @param {Server} server @param {() => string} text the scheme now
   * @param {(kind: string) => string} fileName @param {(blob: Blob, name: string) => void} give */
  constructor(server, text, fileName, give) {
    this.server = server;
    this.text = text;
    this.fileName = fileName;
    this.give = give;
    /** @type {AbortController | null} */
    this.running = null;
    const opener = find('print', HTMLButtonElement);
    opener.hidden = false;
    this.words = make('p', '', { role: 'status' });
    this.paper = make('select');
    this.paper.append(new Option('Letter', 'letter'), new Option('A4', 'a4'));
    const label = make('label', 'Paper ', { class: 'pick' });
    label.append(this.paper);
    this.buttons = prints.map(({ kind, name }) => button(name, () => this.run(kind, name)));
    this.cancel = button('Cancel', () => this.running?.abort());
    this.cancel.hidden = true;
    const list = make('ul', '', { class: 'prints' });
    prints.forEach(({ about }, i) => {
      const item = make('li');
      item.append(this.buttons[i], make('span', ` ${about}`));
      list.append(item);
    });
    this.pane = pane('print-pane', 'Print', [label, list, this.words, this.cancel]);
    opener.addEventListener('click', () => this.pane.showModal());
  }

  /** @param {Kind} kind @param {string} name */
  async run(kind, name) {
    const running = this.running = new AbortController();
    this.busy(true);
    this.words.textContent = `${name}: being made ...`;
    try {
      const blob = await this.server.run(kind, this.text(), { paper: this.paper.value }, {
        signal: running.signal,
        progress: (done, count) => {
          if (count > 0) this.words.textContent = `${name}: ${done} of ${count} breaks played.`;
        },
      });
      const file = this.fileName(kind);
      this.give(blob, file);
      this.words.textContent = `${name}: handed to the browser's downloads as ${file}.`;
    } catch (error) {
      this.words.textContent = `${name}: ${/** @type {Error} */ (error).message}`;
    }
    this.busy(false);
  }

  /** @param {boolean} busy */
  busy(busy) {
    for (const one of this.buttons) one.disabled = busy;
    this.cancel.hidden = !busy;
  }
}
