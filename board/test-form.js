// SPDX-License-Identifier: GPL-3.0-or-later
// The break asked for, in plain controls; what is usual for the scheme stands in them.
import { List } from './core.js';
import { find, offer } from './dom.js';
import { textOf } from './feed.js';
import { Figure, Word } from './tester.js';

/** @typedef {import('./board.js').Board} Board */
/** @typedef {import('./tester.js').Tester} Tester */
/** @typedef {import('./tester.js').Request} Request */

const pairs = [[4, 3], [5, 4], [6, 4], [6, 5]];
const numbers = [...Array(10).keys()].map((i) => String(i + 1));

export class TestForm {
  /** @param {Board} board @param {Tester} tester */
  constructor(board, tester) {
    this.board = board;
    this.tester = tester;
    this.form = find('test-form', HTMLFormElement);
    this.numbers = find('test-numbers', HTMLFieldSetElement);
    this.set = find('test-set', HTMLSelectElement);
    this.start = find('test-start', HTMLSelectElement);
    this.late = find('test-late', HTMLSelectElement);
    this.men = find('test-late-men', HTMLDivElement);
    this.level = find('test-level', HTMLSelectElement);
    this.seconds = find('test-seconds', HTMLSelectElement);
    this.seed = find('test-seed', HTMLInputElement);
    this.other = find('test-other', HTMLSelectElement);
    this.otherLevel = find('test-other-level', HTMLSelectElement);
    this.otherNote = find('test-other-note', HTMLParagraphElement);
    /** The file to compare with. @type {{name: string, text: string} | null} */
    this.file = null;
    offer(this.seconds, numbers);
    this.seconds.selectedIndex = 3;
    const levels = tester.list(Word.levels);
    offer(this.level, ['the scheme\'s own', ...levels]);
    offer(this.otherLevel, levels);
    this.#wire();
  }

  #wire() {
    this.numbers.addEventListener('change', () => this.#usualLate());
    this.late.addEventListener('change', () => this.#listMen(this.late.selectedIndex));
    this.other.addEventListener('change', () => this.#showOther());
    const input = find('test-other-file', HTMLInputElement);
    find('test-other-open', HTMLButtonElement).addEventListener('click', () => input.click());
    input.addEventListener('change', async () => {
      const file = input.files?.[0];
      input.value = '';
      if (file) await this.#read(file);
    });
  }

  /** @param {File} file */
  async #read(file) {
    const read = textOf(this.board.core, new Uint8Array(await file.arrayBuffer()));
    this.file = 'refused' in read ? null : { name: file.name, text: read.text };
    this.otherNote.textContent = 'refused' in read ? `Not opened: ${read.refused}.` : `B is ${file.name}.`;
  }

  #showOther() {
    const kind = this.other.value, { history } = this.board;
    find('test-other-level-pick', HTMLLabelElement).hidden = kind !== 'level';
    find('test-other-file-pick', HTMLDivElement).hidden = kind !== 'file';
    this.otherNote.textContent = kind === 'before'
      ? (history.states[0] === history.text ? 'There are no edits yet: both would be the same.'
        : 'A is the scheme as it is now, B as it was opened.')
      : kind === 'file' && this.file ? `B is ${this.file.name}.` : '';
  }

  /** Another scheme: what is usual for it. */
  renew() {
    const { tester, board } = this;
    tester.core.call.test_usual();
    offer(this.set, board.core.names(List.sets));
    offer(this.start, board.core.names(List.landmarks));
    this.set.selectedIndex = tester.figure(Figure.askSet);
    this.start.selectedIndex = tester.figure(Figure.askStart);
    this.#offerNumbers();
    this.#usualLate();
    this.#showOther();
  }

  /** Pairs whose defenders the scheme has a stage for. */
  #offerNumbers() {
    const { tester } = this, stages = this.board.core.names(List.stages).map((name) => Number.parseInt(name, 10));
    const usual = `${tester.figure(Figure.askOffence)},${tester.figure(Figure.askDefence)}`;
    this.numbers.querySelectorAll('label').forEach((label) => label.remove());
    for (const [offence, defence] of pairs) {
      if (!stages.includes(defence)) continue;
      const label = document.createElement('label'), input = document.createElement('input');
      const span = document.createElement('span');
      input.type = 'radio';
      input.name = 'test-numbers';
      input.value = `${offence},${defence}`;
      input.checked = input.value === usual;
      span.textContent = `${offence} v ${defence}`;
      label.append(input, span);
      this.numbers.append(label);
    }
  }

  #pair() {
    const input = this.numbers.querySelector('input:checked');
    if (!(input instanceof HTMLInputElement)) return [6, 6];
    return input.value.split(',').map(Number);
  }

  /** The scheme's late men for these numbers. */
  #usualLate() {
    const [offence, defence] = this.#pair();
    this.tester.core.call.test_numbers(offence, defence);
    const usual = this.tester.figures(Figure.askLate).length;
    offer(this.late, ['nobody', ...numbers.slice(0, offence - defence)]);
    this.late.selectedIndex = usual;
    this.#listMen(usual);
  }

  /** A box for each late man's distance. @param {number} count */
  #listMen(count) {
    const { tester } = this, unit = this.board.view.metres ? 'm' : 'yd';
    tester.core.call.test_late(count);
    const distances = tester.figures(Figure.askLate);
    this.men.replaceChildren(...distances.map((distance, i) => {
      const label = document.createElement('label'), input = document.createElement('input');
      const name = tester.say(Word.lateMan, 0, i);
      label.className = 'pick wide';
      input.type = 'number';
      input.min = '0.5';
      input.max = unit === 'm' ? '100' : '109';
      input.step = 'any';
      input.required = true;
      input.defaultValue = String(Number(distance.toFixed(1)));
      label.append(`${name[0].toUpperCase()}${name.slice(1)}, ${unit} behind `, input);
      return label;
    }));
  }

  /** What B is, or why there is none. @returns {{text: string | null, level: number} | {refused: string}} */
  #second() {
    const { history } = this.board, own = this.level.selectedIndex - 1;
    switch (this.other.value) {
      case 'before': return { text: history.states[0], level: own };
      case 'level': return { text: history.text, level: this.otherLevel.selectedIndex };
      case 'file': return this.file ? { text: this.file.text, level: own }
        : { refused: 'Choose the file to compare with first.' };
      default: return { text: null, level: -1 };
    }
  }

  /** All that the run depends on, or a sentence. @returns {Request | {refused: string}} */
  request() {
    const second = this.#second(), [offence, defence] = this.#pair();
    if ('refused' in second) return second;
    const boxes = [...this.men.querySelectorAll('input')];
    return {
      texts: [this.board.history.text, second.text],
      levels: [this.level.selectedIndex - 1, second.level],
      offence, defence,
      set: this.set.selectedIndex, start: this.start.selectedIndex,
      // A box nobody touched stands for the distance as the scheme has it, to the last bit.
      late: boxes.map((box) => (box.value === box.defaultValue ? null : box.valueAsNumber)),
      seconds: this.seconds.selectedIndex + 1,
      quick: /** @type {HTMLInputElement} */ (this.form.querySelector('input[name=test-effort]:checked')).value === '1',
      seed: this.seed.valueAsNumber,
    };
  }

  /** What A and B are called. */
  names() {
    const level = (/** @type {number} */ side) => this.tester.say(Word.level, side);
    const owner = (/** @type {number} */ side) => this.tester.say(Word.owner, side);
    switch (this.other.value) {
      case 'before': return ['the scheme as it is now', 'before the edits'];
      case 'level': return [`at level ${level(0)}`, `at level ${level(1)}`];
      default: return [owner(0), owner(1)];
    }
  }
}
