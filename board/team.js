// SPDX-License-Identifier: GPL-3.0-or-later
// The team file behind the program that served this page (docs/serve.md). Only the coach's own page has it.

/** @typedef {import('./server.js').Server} Server */
/**
 * @typedef {{id: number, date: string, opponent: string, field: string}} Game
 * @typedef {{spot: string, fixed: boolean}} PlayerSpot
 * @typedef {{jersey: number, initials?: string, name?: string, spots: PlayerSpot[]}} Player
 * @typedef {{jersey: number, date: string, distance_m: number, seconds: number, clock: string}} Split
 * @typedef {{is: 'text' | 'number' | 'flag' | 'list' | 'object' | 'told', of?: string, least?: number,
 *   most?: number}} Member of what the server takes: its range, or its most bytes or entries; 'told' is given only
 * @typedef {Record<string, Member>} Table
 * @typedef {{mark: string, name: string, full_names: boolean, at_once: number, takes: Record<string, Table>, games: Game[],
 *   revisions: {id: number, scheme: string, note: string}[], players: Player[], splits: Split[],
 *   legs: {jersey: number, words: string}[]}} Known
 *
 * @typedef {{number: number, where: string, before: string, said: string, after: string, what: string,
 *   sure: boolean, first_revision?: number, last_revision?: number}} Place where the file speaks of a player
 * @typedef {{splits: number, quiz_results: number, breaks: number, texts: number, left: number}} Forgotten
 *
 * @typedef {object} Body a break as the server takes and gives it; what is unknown is left out
 * @property {string} id chosen where it was logged
 * @property {number} [number] in the team file
 * @property {string} [time]
 * @property {number | {date: string, opponent: string, field: string}} [game]
 * @property {number} offence
 * @property {number} defence
 * @property {string} outcome
 * @property {number} [seconds]
 * @property {number} [passes]
 * @property {number} [shot_x_m]
 * @property {number} [shot_y_m]
 * @property {string[]} [out]
 * @property {number} [stage]
 * @property {number} [revision]
 * @property {string} [note]
 *
 * @typedef {{id: string, number: number, fresh: boolean, odd?: string}} Kept what became of a break: number 0, it
 *   was taken out before; odd, what is hardly meant in it, a sentence without its stop
 *
 * @typedef {{label: string, words: string}} Row
 * @typedef {{title: string, about: string, modelled: boolean, parts: {title: string, rows?: Row[],
 *   notes?: string[], alt?: string, pictures?: string[]}[]}} Review
 */

export class Team {
  /** @param {Server} server */
  constructor(server) {
    this.server = server;
    /** What the file held when it was last read. @type {Known} */
    this.known = {
      mark: '', name: '', full_names: false, at_once: 1, takes: {}, games: [], revisions: [], players: [], splits: [], legs: [],
    };
  }

  /** Something of this team's file, and of no other's that the program may have open meanwhile.
   * @param {string} method @param {string} what @param {string} [body] */
  #ask(method, what, body) {
    const { mark } = this.known;
    return this.server.ask(method, mark ? `${what}${what.includes('?') ? '&' : '?'}mark=${mark}` : what, body);
  }

  /** Reads all but the breaks; legs are told in metres or yards. @param {boolean} [metres] */
  async read(metres = false) {
    this.known = await (await this.#ask('GET', `team?units=${metres ? 'm' : 'yd'}`)).json();
    return this.known;
  }

  /** Whether the program has another team's file open by now. */
  async gone() {
    return this.read().then(() => false, (error) => error.status === 410);
  }

  /** What the server takes of this, by its own table: a thing it gave goes back without what it only tells.
   * @param {string} name of the table @param {Record<string, any>} body @returns {Record<string, any>} */
  fit(name, body) {
    /** @type {Record<string, any>} */
    const fitting = {};
    for (const [key, { is, of }] of Object.entries(this.known.takes[name])) {
      const value = body[key], whole = (/** @type {any} */ one) =>
        (of && typeof one === 'object' ? this.fit(of, one) : one);
      if (value === undefined || is === 'told') continue;
      fitting[key] = Array.isArray(value) ? value.map(whole) : whole(value);
    }
    return fitting;
  }

  /** @param {string} method @param {string} what @param {string} name of the table @param {Record<string, any>} body */
  #put(method, what, name, body) {
    return this.#ask(method, what, JSON.stringify(this.fit(name, body)));
  }

  /** All breaks. @returns {Promise<Body[]>} */
  async entries() {
    return (await (await this.#ask('GET', 'team/entries')).json()).entries;
  }

  /** Sends breaks; one that is known already stays as it is.
   * @param {Body[]} entries @returns {Promise<Kept[]>} */
  async send(entries) {
    const body = { entries: entries.map((entry) => this.fit('break', entry)) };
    return (await (await this.#ask('POST', 'team/entries', JSON.stringify(body))).json()).entries;
  }

  /** @param {number} number @param {Body} entry @returns {Promise<Kept>} */
  async change(number, entry) {
    return (await (await this.#put('PUT', `team/entries/${number}`, 'break', entry)).json()).entries[0];
  }

  /** @param {number} number */
  async remove(number) {
    await this.#ask('DELETE', `team/entries/${number}`);
  }

  /** Refused with status 409 when it is hardly meant, unless it is to be kept so.
   * @param {Player} player @param {boolean} keep */
  async putPlayer(player, keep) {
    await this.#put('POST', `team/players${keep ? '?odd=keep' : ''}`, 'player', player);
  }

  /** Refused likewise. @param {Split} split @param {boolean} keep
   * @returns {Promise<string>} what became of it, in words */
  async addSplit(split, keep) {
    return (await (await this.#put('POST', `team/splits${keep ? '?odd=keep' : ''}`, 'sprint', split)).text()).trim();
  }

  /** Every place that may speak of a player. @param {{jersey: number, name?: string}} who
   * @returns {Promise<{seen: string, named: boolean, places: Place[]}>} */
  async places(who) {
    return (await this.#put('POST', 'team/places', 'forget', who)).json();
  }

  /** Forgets him and strikes the places with these numbers of the list that was seen.
   * @param {{jersey: number, name?: string, seen: string, places: number, strike: number[]}} how
   * @returns {Promise<Forgotten>} */
  async forget(how) {
    return (await this.#put('POST', 'team/forget', 'forget', how)).json();
  }

  /** What was seen, at once. @param {number} width of the pictures, points @returns {Promise<Review>} */
  async review(width) {
    return (await this.#ask('GET', `team/review?as=page&width=${width}`)).json();
  }

  /** The same with the model beside it, which takes seconds.
   * @param {number} width @param {import('./server.js').Watch} watch @returns {Promise<Review>} */
  async modelled(width, watch) {
    return JSON.parse(await (await this.server.run('review', '', { width }, watch)).text());
  }
}
