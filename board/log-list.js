// SPDX-License-Identifier: GPL-3.0-or-later
// The breaks of the game that is logged, newest first, each to be put right or taken out.
import { button, make } from './panes.js';
import { find } from './dom.js';

/** @typedef {import('./log.js').Log} Log */
/** @typedef {import('./team.js').Body} Body */

export class LogList {
  /** @param {Log} log */
  constructor(log) {
    this.log = log;
    this.list = find('log-list', HTMLOListElement);
    this.shown = '';
  }

  /** @param {Body[]} bodies */
  show(bodies) {
    const { log } = this, rows = bodies.map((body, i) => ({
      body, number: i + 1, words: log.entry.say(body), held: log.sync.held.get(body.id), odd: log.odd.get(body.id),
    })).reverse();
    find('log-empty', HTMLParagraphElement).hidden = rows.length > 0;
    const now = JSON.stringify(rows.map(({ words, held, odd, body }) => [words, body.note, held?.need, held?.refused, odd]));
    if (now === this.shown) return;
    this.shown = now;
    this.list.replaceChildren(...rows.map((row) => this.#item(row)));
  }

  /** @param {{body: Body, number: number, words: string, held?: import('./log-shelf.js').Held,
   *   odd?: string}} row */
  #item({ body, number, words, held, odd }) {
    const item = make('li'), text = make('p', `${number}. ${words}`);
    if (body.note) text.append(make('span', ` \u201c${body.note}\u201d`, { class: 'quiet' }));
    if (held) {
      text.append(make('b', held.refused ? ` Not taken by the team file: ${held.refused}` : ' Not yet in the team file',
        { class: 'waiting' }));
    } else if (odd) {
      text.append(make('b', ` ${odd}`, { class: 'waiting' }));
    }
    const edit = button('Edit', () => this.log.form.open(body)), away = button('Take out', () => this.log.takeOut(body));
    edit.setAttribute('aria-label', `Edit break ${number}, ${words}`);
    away.setAttribute('aria-label', `Take out break ${number}, ${words}`);
    const row = make('div', '', { class: 'row' });
    row.append(edit, away);
    item.append(text, row);
    return item;
  }
}
