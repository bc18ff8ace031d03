// SPDX-License-Identifier: GPL-3.0-or-later
// Test mode's side of the core (src/web/tester_page.h): a break asked for, its trial, what is said.
import { enumeration } from './abi.js';
import { hand } from './feed.js';

/** @typedef {import('./core.js').Core} Core */

/**
 * All a trial depends on. B (index 1) is what A is compared with.
 * @typedef {object} Request
 * @property {(string | null)[]} texts the documents of A and B; B null: nothing to compare
 * @property {number[]} levels index of a level, -1 the scheme's own
 * @property {number} offence @property {number} defence
 * @property {number} set @property {number} start
 * @property {(number | null)[]} late shown units; null: as far behind as the scheme has him
 * @property {number} seconds @property {boolean} quick @property {number} seed
 */

/** Texts of web/tester_say.h. */
export const Word = enumeration('word', 'situation', 'lateMen', 'worth', 'bought', 'plateau', 'missing',
  'answer', 'faults', 'limit', 'step', 'rotation', 'cost', 'behind', 'range', 'progress', 'compare',
  'lateMan', 'owner', 'level', 'levels', 'film', 'refusal');

/** Figures of web/tester_say.h. */
export const Figure = enumeration('figure', 'best', 'typical', 'error', 'settled', 'lateS', 'evenS',
  'plateau', 'boughtS', 'holds', 'missingS', 'answerS', 'answerWorth', 'rollouts', 'stepKind', 'stepWho',
  'stepAt', 'stepEnd', 'stepChance', 'weakCost', 'weakUse', 'weakChance', 'weakMoving', 'weakSet',
  'filmStep', 'askOffence', 'askDefence', 'askSet', 'askStart', 'askLate', 'part', 'partDone', 'partOf');

/** bw_trial_part. */
const Part = enumeration('trial_part', 'typical', 'even', 'best', 'weak');

/** What share of a trial's time is over when a part begins, and when it ends, about. @param {number} part */
function spanOf(part) {
  switch (part) {
    case Part.typical: return { from: 0, to: 0.15 };
    case Part.even: return { from: 0.15, to: 0.2 };
    case Part.best: return { from: 0.2, to: 0.8 };
    case Part.weak: return { from: 0.8, to: 1 };
    default: return { from: 1, to: 1 };
  }
}

export class Tester {
  /** @param {Core} core */
  constructor(core) {
    this.core = core;
    core.call.test_reset();
  }

  /** The document of a side. Null, or why not. @param {number} side @param {string} text */
  take(side, text) {
    const unfit = hand(this.core, text);
    if (unfit) return unfit;
    return this.core.call.test_take(side) === 0 ? null : this.say(Word.refusal);
  }

  /** The break of a request. @param {Request} request */
  ask(request) {
    const { call } = this.core;
    call.test_usual();
    call.test_set(request.set);
    call.test_start(request.start);
    call.test_numbers(request.offence, request.defence);
    call.test_late(request.late.length);
    request.late.forEach((distance, i) => {
      if (distance !== null) call.test_late_from(i, distance);
    });
    call.test_effort(request.seconds, request.quick ? 1 : 0, request.seed);
  }

  /** Documents, levels and break. Null, or why not. @param {Request} request */
  prepare(request) {
    for (const [side, text] of request.texts.entries()) {
      if (text === null) continue;
      const refused = this.take(side, text);
      if (refused) return refused;
      this.core.call.test_level(side, request.levels[side]);
    }
    this.ask(request);
    return null;
  }

  /** Null when the trial has begun, or why not. @param {number} side */
  begin(side) {
    return this.core.call.test_begin(side) === 0 ? null : this.say(Word.refusal);
  }

  /** One more piece. True when there is more; a sentence when it went wrong. */
  step() {
    const more = this.core.call.test_step();
    return more < 0 ? this.say(Word.refusal) : more > 0;
  }

  /** How far the trial is: [0, 1] and in words. */
  progress() {
    const { from, to } = spanOf(this.figure(Figure.part));
    const share = from + (to - from) * this.figure(Figure.partDone) / Math.max(this.figure(Figure.partOf), 1);
    return { share, words: this.say(Word.progress) };
  }

  /** A finished trial as bytes. @param {number} side */
  result(side) {
    const at = this.core.call.test_result(side);
    return this.core.bytes.slice(at, at + this.core.call.test_result_size());
  }

  /** Takes a trial over that another instance ran. @param {number} side @param {Uint8Array} bytes */
  adopt(side, bytes) {
    this.core.bytes.set(bytes, this.core.call.test_result(side));
    return this.core.call.test_adopt(side) === 0;
  }

  /** @param {number} word @param {number} [side] @param {number} [index] */
  say(word, side = 0, index = 0) {
    return this.core.textAt(this.core.call.test_say(word, side, index));
  }

  /** Texts by index until one is empty. @param {number} word @param {number} [side] */
  list(word, side = 0) {
    const texts = [];
    for (let text; (text = this.say(word, side, texts.length)) !== '';) texts.push(text);
    return texts;
  }

  /** @param {number} figure @param {number} [side] @param {number} [index] */
  figure(figure, side = 0, index = 0) {
    return this.core.call.test_figure(figure, side, index);
  }

  /** Figures by index until there is none. @param {number} figure @param {number} [side] */
  figures(figure, side = 0) {
    const list = [];
    for (let one; !Number.isNaN(one = this.figure(figure, side, list.length));) list.push(one);
    return list;
  }
}
