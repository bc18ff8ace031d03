// SPDX-License-Identifier: GPL-3.0-or-later
// A lesson played, stepped through and scrubbed. It starts only when told to.
import { find, write } from './dom.js';

/** @typedef {import('./lessons.js').Lessons} Lessons */

const hair = 0.01; // s: a stop this near counts as reached

export class Player {
  /** @param {Lessons} lessons */
  constructor(lessons) {
    this.lessons = lessons;
    this.board = lessons.board;
    this.at = 0;
    this.playing = false;
    this.play = find('lesson-play', HTMLButtonElement);
    this.slow = find('lesson-slow', HTMLInputElement);
    this.time = find('lesson-time', HTMLInputElement);
    this.words = find('lesson-words', HTMLParagraphElement);
    this.play.addEventListener('click', () => this.toggle());
    find('lesson-back', HTMLButtonElement).addEventListener('click', () => this.step(-1));
    find('lesson-on', HTMLButtonElement).addEventListener('click', () => this.step(1));
    this.time.addEventListener('input', () => {
      this.halt();
      this.#show(this.time.valueAsNumber);
    });
  }

  rewind() {
    this.halt();
    this.at = 0;
  }

  halt() {
    if (!this.playing) return;
    this.playing = false;
    this.#label();
  }

  #label() {
    write(this.play, this.playing ? 'Pause' : 'Play');
  }

  /** Plays, or pauses. */
  toggle() {
    const { view } = this.lessons;
    this.playing = !this.playing && view.lesson >= 0;
    if (this.playing && this.at >= view.seconds - hair) this.at = 0;
    this.#label();
    if (this.playing) this.board.field.reveal();
    this.board.field.touched = true;
    this.board.wake();
  }

  /** To the next stop, or back to this one's or the last one's beginning. @param {number} by */
  step(by) {
    const { stops } = this.lessons;
    this.halt();
    const times = stops.map((stop) => stop.come);
    const to = by > 0 ? times.find((time) => time > this.at + hair)
      : times.filter((time) => time < this.at - hair).pop();
    const stop = to === undefined ? (by > 0 ? stops.length - 1 : 0) : times.indexOf(to);
    this.at = times[stop];
    // Stepping shows the unit where the lesson has it once the pause is over: standing, most often.
    this.#show(times[stop], times[stop] + stops[stop].pause - hair);
  }

  /** The time of what was chosen by other means. @param {number} at */
  follow(at) {
    this.at = at;
    this.#words();
  }

  /** @param {number} at @param {number} [moment] that is shown for it */
  #show(at, moment = at) {
    this.at = at;
    this.board.field.touched = true; // the ball needs no inviting word any more
    this.lessons.call.lesson_at(moment);
    this.board.wake();
  }

  /** @param {number} seconds @returns {boolean | undefined} another frame is wanted; undefined: nothing of
   *   the lesson is shown, the unit runs by itself */
  run(seconds) {
    const { view, call, stops } = this.lessons;
    if (this.board.field.drag?.moved && !this.board.field.drag.pans) this.lessons.touched();
    if (!this.playing) return view.playing ? Boolean(this.board.field.drag?.moved) : undefined;
    this.at += Math.min(seconds, 0.25) * (this.slow.checked ? 0.5 : 1);
    if (this.at >= view.seconds) {
      this.at = view.seconds;
      this.halt();
    }
    if (this.board.calm.matches) { // cuts from stop to stop, each as it stands at its end
      const stop = stops.filter((one) => one.come <= this.at + hair).pop() ?? stops[0];
      call.lesson_at(stop.come + stop.pause - hair);
    } else {
      call.lesson_at(this.at);
    }
    return this.playing;
  }

  renew() {
    const { view } = this.lessons;
    this.at = Math.min(this.at, view.seconds);
    this.time.max = String(Math.max(view.seconds, 0.1));
    this.#words();
  }

  /** After a frame. */
  show() { this.#words(); }

  #words() {
    const { view, stops } = this.lessons, stop = stops[view.stop];
    if (document.activeElement !== this.time || this.playing) this.time.value = String(this.at);
    const now = view.playing ? view.now
      : `${this.at.toFixed(1)} of ${view.seconds.toFixed(1)} seconds${stop ? `, ball ${stop.place}` : ''}`;
    if (this.time.getAttribute('aria-valuetext') !== now) this.time.setAttribute('aria-valuetext', now);
    write(find('lesson-now', HTMLParagraphElement), now);
    const caption = (view.playing ? view.caption : stop?.caption) ?? '';
    write(this.words, caption);
    this.words.classList.toggle('made', stop?.made !== 0); // then it stands beside the field already
  }
}
