// SPDX-License-Identifier: GPL-3.0-or-later
// Full screen for a meeting: the chart as large as the screen, in letters that are read across a room,
// and a presenter's clicker goes from place to place.
import { find } from './dom.js';

/** @typedef {import('./board.js').Board} Board */

const edge = 16;      // CSS px round the chart, both sides
const beside = 288;   // CSS px: the least column of words beside it
const under = 190;    // CSS px that words and controls below it take, about
const letters = 0.033; // of the screen's height: the words beside the men
const label = 10;      // points of them (bw_marks_large)
const large = 335;     // points: a narrower chart has small marks

/** What a clicker sends, and the keys of the same meaning. @type {Record<string, number>} */
const steps = { PageDown: 1, ArrowRight: 1, ArrowDown: 1, PageUp: -1, ArrowLeft: -1, ArrowUp: -1 };

export class Full {
  /** @param {Board} board */
  constructor(board) {
    this.board = board;
    this.side = /** @type {HTMLElement} */ (document.querySelector('.side'));
    this.field = find('field', HTMLElement);
    this.blank = find('blank', HTMLElement);
    const button = find('full', HTMLButtonElement);
    button.addEventListener('click', () => this.fill(true));
    find('full-leave', HTMLButtonElement).addEventListener('click', () => this.fill(false));
    find('full-undo', HTMLButtonElement).addEventListener('click', () => board.step(-1));
    find('full-back', HTMLButtonElement).addEventListener('click', () => board.modes.now?.step?.(-1));
    find('full-on', HTMLButtonElement).addEventListener('click', () => board.modes.now?.step?.(1));
    document.addEventListener('fullscreenchange', () => {
      if (!document.fullscreenElement) this.fill(false);
    });
    document.addEventListener('keydown', (event) => this.#keys(event));
    for (const kind of ['click', 'pointerup']) document.addEventListener(kind, () => this.#let());
    this.blank.addEventListener('click', () => this.#darken(false));
    new ResizeObserver(() => {
      if (this.on) board.field.resized();
    }).observe(this.side);
  }

  get on() { return document.documentElement.classList.contains('filled'); }

  /** Where the browser has no full screen, the window is filled. @param {boolean} fill */
  fill(fill) {
    if (fill === this.on) return;
    document.documentElement.classList.toggle('filled', fill);
    if (fill) document.documentElement.requestFullscreen?.().catch(() => {});
    else if (document.fullscreenElement) document.exitFullscreen().catch(() => {});
    this.#darken(false);
    scrollTo(0, 0);
    this.board.field.touched = true; // nobody is invited to drag before a room
    this.board.field.resized();
    (fill ? this.field : find('full', HTMLButtonElement)).focus({ preventScroll: true });
  }

  /** Room for the chart, and CSS px in a point at which its words are read across a room. The words
   * stand beside it or below it, whichever leaves it larger. */
  room() {
    const { view } = this.board, shape = view.height > 0 ? view.width / view.height : 1.2;
    const height = innerHeight - edge;
    const left = innerWidth - edge - beside;
    const aside = Math.min(height, left / shape) >= Math.min(height - under, (innerWidth - edge) / shape);
    document.documentElement.classList.toggle('beside', aside);
    const taken = aside ? 0 : [find('stages', HTMLElement), find('recording', HTMLElement), this.side]
      .reduce((sum, part) => sum + (part.offsetHeight > 0 ? part.offsetHeight + edge / 2 : 0), 0);
    const room = { width: aside ? left : innerWidth - edge, height: Math.max(height - taken, 160), key: 0 };
    const width = Math.min(room.width, room.height * shape);
    return { ...room, scale: Math.min(letters * innerHeight / label, width / large) };
  }

  /** After a touch no button keeps the keys: they are the clicker's. */
  #let() {
    if (!this.on) return;
    requestAnimationFrame(() => {
      const now = document.activeElement;
      if (this.on && !now?.closest('dialog, #bubble, select, textarea, [type="text"], [type="number"]')) {
        this.field.focus({ preventScroll: true });
      }
    });
  }

  /** @param {KeyboardEvent} event */
  #keys(event) {
    if (!this.on || event.defaultPrevented || event.altKey || event.ctrlKey || event.metaKey) return;
    const target = /** @type {Element} */ (event.target);
    if (target.closest('dialog, select, textarea, [type="text"], [type="number"]')) return;
    if (!this.blank.hidden) {
      this.#darken(false);
      event.preventDefault();
      return;
    }
    if (event.key === 'Escape') {
      this.fill(false);
      return;
    }
    const { now } = this.board.modes, by = steps[event.key];
    const own = target.closest('button, input'); // it was gone to by keys: what it does with them stays its own
    if (by !== undefined && (!own || event.key.startsWith('Page'))) now?.step?.(by);
    else if (event.key === ' ' && !own) now?.play ? now.play() : now?.step?.(1);
    else if (event.key === '.' || event.key === 'b') this.#darken(true);
    else return;
    event.preventDefault();
  }

  /** The clicker's black screen. @param {boolean} dark */
  #darken(dark) {
    if (this.blank.hidden === !dark) return;
    this.blank.hidden = !dark;
    if (dark) this.board.say('The screen is black. Any key brings the field back.');
  }

  /** After a frame. @param {import('./core.js').View} view */
  show(view) {
    find('full-undo', HTMLButtonElement).disabled = !this.board.history.canUndo && view.moved === 0;
    const plays = this.board.modes.now?.play !== undefined;
    for (const id of ['full-back', 'full-on']) find(id, HTMLButtonElement).hidden = plays;
  }
}
