// SPDX-License-Identifier: GPL-3.0-or-later
// The attackers: from a set, one by one, and kept as a set of the scheme's own.
import { enumeration } from './abi.js';
import { Kind, List } from './core.js';
import { find, offer, write } from './dom.js';

/** @typedef {import('./board.js').Board} Board */
/** @typedef {import('./core.js').View} View */

/** Where the attackers come from, beside the index of a set: BW_SET_ in web/board.h. */
const From = enumeration('set', 'none', 'own');

export class Attack {
  /** @param {Board} board */
  constructor(board) {
    this.board = board;
    this.set = find('set', HTMLSelectElement);
    this.men = find('men', HTMLInputElement);
    this.add = find('add-man', HTMLButtonElement);
    this.remove = find('remove-man', HTMLButtonElement);
    this.keeps = find('keep-set', HTMLFormElement);
    this.name = find('set-name', HTMLInputElement);
    this.drop = find('drop-set', HTMLButtonElement);
    this.wanted = this.men.valueAsNumber; // in a set: the number asked for last
    this.#wire();
  }

  #wire() {
    const { board } = this, { call } = board.core;
    this.set.addEventListener('change', () => {
      const set = Number(this.set.value);
      // Men put one by one become part of the set: it is never smaller for them.
      call.attack(set, set < 0 ? 0 : Math.max(this.wanted, board.view.attackers));
      board.done();
    });
    this.men.addEventListener('change', () => {
      this.wanted = Math.min(6, Math.max(1, Math.round(this.men.valueAsNumber) || this.wanted));
      if (board.view.set === From.own) this.#count(this.wanted);
      else call.attack(board.view.set, this.wanted);
      board.done();
    });
    this.add.addEventListener('click', () => {
      call.add_man();
      board.refresh();
      board.pick(board.view.token_count - 1);
      board.done();
    });
    this.remove.addEventListener('click', () => {
      const token = board.view.token[board.picked];
      call.remove_man(token.kind === Kind.attacker ? token.index : board.view.attackers - 1);
      board.pick(0);
      board.done();
    });
    this.keeps.addEventListener('submit', (event) => {
      event.preventDefault();
      this.#keep();
    });
    this.drop.addEventListener('click', () => {
      if (call.drop_set() === 0) return;
      board.commit();
      board.say('The set is taken out of the scheme. Undo brings it back.');
    });
  }

  /** So many, where the coach put them: the last go, new ones come where there is room. @param {number} men */
  #count(men) {
    const { call } = this.board.core, { attackers } = this.board.view;
    for (let i = attackers; i < men; i++) call.add_man();
    for (let i = attackers; i > men; i--) call.remove_man(i - 1);
  }

  #keep() {
    const { board } = this, name = this.name.value.trim();
    if (name === '') {
      this.name.focus();
      board.say('Give the set a name first.');
      return;
    }
    if (board.core.call.keep_set(board.core.write(name)) === 0) {
      board.warn('Not kept: the name is too long.');
      return;
    }
    this.name.value = '';
    board.commit();
    board.say(`Kept as the set ${name}. Save the file to keep it for good.`);
  }

  renew() {
    const names = this.board.core.names(List.sets);
    offer(this.set, ['none', ...names, 'as I put them']);
    [...this.set.options].forEach((option, i) => {
      option.value = String(i > names.length ? From.own : i === 0 ? From.none : i - 1);
    });
    this.show(this.board.view);
  }

  /** @param {View} view */
  show(view) {
    const set = String(view.set);
    if (this.set.value !== set) this.set.value = set;
    const placed = this.set.options[this.set.options.length - 1];
    placed.hidden = placed.disabled = view.set !== From.own;
    if (view.attackers > 0 && document.activeElement !== this.men) this.men.value = String(view.attackers);
    this.add.disabled = view.can_add === 0;
    this.remove.disabled = view.attackers === 0;
    const token = view.token[this.board.picked];
    write(this.remove, token?.kind === Kind.attacker ? `Take ${token.code} away` : 'Take the last away');
    this.keeps.hidden = view.can_keep === 0;
    this.drop.hidden = view.own_set === 0;
  }
}
