// SPDX-License-Identifier: GPL-3.0-or-later
// A document into the core: the browser parses, the core reads. What is wrong is said by the core,
// but for what no parser lets through to it.

/** @typedef {import('./core.js').Core} Core */

const most = 1 << 20;
const deepest = 40; // the core refuses at 12; this only bounds the walk

/** @param {Core} core @param {string} text @param {(length: number) => void} pass */
function feedText(core, text, pass) {
  const bytes = core.encoder.encode(text);
  if (bytes.length > core.inputRoom) throw new Error('a text is longer than any text of a scheme');
  core.bytes.set(bytes, core.input);
  pass(bytes.length);
}

/** @param {Core} core @param {unknown} value @param {number} depth */
function feed(core, value, depth) {
  if (depth > deepest) return;
  const call = core.call;
  if (value === null) call.feed_null();
  else if (typeof value === 'number') call.feed_number(value);
  else if (typeof value === 'boolean') call.feed_bool(value ? 1 : 0);
  else if (typeof value === 'string') feedText(core, value, call.feed_string);
  else if (Array.isArray(value)) {
    call.feed_array();
    for (const one of value) feed(core, one, depth + 1);
    call.feed_end();
  } else {
    call.feed_object();
    for (const [key, one] of Object.entries(/** @type {object} */ (value))) {
      feedText(core, key, call.feed_key);
      feed(core, one, depth + 1);
    }
    call.feed_end();
  }
}

/**
 * The text of a file, or a sentence about what is wrong with it.
 * @param {Uint8Array} bytes @returns {{text: string} | {refused: string}}
 */
export function textOf(bytes) {
  if (bytes.length === 0) return { refused: 'the file is empty; a scheme begins with {' };
  if (bytes.length > most) return { refused: 'the file is larger than a scheme can be (1 MB)' };
  if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf) {
    return { refused: 'the file begins with a byte order mark; save it as UTF-8 without one' };
  }
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch {
    return { refused: 'the file is not UTF-8 text; save it as UTF-8' };
  }
}

/**
 * Opens a document. Returns null, or the sentence with which it was refused; then what was open
 * stays open.
 * @param {Core} core @param {string} text @param {boolean} keep stage, ball and attackers
 * @returns {string | null}
 */
export function take(core, text, keep) {
  let value;
  try {
    value = JSON.parse(text);
  } catch (error) {
    return `this is not JSON (${error instanceof Error ? error.message : error}); `
      + 'look for a missing comma, quote or bracket';
  }
  try {
    core.call.feed_begin();
    feed(core, value, 0);
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
  if (core.call.take(keep ? 1 : 0) === 0) return null;
  const { message, pointer } = core.refusal();
  return pointer === '' ? message : `${message} (at ${pointer})`;
}
