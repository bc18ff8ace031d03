// SPDX-License-Identifier: GPL-3.0-or-later
// The caller on the field: the ball's next place in letters that are read across it, at a set beat, and
// spoken where the browser can.
import { find, write } from './dom.js';

/** @typedef {import('./lessons.js').Lessons} Lessons */

export class Caller {
  /** @param {Lessons} lessons */
  constructor(lessons) {
    this.lessons = lessons;
    this.pane = find('caller', HTMLDialogElement);
    this.spot = find('caller-spot', HTMLParagraphElement);
    this.beat = find('caller-beat', HTMLInputElement);
    this.speak = find('caller-speak', HTMLInputElement);
    this.shuffle = find('caller-shuffle', HTMLInputElement);
    this.seed = find('caller-seed', HTMLInputElement);
    this.hold = find('caller-hold', HTMLButtonElement);
    this.timer = 0;
    /** @type {{release: () => Promise<void>} | null} */
    this.awake = null;
    this.voices = 'speechSynthesis' in globalThis ? speechSynthesis : null;
    /** @type {HTMLElement} */ (this.speak.parentElement).hidden = !this.voices;
    this.voices?.addEventListener('voiceschanged', () => this.#offerVoice());
    this.#offerVoice();
    find('caller-open', HTMLButtonElement).addEventListener('click', () => this.#start());
    find('caller-stop', HTMLButtonElement).addEventListener('click', () => this.pane.close());
    this.hold.addEventListener('click', () => this.#toggle());
    find('caller-next', HTMLButtonElement).addEventListener('click', () => this.#next());
    this.pane.addEventListener('close', () => this.#stop());
    this.shuffle.addEventListener('change', () => this.#offerSeed());
    addEventListener('resize', () => this.#fit());
    document.addEventListener('visibilitychange', () => {
      if (!document.hidden && this.pane.open) this.#keepAwake();
    });
    this.#offerSeed();
  }

  /** Some browsers speak in principle and have no voice to do it with; some find theirs late. */
  #offerVoice() {
    const none = this.voices?.getVoices().length === 0;
    this.speak.disabled = none;
    find('caller-voiceless', HTMLParagraphElement).hidden = !none;
  }

  #offerSeed() {
    /** @type {HTMLElement} */ (this.seed.parentElement).hidden = !this.shuffle.checked;
  }

  /** Seconds from one call to the next. */
  get seconds() {
    return Math.min(60, Math.max(1, this.beat.valueAsNumber || 6));
  }

  #start() {
    const { call } = this.lessons;
    this.beat.value = String(this.seconds);
    this.lessons.player.halt();
    call.lesson_record(0);
    call.lesson_call(this.shuffle.checked ? 1 : 0, this.seed.valueAsNumber || 0);
    this.pane.showModal();
    this.#keepAwake();
    this.#next();
  }

  #next() {
    const { lessons } = this;
    lessons.call.lesson_next();
    lessons.show();
    write(this.spot, lessons.view.spot);
    write(find('caller-call', HTMLParagraphElement), lessons.view.call ? `Call: ${lessons.view.call}` : '');
    write(find('caller-about', HTMLParagraphElement), `${lessons.view.name}. A place every ${this.seconds} s`
      + `${this.shuffle.checked ? `, shuffled (seed ${this.seed.valueAsNumber || 0})` : ', in order'}.`);
    this.#fit();
    this.#say(lessons.view.spot);
    this.#wait(true);
  }

  /** @param {boolean} go */
  #wait(go) {
    clearTimeout(this.timer);
    this.timer = go ? setTimeout(() => this.#next(), 1000 * this.seconds) : 0;
    write(this.hold, go ? 'Pause' : 'Go on');
  }

  #toggle() {
    this.#wait(this.timer === 0);
  }

  /** @param {string} words */
  #say(words) {
    if (!this.speak.checked || this.speak.disabled || !this.voices) return;
    this.voices.cancel();
    this.voices.speak(new SpeechSynthesisUtterance(words));
  }

  /** The letters as large as the longest word and the height let them be. */
  #fit() {
    if (!this.pane.open) return;
    const box = this.spot.getBoundingClientRect();
    let low = 24, high = 600;
    while (high - low > 2) {
      const size = (low + high) / 2;
      this.spot.style.fontSize = `${size}px`;
      const fits = this.spot.scrollWidth <= Math.ceil(box.width) && this.spot.scrollHeight <= Math.ceil(box.height);
      if (fits) low = size; else high = size;
    }
    this.spot.style.fontSize = `${low}px`;
  }

  async #keepAwake() {
    const line = find('caller-awake', HTMLParagraphElement);
    try {
      this.awake = await /** @type {any} */ (navigator).wakeLock.request('screen');
      write(line, 'The screen stays awake.');
      if (!this.pane.open) this.#letSleep();
    } catch {
      write(line, 'This page cannot keep the screen awake here: set the screen\'s time-out longer.');
    }
  }

  #letSleep() {
    this.awake?.release().catch(() => {});
    this.awake = null;
  }

  #stop() {
    clearTimeout(this.timer);
    this.timer = 0;
    this.voices?.cancel();
    this.#letSleep();
    this.lessons.refresh();
    this.lessons.board.done();
  }
}
