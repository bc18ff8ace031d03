// SPDX-License-Identifier: GPL-3.0-or-later
// The core in WebAssembly (src/web/hand_page.h): text goes in as bytes, answers come out as JSON.
import { Memory } from '../board/abi.js';
import { hand as feed } from '../board/feed.js';

/** A moment of a rotation, as an example: web/hand_page.h. */
const frame = { x: 0, y: 0, moving: 0, count: 0, men: [{ x: 0, y: 0, needs: 0, duty: 0 }] };

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
    const told = new Memory(memory, this.call.layout());
    this.bytes = told.bytes;
    this.decoder = told.decoder;
    this.encoder = new TextEncoder();
    this.readFrame = told.reader('frame', frame);
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
    const { x, y, moving, count, men } = this.readFrame(this.call.frame(seconds));
    return { x, y, moving: moving !== 0, men: men.slice(0, count) };
  }
}
