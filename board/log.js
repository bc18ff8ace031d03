// SPDX-License-Identifier: GPL-3.0-or-later
// The mode Log: breaks at the sideline, at most three taps each. What is done is on this browser's disk at
// once and in the team file as soon as it can be.
import { Entry, newId } from './entry.js';
import { LogForm } from './log-form.js';
import { LogList } from './log-list.js';
import { Shelf } from './log-shelf.js';
import { Sync } from './log-sync.js';
import { find, write } from './dom.js';
import { tellBoxes, tooLong } from './limits.js';

/** @typedef {import('./board.js').Board} Board */
/** @typedef {import('./team.js').Team} Team */
/** @typedef {import('./team.js').Body} Body */
/** @typedef {{date: string, opponent: string, field: string}} Game */

/** What tells one game from another. @param {Game} game */
const keyOf = (game) => `${game.date} ${game.opponent}`;

/** What is said of breaks on hold. @param {number} missing @param {number} of @param {boolean} kept on the disk */
const onHold = (missing, of, kept) => `${missing} of ${of} not yet in the team file; `
  + (kept ? 'kept in this browser.' : 'held by this page alone.');

/** Today where this machine is. */
export function today() {
  const now = new Date();
  return new Date(now.getTime() - 60000 * now.getTimezoneOffset()).toISOString().slice(0, 10);
}

export class Log {
  id = 'log';
  name = 'Log';
  alone = true;
  looks = true;

  /** @param {Board} board @param {Team} team */
  constructor(board, team) {
    this.board = board;
    this.team = team;
    this.entry = new Entry(board.core);
    /** Every break there is, in order, by its id. @type {Map<string, Body>} */
    this.all = new Map();
    /** Numbers in the team file, by id. @type {Map<string, number>} */
    this.numbers = new Map();
    /** What is said of breaks that the file took from this page, though they are hardly meant so, by id. @type {Map<string, string>} */
    this.odd = new Map();
    /** Games, the newest first. @type {Game[]} */
    this.games = [];
    /** What can be taken back, newest last. @type {(() => Promise<string>)[]} */
    this.past = [];
    this.why = ''; // the file cannot be told more just now
    this.kept = true; // what waits, on this browser's disk
    this.shelf = new Shelf(team.known.mark, (words) => this.#complain(words));
    this.sync = new Sync(team, this.shelf, (why) => this.#told(why), (...told) => this.#arrived(...told));
    this.form = new LogForm(board, this.entry, this);
    this.list = new LogList(this);
    find('log-state', HTMLDivElement).dataset.room = onHold(99, 99, false);
    tellBoxes(find('mode-log', HTMLElement), team.known.takes);
    this.game = find('log-game', HTMLSelectElement);
    this.game.addEventListener('change', () => this.#chosen());
    find('log-game-form', HTMLFormElement).addEventListener('submit', (event) => {
      event.preventDefault();
      this.#newGame();
    });
    find('log-date', HTMLInputElement).value = today();
    find('log-send', HTMLButtonElement).addEventListener('click', () => this.sync.retry());
    find('log-undo', HTMLButtonElement).addEventListener('click', () => this.undo());
  }

  /** What the file has, and what this browser still holds. */
  async begin() {
    this.games = [...this.team.known.games].reverse();
    for (const body of await this.team.entries()) this.#file(body);
    await this.sync.take();
    for (const { body, need } of this.sync.held.values()) {
      if (need === 'remove') this.all.delete(body.id);
      else this.all.set(body.id, body);
      if (typeof body.game === 'object') this.#addGame(body.game);
    }
    this.#offerGames();
    this.sync.now();
  }

  /** @param {Body} body as the file gives it */
  #file(body) {
    const game = this.team.known.games.find((one) => one.id === body.game);
    const { number, ...rest } = body;
    this.all.set(body.id, game ? { ...rest, game: { date: game.date, opponent: game.opponent, field: game.field } } : rest);
    this.numbers.set(body.id, number ?? 0);
  }

  enter() {
    this.form.renew();
    this.refresh();
  }

  renew() {
    this.form.renew();
  }

  show() {
    this.form.draw();
  }

  /** @param {Game} game */
  #addGame(game) {
    if (this.games.some((one) => keyOf(one) === keyOf(game))) return;
    this.games.unshift(game);
    this.games.sort((a, b) => (a.date < b.date ? 1 : a.date > b.date ? -1 : 0));
  }

  #offerGames(chosen = '') {
    const before = chosen || this.game.value;
    this.game.replaceChildren(...this.games.map((game) =>
      new Option(`${game.date}, ${game.opponent}`, keyOf(game))), new Option('no game (practice)', ''));
    this.game.value = this.games.some((one) => keyOf(one) === before) ? before
      : this.games.length > 0 ? keyOf(this.games[0]) : '';
  }

  #newGame() {
    const value = (/** @type {string} */ id) => find(id, HTMLInputElement).value.trim();
    const game = { date: value('log-date'), opponent: value('log-opponent'), field: value('log-field') };
    if (!game.date || !game.opponent) return;
    const long = tooLong(find('log-game-form', HTMLFormElement), this.team.known.takes);
    if (long) {
      this.#say(long.words);
      long.box.focus();
      return;
    }
    this.#addGame(game);
    this.#offerGames(keyOf(game));
    find('log-new-game', HTMLDetailsElement).open = false;
    find('log-opponent', HTMLInputElement).value = '';
    this.#chosen();
    find('log-title', HTMLElement).focus();
  }

  #chosen() {
    this.form.clear();
    this.refresh();
    this.board.say(`Logging ${this.game.selectedOptions[0]?.text ?? ''}.`);
  }

  /** Breaks of the game that is chosen, in order. */
  ofGame() {
    return [...this.all.values()].filter((body) =>
      (typeof body.game === 'object' ? keyOf(body.game) : '') === this.game.value);
  }

  /** The form is done: a new break, or an old one put right. @param {Partial<Body>} given @param {string} id
   *   "" for a new one */
  async done(given, id) {
    const old = this.all.get(id), game = this.games.find((one) => keyOf(one) === this.game.value);
    const revision = this.team.known.revisions.at(-1)?.id;
    /** @type {Body} */
    const body = old ? { ...this.#bare(old), ...given } : /** @type {Body} */ ({
      id: newId(), time: new Date().toISOString().replace(/\.\d+Z$/, 'Z'),
      ...(game ? { game } : {}), ...(revision ? { revision } : {}), ...given,
    });
    await this.#keep(body, old ? 'change' : 'send');
    this.past.push(() => (old ? this.#keep(old, 'change').then(() => 'as it was') : this.#remove(body).then(() => 'taken out')));
    const { offence, defence, outcome } = body; // the rest stands in the list
    this.#say(`${old ? 'Put right' : 'Logged'}: ${this.entry.say({ id: '', offence, defence, outcome })}.`);
  }

  /** An old break without what the form can leave out. @param {Body} old @returns {Body} */
  #bare(old) {
    const { seconds, passes, shot_x_m, shot_y_m, out, note, ...rest } = old;
    return rest;
  }

  /** @param {Body} body */
  async takeOut(body) {
    await this.#remove(body);
    // The file remembers what was taken out, so it comes back as another.
    this.past.push(() => this.#keep({ ...body, id: newId() }, 'send').then(() => 'there again'));
    this.#say(`Taken out: ${this.entry.say(body)}.`);
  }

  /** @param {Body} body @param {'send' | 'change'} need */
  async #keep(body, need) {
    this.all.set(body.id, body);
    await this.sync.add(body, need, this.numbers.get(body.id) ?? 0);
    this.refresh();
  }

  /** @param {Body} body */
  async #remove(body) {
    this.all.delete(body.id);
    await this.sync.add(body, 'remove', this.numbers.get(body.id) ?? 0);
    this.refresh();
  }

  /** Takes back what was done last; after a reload, the newest break of this game. */
  async undo() {
    const last = this.past.pop(), newest = this.ofGame().at(-1);
    if (last) {
      this.#say(`Undone: ${await last()}.`);
    } else if (newest) {
      await this.takeOut(newest);
    }
    this.form.clear();
    this.refresh();
  }

  /** @param {string} words */
  #say(words) {
    write(find('log-now', HTMLParagraphElement), words);
    this.board.say(words);
  }

  /** Nothing can be kept on the disk. @param {string} words */
  #complain(words) {
    this.kept = false;
    write(find('log-note-line', HTMLParagraphElement), words);
    this.refresh();
  }

  /** @param {string} why */
  #told(why) {
    this.why = why;
    this.refresh();
  }

  /** @param {string} id @param {number} number @param {string} odd */
  #arrived(id, number, odd) {
    if (number > 0) this.numbers.set(id, number);
    else this.all.delete(id);
    this.odd.delete(id);
    if (!odd) return;
    const words = `Kept, but is it right? ${odd[0].toUpperCase()}${odd.slice(1)}.`;
    this.odd.set(id, words);
    this.board.say(words);
  }

  /** The list and the line about the file, as they truly are. */
  refresh() {
    if (document.documentElement.dataset.mode !== this.id) return;
    const here = this.ofGame(), waiting = this.sync.held;
    const missing = here.filter((body) => waiting.has(body.id)).length;
    const rest = waiting.size - missing;
    const of = here.length === 1 ? '1 break' : `${here.length} breaks`;
    write(find('log-words', HTMLParagraphElement), missing > 0 ? onHold(missing, here.length, this.kept)
      : here.length > 0 ? `${of}, all in the team file.` : 'Nothing to keep yet.');
    const others = rest > 0 ? `${rest}${missing > 0 ? ' more' : ''} waiting: other games, or taken out. ` : '';
    const refused = here.some((body) => waiting.get(body.id)?.refused);
    const why = this.why || (refused ? 'What is marked below was not taken: put it right, or take it out.' : '');
    find('log-waits', HTMLDivElement).hidden = waiting.size === 0 || `${others}${why}` === '';
    write(find('log-why', HTMLParagraphElement), `${others}${why}`);
    find('log-undo', HTMLButtonElement).disabled = this.past.length === 0 && here.length === 0;
    this.list.show(here);
  }
}
