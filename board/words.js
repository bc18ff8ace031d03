// SPDX-License-Identifier: GPL-3.0-or-later
// What stands beside the field in every mode that shows it: its words, the table of where everyone
// stands, and the boxes that move by number; the stages above it, the bar over all.
import { About, Kind, List, Mode } from './core.js';
import { check, chosen, find, offer, write } from './dom.js';
import { movable } from './field.js';

/** @typedef {import('./core.js').View} View */
/** @typedef {import('./core.js').Token} Token */
/** @typedef {import('./board.js').Board} Board */

export class Words {
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
    this.stages = find('stages', HTMLFieldSetElement);
    this.#wire();
  }

  #wire() {
    const { board } = this, { call } = board.core;
    this.who.addEventListener('change', () => {
      board.pick(this.who.selectedIndex);
      this.#numbers(board.view, true); // at once: the next key may go into a box
    });
    for (const box of [this.x, this.y]) box.addEventListener('change', () => this.#put());
    this.landmark.addEventListener('change', () => {
      if (this.landmark.value === '') return;
      call.ball_to(Number(this.landmark.value));
      board.pick(0);
      board.placed();
    });
    this.stages.addEventListener('change', () => {
      call.stage(chosen(this.stages));
      board.done();
    });
    find('undo', HTMLButtonElement).addEventListener('click', () => board.step(-1));
    find('redo', HTMLButtonElement).addEventListener('click', () => board.step(1));
    document.addEventListener('keydown', (event) => {
      const typing = event.target instanceof HTMLTextAreaElement
        || (event.target instanceof HTMLInputElement && ['number', 'text'].includes(event.target.type));
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
    board.field.moved(board.picked);
    board.refresh();
    this.#numbers(board.view, true);
  }

  focusNumbers() {
    this.show(this.board.view);
    this.x.focus();
    this.x.select();
  }

  /** What changes with the document. */
  renew() {
    const { core, view, history } = this.board;
    const name = core.about(About.name), team = core.about(About.team);
    write(find('scheme-name', HTMLSpanElement), team ? `${name}, ${team}` : name);
    document.title = `${name}: Breakwater board`;
    offer(this.landmark, ['between places', ...core.names(List.landmarks)]);
    [...this.landmark.options].forEach((option, i) => { option.value = i === 0 ? '' : String(i - 1); });
    const unit = view.metres ? 'm' : 'yd';
    write(find('x-name', HTMLSpanElement), `Right, ${unit}`);
    write(find('y-name', HTMLSpanElement), `Out, ${unit}`);
    find('redo', HTMLButtonElement).disabled = !history.canRedo;
    this.#offerStages(core.names(List.stages), core.names(List.shapes));
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
    check(this.stages, view.stage);
    find('undo', HTMLButtonElement).disabled = !this.board.history.canUndo && view.moved === 0;
    write(find('hint', HTMLParagraphElement), this.#forNow(view) ?? this.board.modes.now?.hint?.(view) ?? '');
  }

  /** Who was moved by hand for now. @param {View} view */
  #forNow(view) {
    const names = view.token.filter((token) => token.moved).map((token) => token.name).join(' and ');
    const { field } = this.board;
    if (!names || field.bubble.open || field.drag) return null; // nothing shifts under a finger
    return `Moved for now: ${names}. Undo, or the next ball, puts it right.`;
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
    write(code, token.kind === Kind.defender || token.kind === Kind.keeper ? token.code : '');
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
