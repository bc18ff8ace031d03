// SPDX-License-Identifier: GPL-3.0-or-later
// The mode Design: attackers, editing, and what the check says.
import { Kind, List, Mode } from './core.js';
import { Attack } from './attack.js';
import { check, chosen, find, write } from './dom.js';
import { Rule } from './rule.js';
import { Suggest } from './suggest.js';

/** @typedef {import('./core.js').View} View */
/** @typedef {import('./board.js').Board} Board */

const severities = ['Note', 'Warning', 'Error'];

const hints = [
  'Drag the ball, or tap where it goes. The unit runs there at its real speed.',
  'Homes: drag defenders to where they stand before the ball pulls them anywhere.',
  'Pins: put the ball at a named place, then drag a man to where he must be there.',
];

export class Design {
  id = 'design';
  name = 'Design';

  /** @param {Board} board @param {import('./server.js').Server | null} server the program behind the page */
  constructor(board, server) {
    this.board = board;
    this.attack = new Attack(board);
    this.rule = new Rule(board);
    this.suggest = new Suggest(board, server);
    this.unpin = find('unpin', HTMLButtonElement);
    this.mirror = find('mirror', HTMLInputElement);
    this.modes = find('modes', HTMLDivElement);
    this.#wire();
  }

  #wire() {
    const { board } = this, { call } = board.core;
    this.mirror.addEventListener('change', () => call.mirror(this.mirror.checked ? 1 : 0));
    for (const { box } of [this.rule, this.suggest]) box.addEventListener('toggle', () => this.#watch());
    this.modes.addEventListener('change', () => this.#edit(chosen(this.modes)));
    this.unpin.addEventListener('click', () => {
      call.unpin(board.view.token[board.picked].index);
      board.done();
      board.words.x.focus();
    });
  }

  /** @param {number} mode */
  #edit(mode) {
    const { board } = this;
    board.core.call.mode(mode);
    board.refresh();
    if (mode === Mode.homes && board.view.token[board.picked].kind !== Kind.defender) {
      board.picked = board.view.token.findIndex(({ kind }) => kind === Kind.defender);
    }
    board.done();
  }

  /** @param {View} view */
  hint(view) {
    return hints[view.mode];
  }

  /** The ball goes to the next named place, after the last one to the first again. @param {number} by */
  step(by) {
    const { board } = this, { call } = board.core, count = board.core.names(List.landmarks).length;
    const here = board.view.landmark >= 0 ? board.view.landmark : call.nearest();
    call.ball_to(board.view.landmark < 0 && by > 0 ? here : (here + by + count) % count);
    board.pick(0);
    board.placed();
  }

  enter() {
    this.#watch();
  }

  /** On a narrow page the field stays in sight while there is something to watch on it. */
  #watch(shown = true) {
    const open = this.rule.box.open || this.suggest.box.open;
    document.documentElement.classList.toggle('watch', shown && open);
    this.board.field.resized();
  }

  /** No other mode edits. */
  leave() {
    this.#watch(false);
    if (this.board.view.mode !== Mode.play) this.#edit(Mode.play);
  }

  renew() {
    this.attack.renew();
    this.rule.renew();
    this.suggest.renew();
    this.#listFindings();
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
        if (!this.rule.visit(finding.pointer)) this.board.words.title.scrollIntoView({ block: 'nearest' });
      });
      item.append(button);
      return item;
    }));
    if (findings.length > 0) return;
    const item = document.createElement('li');
    item.textContent = 'The check finds nothing to say about this scheme.';
    list.append(item);
  }

  /** @param {View} view */
  show(view) {
    check(this.modes, view.mode);
    this.attack.show(view);
    this.rule.follow(view);
    this.suggest.show(view);
    const picked = view.token[this.board.picked];
    /** @type {HTMLElement} */ (this.mirror.parentElement).hidden = view.mode === Mode.play;
    this.unpin.hidden = !(view.mode === Mode.pins && picked.pinned);
    write(find('mode-note', HTMLParagraphElement), view.mode === Mode.play
      ? 'Homes: where defenders stand before the ball pulls them. Pins: where one must be while the ball is at a named place.'
      : `${this.mirror.checked ? 'What you do on one side is done on the other.'
        : 'Each side by itself.'}${view.mode === Mode.pins ? ' A flag marks a man pinned here.' : ''}`);
  }
}
