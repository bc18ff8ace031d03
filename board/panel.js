// SPDX-License-Identifier: GPL-3.0-or-later
// The words beside the chart and the native controls.
import { Kind, List, Mode } from './core.js';
import { movable } from './field.js';
import { themes } from './look.js';

/** @typedef {import('./core.js').View} View */
/** @typedef {import('./core.js').Token} Token */
/** @typedef {import('./board.js').Board} Board */

const severities = ['Note', 'Warning', 'Error'];
const notes = [
  'Drag the ball, or tap where it goes. The unit runs there at its real speed. '
    + 'A line from a man leads to his place: the thinner it is, the later he is.',
  'Drag a man to where he stands before the ball pulls him anywhere.',
  'Put the ball at a named place, then drag a man to where he must be there.',
];

/**
 * @template {HTMLElement} T
 * @param {string} id @param {new () => T} kind @returns {T}
 */
export function find(id, kind) {
  const element = document.getElementById(id);
  if (!(element instanceof kind)) throw new Error(`no ${kind.name} #${id}`);
  return element;
}

/** @param {HTMLElement} element @param {string} text */
function write(element, text) {
  if (element.textContent !== text) element.textContent = text;
}

/** A select's options, anew only when they differ.
 * @param {HTMLSelectElement} select @param {string[]} names */
function offer(select, names) {
  const now = [...select.options].map((option) => option.text);
  if (now.length === names.length && now.every((name, i) => name === names[i])) return;
  select.replaceChildren(...names.map((name, i) => new Option(name, String(i))));
}

export class Panel {
  /** @param {Board} board */
  constructor(board) {
    this.board = board;
    this.title = find('title', HTMLHeadingElement);
    this.caption = find('caption', HTMLParagraphElement);
    this.rows = find('rows', HTMLTableSectionElement);
    this.who = find('who', HTMLSelectElement);
    this.x = find('x', HTMLInputElement);
    this.y = find('y', HTMLInputElement);
    this.landmark = find('landmark', HTMLSelectElement);
    this.set = find('set', HTMLSelectElement);
    this.men = find('men', HTMLInputElement);
    this.unpin = find('unpin', HTMLButtonElement);
    this.mirror = find('mirror', HTMLInputElement);
    this.danger = find('danger', HTMLInputElement);
    this.stages = find('stages', HTMLFieldSetElement);
    this.modes = find('modes', HTMLDivElement);
    offer(find('theme', HTMLSelectElement), themes.map((theme) => theme.name));
    this.#wire();
  }

  #wire() {
    const { board } = this, { call } = board.core;
    const on = (/** @type {HTMLElement} */ element, /** @type {() => void} */ act) =>
      element.addEventListener('change', act);
    on(find('theme', HTMLSelectElement), () =>
      board.dress(find('theme', HTMLSelectElement).selectedIndex));
    on(this.who, () => {
      board.pick(this.who.selectedIndex);
      this.#numbers(board.view, true); // at once: the next key may go into a box
    });
    for (const box of [this.x, this.y]) on(box, () => this.#put());
    on(this.landmark, () => {
      if (this.landmark.value === '') return;
      call.ball_to(Number(this.landmark.value));
      board.pick(0);
      board.done();
    });
    const attack = () => {
      call.attack(this.set.selectedIndex - 1, this.men.valueAsNumber || 0);
      board.done();
    };
    on(this.set, attack);
    on(this.men, attack);
    on(this.danger, () => {
      call.danger(this.danger.checked ? 1 : 0);
      find('danger-note', HTMLParagraphElement).hidden = !this.danger.checked;
      board.wake();
    });
    on(this.mirror, () => call.mirror(this.mirror.checked ? 1 : 0));
    on(this.modes, () => {
      const chosen = this.modes.querySelector('input:checked');
      call.mode(Number(/** @type {HTMLInputElement} */ (chosen).value));
      board.refresh();
      if (board.view.mode === Mode.homes && board.picked === 0) board.picked = 1;
      board.done();
    });
    on(this.stages, () => {
      const chosen = this.stages.querySelector('input:checked');
      call.stage(Number(/** @type {HTMLInputElement} */ (chosen).value));
      board.done();
    });
    this.unpin.addEventListener('click', () => {
      call.unpin(board.view.token[board.picked].index);
      board.done();
      this.x.focus();
    });
    find('undo', HTMLButtonElement).addEventListener('click', () => board.step(-1));
    find('redo', HTMLButtonElement).addEventListener('click', () => board.step(1));
    document.addEventListener('keydown', (event) => {
      const typing = event.target instanceof HTMLInputElement && event.target.type === 'number';
      if (typing || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z') return;
      event.preventDefault();
      board.step(event.shiftKey ? 1 : -1);
    });
  }

  #put() {
    const { board } = this, token = board.view.token[board.picked];
    const x = this.x.valueAsNumber, y = this.y.valueAsNumber;
    if (!token || Number.isNaN(x) || Number.isNaN(y)) return;
    board.core.call.put(board.picked, x, y);
    board.done();
    board.refresh();
    this.#numbers(board.view, true);
  }

  focusNumbers() {
    this.show(this.board.view);
    this.x.focus();
    this.x.select();
  }

  /** What changes with the document: lists, findings, names. */
  renew() {
    const { core, view, history } = this.board;
    const [, name = '', team = ''] = [0, 1, 2]
      .map((i) => core.textAt(core.call.name(List.scheme, i)));
    write(find('scheme-name', HTMLSpanElement), team ? `${name}, ${team}` : name);
    document.title = `${name}: Breakwater board`;
    offer(this.landmark, ['between places', ...core.names(List.landmarks)]);
    [...this.landmark.options].forEach((option, i) => { option.value = i === 0 ? '' : String(i - 1); });
    offer(this.set, ['none', ...core.names(List.sets)]);
    const unit = view.metres ? 'm' : 'yd';
    write(find('x-name', HTMLSpanElement), `Right, ${unit}`);
    write(find('y-name', HTMLSpanElement), `Out, ${unit}`);
    find('undo', HTMLButtonElement).disabled = !history.canUndo;
    find('redo', HTMLButtonElement).disabled = !history.canRedo;
    this.#offerStages(core.names(List.stages), core.names(List.shapes));
    this.#listFindings();
  }

  /** @param {string[]} names @param {string[]} shapes */
  #offerStages(names, shapes) {
    const now = [...this.stages.querySelectorAll('span')].map((span) => span.textContent);
    if (now.join() === names.map((name, i) => `${name} ${shapes[i]}`).join()) return;
    this.stages.querySelectorAll('label').forEach((label) => label.remove());
    names.forEach((name, i) => {
      const label = document.createElement('label'), input = document.createElement('input');
      const span = document.createElement('span');
      input.type = 'radio';
      input.name = 'stage';
      input.value = String(i);
      const number = document.createElement('b'), shape = document.createElement('i');
      number.textContent = name;
      shape.textContent = shapes[i];
      span.append(number, ' ', shape);
      label.append(input, span);
      this.stages.append(label);
    });
  }

  #listFindings() {
    const list = find('findings', HTMLOListElement), findings = this.board.core.findings();
    list.replaceChildren(...findings.map((finding, i) => {
      const item = document.createElement('li'), button = document.createElement('button');
      const head = document.createElement('b');
      head.textContent = severities[finding.severity];
      button.type = 'button';
      button.append(head, `${finding.message} ${finding.remedy}`);
      button.addEventListener('click', () => {
        this.board.core.call.visit(i);
        this.board.done();
        this.title.scrollIntoView({ block: 'nearest' });
      });
      item.append(button);
      return item;
    }));
    if (findings.length > 0) return;
    const item = document.createElement('li');
    item.textContent = 'The check finds nothing to say about this scheme.';
    list.append(item);
  }

  /** What changes with every frame. @param {View} view */
  show(view) {
    write(this.title, view.title);
    write(this.caption, view.caption);
    view.token.forEach((token, i) => this.#row(view, token, i));
    while (this.rows.rows.length > view.token_count) this.rows.deleteRow(-1);
    offer(this.who, view.token.map((token) => token.name));
    this.who.selectedIndex = this.board.picked;
    this.#numbers(view, false);
    const place = view.landmark < 0 ? '' : String(view.landmark);
    if (this.landmark.value !== place) this.landmark.value = place;
    this.#check(this.stages, view.stage);
    this.#check(this.modes, view.mode);
    write(find('hint', HTMLParagraphElement), notes[view.mode]);
    const picked = view.token[this.board.picked];
    /** @type {HTMLElement} */ (this.mirror.parentElement).hidden = view.mode === Mode.play;
    this.unpin.hidden = !(view.mode === Mode.pins && picked.pinned);
    write(find('mode-note', HTMLParagraphElement), view.mode === Mode.play
      ? 'Homes: where a man stands before the ball pulls him. Pins: where he must be at a named place.'
      : `${this.mirror.checked ? 'What you do on one side is done on the other.'
        : 'Each side by itself.'}${view.mode === Mode.pins ? ' A flag marks a man pinned here.' : ''}`);
  }

  /** @param {HTMLElement} group @param {number} value */
  #check(group, value) {
    const radio = group.querySelector(`input[value="${value}"]`);
    if (radio instanceof HTMLInputElement && !radio.checked) radio.checked = true;
  }

  /** The number boxes follow the picked token, but not while somebody types in them.
   * @param {View} view @param {boolean} even though typing */
  #numbers(view, even) {
    const token = view.token[this.board.picked];
    this.x.disabled = this.y.disabled = !movable(view, token);
    for (const [box, value] of /** @type {[HTMLInputElement, number][]} */ (
      [[this.x, token.x], [this.y, token.y]])) {
      if (!even && document.activeElement === box) continue;
      const text = String(value === 0 ? 0 : value);
      if (box.value !== text) box.value = text;
    }
  }

  /** @param {View} view @param {Token} token @param {number} i */
  #row(view, token, i) {
    let row = this.rows.rows[i];
    if (!row) {
      row = this.rows.insertRow();
      const head = document.createElement('th');
      head.scope = 'row';
      const code = document.createElement('span');
      code.className = 'code';
      head.append(code, document.createElement('span'));
      row.append(head);
      for (let cell = 0; cell < 3; cell++) row.insertCell();
    }
    const [code, name] = /** @type {HTMLElement[]} */ ([...row.cells[0].children]);
    write(code, token.kind === Kind.defender ? token.code : '');
    write(name, ` ${token.name}`);
    write(row.cells[1], token.duty + (token.pinned ? ', pinned' : ''));
    write(row.cells[2], token.place.replace(/(\d) (\S+) /g, '$1\u00a0$2\u00a0')); // breaks at its comma
    const late = token.late >= 0.1;
    write(row.cells[3], token.kind !== Kind.defender || view.mode !== Mode.play ? ''
      : late ? `${token.late.toFixed(1)} s` : 'there');
    row.cells[3].classList.toggle('late', late);
    row.classList.toggle('picked', i === this.board.picked);
  }
}
