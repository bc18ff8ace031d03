// SPDX-License-Identifier: GPL-3.0-or-later
// run-golden.mjs MODULE.wasm: runs the golden scene in Node and prints its hashes as `test_golden
// --print` does. Fails when the module imports anything.
import { readFile } from 'node:fs/promises';

const module = await WebAssembly.compile(await readFile(process.argv[2]));
const imports = WebAssembly.Module.imports(module);
if (imports.length > 0) {
  console.error('the module imports ' + imports.map((i) => `${i.module}.${i.name}`).join(', '));
  process.exit(1);
}

const core = (await WebAssembly.instantiate(module, {})).exports;

function textAt(address) {
  const bytes = new Uint8Array(core.memory.buffer, address);
  return new TextDecoder().decode(bytes.subarray(0, bytes.indexOf(0)));
}

// WebAssembly has no unsigned integers at its border; the hash is one.
const hex = (hash) => BigInt.asUintN(64, hash).toString(16).padStart(16, '0');

for (let part = 0; part < core.bw_golden_count(); part++) {
  console.log(textAt(core.bw_golden_name(part)), hex(core.bw_golden_part(part)));
}
console.log('all', hex(core.bw_golden_hash()));
