// SPDX-License-Identifier: GPL-3.0-or-later
// The mode Lessons: a walk of the ball, built by putting it where it goes, and what can be done with it.
import { Caller } from './caller.js';
import { Player } from './player.js';
import { find, offer, write } from './dom.js';

/** @typedef {import('./board.js').Board} Board */

/** What is read of web/lesson.h, as examples. */
const stop = { made: 0, pause: 0, come: 0, place: '', caption: '' };
const lessons = {
  lesson: 0, stop: 0, stop_count: 0, recording: 0, playing: 0, seconds: 0, at: 0, name: '', about: '',
  now: '', caption: '', refused: '', spot: '', call: '',
};
/** @typedef {typeof stop} Stop */
/** @typedef {typeof lessons} View */

export class Lessons {
  id = 'lessons';
  name = 'Lessons';

  /** @param {Board} board */
  constructor(board) {
    this.board = board;
    this.call = board.core.call;
    const { memory } = board.core;
    this.reads = { lessons: memory.reader('lessons', lessons), stops: memory.reader('stops', { stops: [stop] }) };
    this.view = this.#read();
    /** @type {Stop[]} */
    this.stops = [];
    this.choice = find('lesson', HTMLSelectElement);
    this.title = find('lesson-name', HTMLInputElement);
    this.record = find('lesson-record', HTMLInputElement);
    this.list = find('stops', HTMLOListElement);
    this.pause = find('stop-pause', HTMLInputElement);
    this.caption = find('stop-caption', HTMLTextAreaElement);
    this.player = new Player(this);
    this.caller = new Caller(this);
    this.#wire();
  }

  #wire() {
    const { call } = this;
    /** @param {string} id @param {() => void} act */
    const press = (id, act) => find(id, HTMLButtonElement).addEventListener('click', act);
    this.choice.addEventListener('change', () => {
      call.lesson_choose(this.choice.selectedIndex);
      this.player.rewind();
      this.refresh();
    });
    press('lesson-new', () => {
      if (this.edit(call.lesson_new())) this.board.say('A new lesson, from where the ball is. Press Record, then put the ball where it goes next.');
    });
    press('lesson-delete', () => this.edit(call.lesson_delete()));
    this.title.addEventListener('change', () => {
      this.edit(call.lesson_rename(this.#give(this.title.value.trim())));
    });
    this.record.addEventListener('change', () => {
      call.lesson_record(this.record.checked ? 1 : 0);
      this.refresh();
    });
    press('recording', () => {
      call.lesson_record(0);
      this.refresh();
    });
    press('stop-add', () => this.edit(call.lesson_add(0)));
    press('stop-up', () => this.edit(call.lesson_shift(this.view.stop, -1)));
    press('stop-down', () => this.edit(call.lesson_shift(this.view.stop, 1)));
    press('stop-place', () => this.edit(call.lesson_place(this.view.stop)));
    press('stop-drop', () => this.edit(call.lesson_drop(this.view.stop)));
    this.pause.addEventListener('change', () =>
      this.edit(call.lesson_pause(this.view.stop, this.pause.valueAsNumber)));
    this.caption.addEventListener('change', () => {
      const words = this.caption.value.trim().replace(/\s+/g, ' ');
      this.edit(call.lesson_caption(this.view.stop, this.#give(words)));
    });
  }

  /** A text into the core's input; its length in bytes. @param {string} text */
  #give(text) {
    const { core } = this.board, bytes = core.encoder.encode(text);
    core.bytes.set(bytes, core.input);
    return bytes.length;
  }

  /** What an edit answered: it is committed, or it is said why there was none.
   * @param {number} changed */
  edit(changed) {
    this.player.halt();
    if (changed) this.board.commit();
    this.refresh();
    if (!changed && this.view.refused) this.board.warn(this.view.refused);
    return changed !== 0;
  }

  /** @returns {View} */
  #read() {
    return this.reads.lessons(this.call.lessons());
  }

  enter() {
    if (this.view.lesson < 0) this.call.lesson_choose(0);
    this.#watch(true);
    this.refresh();
  }

  leave() {
    this.player.halt();
    this.call.lesson_record(0);
    this.call.lesson_stop();
    this.view = this.#read();
    this.#tellRecording();
    this.#watch(false);
  }

  /** What is recorded is seen wherever the field is. */
  #tellRecording() {
    const off = this.view.recording === 0, badge = find('recording', HTMLButtonElement);
    if (badge.hidden === off) return;
    badge.hidden = off;
    this.board.field.resized();
  }

  /** On a narrow page the field stays in sight. @param {boolean} watch */
  #watch(watch) {
    document.documentElement.classList.toggle('watch', watch);
    this.board.field.resized();
  }

  renew() { this.refresh(); }

  /** @param {number} by */
  step(by) { this.player.step(by); }

  play() { this.player.toggle(); }

  hint() {
    if (this.view.recording) return 'Put the ball where it goes next: each place becomes a stop. '
      + 'By keys or numbers, press Stop here when it is there.';
    return 'Play the lesson, or press Record and put the ball where it goes.';
  }

  /** Words and lists anew. */
  refresh() {
    const { core } = this.board;
    this.call.lesson_say();
    this.view = this.#read();
    this.stops = this.reads.stops(this.call.lessons()).stops.slice(0, this.view.stop_count);
    const names = [];
    for (let i = 0, name; (name = core.textAt(this.call.lesson_name(i))); i++) names.push(name);
    offer(this.choice, names.length > 0 ? names : ['none yet']);
    this.choice.selectedIndex = Math.max(0, this.view.lesson);
    for (const part of ['lesson-parts', 'lesson-more']) {
      find(part, HTMLDivElement).hidden = this.view.lesson < 0;
    }
    find('lesson-delete', HTMLButtonElement).hidden = this.view.lesson < 0;
    find('lesson-title', HTMLLabelElement).hidden = this.view.lesson < 0;
    write(find('lesson-about', HTMLParagraphElement), this.view.about ? `${this.view.about}.` : '');
    if (document.activeElement !== this.title) this.title.value = this.view.name;
    this.record.checked = this.view.recording !== 0;
    this.#tellRecording();
    this.player.renew();
    this.#showStops();
    this.board.wake();
  }

  #showStops() {
    const { list, stops } = this;
    while (list.children.length > stops.length) list.lastElementChild?.remove();
    stops.forEach((stop, i) => this.#showStop(stop, i));
    this.#showChosen();
  }

  /** @param {Stop} stop @param {number} i */
  #showStop(stop, i) {
    let item = this.list.children[i];
    if (!item) {
      item = document.createElement('li');
      const button = document.createElement('button');
      button.type = 'button';
      button.append(document.createElement('b'), document.createElement('span'));
      button.addEventListener('click', () => this.visit(i));
      item.append(button);
      this.list.append(item);
    }
    const [place, words] = /** @type {HTMLElement[]} */ ([...item.children[0].children]);
    write(place, `${i + 1}. Ball ${stop.place}`);
    write(words, `${stop.pause} s. ${stop.made ? 'Made from the duties' : stop.caption}`);
  }

  /** The boxes of the chosen stop. */
  #showChosen() {
    const { stop: chosen } = this.view, stop = this.stops[chosen];
    if (!stop) return;
    [...this.list.children].forEach((item, i) => {
      if (i === chosen) item.children[0].setAttribute('aria-current', 'step');
      else item.children[0].removeAttribute('aria-current');
    });
    write(find('stop-title', HTMLLegendElement), `Stop ${chosen + 1}`);
    if (document.activeElement !== this.pause) this.pause.value = String(stop.pause);
    if (document.activeElement !== this.caption) this.caption.value = stop.made ? '' : stop.caption;
    write(find('stop-made', HTMLParagraphElement),
      stop.made ? `Empty, so it is made from the duties: "${stop.caption}"` : '');
    find('stop-up', HTMLButtonElement).disabled = chosen === 0;
    find('stop-down', HTMLButtonElement).disabled = chosen + 1 === this.stops.length;
  }

  /** Ball to a stop; the unit runs there. @param {number} stop */
  visit(stop) {
    this.player.halt();
    this.call.lesson_visit(stop);
    this.view = this.#read();
    this.player.follow(this.stops[stop].come);
    this.#showChosen();
    this.board.pick(0);
    this.board.done();
  }

  /** A finger or the list of places has put the ball somewhere. */
  placed() {
    if (this.view.recording) this.edit(this.call.lesson_add(1));
  }

  /** Anything was moved by hand: it is the coach's board again. */
  touched() {
    this.player.halt();
    this.call.lesson_stop();
    this.view = this.#read(); // a drag between two frames must not leave the lesson's picture standing
  }

  /** @param {number} seconds */
  run(seconds) {
    return this.player.run(seconds);
  }

  show() {
    const before = this.view.stop;
    this.view = this.#read();
    this.player.show();
    if (this.view.stop !== before) this.#showChosen();
  }
}
