// SPDX-License-Identifier: GPL-3.0-or-later
// Breaks on their way into the team file. Each waits on the shelf until the file has acknowledged it; what
// is sent twice is one break there, for it goes by its own id. Retried by itself, ever more rarely.

/** @typedef {import('./log-shelf.js').Held} Held */
/** @typedef {import('./log-shelf.js').Shelf} Shelf */
/** @typedef {import('./team.js').Team} Team */
/** @typedef {import('./team.js').Body} Body */
/** @typedef {import('./server.js').Refused} Refused */

const first = 1000, longest = 60000; // ms between two tries

export class Sync {
  /** @param {Team} team @param {Shelf} shelf
   * @param {(why: string) => void} told after each step: "" or why it does not go on
   * @param {(id: string, number: number, odd: string) => void} arrived the file has it under this number, 0: it
   *   has none; and what is hardly meant in it */
  constructor(team, shelf, told, arrived) {
    this.team = team;
    this.shelf = shelf;
    this.told = told;
    this.arrived = arrived;
    /** @type {Map<string, Held>} */
    this.held = new Map();
    this.wait = first;
    this.timer = 0;
    this.running = false;
    this.again = false;
    const now = () => this.now();
    addEventListener('online', now);
    addEventListener('focus', now);
    document.addEventListener('visibilitychange', now);
  }

  /** What a page before this one left; what was refused then is tried again. */
  async take() {
    for (const held of await this.shelf.all()) {
      if (!this.held.has(held.body.id)) this.held.set(held.body.id, { ...held, refused: '' });
    }
  }

  /** Something is to be told to the file. Ends when it is on the disk here.
   * @param {Body} body @param {Held['need']} need @param {number} number */
  async add(body, need, number) {
    const before = this.held.get(body.id);
    if (need === 'remove' && before?.refused && !number && !before.number) {
      await this.#done(body.id, 0); // the file never had it and never would
      return;
    }
    // What was perhaps never told is told whole; taking out needs the number, so it is sent first.
    const kept = before && before.need === 'send' && need === 'change' ? 'send' : need;
    /** @type {Held} */
    const held = {
      key: this.shelf.prefix + body.id, body, number: number || before?.number || 0, need: kept,
      when: before?.when ?? Date.now(), refused: '', edited: before !== undefined,
    };
    this.held.set(body.id, held);
    await this.shelf.put(held);
    this.now();
  }

  /** Tries at once; what was refused, too, when the coach asks for it. */
  retry() {
    for (const [id, held] of this.held) {
      if (held.refused) this.held.set(id, { ...held, refused: '' });
    }
    this.now();
  }

  /** Tries at once. */
  now() {
    this.wait = first;
    this.#go();
  }

  #later() {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.#go(), this.wait);
    this.wait = Math.min(2 * this.wait, longest);
  }

  async #go() {
    clearTimeout(this.timer);
    this.again = true;
    if (this.running) return;
    this.running = true;
    try {
      while (this.again) {
        this.again = false;
        await this.#all();
      }
      this.told('');
    } catch (error) {
      this.told(/** @type {Error} */ (error).message);
      this.#later();
    }
    this.running = false;
  }

  async #all() {
    const waiting = [...this.held.values()].filter((held) => !held.refused);
    const unknown = waiting.filter((held) => held.number === 0);
    const most = this.team.known.at_once;
    for (let i = 0; i < unknown.length; i += most) await this.#send(unknown.slice(i, i + most));
    for (const held of waiting) {
      const now = this.held.get(held.body.id);
      if (now && now.number > 0 && now.need !== 'send' && !now.refused) await this.#tell(now);
    }
  }

  /** @param {Held[]} list */
  async #send(list) {
    /** @type {import('./team.js').Kept[]} */
    let answers;
    try {
      answers = await this.team.send(list.map((held) => held.body));
    } catch (error) {
      if (/** @type {Refused} */ (error).status !== 422) throw error;
      if (list.length === 1) await this.#refuse(list[0], /** @type {Error} */ (error).message);
      else for (const held of list) await this.#send([held]); // one bad one keeps none of the others
      return;
    }
    for (const { id, number, fresh, odd } of answers) {
      const sent = list.find((held) => held.body.id === id), now = this.held.get(id);
      if (!sent || !now) continue;
      if (number === 0) await this.#done(id, 0);
      // Known already: as it is here, unless it was edited here since it was first sent.
      else if (now.need === 'send' && now === sent && (fresh || !now.edited)) await this.#done(id, number, odd);
      else await this.#next({ ...now, number, need: now.need === 'remove' ? 'remove' : 'change' });
    }
  }

  /** It is there, but perhaps not as it is here. @param {Held} held */
  async #next(held) {
    this.held.set(held.body.id, held);
    await this.shelf.put(held);
    this.again = true;
  }

  /** @param {Held} held */
  async #tell(held) {
    let odd = '';
    try {
      if (held.need === 'remove') await this.team.remove(held.number);
      else odd = (await this.team.change(held.number, held.body)).odd ?? '';
    } catch (error) {
      const { status, message } = /** @type {Refused} */ (error);
      if (status === 422) {
        await this.#refuse(held, message);
        return;
      }
      if (status !== 404) throw error;
      held.need = 'remove'; // it was taken out elsewhere
    }
    if (this.held.get(held.body.id) === held) {
      await this.#done(held.body.id, held.need === 'remove' ? 0 : held.number, odd);
    }
  }

  /** @param {string} id @param {number} number @param {string} [odd] */
  async #done(id, number, odd = '') {
    this.held.delete(id);
    await this.shelf.drop(id);
    this.arrived(id, number, odd);
    this.told('');
  }

  /** The file will not have it as it is: it waits for the coach. @param {Held} held @param {string} words */
  async #refuse(held, words) {
    const refused = { ...held, refused: words };
    this.held.set(held.body.id, refused);
    await this.shelf.put(refused);
    this.told('');
  }
}
