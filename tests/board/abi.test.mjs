// SPDX-License-Identifier: GPL-3.0-or-later
// Memory and constants are known by name: nothing moves when C puts a field or an enumerator before
// another, and a name that C does not tell ends the loading.
import assert from 'node:assert/strict';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { test } from 'node:test';
import { Memory, enumeration } from '../../board/abi.js';
import { root } from './page.mjs';

/** A memory that tells these fields of the block `one`, with `values` at their places. */
function memoryOf(fields, enumerations = {}, values = {}) {
  const memory = new WebAssembly.Memory({ initial: 1 }), data = new DataView(memory.buffer);
  const told = JSON.stringify({ blocks: { one: { size: 64, fields } }, enumerations });
  new Uint8Array(memory.buffer).set(new TextEncoder().encode(told));
  for (const [name, value] of Object.entries(values)) {
    if (fields[name][1] === 'i32') data.setInt32(4096 + fields[name][0], value, true);
    else data.setFloat64(4096 + fields[name][0], value, true);
  }
  return new Memory(memory, 0);
}
const like = { count: 0, width: 0 }, values = { count: 7, width: 2.5 };

test('an enumerator asked for before a module is loaded throws', () => {
  const Late = enumeration('order', 'first', 'second');
  assert.throws(() => Late.first, /first of order is not known before the core is loaded/);
  memoryOf({}, { order: { first: 0, second: 1 } });
  assert.deepEqual([Late.first, Late.second], [0, 1]);
});

test('a field and an enumerator put before the others move nothing', () => {
  const plain = memoryOf({ count: [0, 'i32', 1], width: [8, 'f64', 1] }, undefined, values);
  const grown = memoryOf({ fresh: [0, 'i32', 1], count: [4, 'i32', 1], width: [16, 'f64', 1] }, undefined, values);
  const { count, width } = grown.reader('one', like)(4096);
  assert.deepEqual({ count, width }, plain.reader('one', like)(4096));
});

test('a field that is not told, or of another kind, throws', () => {
  assert.throws(() => memoryOf({ count: [0, 'i32', 1] }).reader('one', like), /tells nothing of width in one/);
  assert.throws(() => memoryOf({ count: [0, 'text', 8], width: [8, 'f64', 1] }).reader('one', like),
    /tells string of count in one, not a number/);
  assert.throws(() => memoryOf({}).reader('other', like), /tells nothing of count in other/);
});

test('an enumerator that is not told ends the loading', () => {
  const told = { order: { second: 5, zeroth: 0 } };
  assert.throws(() => memoryOf({}, told), /The core tells no first of order/);
});

test('no source of the pages numbers what C names', async () => {
  for (const folder of ['board', 'handout']) {
    for (const name of (await readdir(join(root, folder))).filter((one) => one.endsWith('.js'))) {
      const text = await readFile(join(root, folder, name), 'utf8');
      // A table of names with 0, 1, 2 as values, or a list read out of raw memory.
      assert.doesNotMatch(text, /\{\s*\w+: 0, \w+: 1\b/, name);
      if (name !== 'paint.js') assert.doesNotMatch(text, /new (Float64|Int32)Array\(.*buffer/, name);
      // Calls that take an enumerator take it by name.
      assert.doesNotMatch(text, /\b(test_say|test_figure|log_set|log_figure|log_outcome|name|mode|draw_part|lines)\((i, )?-?\d/, name);
      assert.doesNotMatch(text, /\.(kind|mode|crease) [!=]== -?\d/, name);
    }
  }
});
