// SPDX-License-Identifier: GPL-3.0-or-later
// The board: one frame loop, one document with its history, and the words that are spoken.
import { List, Mode } from './core.js';
import { Field } from './field.js';
import { Full } from './full.js';
import { History } from './history.js';
import { Modes } from './modes.js';
import { take } from './feed.js';
import { wear } from './look.js';
import { Words } from './words.js';

/** @typedef {import('./core.js').Core} Core */

const settled = 500;  // ms after the last change until it is spoken
const reading = 100;  // ms between two states of words and buttons while the unit runs
const glancing = 400; // the same while a finger drags
const pause = 700;    // ms a still picture of who is late stands when motion is reduced

export class Board {
  /** @param {Core} core */
  constructor(core) {
    this.core = core;
    this.roles = core.names(List.roles);
    this.theme = 0;
    this.look = wear(core, 0);
    this.picked = 0;
    this.view = core.view();
    this.calm = matchMedia('(prefers-reduced-motion: reduce)');
    this.history = new History('');
    this.status = /** @type {HTMLElement} */ (document.getElementById('status'));
    this.notice = /** @type {HTMLElement} */ (document.getElementById('notice'));
    this.asked = false;
    this.last = 0;
    this.written = 0; // when the words beside the field were
    this.late = ''; // who was last after the last move
    this.timers = { speak: 0, cut: 0 };
    this.changed = () => {};
    this.field = new Field(this, /** @type {HTMLElement} */ (document.getElementById('field')));
    this.full = new Full(this);
    this.words = new Words(this);
    this.modes = new Modes(this);
  }

  /** Opens a document. True when it was taken. @param {string} text */
  open(text) {
    const refused = take(this.core, text, false);
    this.warn(refused && `Not opened: ${refused}.`);
    if (refused) return false;
    this.history = new History(new TextDecoder().decode(this.core.save()));
    this.picked = 0;
    this.#renewed();
    return true;
  }

  /** After an edit: the document is written and read again, so that what is on the board is what a
   * file of it would say. */
  commit() {
    const text = new TextDecoder().decode(this.core.save());
    if (text === this.history.text) return;
    const refused = take(this.core, text, true);
    if (refused) {
      take(this.core, this.history.text, true);
      this.warn(`Not done: ${refused}.`);
    } else {
      this.history.push(text);
      this.warn(null);
    }
    this.#renewed();
  }

  /** Another text of the document that is open, as one edit. True when it was taken. @param {string} text */
  adopt(text) {
    const refused = take(this.core, text, true);
    this.warn(refused && `Not taken up: ${refused}.`);
    if (refused) return false;
    this.history.push(new TextDecoder().decode(this.core.save()));
    this.#renewed();
    return true;
  }

  /** Forgets what a broken-off edit did. */
  restore() {
    take(this.core, this.history.text, true);
    this.wake();
  }

  /** @param {number} by */
  step(by) {
    if (by < 0 && this.core.call.call_back(-1)) { // what was moved for now is the last thing done
      this.field.bubble.close();
      this.done();
      this.say('Put back.');
      return;
    }
    const text = this.history.step(by);
    if (text === null) return;
    take(this.core, text, true);
    this.warn(null);
    this.#renewed();
    this.say(by < 0 ? 'Undone.' : 'Done again.');
  }

  #renewed() {
    this.refresh();
    this.written = 0; // what was done or undone is told at once
    this.words.renew();
    this.modes.now?.renew?.();
    this.changed();
    this.wake();
  }

  /** Words and places anew from the core. */
  refresh() {
    this.core.call.say();
    this.view = this.core.view();
  }

  /** The ball was put somewhere by a finger or from the list of places. */
  placed() {
    this.field.touched = true; // he knows how
    this.done();
    this.modes.now?.placed?.();
  }

  /** A move is finished. */
  done() {
    this.modes.now?.touched?.();
    this.refresh();
    this.written = 0; // what was done is told at once
    this.late = this.view.last;
    if (this.view.mode !== Mode.play) this.commit();
    if (this.calm.matches) {
      clearTimeout(this.timers.cut);
      this.timers.cut = setTimeout(() => {
        this.core.call.settle();
        this.wake();
      }, pause);
    }
    this.wake();
  }

  /** @param {number} token */
  pick(token) {
    if (this.picked === token) return;
    this.picked = token;
    this.wake();
  }

  /** Asks for one frame. */
  wake() {
    if (this.asked) return;
    this.asked = true;
    if (this.last === 0) this.last = performance.now();
    requestAnimationFrame((now) => this.#frame(now));
  }

  /** @param {number} now */
  #frame(now) {
    this.asked = false;
    if (this.history.text === '') return; // nothing is open yet
    const seconds = Math.max(0, now - this.last) / 1000;
    this.field.apply();
    const mode = this.modes.now, own = mode?.run?.(seconds);
    if (own === undefined && !this.calm.matches) this.core.call.run(seconds);
    this.core.call.say();
    if (mode?.alone) this.view = this.core.view();
    else this.#picture(now);
    const { view } = this;
    mode?.show?.(view);
    this.full.show(view);
    const busy = (view.running !== 0 && !this.calm.matches) || this.field.drag?.moved;
    if (own ?? busy) {
      this.last = now;
      this.wake();
      return;
    }
    this.last = 0;
    this.words.show(view);
    this.#speakSoon();
  }

  /** The field; the words beside it and the buttons over it no more often than they can be read.
   * @param {number} now */
  #picture(now) {
    const view = this.view = this.field.paint();
    this.picked = Math.min(this.picked, view.token_count - 1);
    const drags = this.field.drag?.moved ?? false;
    const due = now - this.written >= (drags ? glancing : reading) || !(drags || view.running !== 0);
    this.field.show(view, due);
    this.field.showKey(view);
    if (!due) return;
    this.written = now;
    this.words.show(view);
  }

  #speakSoon() {
    clearTimeout(this.timers.speak);
    if (this.modes.now?.alone || this.field.bubble.open) return; // no caption of a field put away, none over a question
    this.timers.speak = setTimeout(() => {
      this.say(this.late ? `${this.view.caption} ${this.late}` : this.view.caption);
    }, settled);
  }

  /** Into the live region. @param {string} words */
  say(words) {
    clearTimeout(this.timers.speak);
    if (this.status.textContent !== words) this.status.textContent = words;
  }

  /** A refusal in plain sight, or none. @param {string | null} words */
  warn(words) {
    this.notice.hidden = !words;
    this.notice.textContent = words ?? '';
  }

  /** @param {number} theme */
  dress(theme) {
    this.theme = theme;
    this.look = wear(this.core, theme);
    this.field.resized(); // with other letters
  }
}
