// SPDX-License-Identifier: GPL-3.0-or-later
// What a module tells of its memory and its constants (src/web/layout.h). They are known here by name
// alone: where a field lies and what an enumerator is worth, C says when a module is loaded, and a name
// that it does not tell ends the loading.

/**
 * @typedef {{offset: number, kind: string, count: number}} Field
 * @typedef {Record<string, {size: number, fields: Record<string, Field>}>} Layout
 * @typedef {Record<string, Record<string, number>>} Values
 */

/** Enumerations that files of the page want to know. @type {{name: string, table: Record<string, number>}[]} */
const wanted = [];
/** What a module has told. @type {Values | null} */
let told = null;

/** @param {Values} values @param {{name: string, table: Record<string, number>}} one */
function fill(values, { name, table }) {
  for (const key of Object.keys(table)) {
    const value = values[name]?.[key];
    if (typeof value !== 'number') throw new Error(`The core tells no ${key} of ${name}.`);
    Object.defineProperty(table, key, { value, writable: false });
  }
}

/**
 * Enumerators by name. Their values are there once a module is loaded; asked before, they throw.
 * @template {string} K @param {string} name as C tells it @param {...K} keys
 * @returns {Readonly<Record<K, number>>}
 */
export function enumeration(name, ...keys) {
  const table = /** @type {Record<K, number>} */ ({}), one = { name, table };
  for (const key of keys) {
    const get = () => { throw new Error(`${key} of ${name} is not known before the core is loaded.`); };
    Object.defineProperty(table, key, { get, enumerable: true, configurable: true });
  }
  wanted.push(one);
  if (told) fill(told, one);
  return table;
}

/** A module's memory, read as it tells itself to be read. */
export class Memory {
  /** @param {WebAssembly.Memory} memory @param {number} address of what is told, a text */
  constructor(memory, address) {
    // The module never grows its memory, so these stay good.
    this.bytes = new Uint8Array(memory.buffer);
    this.data = new DataView(memory.buffer);
    this.decoder = new TextDecoder();
    const { blocks, enumerations } = JSON.parse(this.textAt(address));
    /** @type {Layout} */
    this.layout = {};
    for (const [name, { size, fields }] of Object.entries(blocks)) {
      this.layout[name] = { size, fields: {} };
      for (const [field, [offset, kind, count]] of Object.entries(fields)) {
        this.layout[name].fields[field] = { offset, kind, count };
      }
    }
    if (Object.keys(enumerations).length > 0) { // else nothing of that module is asked for
      for (const one of wanted) fill(enumerations, one);
      told = enumerations;
    }
  }

  /**
   * A block as `like` shows it, a number, a text or a list for each field: an example that has the
   * names and kinds of the fields that are read. Throws when the module tells them otherwise.
   * @template T @param {string} name @param {T} like @returns {(address: number) => T}
   */
  reader(name, like) {
    const fields = this.layout[name]?.fields ?? {};
    for (const [key, value] of Object.entries(/** @type {object} */ (like))) {
      const field = fields[key];
      const is = !field ? 'nothing' : field.kind === 'text' ? 'string'
        : field.kind in this.layout || field.count > 1 ? 'list' : 'number';
      const wants = Array.isArray(value) ? 'list' : typeof value;
      if (is !== wants) throw new Error(`The core tells ${is} of ${key} in ${name}, not a ${wants}.`);
      if (Array.isArray(value) && typeof value[0] === 'object') this.reader(field.kind, value[0]);
    }
    return (address) => this.#block(name, address);
  }

  /** @param {number} address @param {number} [most] */
  textAt(address, most = this.bytes.length - address) {
    const end = this.bytes.indexOf(0, address);
    return this.decoder.decode(this.bytes.subarray(address, Math.min(end, address + most)));
  }

  /** @param {string} block @param {number} address @returns {any} */
  #block(block, address) {
    /** @type {Record<string, unknown>} */
    const object = {};
    for (const [name, { offset, kind, count }] of Object.entries(this.layout[block].fields)) {
      object[name] = this.#value(kind, address + offset, count);
    }
    return object;
  }

  /** @param {string} kind @param {number} address @param {number} count @returns {unknown} */
  #value(kind, address, count) {
    if (kind === 'text') return this.textAt(address, count);
    if (kind in this.layout) {
      return Array.from({ length: count }, (_, i) => this.#block(kind, address + i * this.layout[kind].size));
    }
    if (count === 1) return kind === 'i32' ? this.data.getInt32(address, true) : this.data.getFloat64(address, true);
    const size = kind === 'i32' ? 4 : 8;
    return Array.from({ length: count }, (_, i) => this.#value(kind, address + i * size, 1));
  }
}
