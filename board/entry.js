// SPDX-License-Identifier: GPL-3.0-or-later
// The core's side of logging: a break goes in, its words and refusals come out (web/log.h).
import { enumeration } from './abi.js';

/** @typedef {import('./core.js').Core} Core */
/** @typedef {import('./team.js').Body} Body */

// web/log.h
const Field = enumeration('log_field', 'offence', 'defence', 'outcome', 'seconds', 'passes', 'shotX', 'shotY');
const Outcome = enumeration('outcome', 'id', 'words', 'shot');

const yard = 0.9144; // m

export class Entry {
  /** @param {Core} core */
  constructor(core) {
    this.core = core;
    /** @type {{id: string, words: string, shot: boolean}[]} */
    this.outcomes = [];
    for (let i = 0; ; i++) {
      const id = this.#text(core.call.log_outcome(i, Outcome.id));
      if (id === '') break;
      this.outcomes.push({
        id, words: this.#text(core.call.log_outcome(i, Outcome.words)), shot: this.#text(core.call.log_outcome(i, Outcome.shot)) !== '',
      });
    }
  }

  /** @param {number} address */
  #text(address) { return this.core.textAt(address); }

  /** Metres in the unit the page shows. */
  get unit() { return this.core.view().metres ? 1 : yard; }

  /** Puts a whole break in. @param {Partial<Body>} body */
  put(body) {
    const { call } = this.core, known = (/** @type {number | undefined} */ n) => n ?? NaN;
    call.log_clear();
    call.log_set(Field.offence, known(body.offence));
    call.log_set(Field.defence, known(body.defence));
    call.log_set(Field.outcome, this.outcomes.findIndex((one) => one.id === body.outcome));
    call.log_set(Field.seconds, known(body.seconds));
    call.log_set(Field.passes, known(body.passes));
    call.log_set(Field.shotX, known(body.shot_x_m));
    call.log_set(Field.shotY, known(body.shot_y_m));
    call.log_note(this.core.write(body.note ?? ''));
    for (const who of body.out ?? []) {
      if (!call.log_out(this.core.write(who))) return `"${who}" is no spot and no jersey number, or there are too many`;
    }
    return this.#text(call.log_refused());
  }

  /** A break in words: "6v4, goal, 4.2 s". @param {Body} body */
  say(body) {
    this.put(body);
    return this.#text(this.core.call.log_say());
  }

  /** The chart into the core's ink. @param {Partial<Body>} body @param {number} width points
   * @param {number} height */
  draw(body, width, height) {
    this.put(body);
    this.core.call.log_draw(width, height);
  }

  /** The place of a point on the chart as it was last drawn, metres. @param {number} x @param {number} y */
  place(x, y) {
    const { call } = this.core;
    call.log_shot(x, y);
    return { shot_x_m: call.log_figure(Field.shotX), shot_y_m: call.log_figure(Field.shotY) };
  }
}

/** An id for a break, never made twice. */
export function newId() {
  const bytes = crypto.getRandomValues(new Uint8Array(15));
  return `b${[...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;
}
