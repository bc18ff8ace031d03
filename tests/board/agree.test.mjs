// SPDX-License-Identifier: GPL-3.0-or-later
// The module in Node and the native program: the same bits on a thousand random scenes, and a document
// fed from JSON.parse comes out as the native program writes it.
import assert from 'node:assert/strict';
import { access, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { Core, Kind, List } from '../../board/core.js';
import { take, textOf } from '../../board/feed.js';
import { build, moduleFile, root, run, testModuleFile } from './page.mjs';

const { instance, module } = await WebAssembly.instantiate(await readFile(moduleFile), {});
const core = new Core(instance);
const saved = () => new TextDecoder().decode(core.save());

test('the module asks for nothing from outside', () => {
  assert.deepEqual(WebAssembly.Module.imports(module), []);
});

test('a thousand random scenes: the same bits as native code', async () => {
  const native = (await run(join(build, 'tests/web/test_agree'), ['--print'])).stdout.trim();
  const scenes = (await WebAssembly.instantiate(await readFile(testModuleFile), {})).instance;
  const hash = scenes.exports.bw_agree_alone(2026, 1000);
  assert.equal(BigInt.asUintN(64, hash).toString(16).padStart(16, '0'), native);
});

test('every valid document is written twice the same, and the native program reads it', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'breakwater-'));
  for (const name of ['examples/terns.json', 'tests/scheme/valid/every-key.json',
    'tests/scheme/valid/fresh.json', 'tests/scheme/valid/metres.json']) {
    assert.equal(take(core, await readFile(join(root, name), 'utf8'), false), null, name);
    const once = saved();
    assert.equal(take(core, once, true), null, name);
    assert.equal(saved(), once, name);
    const program = join(build, 'breakwater'), file = join(folder, 'scheme.json');
    if (!await access(program).then(() => true, () => false)) continue;
    await writeFile(file, once);
    const said = await run(program, ['where', file, '--stage', '4', '--ball', '3,9', '--json'])
      .catch((error) => error);
    const stage = core.names(List.stages).findIndex((stage) => stage.startsWith('4 '));
    if (stage < 0) continue;
    core.call.stage(stage);
    core.call.put(0, 3, 9);
    core.call.say();
    const native = JSON.parse(said.stdout).spots, here = core.view().token.filter((token) => token.kind === Kind.defender);
    assert.deepEqual(here.map((token) => token.code), native.map((spot) => spot.id), name);
    here.forEach((token, i) => {
      assert.equal(token.duty, native[i].duty, name);
      assert.ok(Math.abs(token.x - native[i].x) <= 0.0501, `${name} ${token.code}`);
      assert.ok(Math.abs(token.y - native[i].y) <= 0.0501, `${name} ${token.code}`);
    });
  }
  await rm(folder, { recursive: true });
});

/** Broken documents with who can tell that they are: tests/scheme/broken/expected.txt. */
async function brokenOnes() {
  const list = await readFile(join(root, 'tests/scheme/broken/expected.txt'), 'utf8');
  return [...list.matchAll(/^(\d\d-[a-z0-9-]+\.json)\t(\w+)\t/gm)]
    .map(([, name, by]) => ({ file: join(root, 'tests/scheme/broken', name), name, by }));
}

/** What the native program says of a file, as the page would put it. */
async function nativeSays(file) {
  const { stdout } = await run(join(build, 'breakwater'), ['check', file, '--json'])
    .catch((error) => error);
  const { at, message } = JSON.parse(stdout).findings[0];
  return at === '' ? message : `${message} (at ${at})`;
}

test('every broken document is refused as the native program refuses it, and what was open stays',
  async () => {
    assert.equal(take(core, await readFile(join(root, 'examples/terns.json'), 'utf8'), false), null);
    const before = saved(), broken = await brokenOnes();
    assert.ok(broken.length >= 89);
    let compared = 0;
    // Of a text that is not JSON each parser says what it can; but these two a browser's lets through.
    const same = ({ name, by }) => by !== 'text' || /^1[78]-duplicate-key/.test(name);
    for (const one of broken) {
      const read = textOf(core, await readFile(one.file));
      const refused = 'refused' in read ? read.refused : take(core, read.text, false);
      assert.ok(refused && refused.length > 10, one.name);
      assert.equal(saved(), before, one.name);
      if (!same(one)) continue;
      assert.equal(refused, await nativeSays(one.file), one.name);
      compared++;
    }
    assert.ok(compared >= 70, `${compared} compared`);
  });

test('what a browser lets through is refused before it is lost', () => {
  const says = (text) => take(core, text, false);
  assert.match(says('{"name": "a", "stages": [{"rule": {"area": 1, "area": 1}}]}'),
    /^the key "area" is said twice in one object; keep one \(at \/stages\/0\/rule\/area\)$/);
  assert.match(says('{"na\\u006de": 1, "name": 2}'), /"name" is said twice/); // however it is spelled
  assert.match(says('{"name": "\\ud800"}'), /half a character/);
  assert.match(says('{"name": "a\\u0000"}'), /NUL character/);
  assert.match(says(`${'['.repeat(200000)}${']'.repeat(200000)}`), /more than 12 deep/);
  assert.match(says(`["${'a'.repeat(250000)}"]`), /more text than a scheme can hold/);
  assert.match(says(`[${'1,'.repeat(9000)}1]`), /more values than a scheme can hold/);
});

test('a moment of a lesson of another document harms nothing', async () => {
  const { call } = core, read = (name) => readFile(join(root, name), 'utf8');
  assert.equal(take(core, await read('examples/terns.json'), false), null);
  call.lesson_say();
  call.lesson_choose(2);
  call.lesson_at(3);
  for (const name of ['metres', 'fresh', 'every-key']) {
    assert.equal(take(core, await read(`tests/scheme/valid/${name}.json`), false), null);
    call.lesson_at(4);
    call.lesson_next();
    call.say();
    call.lesson_say();
    call.lesson_at(1);
  }
  assert.equal(take(core, await read('examples/terns.json'), false), null);
});

test('the page cannot do harm with numbers that are none', () => {
  const before = saved();
  const { call } = core;
  for (const bad of [NaN, Infinity, -1, 1e9, 99]) {
    call.stage(bad);
    call.mode(bad);
    call.ball_to(bad);
    call.attack(bad, bad);
    call.drag(bad, bad, bad);
    call.put(0, bad, bad);
    call.nudge(bad, 1, 1);
    call.unpin(bad);
    call.visit(bad);
    call.run(bad);
    call.draw(bad, 400);
    call.key(bad);
    call.name(bad, bad);
    call.colour(bad, bad);
    call.svg(bad, bad);
    call.lesson_choose(bad);
    call.lesson_visit(bad);
    call.lesson_at(bad);
    call.lesson_stop();
    call.lesson_shift(bad, bad);
    call.lesson_pause(bad, bad);
    call.lesson_call(bad, bad);
    call.lesson_next();
    call.lesson_name(bad);
  }
  call.mode(0);
  call.say();
  assert.equal(saved(), before);
  for (const token of core.view().token) {
    assert.ok(Number.isFinite(token.x) && Number.isFinite(token.late), token.name);
  }
});
