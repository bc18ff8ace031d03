// SPDX-License-Identifier: GPL-3.0-or-later
// The core in WebAssembly, and how its memory is read: C tells its layout, nothing is typed twice.

/**
 * @typedef {Record<string, [offset: number, kind: string, count: number]>} Fields
 * @typedef {Record<string, {size: number, fields: Fields}>} Layout
 * @typedef {{kind: number, index: number, pinned: number, twin: number, away: number, moved: number, px: number, py: number, at_x: number, at_y: number,
 *   reach: number, x: number,
 *   y: number, late: number, code: string, name: string, duty: string, place: string,
 *   call: string, label: string}} Token
 * @typedef {{token_count: number, finding_count: number, stage: number, landmark: number,
 *   running: number, mirrored: number, mode: number, danger: number, attackers: number,
 *   metres: number, set: number, own_set: number, lines: number, ground: number, can_add: number, can_keep: number, ghosts: number, moved: number, zoom: number, width: number, height: number, title: string, caption: string,
 *   last: string, token: Token[]}} View
 * @typedef {{severity: number, pointer: string, message: string, remedy: string}} Finding
 * @typedef {{low: number, high: number, step: number, value: number, key: string, name: string,
 *   unit: string, meaning: string}} Knob
 * @typedef {{status: number, pointer: string, message: string}} Refusal
 */

/** Lists of web/page.h. */
export const List = { stages: 0, landmarks: 1, sets: 2, roles: 3, shapes: 4, scheme: 5 };

/** What a token is: web/board.h. */
export const Kind = { ball: 0, defender: 1, attacker: 2, keeper: 3 };

/** Parts of a chart: web/board.h. */
export const Part = { ground: 1, marks: 2 };

export const Mode = { play: 0, homes: 1, pins: 2 };

export class Core {
  /** @param {WebAssembly.Instance} instance */
  constructor(instance) {
    const exports = instance.exports;
    const memory = /** @type {WebAssembly.Memory} */ (exports.memory);
    /** Functions of web/page.h without their prefix. @type {Record<string, (...args: number[]) => number>} */
    this.call = {};
    for (const [name, value] of Object.entries(exports)) {
      if (name.startsWith('bw_page_')) {
        this.call[name.slice(8)] = /** @type {(...args: number[]) => number} */ (value);
      }
    }
    // The module never grows its memory, so these stay good.
    this.bytes = new Uint8Array(memory.buffer);
    this.data = new DataView(memory.buffer);
    this.decoder = new TextDecoder();
    this.encoder = new TextEncoder();
    /** @type {Layout} */
    this.layout = JSON.parse(this.textAt(this.call.layout()));
    this.input = this.call.input();
    /** What this is an instance of, for a worker to make another. @type {WebAssembly.Module | null} */
    this.module = null;
    this.inputRoom = this.call.input_room();
  }

  /** @param {number} address @param {number} [most] */
  textAt(address, most = this.bytes.length - address) {
    const end = this.bytes.indexOf(0, address);
    return this.decoder.decode(this.bytes.subarray(address, Math.min(end, address + most)));
  }

  /**
   * One block of memory as an object.
   * @param {string} block @param {number} address @returns {any}
   */
  read(block, address) {
    /** @type {Record<string, unknown>} */
    const object = {};
    for (const [name, [offset, kind, count]] of Object.entries(this.layout[block].fields)) {
      object[name] = this.#value(kind, address + offset, count);
    }
    return object;
  }

  /** @param {string} kind @param {number} address @param {number} count @returns {unknown} */
  #value(kind, address, count) {
    if (kind === 'text') return this.textAt(address, count);
    if (kind === 'i32' && count === 1) return this.data.getInt32(address, true);
    if (kind === 'f64' && count === 1) return this.data.getFloat64(address, true);
    const size = kind === 'i32' ? 4 : kind === 'f64' ? 8 : this.layout[kind].size;
    const one = (/** @type {number} */ i) => kind in this.layout
      ? this.read(kind, address + i * size) : this.#value(kind, address + i * size, 1);
    return Array.from({ length: count }, (_, i) => one(i));
  }

  /** @returns {View} */
  view() {
    /** @type {View} */
    const view = this.read('view', this.call.view());
    view.token.length = view.token_count;
    return view;
  }

  /** @returns {Finding[]} */
  findings() {
    const count = this.view().finding_count, size = this.layout.finding.size;
    return Array.from({ length: count },
      (_, i) => this.read('finding', this.call.findings() + i * size));
  }

  /** The rule of the stage shown. @returns {Knob[]} */
  knobs() {
    const knobs = [];
    for (let i = 0; ; i++) {
      const at = this.call.knob(i);
      if (at === 0) return knobs;
      knobs.push(this.read('knob', at));
    }
  }

  /** @returns {Refusal} */
  refusal() {
    return this.read('error', this.call.error());
  }

  /** Text into the input buffer; its length in bytes. @param {string} text */
  write(text) {
    const bytes = this.encoder.encode(text);
    this.bytes.set(bytes.subarray(0, this.inputRoom), this.input);
    return bytes.length;
  }

  /** A whole list. @param {number} list */
  names(list) {
    const names = [];
    for (let i = 0; ; i++) {
      const name = this.textAt(this.call.name(list, i));
      if (name === '') return names;
      names.push(name);
    }
  }

  /** The canonical document, as bytes. */
  save() {
    const length = this.call.save(), at = this.call.output();
    return this.bytes.slice(at, at + length);
  }
}

/** @param {Uint8Array<ArrayBuffer>} bytes */
export async function loadCore(bytes) {
  const { instance, module } = await WebAssembly.instantiate(bytes, {});
  const core = new Core(instance);
  core.module = module;
  return core;
}
