// SPDX-License-Identifier: GPL-3.0-or-later
// The core in WebAssembly (src/web/hand_page.h): text goes in as bytes, answers come out as JSON.
import { hand as feed } from '../board/feed.js';

/** @typedef {{name: string, x: number, y: number}} Place */
/** @typedef {{stages: {defenders: number, spots: {id: string, name: string}[]}[],
 *   rotations: [from: number, to: number][], places: Place[], unit: string}} About */
/** @typedef {{kind: string, stage: number, spot: number, landmark: number, words: string,
 *   options: string[], names?: Place[]}} Question */
/** @typedef {{right: boolean, words: string, answer: string, why: string, marks: number, x: number,
 *   y: number, tapX: number, tapY: number, tolerance: number, mate: number, errorX: number,
 *   errorY: number, option: number}} Mark */

export class Hand {
  /** @param {WebAssembly.Instance} instance */
  constructor(instance) {
    const memory = /** @type {WebAssembly.Memory} */ (instance.exports.memory);
    /** Functions of hand_page.h by what follows bw_hand_. @type {Record<string, (...args: number[]) => number>} */
    this.call = {};
    for (const [name, value] of Object.entries(instance.exports)) {
      if (name.startsWith('bw_hand_')) this.call[name.slice(8)] = /** @type {any} */ (value);
    }
    // The module never grows its memory, so these stay good.
    this.memory = memory;
    this.bytes = new Uint8Array(memory.buffer);
    this.encoder = new TextEncoder();
    this.decoder = new TextDecoder();
    this.input = this.call.input();
    this.output = this.call.output();
  }

  /** The document; false when the core refuses it. @param {unknown} scheme */
  take(scheme) {
    return feed(/** @type {any} */ (this), JSON.stringify(scheme)) === null && this.call.take() === 0;
  }

  /** What a call answered, by the length it returned; null when it was asked for nonsense.
   * @param {number} length @returns {any} */
  said(length) {
    return length === 0 ? null
      : JSON.parse(this.decoder.decode(this.bytes.subarray(this.output, this.output + length)));
  }

  /** @returns {About} */
  about() {
    return this.said(this.call.about());
  }

  /** A moment of the rotation: the ball, and the men.
   * @param {number} seconds */
  frame(seconds) {
    const at = this.call.frame(seconds);
    const n = new Float64Array(this.memory.buffer, at, 4 + 4 * 6);
    const men = Array.from({ length: n[3] }, (_, i) =>
      ({ x: n[4 + 4 * i], y: n[5 + 4 * i], duty: n[6 + 4 * i], needs: n[7 + 4 * i] }));
    return { x: n[0], y: n[1], moving: n[2] === 1, men };
  }
}
