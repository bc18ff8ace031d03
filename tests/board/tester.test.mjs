// SPDX-License-Identifier: GPL-3.0-or-later
// Test mode's module and native code: random trials to the last bit; and the verb `test`, the same break,
// the same numbers to the last digit it writes. A trial carried to another instance is the same trial.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { test } from 'node:test';
import { Core, List } from '../../board/core.js';
import { take } from '../../board/feed.js';
import { Figure, Tester, Word } from '../../board/tester.js';
import { build, moduleFile, root, run, testModuleFile } from './page.mjs';

const module = await WebAssembly.compile(await readFile(moduleFile));
const fresh = async () => new Core(await WebAssembly.instantiate(module, {}));
const program = join(build, 'breakwater');
const read = (name) => readFile(join(root, name), 'utf8');
const kinds = ['shoot', 'pass', 'carry', 'hold'];

/** A request for a break of these numbers, small and quick unless said otherwise. */
const ask = (text, more = {}) => ({
  texts: [text, null], levels: [-1, -1], offence: 4, defence: 3, set: 0, start: 0, late: [],
  seconds: 3, quick: true, seed: 1, ...more,
});

/** Runs side 0 or 1 to its end; returns what was told on the way. */
function finish(tester, side = 0) {
  assert.equal(tester.begin(side), null);
  const told = [];
  for (;;) {
    const more = tester.step();
    assert.equal(typeof more, 'boolean');
    told.push(tester.progress());
    if (!more) return told;
  }
}

/** What `test --json` says, from the tester's figures. */
function numbers(tester, side = 0) {
  const list = (figure) => tester.figures(figure, side), one = (figure) => tester.figure(figure, side);
  const answer = list(Figure.stepKind).map((kind, i) => ({
    ply: kinds[kind], who: list(Figure.stepWho)[i] + 1, at_s: list(Figure.stepAt)[i],
    end_s: list(Figure.stepEnd)[i], p: list(Figure.stepChance)[i],
  }));
  const weakest = list(Figure.weakCost).map((worth, i) => ({
    worth, thrown: list(Figure.weakUse)[i], p: list(Figure.weakChance)[i],
    as_it_is: list(Figure.weakMoving)[i], if_set: list(Figure.weakSet)[i],
  }));
  return {
    rollouts: one(Figure.rollouts), best: list(Figure.best).slice(1), typical: list(Figure.typical).slice(1),
    typical_error: list(Figure.error).slice(1), even_numbers: list(Figure.settled).slice(1),
    late_s: list(Figure.lateS), even_s: one(Figure.evenS), plateau: one(Figure.plateau),
    time_bought_s: one(Figure.boughtS), holds: one(Figure.holds) === 1, seconds_missing: one(Figure.missingS),
    answer_for_s: one(Figure.answerS), answer_worth: one(Figure.answerWorth), answer, weakest,
  };
}

/** With the digits that the program writes. */
const written = (value) => JSON.parse(JSON.stringify(value), (key, one) =>
  (typeof one === 'number' ? Number(one.toFixed(4)) : one));

/** The same keys of the program's break only, in depth. */
function like(shape, value) {
  if (Array.isArray(shape)) {
    assert.equal(value.length, shape.length);
    return shape.map((one, i) => like(one, value[i]));
  }
  if (shape === null || typeof shape !== 'object') return value;
  return Object.fromEntries(Object.keys(shape).map((key) => [key, like(shape[key], value[key])]));
}

async function native(name, ...options) {
  const { stdout } = await run(program, ['test', join(root, name), '--quick', '--json', ...options]);
  return JSON.parse(stdout).breaks[0];
}

/** Numbers in [0, 1) from a seed: Lehmer's generator. */
function lehmer(seed) {
  let state = seed;
  return () => (state = state * 48271 % 2147483647) / 2147483647;
}

test('random trials, asked in random pieces: the same bits as native code', async () => {
  const native = (await run(join(build, 'tests/web/test_tester'), ['--print'])).stdout.trim();
  const { instance } = await WebAssembly.instantiate(await readFile(testModuleFile), {});
  const hash = instance.exports.bw_agree_tests_alone(2026, 4);
  assert.equal(BigInt.asUintN(64, hash).toString(16).padStart(16, '0'), native);
});

test('the usual break of every example is the program\'s, to the last digit', async () => {
  for (const name of ['examples/terns.json', 'tests/scheme/valid/fresh.json']) {
    const core = await fresh(), tester = new Tester(core), text = await read(name);
    assert.equal(tester.take(0, text), null);
    core.call.test_usual();
    core.call.test_effort(4, 0, 1);
    finish(tester);
    const here = numbers(tester);
    assert.deepEqual(written(here), like(here, await native(name)), name);
    assert.ok(here.answer.length > 0 && here.weakest.length > 0, name);
  }
});

test('random breaks are the program\'s too', async () => {
  const random = lehmer(20260301), below = (n) => Math.floor(random() * n);
  const files = ['examples/terns.json', 'tests/scheme/valid/metres.json', 'tests/scheme/valid/every-key.json'];
  for (let i = 0; i < 4; i++) {
    const name = files[i % files.length], text = await read(name);
    const core = await fresh(), tester = new Tester(core);
    assert.equal(take(core, text, false), null);
    const document = JSON.parse(text);
    const stages = core.names(List.stages).map((stage) => Number.parseInt(stage, 10)).filter((n) => n < 6);
    const defence = stages[below(stages.length)], offence = Math.min(defence + 1 + below(1), 6);
    const set = below(6), start = below(document.landmarks.length), seconds = 2 + below(4), seed = 1 + below(999);
    const late = random() < 0.5 ? [] : [5 + below(30)];
    const level = below(3);
    const request = ask(text, { offence, defence, set, start, late, seconds, seed, quick: false, levels: [level, -1] });
    assert.equal(tester.prepare(request), null);
    finish(tester);
    const levels = ['youth-u11', 'youth-u13', 'youth-u15'];
    const options = ['--offence', offence, '--defence', defence, '--set', core.names(List.sets)[set],
      '--start', document.landmarks[start].id, '--late', late.join(), '--seconds', seconds, '--seed', seed,
      '--level', levels[level]].map(String);
    const here = numbers(tester);
    assert.deepEqual(written(here), like(here, await native(name, ...options)), `${name} ${options.join(' ')}`);
  }
});

test('progress is real: each part in order, each piece told, never backwards', async () => {
  const tester = new Tester(await fresh());
  assert.equal(tester.prepare(ask(await read('examples/terns.json'))), null);
  const told = finish(tester);
  const words = told.map((one) => one.words);
  assert.ok(told.length >= 6 + 6 + 3, `${told.length} pieces`);
  assert.equal(words.filter((text) => text.startsWith('Typical play: ')).length, 5);
  assert.ok(words.some((text) => /^Best play: \d+ of 10 seconds/.test(text)));
  assert.ok(words.some((text) => /^Rotations: \d+ of \d+/.test(text)));
  assert.equal(words.at(-1), 'Done');
  for (let i = 1; i < told.length; i++) assert.ok(told[i].share >= told[i - 1].share, words[i]);
  assert.equal(told.at(-1).share, 1);
});

test('a trial carried to another instance is the same in numbers, words and film', async () => {
  const text = await read('examples/terns.json');
  const [here, there] = [new Tester(await fresh()), new Tester(await fresh())];
  const request = ask(text, { offence: 5, defence: 4, late: [null], texts: [text, text], levels: [-1, 0] });
  for (const tester of [here, there]) assert.equal(tester.prepare(request), null);
  for (const side of [0, 1]) {
    finish(there, side);
    assert.equal(here.adopt(side, there.result(side)), true);
    assert.deepEqual(numbers(here, side), numbers(there, side));
    for (const word of [Word.situation, Word.worth, Word.bought, Word.plateau, Word.missing, Word.answer]) {
      assert.equal(here.say(word, side), there.say(word, side));
    }
    for (const number of [-1, 0]) {
      for (const tester of [here, there]) assert.equal(tester.core.call.test_film(side, number), 0);
      assert.deepEqual(here.figures(Figure.filmStep), there.figures(Figure.filmStep));
      for (const at of [0, 0.73, 1.9, 9]) {
        for (const call of ['test_moment', 'test_lateness']) {
          assert.equal(here.core.textAt(here.core.call[call](at)), there.core.textAt(there.core.call[call](at)));
        }
      }
    }
  }
  assert.equal(here.list(Word.compare).length, 3);
  assert.match(here.say(Word.compare), /^Within 3 s typical play, the forecast, .* against A and .* against B\. /);
});

test('against itself nothing differs, and that is said', async () => {
  const text = await read('examples/terns.json'), tester = new Tester(await fresh());
  assert.equal(tester.prepare(ask(text, { texts: [text, text] })), null);
  for (const side of [0, 1]) finish(tester, side);
  assert.deepEqual(numbers(tester, 0), numbers(tester, 1));
  for (const i of [0, 1]) assert.match(tester.say(Word.compare, 0, i), /does not tell them apart\.$/);
});

test('refusals are sentences; figures and films of what is not there are none', async () => {
  const tester = new Tester(await fresh()), text = await read('examples/terns.json');
  assert.match(tester.begin(0), /no scheme/);
  assert.match(tester.take(1, '{"format": 3}'), /.{10}/);
  assert.match(tester.take(1, 'no'), /not JSON/);
  assert.equal(tester.prepare(ask(text, { late: [200], offence: 5, defence: 4 })), null);
  assert.match(tester.begin(0), /late man|behind|100/);
  const { call } = tester.core;
  for (const bad of [NaN, Infinity, -1, 1e9, 99]) {
    call.test_level(bad, bad);
    call.test_numbers(bad, bad);
    call.test_set(bad);
    call.test_start(bad);
    call.test_late(bad);
    call.test_late_from(bad, bad);
    call.test_effort(bad, bad, bad);
    call.test_film(bad, bad);
    call.test_say(bad, bad, bad);
    call.test_draw_curve(bad, 200);
    call.test_draw_film(bad, 200, 200);
    call.test_draw_key(bad);
    assert.ok(Number.isNaN(call.test_figure(bad, bad, bad)) || bad !== bad);
  }
  assert.equal(tester.say(Word.worth), '');
  assert.ok(Number.isNaN(tester.figure(Figure.plateau)));
  assert.deepEqual(tester.figures(Figure.filmStep), []);
});
