// SPDX-License-Identifier: GPL-3.0-or-later
// The rule of the stage shown: a slider and a number box for each of its numbers. The chart follows
// while one is moved; letting go is one edit.
import { enumeration } from './abi.js';
import { Kind, List } from './core.js';
import { find, offer, write } from './dom.js';

/** @typedef {import('./board.js').Board} Board */
/** @typedef {import('./core.js').Knob} Knob */
/** @typedef {import('./core.js').View} View */

/** What the core calls "the farthest man" and "nobody": BW_CREASE_ in core/scheme.h. */
const Crease = enumeration('crease', 'farthest', 'none');
const free = () => [{ value: Crease.farthest, name: 'whoever is farthest from the ball' },
  { value: Crease.none, name: 'nobody' }];

export class Rule {
  /** @param {Board} board */
  constructor(board) {
    this.board = board;
    this.box = find('rule', HTMLDetailsElement);
    this.list = find('knobs', HTMLDivElement);
    this.holds = find('hold', HTMLInputElement);
    this.crease = find('crease', HTMLSelectElement);
    this.busy = -1; // the knob that is being moved
    this.stage = -1; // whose numbers are shown
    const { call } = board.core;
    this.holds.addEventListener('change', () => {
      call.hold(this.holds.checked ? 1 : 0);
      board.commit();
    });
    this.crease.addEventListener('change', () => {
      call.crease(Number(this.crease.value));
      board.commit();
    });
  }

  /** @param {Knob} knob @param {number} i */
  #row(knob, i) {
    const row = document.createElement('div');
    row.className = 'knob';
    row.innerHTML = '<label></label><input type="range"><input type="number"><span></span><p class="quiet"></p>';
    const [label, range, number, unit, meaning] = /** @type {HTMLInputElement[]} */ ([...row.children]);
    range.id = `knob-${i}`;
    range.dataset.key = knob.key;
    meaning.id = `knob-${i}-says`;
    number.step = 'any';
    /** @type {HTMLLabelElement} */ (/** @type {unknown} */ (label)).htmlFor = range.id;
    range.setAttribute('aria-describedby', meaning.id);
    label.textContent = knob.name;
    number.setAttribute('aria-label', knob.unit ? `${knob.name}, ${knob.unit}` : knob.name);
    meaning.textContent = `${knob.meaning[0].toUpperCase()}${knob.meaning.slice(1)}.`;
    unit.textContent = knob.unit;
    range.addEventListener('input', () => {
      this.busy = i;
      this.board.core.call.turn(i, range.valueAsNumber);
      this.show();
      this.board.wake();
    });
    range.addEventListener('change', () => this.#settle());
    number.addEventListener('change', () => {
      if (!Number.isNaN(number.valueAsNumber)) this.board.core.call.turn(i, number.valueAsNumber);
      this.#settle();
      this.show();
    });
    return row;
  }

  #settle() {
    this.busy = -1;
    this.board.commit();
  }

  /** The panel is always the one of the stage on the field, whoever chose it. @param {View} view */
  follow(view) {
    if (view.stage !== this.stage) this.renew();
  }

  /** Lists, limits and values as the core has them now. */
  renew() {
    const { core, view } = this.board, knobs = core.knobs(), other = this.stage !== view.stage;
    this.stage = view.stage;
    if (other) this.busy = -1;
    if (this.list.childElementCount !== knobs.length) {
      this.list.replaceChildren(...knobs.map((knob, i) => this.#row(knob, i)));
    }
    write(find('rule-stage', HTMLSpanElement),
      `${core.names(List.stages)[view.stage]} ${core.names(List.shapes)[view.stage]}`);
    const men = view.token.filter((token) => token.kind === Kind.defender);
    const choices = [...free(), ...men.map((man, value) => ({ value, name: `always ${man.name}` }))];
    offer(this.crease, choices.map((one) => one.name));
    [...this.crease.options].forEach((option, i) => { option.value = String(choices[i].value); });
    this.show(other);
  }

  /** @param {boolean} [even] into a box in which somebody types */
  show(even = false) {
    const { core } = this.board;
    core.knobs().forEach((knob, i) => this.#put(this.list.children[i], knob, i, even));
    this.holds.checked = core.call.hold_now() !== 0;
    this.crease.value = String(core.call.crease_now());
  }

  /** @param {Element} row @param {Knob} knob @param {number} i @param {boolean} even */
  #put(row, knob, i, even) {
    const [, range, number] = /** @type {HTMLInputElement[]} */ ([...row.children]);
    range.min = String(knob.low);
    range.max = String(knob.high);
    range.step = String(knob.step);
    if (this.busy !== i) range.value = String(knob.value);
    range.setAttribute('aria-valuetext', knob.unit ? `${knob.value} ${knob.unit}`
      : `${Math.round(100 * knob.value)} in 100`);
    if (even || document.activeElement !== number || this.busy === i || number.value === '') {
      number.value = String(knob.value);
    }
  }

  /** Shows the member of the rule that a JSON Pointer names. True when there is one.
   * @param {string} pointer */
  visit(pointer) {
    const key = /\/rule\/(\w+)/.exec(pointer)?.[1];
    if (!key) return false;
    const control = { crease: this.crease, hold_behind: this.holds }[key]
      ?? /** @type {HTMLElement | null} */ (this.list.querySelector(`[data-key="${key}"]`));
    this.box.open = true;
    control?.focus();
    return control !== null;
  }
}
