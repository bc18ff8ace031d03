// SPDX-License-Identifier: GPL-3.0-or-later
// The core in WebAssembly, and how its memory is read: C tells its layout, nothing is typed twice.
import { Memory, enumeration } from './abi.js';

/** The blocks that are read, as examples: src/web/layout.c has them all. */
const token = {
  kind: 0, index: 0, pinned: 0, twin: 0, away: 0, moved: 0, px: 0, py: 0, at_x: 0, at_y: 0, reach: 0,
  x: 0, y: 0, late: 0, code: '', name: '', duty: '', place: '', call: '', label: '',
};
const view = {
  token_count: 0, finding_count: 0, stage: 0, landmark: 0, running: 0, mirrored: 0, mode: 0, danger: 0,
  attackers: 0, metres: 0, set: 0, own_set: 0, lines: 0, ground: 0, can_add: 0, can_keep: 0, ghosts: 0,
  moved: 0, zoom: 0, width: 0, height: 0, title: '', caption: '', last: '', token: [token],
};
const finding = { severity: 0, pointer: '', message: '', remedy: '' };
const knob = { low: 0, high: 0, step: 0, value: 0, key: '', name: '', unit: '', meaning: '' };
const refusal = { status: 0, pointer: '', message: '' };

/**
 * @typedef {typeof token} Token
 * @typedef {typeof view} View
 * @typedef {typeof finding} Finding
 * @typedef {typeof knob} Knob
 * @typedef {typeof refusal} Refusal
 */

/** Lists of web/page.h, and what the scheme's has. */
export const List = enumeration('list', 'stages', 'landmarks', 'sets', 'roles', 'shapes', 'scheme');
export const About = enumeration('about', 'id', 'name', 'team');

/** What a token is: web/board.h. */
export const Kind = enumeration('kind', 'ball', 'defender', 'attacker', 'keeper');

/** Parts of a chart: web/board.h. */
export const Part = enumeration('part', 'ground', 'marks');

export const Mode = enumeration('mode', 'play', 'homes', 'pins');

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
    this.memory = new Memory(memory, this.call.layout());
    const { bytes, data, decoder, layout } = this.memory;
    this.bytes = bytes;
    this.data = data;
    this.decoder = decoder;
    this.layout = layout;
    this.encoder = new TextEncoder();
    this.reads = {
      view: this.memory.reader('view', view), finding: this.memory.reader('finding', finding),
      knob: this.memory.reader('knob', knob), error: this.memory.reader('error', refusal),
    };
    this.input = this.call.input();
    /** What this is an instance of, for a worker to make another. @type {WebAssembly.Module | null} */
    this.module = null;
    this.inputRoom = this.call.input_room();
  }

  /** @param {number} address */
  textAt(address) {
    return this.memory.textAt(address);
  }

  /** @returns {View} */
  view() {
    const view = this.reads.view(this.call.view());
    view.token.length = view.token_count;
    return view;
  }

  /** @returns {Finding[]} */
  findings() {
    const count = this.view().finding_count, size = this.layout.finding.size;
    return Array.from({ length: count },
      (_, i) => this.reads.finding(this.call.findings() + i * size));
  }

  /** The rule of the stage shown. @returns {Knob[]} */
  knobs() {
    const knobs = [];
    for (let i = 0; ; i++) {
      const at = this.call.knob(i);
      if (at === 0) return knobs;
      knobs.push(this.reads.knob(at));
    }
  }

  /** @returns {Refusal} */
  refusal() {
    return this.reads.error(this.call.error());
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

  /** What a scheme is called. @param {number} what one of About */
  about(what) {
    return this.textAt(this.call.name(List.scheme, what));
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
