// SPDX-License-Identifier: GPL-3.0-or-later
// What the program makes of the scheme on the board: papers and films.
import { button, make, pane } from './panes.js';
import { find } from './dom.js';

/** @typedef {import('./server.js').Server} Server */
/** @typedef {import('./server.js').Kind} Kind */

/** @typedef {import('./server.js').Values} Values */

/** @type {{kind: Kind, name: string, about: string}[]} */
const prints = [
  { kind: 'book', name: 'Picture book', about: 'Where everyone stands, for every stage and ball.' },
  { kind: 'report', name: 'Test report', about: 'What a break is worth, and what beats the scheme. Takes a while.' },
  { kind: 'strip', name: 'Best answer', about: 'What beats the scheme in the usual break, moment by moment.' },
  { kind: 'packet', name: 'Packet', about: 'The idea, each stage, each spot\'s own page, what to rehearse.' },
  { kind: 'cards', name: 'Pocket cards', about: 'To cut out; print on both sides, turned over the long edge.' },
  { kind: 'quiz', name: 'Quiz', about: 'Charts to mark and questions, with the key on pages of its own.' },
  { kind: 'wall', name: 'Wall sheets', about: 'A poster for each stage.' },
];

/** The lessons of a scheme. @param {string} text @returns {{id: string, name: string}[]} */
const lessonsOf = (text) => JSON.parse(text).lessons ?? [];

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
    this.lesson = make('select', '', { 'aria-label': 'Lesson' });
    this.film = make('div', '', { class: 'row' });
    const filming = button('Film', () => this.run('film', 'Film', { lesson: this.lesson.value }));
    this.buttons.push(filming);
    this.film.append(this.lesson, filming);
    this.pane = pane('print-pane', 'Print and film', [label, list, this.film, this.words, this.cancel]);
    opener.addEventListener('click', () => {
      const lessons = lessonsOf(this.text());
      this.film.hidden = lessons.length === 0;
      this.lesson.replaceChildren(...lessons.map(({ id, name }) => new Option(name, id)));
      this.pane.showModal();
    });
  }

  /** @param {Kind} kind @param {string} name @param {Values} [values] */
  async run(kind, name, values = {}) {
    const running = this.running = new AbortController();
    this.busy(true);
    this.words.textContent = `${name}: being made ...`;
    try {
      const blob = await this.server.run(kind, this.text(), { paper: this.paper.value, ...values }, {
        signal: running.signal,
        progress: (done, count) => {
          if (count > 0) this.words.textContent = `${name}: ${Math.floor(100 * done / count)} of 100 parts done.`;
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
