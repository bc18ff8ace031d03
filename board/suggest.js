// SPDX-License-Identifier: GPL-3.0-or-later
// Better spots, suggested by the program behind the page: asked for here, shown as rings on the chart,
// taken man by man.
import { Kind, List } from './core.js';
import { chosen, find, write } from './dom.js';
import { Suggested } from './suggested.js';
import { download } from './savers.js';
import { make } from './panes.js';

/** @typedef {import('./board.js').Board} Board */
/** @typedef {import('./core.js').View} View */
/** @typedef {import('./server.js').Server} Server */
/** @typedef {import('./server.js').Kind} RunKind */

const numbers = ['within', 'spacing', 'mix', 'practice', 'seed'];
const even = 6; // defenders: no break is short-handed with so many

/** @param {number} seconds */
const left = (seconds) => (seconds < 90 ? `about ${Math.max(5, 5 * Math.round(seconds / 5))} s`
  : `about ${Math.round(seconds / 60)} minutes`);

export class Suggest {
  /** @param {Board} board @param {Server | null} server */
  constructor(board, server) {
    this.board = board;
    this.server = server?.coach && !server.hello.shared ? server : null;
    this.box = find('suggest', HTMLDetailsElement);
    this.form = find('suggest-form', HTMLFormElement);
    this.may = find('suggest-may', HTMLDivElement);
    this.run = find('suggest-run', HTMLButtonElement);
    this.cancel = find('suggest-cancel', HTMLButtonElement);
    this.sheets = find('suggest-sheets', HTMLButtonElement);
    this.note = find('suggest-note', HTMLParagraphElement);
    this.progress = find('suggest-progress', HTMLProgressElement);
    this.listed = '';
    /** @type {{suggestion: import('./suggestion.js').Suggestion, text: string} | null} */
    this.ready = null; // and not shown yet
    /** @type {{text: string, values: import('./server.js').Values} | null} */
    this.asked = null; // what the suggestion is of
    /** @type {AbortController | null} */
    this.running = null;
    this.suggested = new Suggested(board, () => this.run.focus());
    this.box.hidden = !this.server;
    find('suggest-none', HTMLParagraphElement).hidden = !!this.server;
    this.#wire();
  }

  #wire() {
    this.form.addEventListener('submit', (event) => {
      event.preventDefault();
      this.#ask();
    });
    this.cancel.addEventListener('click', () => this.running?.abort());
    this.sheets.addEventListener('click', () => this.#print());
  }

  /** A box for each man, or for him and his mirror image, and one for the rule. */
  #list() {
    const men = this.board.view.token.filter(({ kind }) => kind === Kind.defender);
    const now = men.map(({ code, name, twin }) => `${code} ${name} ${twin}`).join();
    if (now === this.listed) return;
    this.listed = now;
    const boxes = men.filter(({ index, twin }) => twin < 0 || twin >= index).map((man) => {
      const other = man.twin > man.index ? ` and ${men[man.twin].name}` : '';
      return [man.code, `${man.name}${other}`];
    });
    this.may.replaceChildren(...[...boxes, ['rule', 'the numbers of the rule']].map(([value, name]) => {
      const label = make('label', '', { class: 'tick' });
      const box = make('input', '', { type: 'checkbox', value });
      box.checked = true;
      label.append(box, ` ${name[0].toUpperCase()}${name.slice(1)}`);
      return label;
    }));
  }

  /** What the coach lets move, and the rest, as the program wants it. */
  #values() {
    /** @type {Record<string, string | number>} */
    const values = { stage: this.defenders(), quick: chosen(find('suggest-effort', HTMLDivElement)) };
    for (const name of numbers) values[name] = find(`suggest-${name}`, HTMLInputElement).value;
    const kept = [...this.may.querySelectorAll('input')].filter((box) => !box.checked);
    if (kept.length > 0) values.keep = kept.map((box) => box.value).join();
    return values;
  }

  defenders() {
    return this.board.view.token.filter(({ kind }) => kind === Kind.defender).length;
  }

  async #ask() {
    const { board } = this, values = this.#values(), text = board.history.text;
    const result = await this.#job('tune', text, values);
    if (!result) return;
    this.asked = { text, values };
    this.ready = { suggestion: JSON.parse(await result.text()), text };
    if (board.modes.now?.id === 'design') this.#offer();
    else board.say('The suggestion is ready: see Design.');
  }

  /** Shows what came of it, once the mode Design is there. */
  #offer() {
    if (!this.ready) return;
    const { suggestion, text } = this.ready;
    this.ready = null;
    this.suggested.take(suggestion, this.board.history.text !== text);
  }

  async #print() {
    if (!this.asked) return;
    const result = await this.#job('tune-sheets', this.asked.text, this.asked.values);
    if (!result) return;
    download(result, 'suggestion.pdf');
    this.#say('The sheets were handed to the browser\'s downloads as suggestion.pdf.');
  }

  /** A run of the program with its progress shown; null when nothing came of it.
   * @param {RunKind} kind @param {string} text @param {import('./server.js').Values} values */
  async #job(kind, text, values) {
    if (!this.server || this.running) return null;
    const running = this.running = new AbortController(), began = performance.now();
    this.#busy(true);
    this.#say('');
    this.board.say('Looking for better spots.');
    try {
      return await this.server.run(kind, text, values, {
        signal: running.signal,
        progress: (done, count) => this.#tell(done, count, (performance.now() - began) / 1000),
      });
    } catch (error) {
      this.#say(/** @type {Error} */ (error).message);
      return null;
    } finally {
      this.running = null;
      this.#busy(false);
    }
  }

  /** @param {number} done @param {number} count @param {number} seconds so far */
  #tell(done, count, seconds) {
    const share = count > 0 ? done / count : 0;
    this.progress.value = share;
    const rest = share > 0.05 ? `, ${left(seconds / share - seconds)} to go` : '';
    write(find('suggest-progress-words', HTMLParagraphElement), `${Math.floor(100 * share)} of 100 parts done${rest}.`);
  }

  /** @param {boolean} busy */
  #busy(busy) {
    const held = document.activeElement === this.run || document.activeElement === this.cancel
      || document.activeElement === this.sheets;
    this.run.disabled = this.sheets.disabled = busy;
    this.cancel.hidden = !busy;
    find('suggest-progress-row', HTMLDivElement).hidden = !busy;
    this.#tell(0, 0, 0);
    if (held) (busy ? this.cancel : this.run).focus();
  }

  /** @param {string} words */
  #say(words) {
    write(this.note, words);
    if (words) this.board.say(words);
  }

  /** The document changed. */
  renew() {
    if (!this.server) return;
    this.#list();
    this.#offer();
    this.suggested.renew();
  }

  /** @param {View} view */
  show(view) {
    if (!this.server) return;
    this.#list();
    const { core } = this.board;
    write(find('suggest-stage', HTMLSpanElement), `${core.names(List.stages)[view.stage]} ${core.names(List.shapes)[view.stage]}`);
    for (const unit of this.form.querySelectorAll('.suggest-unit')) {
      write(/** @type {HTMLElement} */ (unit), view.metres ? 'm' : 'yd');
    }
    if (!this.running) this.run.disabled = this.defenders() >= even;
    this.suggested.show(view);
  }
}

