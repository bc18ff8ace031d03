// SPDX-License-Identifier: GPL-3.0-or-later
// The field larger: buttons, wheel, two fingers. What lies under the fingers stays under them.

/** @typedef {import('./board.js').Board} Board */
/** @typedef {{x: number, y: number}} Point */
import { find } from './dom.js';

const stepIn = 1.5;        // a tap on a button
const perNotch = 0.0015;   // a wheel's pixel
const perPinch = 0.01;     // a pixel of a trackpad's pinch, which browsers tell as a wheel with Ctrl

export class Zoom {
  /** @param {Board} board @param {HTMLElement} box @param {() => void} pinching drops what else a finger did */
  constructor(board, box, pinching) {
    this.board = board;
    this.box = box;
    this.pinching = pinching;
    /** @type {Map<number, Point>} */
    this.fingers = new Map();
    this.bigger = find('zoom-in', HTMLButtonElement);
    this.smaller = find('zoom-out', HTMLButtonElement);
    this.whole = find('zoom-all', HTMLButtonElement);
    this.bigger.addEventListener('click', () => this.by(stepIn));
    this.smaller.addEventListener('click', () => this.by(1 / stepIn));
    this.whole.addEventListener('click', () => this.by(0));
    box.addEventListener('wheel', (event) => this.#wheel(event), { passive: false });
    box.addEventListener('pointerdown', (event) => this.#down(event));
    box.addEventListener('pointermove', (event) => this.#move(event));
    for (const end of ['pointerup', 'pointercancel', 'lostpointercapture']) {
      box.addEventListener(end, (event) =>
        this.fingers.delete(/** @type {PointerEvent} */ (event).pointerId));
    }
  }

  /** By a factor about a point (CSS px of the box), about what was picked when there is none; 0: the
   * whole field. @param {number} times @param {Point} [about] */
  by(times, about) {
    const { view, picked, field, core } = this.board, token = view.token[picked];
    const at = about ?? { x: token.px * field.scale, y: token.py * field.scale };
    core.call.zoom(times, at.x / field.scale, at.y / field.scale);
    this.board.wake();
  }

  /** @param {WheelEvent} event */
  #wheel(event) {
    const { zoom } = this.board.view;
    // At the whole field a wheel that makes nothing larger is the page's own.
    if (zoom === 1 && !event.ctrlKey && (event.deltaY > 0 || scrollY > 0)) return;
    event.preventDefault();
    const box = this.box.getBoundingClientRect();
    this.by(Math.exp(-event.deltaY * (event.ctrlKey ? perPinch : perNotch)),
      { x: event.clientX - box.left, y: event.clientY - box.top });
  }

  /** @param {PointerEvent} event */
  #down(event) {
    if (event.pointerType !== 'touch') return;
    this.fingers.set(event.pointerId, this.#point(event));
    this.box.setPointerCapture(event.pointerId);
    if (this.fingers.size === 2) this.pinching();
  }

  /** @param {PointerEvent} event */
  #point(event) {
    const box = this.box.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  }

  /** @param {PointerEvent} event */
  #move(event) {
    if (!this.fingers.has(event.pointerId)) return;
    const was = this.#pair();
    this.fingers.set(event.pointerId, this.#point(event));
    const now = this.#pair(), { core, field } = this.board;
    if (!was || !now || was.apart === 0) return;
    this.by(now.apart / was.apart, was.middle);
    core.call.pan((now.middle.x - was.middle.x) / field.scale, (now.middle.y - was.middle.y) / field.scale);
  }

  /** Two fingers' middle and how far they are apart; null with another number of them. */
  #pair() {
    const [a, b] = [...this.fingers.values()];
    if (this.fingers.size !== 2) return null;
    return { middle: { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }, apart: Math.hypot(a.x - b.x, a.y - b.y) };
  }

  /** @param {import('./core.js').View} view */
  show(view) {
    this.bigger.disabled = view.zoom >= 4;
    this.smaller.disabled = this.whole.disabled = view.zoom <= 1;
  }
}
