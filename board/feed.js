// SPDX-License-Identifier: GPL-3.0-or-later
// A document into the core: the browser says whether it is JSON, its tokens are fed to the core, the core
// reads. What is wrong is said by the core, but for what no parser lets through to it.

/** @typedef {import('./core.js').Core} Core */

const most = 1 << 20;

// A token of a text that is JSON: a string, a mark, or a word (number, true, false, null).
const token = /"(?:[^"\\]|\\.)*"|[{}[\]:,]|[^\s{}[\]:,"]+/g;
const half = /\p{Surrogate}/u; // half a character, which no UTF-8 can hold

/** @param {Core} core @param {string} quoted @param {string} event */
function feedText(core, quoted, event) {
  const text = JSON.parse(quoted);
  if (half.test(text)) throw new Error('a \\u here is only half a character; write the character itself');
  const bytes = core.encoder.encode(text);
  core.bytes.set(bytes, core.input); // as large as a document may be
  core.call.feed(event.charCodeAt(0), bytes.length);
}

/** The events of a text that JSON.parse has taken, in its own order: JSON.parse's object keeps the last
 * of two equal keys and says nothing, the core refuses them.
 * @param {Core} core @param {string} text */
function feed(core, text) {
  for (const { 0: one, index } of text.matchAll(token)) {
    if (one[0] === '"') feedText(core, one, isKey(text, index + one.length) ? ':' : '"');
    else if ('{[}]tfn'.includes(one[0])) core.call.feed(one.charCodeAt(0), 0);
    else if (one !== ':' && one !== ',') core.call.feed('0'.charCodeAt(0), Number(one));
  }
}

/** @param {string} text @param {number} after a string */
function isKey(text, after) {
  while (/\s/.test(text[after] ?? '')) after++;
  return text[after] === ':';
}

/**
 * The text of a file, or a sentence about what is wrong with it.
 * @param {Core} core @param {Uint8Array} bytes @returns {{text: string} | {refused: string}}
 */
export function textOf(core, bytes) {
  const head = bytes.subarray(0, 16); // enough to know pictures and their like by
  core.bytes.set(head, core.input);
  const kind = core.textAt(core.call.kind(head.length));
  if (kind) return { refused: kind };
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
 * A document's tokens into the core, for it to take. Returns null, or the sentence about a text that no
 * core can be fed.
 * @param {Core} core @param {string} text @returns {string | null}
 */
export function hand(core, text) {
  try {
    JSON.parse(text);
  } catch (error) {
    return `this is not JSON (${error instanceof Error ? error.message : error}); `
      + 'look for a missing comma, quote or bracket';
  }
  try {
    core.call.feed(0, 0);
    feed(core, text);
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
  return null;
}

/**
 * Opens a document. Returns null, or the sentence with which it was refused; then what was open
 * stays open.
 * @param {Core} core @param {string} text @param {boolean} keep stage, ball and attackers
 * @returns {string | null}
 */
export function take(core, text, keep) {
  const unfit = hand(core, text);
  if (unfit) return unfit;
  if (core.call.take(keep ? 1 : 0) === 0) return null;
  const { message, pointer } = core.refusal();
  return pointer === '' ? message : `${message} (at ${pointer})`;
}
