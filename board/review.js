// SPDX-License-Identifier: GPL-3.0-or-later
// The mode Review: what the season's breaks come to, as the program counts, words and draws it. Nothing is
// computed here.
import { download } from './savers.js';
import { find, write } from './dom.js';
import { make } from './panes.js';

/** @typedef {import('./board.js').Board} Board */
/** @typedef {import('./team.js').Team} Team */
/** @typedef {import('./team.js').Review} Told */

const narrow = 300, wide = 640; // points, for which pictures can be had
const pointsPerPixel = 0.75;

export class Review {
  id = 'review';
  name = 'Review';
  alone = true;
  looks = true;

  /** @param {Board} board @param {Team} team */
  constructor(board, team) {
    this.board = board;
    this.team = team;
    /** @type {Told | null} */
    this.told = null;
    this.theme = -1; // of the pictures shown
    /** @type {AbortController | null} */
    this.running = null;
    this.parts = find('review-parts', HTMLDivElement);
    this.cancel = find('review-cancel', HTMLButtonElement);
    find('review-model', HTMLButtonElement).addEventListener('click', () =>
      this.#run('The model is played beside it; that takes some seconds ...', async (signal) => {
        this.#fill(await this.team.modelled(this.#width(), { signal }));
        return 'The model stands beside what was seen.';
      }));
    find('review-pdf', HTMLButtonElement).addEventListener('click', () =>
      this.#run('The PDF is being made, with the model beside it ...', async (signal) => {
        download(await this.team.server.run('review-pages', '', {}, { signal }), 'review.pdf');
        return 'Handed to the browser\'s downloads as review.pdf.';
      }));
    this.cancel.addEventListener('click', () => this.running?.abort());
  }

  #width() {
    const room = (this.parts.clientWidth || innerWidth) * pointsPerPixel;
    return Math.round(Math.min(Math.max(room, narrow), wide));
  }

  /** @param {string} words @param {(signal: AbortSignal) => Promise<string>} act */
  async #run(words, act) {
    const running = this.running = new AbortController(), note = find('review-note', HTMLParagraphElement);
    this.#busy(true);
    write(note, words);
    try {
      const done = await act(running.signal);
      write(note, '');
      this.board.say(done);
    } catch (error) {
      write(note, /** @type {Error} */ (error).message);
      this.board.say(note.textContent ?? '');
    }
    this.#busy(false);
  }

  /** @param {boolean} busy */
  #busy(busy) {
    for (const id of ['review-model', 'review-pdf']) find(id, HTMLButtonElement).disabled = busy;
    this.cancel.hidden = !busy;
  }

  enter() {
    this.#run('', async () => {
      const told = await this.team.review(this.#width());
      this.#fill(told);
      return told.title;
    });
  }

  /** A frame was drawn: pictures of another look. */
  show() {
    if (this.told && this.theme !== this.board.theme) this.#fill(this.told);
  }

  /** @param {Told} told */
  #fill(told) {
    this.told = told;
    this.theme = this.board.theme;
    write(find('review-title', HTMLHeadingElement), told.title);
    write(find('review-about', HTMLParagraphElement), told.about);
    this.parts.replaceChildren(...told.parts.map((part) => this.#part(part)));
  }

  /** @param {Told['parts'][0]} part */
  #part({ title, rows, notes, alt, pictures }) {
    const section = make('section');
    section.append(make('h3', title));
    if (rows) {
      const list = make('dl', '', { class: 'told' });
      for (const { label, words } of rows) list.append(make('dt', label), make('dd', words));
      section.append(list);
    }
    if (pictures?.[this.theme]) section.append(this.#picture(pictures[this.theme], alt ?? ''));
    for (const note of notes ?? []) section.append(make('p', note));
    return section;
  }

  /** The program's own drawing. @param {string} text @param {string} alt */
  #picture(text, alt) {
    const svg = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
    svg.setAttribute('role', 'img');
    svg.setAttribute('aria-label', alt);
    const figure = make('figure');
    figure.append(document.importNode(svg, true));
    return figure;
  }
}
