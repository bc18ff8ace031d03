// SPDX-License-Identifier: GPL-3.0-or-later
// What a man's drag means, asked beside him: everybody runs by the rule, so a place by hand is for now,
// or it is an edit of the scheme. Nothing is written until one is chosen.
import { Kind, List } from './core.js';
import { find, write } from './dom.js';
import { make } from './panes.js';

/** @typedef {import('./board.js').Board} Board */
/** @typedef {import('./core.js').View} View */
/** @typedef {{name: string, says: string, act: () => void}} Choice */

const clear = 12;  // CSS px between a man's mark, which a finger has held, and the bubble
const margin = 8;  // CSS px to the edge of the screen
const mark = 16;   // CSS px: half of a mark

/** @param {string} name */
const capital = (name) => name[0].toUpperCase() + name.slice(1);

export class Bubble {
  /** @param {Board} board @param {HTMLElement} box the field */
  constructor(board, box) {
    this.board = board;
    this.box = box;
    this.pane = find('bubble', HTMLDivElement);
    this.words = find('bubble-words', HTMLParagraphElement);
    this.back = find('bubble-back', HTMLButtonElement);
    this.choices = find('bubble-choices', HTMLUListElement);
    this.note = find('bubble-note', HTMLParagraphElement);
    this.token = -1;
    this.asks = false; // else it tells what was done
    this.placed = '';
    this.back.addEventListener('click', () => this.cancel());
    // What is done in it is not done to the field below.
    this.pane.addEventListener('pointerdown', (event) => event.stopPropagation());
    document.addEventListener('pointerdown', (event) => this.#elsewhere(/** @type {Element} */ (event.target)), true);
    document.addEventListener('keydown', (event) => {
      if (event.key !== 'Escape' || !this.open) return;
      event.stopPropagation();
      event.preventDefault();
      this.cancel();
    }, true);
  }

  get open() { return !this.pane.hidden; }

  /** A touch beside it puts the man back; the field looks itself who was touched, and undo puts back.
   * @param {Element} target */
  #elsewhere(target) {
    if (this.open && !this.box.contains(target) && !target.closest('#undo, #full-undo')) this.cancel();
  }

  /** What shall this token's move be? @param {number} token */
  ask(token) {
    const { view, core } = this.board, man = view.token[token];
    this.token = token;
    this.asks = man.kind === Kind.defender;
    if (!this.asks) {
      this.#fill('The goalkeeper goes with the ball.', [], '');
      return;
    }
    const counts = core.call.home_counts(man.index) !== 0, name = capital(man.name);
    this.#fill(`${name} runs by the rule. What is this move?`, [
      { name: 'For now', says: 'On the screen only, until the ball moves', act: () => this.#keep() },
      ...(counts ? [{ name: 'Move home', says: 'Stands here with this ball; shifts with it as before',
        act: () => this.#moveHome() }] : []),
      this.#pinning(man.pinned !== 0),
    ], counts ? '' : `No home can do it: ${man.pinned ? 'a pin sets this place.' : 'with this ball the rule\'s numbers set this place.'}`);
  }

  /** A pin belongs to a named place of the ball. @param {boolean} pinned @returns {Choice} */
  #pinning(pinned) {
    const { core, view } = this.board, places = core.names(List.landmarks);
    const nearest = core.call.nearest(), here = view.landmark >= 0;
    return { name: here ? (pinned ? 'Move the pin' : 'Pin here') : `Pin for the ball at: ${places[nearest]}`,
      says: here ? `Whenever the ball is at: ${places[nearest]}`
        : 'The ball is between named places; this one is nearest, and it goes there',
      act: () => this.#pin(nearest) };
  }

  #keep() {
    const name = capital(this.board.view.token[this.token].name);
    this.close();
    this.board.say(`${name} is moved for now, until the ball moves. Undo puts it right at once.`);
  }

  #moveHome() {
    const { board, token } = this, man = board.view.token[token], other = this.#twin(man);
    if (board.core.call.home_here(man.index) === 0) {
      write(this.note, 'No home does that: from there this player would have another duty.');
      this.placed = '';
      board.say(this.note.textContent ?? '');
      board.wake();
      return;
    }
    this.#edited(`Home moved: ${man.name} stands here with this ball${other}.`);
  }

  /** @param {number} landmark */
  #pin(landmark) {
    const { board, token } = this, man = board.view.token[token], other = this.#twin(man);
    const place = board.core.names(List.landmarks)[landmark];
    board.core.call.pin_here(man.index, landmark);
    this.#edited(`Pinned: ${man.name} stands here with the ball at: ${place}${other}.`);
  }

  /** Who does the same on the other side. @param {import('./core.js').Token} man */
  #twin({ twin, index }) {
    const { view } = this.board;
    const other = view.token.find((one) => one.kind === Kind.defender && one.index === twin);
    return view.mirrored && other && twin !== index ? `; ${other.name} does the same on the other side` : '';
  }

  /** @param {string} done */
  #edited(done) {
    const { board } = this, before = board.history.at;
    this.asks = false;
    board.commit();
    if (board.history.at === before) { // refused, with a notice, or nothing new
      this.close();
      return;
    }
    this.#fill(done, [{ name: 'Undo', says: '', act: () => {
      this.close();
      board.step(-1);
    } }], '');
  }

  /** @param {string} words @param {Choice[]} choices @param {string} note */
  #fill(words, choices, note) {
    const held = this.pane.contains(document.activeElement);
    write(this.words, words);
    write(this.note, note);
    this.back.hidden = !this.asks;
    this.choices.replaceChildren(...choices.map(({ name, says, act }) => {
      const item = document.createElement('li'), button = make('button', '', { type: 'button' });
      button.append(make('b', name), ...(says ? [make('span', says)] : []));
      button.addEventListener('click', act);
      item.append(button);
      return item;
    }));
    this.pane.hidden = false;
    this.placed = '';
    if (held) this.enter();
    const all = choices.map(({ name }) => name).join(', ');
    this.board.say([words, note, all && `Tab leads to: ${all}.`].filter(Boolean).join(' '));
    this.board.wake();
  }

  /** By keys. */
  enter() {
    this.choices.querySelector('button')?.focus({ preventScroll: true });
  }

  /** Nothing was meant: the man goes back. */
  cancel() {
    if (!this.open) return;
    const man = this.board.view.token[this.token];
    if (this.asks && man && this.board.core.call.call_back(man.index)) this.board.say(`${capital(man.name)} goes back.`);
    this.close();
  }

  close() {
    if (!this.open) return;
    const held = this.pane.contains(document.activeElement);
    this.pane.hidden = true;
    const button = this.box.querySelectorAll('#tokens button')[this.token];
    if (held && button instanceof HTMLElement) button.focus({ preventScroll: true });
    this.board.wake();
  }

  /** Beside its man, inside the screen, on neither him nor the finger. @param {View} view
   * @param {number} scale CSS px in a point */
  show(view, scale) {
    if (!this.open) return;
    const man = view.token[this.token];
    if (!man || (this.asks && !man.moved)) { // the ball or an edit has put him back
      this.close();
      return;
    }
    const away = this.board.field.reach + clear;
    const now = [man.px, man.py, scale, innerWidth, innerHeight].join();
    if (now === this.placed) return;
    this.placed = now;
    const box = this.box.getBoundingClientRect(), { offsetWidth: width, offsetHeight: height } = this.pane;
    const at = { x: box.left + man.px * scale, y: box.top + man.py * scale };
    const nav = find('nav', HTMLElement).getBoundingClientRect();
    const low = (nav.top > innerHeight / 2 && nav.height > 0 ? nav.top : innerHeight) - margin;
    const across = Math.min(Math.max(at.x - width / 2, margin), innerWidth - margin - width);
    const down = Math.min(Math.max(at.y - height / 2, margin), low - height);
    const marks = view.token.map(({ px, py }) => ({ x: box.left + px * scale, y: box.top + py * scale }));
    const covered = (/** @type {number[]} */ [left, top]) => marks.filter(({ x, y }) =>
      x > left - mark && x < left + width + mark && y > top - mark && y < top + height + mark).length;
    const [x, y] = [[across, at.y - away - height], [across, at.y + away], [at.x - away - width, down], [at.x + away, down]]
      .filter(([left, top]) => left >= margin && left + width <= innerWidth - margin && top >= margin && top + height <= low)
      .sort((one, other) => covered(one) - covered(other))[0]
      ?? [across, at.y > (margin + low) / 2 ? margin : low - height];
    this.pane.style.translate = `${Math.round(x - box.left)}px ${Math.round(y - box.top)}px`;
  }
}
