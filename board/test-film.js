// SPDX-License-Identifier: GPL-3.0-or-later
// An answer as a film: a still of all of it first, then any moment by the scrubber, by steps, or played
// when asked. With reduced motion, playing steps from still to still.
import { find, write } from './dom.js';
import { show } from './easel.js';
import { Figure, Word } from './tester.js';

/** @typedef {import('./board.js').Board} Board */
/** @typedef {import('./tester.js').Tester} Tester */

const still = 900;    // ms each step stands with reduced motion
const settled = 500;  // ms after the last move until it is spoken

export class Film {
  /** @param {Board} board @param {Tester} tester */
  constructor(board, tester) {
    this.board = board;
    this.tester = tester;
    this.canvas = find('test-film', HTMLCanvasElement);
    this.key = find('test-film-key', HTMLCanvasElement);
    this.scrub = find('test-scrub', HTMLInputElement);
    this.play = find('test-play', HTMLButtonElement);
    this.whole = find('test-whole', HTMLButtonElement);
    this.speed = find('test-speed', HTMLSelectElement);
    this.words = find('test-film-words', HTMLParagraphElement);
    this.late = find('test-film-late', HTMLParagraphElement);
    this.open = false;
    this.all = true; // the still of the whole is shown
    this.at = 0;     // seconds into the break
    /** Seconds at which the steps begin, and the end. @type {number[]} */
    this.marks = [];
    this.frame = 0;
    this.timer = 0;
    this.speaking = 0;
    this.moved = () => {};
    this.#wire();
  }

  #wire() {
    this.scrub.addEventListener('input', () => {
      this.pause();
      this.go(this.scrub.valueAsNumber);
    });
    this.play.addEventListener('click', () => (this.playing ? this.pause() : this.start()));
    this.whole.addEventListener('click', () => {
      this.pause();
      this.showAll();
      this.board.say(`All of it. ${this.words.textContent}`);
    });
    find('test-previous', HTMLButtonElement).addEventListener('click', () => this.step(-1));
    find('test-next', HTMLButtonElement).addEventListener('click', () => this.step(1));
  }

  get playing() { return this.frame !== 0 || this.timer !== 0; }
  get begin() { return this.marks[0] ?? 0; }
  get end() { return this.marks.at(-1) ?? 0; }

  /** Opens the answer (-1) or a weak rotation of a side. @param {number} side @param {number} number */
  load(side, number) {
    this.pause();
    this.open = this.tester.core.call.test_film(side, number) === 0;
    this.marks = this.open ? this.tester.figures(Figure.filmStep) : [];
    this.scrub.min = this.begin.toFixed(1);
    this.scrub.max = (Math.ceil(this.end * 10 - 1e-9) / 10).toFixed(1);
    // A rotation is looked at where it ends: that is when the men are late.
    if (number < 0) this.showAll();
    else this.go(this.end);
    return this.open;
  }

  showAll() {
    this.all = true;
    this.at = this.begin;
    this.#show();
  }

  /** @param {number} at */
  go(at) {
    this.all = false;
    this.at = Math.min(Math.max(at, this.begin), this.end);
    this.#show();
    this.#speakSoon();
  }

  /** To the beginning of the step before or after. @param {number} by */
  step(by) {
    this.pause();
    const marks = this.marks;
    const next = by > 0 ? marks.find((mark) => mark > this.at + 0.01) : marks.filter((mark) => mark < this.at - 0.01).at(-1);
    this.go(this.all ? (by > 0 ? this.begin : this.end) : next ?? this.at);
  }

  start() {
    if (!this.open) return;
    if (this.all || this.at >= this.end - 0.01) this.go(this.begin);
    if (this.board.calm.matches) this.#stepOn();
    else this.#run(performance.now());
    this.#tellPlaying();
  }

  pause() {
    cancelAnimationFrame(this.frame);
    clearTimeout(this.timer);
    this.frame = this.timer = 0;
    this.#tellPlaying();
  }

  #tellPlaying() {
    write(this.play, this.playing ? 'Pause' : 'Play');
  }

  /** @param {number} last */
  #run(last) {
    this.frame = requestAnimationFrame((now) => {
      this.go(this.at + (now - last) / 1000 * Number(this.speed.value));
      if (this.at < this.end) this.#run(now);
      else this.pause();
    });
  }

  #stepOn() {
    this.timer = setTimeout(() => {
      this.go(this.marks.find((mark) => mark > this.at + 0.01) ?? this.end);
      if (this.at < this.end) this.#stepOn();
      else this.pause();
    }, still / Number(this.speed.value));
  }

  /** The step that is under way, as an index. */
  get now() {
    if (this.all) return -1;
    const after = this.marks.findIndex((mark) => mark > this.at + 1e-6);
    return after < 0 ? this.marks.length - 2 : Math.max(after - 1, 0);
  }

  #show() {
    const { core } = this.tester;
    const moment = this.open ? core.textAt(core.call.test_moment(this.at)) : '';
    const late = this.open ? core.textAt(core.call.test_lateness(this.at)) : '';
    const text = this.all ? 'The numbers are the order of the steps; the men stand where they are when the shot leaves.' : moment;
    write(this.words, text);
    write(this.late, this.all ? '' : late);
    const value = this.at >= this.end ? this.scrub.max : this.at.toFixed(1);
    if (this.scrub.value !== value) this.scrub.value = value;
    this.scrub.setAttribute('aria-valuetext', moment);
    this.scrub.disabled = !this.open;
    this.whole.setAttribute('aria-pressed', String(this.all));
    this.canvas.setAttribute('aria-label', `${this.tester.say(Word.film)}. ${text} ${this.all ? '' : late}`);
    this.draw();
    this.moved();
  }

  /** The picture into the core's ink; CSS px in a point, 0 when there is none. */
  ink() {
    const width = /** @type {HTMLElement} */ (this.canvas.parentElement).clientWidth;
    if (!this.open || width === 0) return 0;
    const scale = Math.max(this.board.look.scale, Math.min(1.6, width / 440));
    const height = Math.max(280, Math.min(innerHeight * 0.72, 620));
    this.tester.core.call.test_draw_film(this.all ? -1 : this.at, width / scale, height / scale);
    return scale;
  }

  /** The picture, in the look and at the width of now. */
  draw() {
    const scale = this.ink();
    if (scale === 0) return;
    show(this.board, this.canvas, scale);
    const { clientWidth } = /** @type {HTMLElement} */ (this.canvas.parentElement);
    const { scale: least } = this.board.look;
    this.tester.core.call.test_draw_key(Math.min(clientWidth, 900) / least);
    show(this.board, this.key, least);
  }

  #speakSoon() {
    clearTimeout(this.speaking);
    this.speaking = setTimeout(() => {
      // The scrubber speaks its own value; the rest is said when it stands still.
      if (!this.playing && document.activeElement !== this.scrub) {
        this.board.say(`${this.words.textContent} ${this.late.textContent}`);
      }
    }, settled);
  }
}
