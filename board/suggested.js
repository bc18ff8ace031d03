// SPDX-License-Identifier: GPL-3.0-or-later
// What came of asking for better spots: rings on the chart, a row for each thing that may be taken, and
// how sure it is.
import { Kind, Mode } from './core.js';
import { find, write } from './dom.js';
import { headOf, keptOf, linesOf, rowsOf } from './suggestion.js';
import { Soundings } from './soundings.js';
import { button, make } from './panes.js';

/** @typedef {import('./board.js').Board} Board */
/** @typedef {import('./core.js').View} View */
/** @typedef {import('./suggestion.js').Suggestion} Suggestion */
/** @typedef {import('./suggestion.js').Row} Row */

/** Members of a rule whose slider has another key. @type {Record<string, string>} */
const keys = { crease: 'crease_at' };
const slack = 0.005; // of a number: both are hundredths

export class Suggested {
  /** @param {Board} board @param {() => void} gone called when it was put away */
  constructor(board, gone) {
    this.board = board;
    this.box = find('suggest-results', HTMLElement);
    this.list = find('suggest-rows', HTMLUListElement);
    this.all = find('suggest-all', HTMLButtonElement);
    /** @type {Suggestion | null} */
    this.now = null;
    /** @type {Row[]} */
    this.rows = [];
    this.stage = -1;
    this.soundings = new Soundings(board);
    this.history = board.history; // of the document it is about
    this.all.addEventListener('click', () => this.#takeAll());
    find('suggest-away', HTMLButtonElement).addEventListener('click', () => {
      this.#drop();
      gone();
      board.say('The suggestion is put away.');
    });
  }

  /** @param {Suggestion} suggestion @param {boolean} edited since it was asked for */
  take(suggestion, edited) {
    const { board } = this;
    this.#drop();
    this.now = suggestion;
    this.history = board.history;
    this.rows = rowsOf(suggestion);
    this.#goTo(suggestion.defenders);
    this.#pass();
    this.#write(suggestion, edited);
    this.renew();
    this.box.hidden = false;
    find('suggest-title', HTMLElement).focus();
    board.say(suggestion.verdict);
  }

  /** Shows the stage it is about, with its homes. @param {number} defenders */
  #goTo(defenders) {
    const { board } = this, { call } = board.core;
    const stages = JSON.parse(board.history.text).stages;
    this.stage = stages.findIndex((/** @type {{defenders: number}} */ one) => one.defenders === defenders);
    if (board.view.stage !== this.stage) call.stage(this.stage);
    call.mode(Mode.homes);
    board.refresh();
    const man = board.view.token.findIndex(({ kind }) => kind === Kind.defender);
    if (board.view.token[board.picked].kind !== Kind.defender) board.picked = man;
  }

  #men() {
    return this.board.view.token.filter(({ kind }) => kind === Kind.defender);
  }

  /** Index of a spot of the stage shown. @param {string} code */
  #spot(code) {
    return this.#men().find((man) => man.code === code)?.index ?? -1;
  }

  /** The homes into the core, which draws them. */
  #pass() {
    for (const { spot, new_x: x, new_y: y } of this.now?.homes ?? []) {
      this.board.core.call.suggest(this.#spot(spot), x, y);
    }
  }

  /** @param {Suggestion} suggestion @param {boolean} edited */
  #write(suggestion, edited) {
    const verdict = find('suggest-verdict', HTMLElement);
    write(verdict, suggestion.verdict);
    verdict.classList.toggle('warning', /^Warning/.test(suggestion.verdict));
    write(find('suggest-title', HTMLElement), `Suggestion for the ${suggestion.shape}`);
    write(find('suggest-kept', HTMLElement), `${keptOf(suggestion)} ${edited
      ? 'The scheme was edited since it was asked for: "before" is the scheme as it was then.' : ''}`.trim());
    this.list.replaceChildren(...this.rows.map((row) => {
      const item = make('li'), words = make('div');
      words.append(make('b', row.name), row.words);
      const take = button('Take', () => this.#take(row));
      take.setAttribute('aria-label', `Take: ${row.name}, ${row.words}`);
      item.append(words, take, make('span', 'Taken', { class: 'taken' }));
      return item;
    }));
    find('suggest-evidence', HTMLElement).replaceChildren(...suggestion.goals_a_break.flatMap((one) => [
      make('dt', headOf(one)), ...linesOf(one).map((line) => make('dd', line))]));
    find('suggest-limits', HTMLElement).replaceChildren(...suggestion.limits.map((line) => make('p', line)));
  }

  /** Whether the scheme has this row's values already. @param {Row} row */
  #taken(row) {
    const { core } = this.board;
    if (row.spots.length > 0) return row.spots.every((code) => !core.call.ghost(this.#spot(code)));
    return Math.abs(this.#knob(row).value - row.after) < slack;
  }

  /** The rule's slider that a row turns. @param {Row} row */
  #knob(row) {
    const knobs = this.board.core.knobs(), key = keys[row.key] ?? row.key;
    const index = knobs.findIndex((knob) => knob.key === key);
    return { index, value: knobs[index].value };
  }

  /** Into the core; not yet an edit. @param {Row} row */
  #apply(row) {
    const { call } = this.board.core;
    if (row.spots.length > 0) call.take_home(this.#spot(row.spots[0]));
    else call.turn(this.#knob(row).index, row.after);
  }

  /** @param {Row} row */
  #take(row) {
    this.#apply(row);
    this.#settle(`Taken: ${row.name}, ${row.words}. Undo brings the old back.`);
  }

  #takeAll() {
    for (const row of this.rows) {
      if (!this.#taken(row)) this.#apply(row);
    }
    this.#settle('All of it is taken, as one edit. Undo brings the old back.');
  }

  /** One edit; the focus goes on to what can be taken next. @param {string} words */
  #settle(words) {
    const { board } = this, at = [...this.list.children].findIndex((item) => item.contains(document.activeElement));
    board.refresh();
    board.commit();
    board.say(words);
    const buttons = [...this.list.querySelectorAll('button')].filter((one) => !one.hidden);
    const next = buttons.find((one) => [...this.list.children].findIndex((item) => item.contains(one)) >= at);
    (next ?? buttons[0] ?? find('suggest-away', HTMLButtonElement)).focus();
  }

  #drop() {
    this.board.core.call.put_away();
    this.now = null;
    this.box.hidden = true;
    this.board.wake();
  }

  /** The document changed, by an edit, an undo, or another one opened. */
  renew() {
    if (!this.now) return;
    if (this.history !== this.board.history) {
      this.#drop();
      return;
    }
    this.#mark();
  }

  /** Which rows are taken, for the stage shown. */
  #mark() {
    if (this.board.view.stage !== this.stage) return;
    this.rows.forEach((row, i) => {
      const [, take, taken] = /** @type {HTMLElement[]} */ ([...this.list.children[i].children]);
      take.hidden = this.#taken(row);
      taken.hidden = !take.hidden;
    });
    const taken = this.rows.filter((row) => this.#taken(row)).length;
    this.all.disabled = taken === this.rows.length;
    write(find('suggest-part', HTMLElement), taken === 0 || this.all.disabled ? ''
      : `${taken} of ${this.rows.length} taken. The verdict and its figures are of all of it together: what this `
        + 'part alone is worth, Test says, set against the scheme before the edit.');
  }

  /** @param {View} view */
  show(view) {
    if (!this.now) return;
    const here = view.stage === this.stage;
    if (here === this.list.hidden) this.#mark();
    this.list.hidden = !here;
    this.all.hidden = !here;
    this.soundings.show(this.now, here ? view.token[this.board.picked] : null);
    write(find('suggest-elsewhere', HTMLElement), here ? ''
      : `This is for the stage with ${this.now.defenders} in; choose it above to take something.`);
  }
}
