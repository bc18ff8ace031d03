// SPDX-License-Identifier: GPL-3.0-or-later
// What the coach is doing: one mode at a time, chosen by the address's fragment, so that the browser's
// own back and forward keys walk them.
import { find } from './dom.js';

/**
 * A mode owns the element `#mode-ID` in index.html. All but id and name may be left out.
 * @typedef {object} Mode
 * @property {string} id the fragment: `#test`
 * @property {string} name on its tab
 * @property {boolean} [alone] the field and its words are put away, and the mode has the whole width
 * @property {boolean} [looks] the choice of look stays, although the field is put away
 * @property {() => void} [enter] it is shown now
 * @property {() => void} [leave] another will be shown
 * @property {() => void} [renew] the document changed (called while it is shown, and on entering)
 * @property {(view: import('./core.js').View) => void} [show] a frame was drawn
 * @property {() => {scale: number, name: string} | null} [picture] draws into the core's ink what Picture
 *   and SVG hand over, instead of the field; null: there is none now
 * @property {(view: import('./core.js').View) => string} [hint] the line below the field
 * @property {() => void} [touched] something was moved by hand
 * @property {() => void} [placed] the ball was put somewhere by a finger or from the list of places
 * @property {(by: number) => void} [step] in full screen: to the next place, or back (-1)
 * @property {() => void} [play] in full screen: goes on by itself, or pauses
 * @property {(seconds: number) => boolean | undefined} [run] time went by: does it itself instead of the unit's
 *   running after the ball, and says whether it wants another frame; undefined: it
 *   left it to the unit after all
 */

export class Modes {
  /** @param {import('./board.js').Board} board */
  constructor(board) {
    this.board = board;
    this.nav = find('nav', HTMLElement);
    /** @type {Mode[]} */
    this.all = [];
    /** @type {Mode | null} */
    this.now = null;
    addEventListener('hashchange', () => this.#follow());
  }

  /** Adds a tab, in the order of registration. The first one is shown until the address says other.
   * @param {Mode} mode */
  register(mode) {
    this.all.push(mode);
    const tab = document.createElement('a');
    tab.href = `#${mode.id}`;
    tab.textContent = mode.name;
    this.nav.append(tab);
    this.nav.hidden = this.all.length < 2;
    document.documentElement.classList.toggle('tabbed', !this.nav.hidden);
    this.#follow();
  }

  /** Goes to a mode as a tap on its tab would. @param {string} id */
  go(id) {
    location.hash = id;
  }

  #follow() {
    const id = location.hash.slice(1);
    if (id.includes('=') && this.now) return; // a launch token: served.js takes it
    const mode = this.all.find((one) => one.id === id) ?? this.all[0];
    if (mode === this.now) return;
    this.board.field.bubble.cancel();
    this.board.full.fill(false);
    this.now?.leave?.();
    this.now = mode;
    this.all.forEach((one, i) => {
      find(`mode-${one.id}`, HTMLElement).hidden = one !== mode;
      if (one === mode) this.nav.children[i].setAttribute('aria-current', 'page');
      else this.nav.children[i].removeAttribute('aria-current');
    });
    for (const part of ['chart', 'words', 'places']) find(part, HTMLElement).hidden = !!mode.alone;
    find('view', HTMLElement).hidden = !!mode.alone && !mode.looks;
    document.documentElement.dataset.mode = mode.id;
    mode.renew?.();
    mode.enter?.();
    this.board.wake();
  }
}
