// SPDX-License-Identifier: GPL-3.0-or-later
// The mode Roster: who is on the team, put in and changed by number.
import { Forget } from './forget.js';
import { button, make } from './panes.js';
import { find, write } from './dom.js';
import { mustFit, tellBoxes } from './limits.js';
import { Refused } from './server.js';
import { today } from './log.js';

/** @typedef {import('./board.js').Board} Board */
/** @typedef {import('./team.js').Team} Team */
/** @typedef {import('./team.js').Player} Player */

/** @param {string} id */
const box = (id) => find(id, HTMLInputElement);

/** Codes in a line of text. @param {string} text */
const codes = (text) => text.split(/[\s,;]+/).filter(Boolean);

export class Roster {
  id = 'roster';
  name = 'Roster';
  alone = true;
  looks = true;

  /** @param {Board} board @param {Team} team */
  constructor(board, team) {
    this.board = board;
    this.team = team;
    /** What was refused as hardly meant when it was last sent. */
    this.odd = '';
    this.table = find('roster-table', HTMLTableElement);
    box('split-date').value = today();
    this.#submit('roster-form', () => this.#keepPlayer());
    this.#submit('split-form', () => this.#keepSplit());
    this.forgetting = new Forget(team, (act) => this.#try(act), async () => {
      for (const form of ['roster-form', 'split-form']) find(form, HTMLFormElement).reset(); // he may stand there
      box('split-date').value = today();
      await this.team.read(this.board.view.metres !== 0);
      this.#fill();
    });
  }

  /**
   * Sends what was typed. What is hardly meant is refused in words; the same pressed again is kept so.
   * @template Sent, Told @param {Sent} sent @param {(sent: Sent, keep: boolean) => Promise<Told>} send
   */
  async #sendTwice(sent, send) {
    const text = JSON.stringify(sent), keep = this.odd === text;
    this.odd = '';
    try {
      return await send(sent, keep);
    } catch (error) {
      if (!(error instanceof Refused) || error.status !== 409) throw error;
      this.odd = text;
      throw new Error(`${error.message} If it is right, press Keep again.`);
    }
  }

  /** @param {string} id @param {() => Promise<string>} act what became of it */
  #submit(id, act) {
    const form = find(id, HTMLFormElement);
    form.addEventListener('submit', async (event) => {
      event.preventDefault();
      await this.#try(async () => {
        mustFit(form, this.team.known.takes);
        return act();
      });
    });
  }

  /** @param {() => Promise<string>} act */
  async #try(act) {
    const note = find('roster-note', HTMLParagraphElement);
    try {
      const words = await act();
      write(note, '');
      this.board.say(words);
    } catch (error) {
      write(note, /** @type {Error} */ (error).message);
      this.board.say(note.textContent ?? '');
    }
  }

  enter() {
    this.renew();
    this.#try(async () => {
      await this.team.read(this.board.view.metres !== 0);
      this.#fill();
      return `${this.team.known.players.length} players.`;
    });
  }

  /** Metres in the unit the page shows. */
  get #unit() { return this.board.view.metres ? 1 : 0.9144; }

  renew() {
    write(find('split-unit', HTMLSpanElement), `Distance, ${this.board.view.metres ? 'm' : 'yd'}`);
    tellBoxes(find('mode-roster', HTMLElement), this.team.known.takes, this.#unit);
  }

  #fill() {
    const { known } = this.team, heads = ['No.', 'Initials', ...(known.full_names ? ['Name'] : []), 'Spots', ''];
    find('roster-name-pick', HTMLLabelElement).hidden = !known.full_names;
    const row = make('tr');
    for (const head of heads) {
      row.append(head ? make('th', head, { scope: 'col' }) : make('td'));
    }
    this.table.tHead?.replaceChildren(row);
    this.table.tBodies[0].replaceChildren(...known.players.flatMap((player) => this.#rows(player)));
  }

  /** A row of what is known, and one of what his sprints say. @param {Player} player */
  #rows(player) {
    const { known } = this.team, row = make('tr');
    const legs = known.legs.find((one) => one.jersey === player.jersey)?.words ?? 'no sprints in the file';
    const spots = player.spots.map(({ spot, fixed }) => (fixed ? `${spot} (settled)` : spot)).join(', ');
    row.append(make('th', `#${player.jersey}`, { scope: 'row' }), make('td', player.initials ?? ''));
    if (known.full_names) row.append(make('td', player.name ?? ''));
    row.append(make('td', spots));
    const edit = button('Change', () => this.#open(player)), cell = make('td');
    edit.setAttribute('aria-label', `Change number ${player.jersey}`);
    cell.append(edit);
    row.append(cell);
    const second = make('tr', '', { class: 'legs' });
    second.append(make('td'), make('td', legs, { colspan: String(row.children.length - 1) }));
    return [row, second];
  }

  /** @param {Player} player */
  #open(player) {
    box('roster-jersey').value = box('split-jersey').value = box('forget-jersey').value = String(player.jersey);
    box('roster-initials').value = player.initials ?? '';
    box('roster-name').value = player.name ?? '';
    box('roster-spots').value = player.spots.map((one) => one.spot).join(' ');
    box('roster-fixed').value = player.spots.filter((one) => one.fixed).map((one) => one.spot).join(' ');
    box('roster-initials').focus();
  }

  async #keepPlayer() {
    const jersey = box('roster-jersey').valueAsNumber, fixed = codes(box('roster-fixed').value);
    const spots = [...new Set([...codes(box('roster-spots').value), ...fixed])];
    const initials = box('roster-initials').value.trim(), name = box('roster-name').value.trim();
    await this.#sendTwice({
      jersey, ...(initials ? { initials } : {}), ...(name && this.team.known.full_names ? { name } : {}),
      spots: spots.map((spot) => ({ spot, fixed: fixed.includes(spot) })),
    }, (player, keep) => this.team.putPlayer(player, keep));
    await this.team.read(this.board.view.metres !== 0);
    this.#fill();
    find('roster-form', HTMLFormElement).reset();
    return `Number ${jersey} is kept.`;
  }

  async #keepSplit() {
    const jersey = box('split-jersey').valueAsNumber;
    const words = await this.#sendTwice({
      jersey, date: box('split-date').value, distance_m: box('split-distance').valueAsNumber * this.#unit,
      seconds: box('split-seconds').valueAsNumber, clock: find('split-clock', HTMLSelectElement).value,
    }, (split, keep) => this.team.addSplit(split, keep));
    await this.team.read(this.board.view.metres !== 0);
    this.#fill();
    box('split-seconds').value = '';
    return `Sprint of number ${jersey}. ${words}`;
  }
}
