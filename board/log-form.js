// SPDX-License-Identifier: GPL-3.0-or-later
// The keys with which a break is logged: numbers, what ended it, done; and what may be said beside.
import { button } from './panes.js';
import { find, write } from './dom.js';
import { tooLong } from './limits.js';
import { pageSize } from './paint.js';
import { show } from './easel.js';

/** @typedef {import('./board.js').Board} Board */
/** @typedef {import('./entry.js').Entry} Entry */
/** @typedef {import('./log.js').Log} Log */
/** @typedef {import('./team.js').Body} Body */

const pairs = [[4, 3], [5, 4], [6, 4], [6, 5], [5, 3], [6, 3]];
const chartHeight = 300, pointsPerPixel = 0.75;

/** A number box's number; undefined when it is empty. @param {HTMLInputElement} box */
const numberIn = (box) => (Number.isFinite(box.valueAsNumber) ? box.valueAsNumber : undefined);

/** Presses one key of a group, or none. @param {HTMLElement} group @param {Element | null} key */
function press(group, key) {
  for (const one of group.children) one.setAttribute('aria-pressed', String(one === key));
}

export class LogForm {
  /** @param {Board} board @param {Entry} entry @param {Log} log */
  constructor(board, entry, log) {
    this.board = board;
    this.entry = entry;
    this.log = log;
    this.id = ''; // of the break that is put right; "": a new one
    this.outcome = '';
    this.began = 0; // when the watch was started
    this.ticking = 0;
    this.drawn = '';
    this.spots = '';
    this.scale = 1;
    this.pairs = find('log-pairs', HTMLDivElement);
    this.outcomes = find('log-outcomes', HTMLDivElement);
    this.other = find('log-other', HTMLDivElement);
    this.offence = find('log-offence', HTMLInputElement);
    this.defence = find('log-defence', HTMLInputElement);
    this.seconds = find('log-seconds', HTMLInputElement);
    this.passes = find('log-passes', HTMLInputElement);
    this.x = find('log-x', HTMLInputElement);
    this.y = find('log-y', HTMLInputElement);
    this.men = find('log-spots', HTMLDivElement);
    this.jerseys = find('log-jerseys', HTMLInputElement);
    this.note = find('log-note', HTMLInputElement);
    this.watch = find('log-watch', HTMLButtonElement);
    this.chart = find('log-chart', HTMLCanvasElement);
    this.#makeKeys();
    this.#wire();
    this.clear();
  }

  #makeKeys() {
    for (const [offence, defence] of pairs) {
      this.#key(this.pairs, `${offence}v${defence}`, () => this.#numbers(offence, defence));
    }
    this.#key(this.pairs, 'Other', () => {
      this.other.hidden = false;
      press(this.pairs, this.pairs.lastElementChild);
      this.offence.focus();
    });
    for (const { id, words } of this.entry.outcomes) {
      this.#key(this.outcomes, `${words[0].toUpperCase()}${words.slice(1)}`, () => this.#ended(id));
    }
  }

  /** @param {HTMLElement} group @param {string} words @param {() => void} act */
  #key(group, words, act) {
    const key = button(words, act);
    key.className = 'key';
    key.setAttribute('aria-pressed', 'false');
    group.append(key);
  }

  #wire() {
    find('log-form', HTMLFormElement).addEventListener('submit', (event) => {
      event.preventDefault();
      this.#done();
    });
    find('log-cancel', HTMLButtonElement).addEventListener('click', () => this.clear());
    for (const box of [this.offence, this.defence]) {
      box.addEventListener('change', () => this.#numbers(numberIn(this.offence) ?? 0, numberIn(this.defence) ?? 0));
    }
    this.watch.addEventListener('click', () => this.#watch());
    find('log-pass', HTMLButtonElement).addEventListener('click', () => {
      this.passes.value = String((numberIn(this.passes) ?? 0) + 1);
    });
    find('log-no-shot', HTMLButtonElement).addEventListener('click', () => {
      this.x.value = this.y.value = '';
      this.draw();
    });
    for (const box of [this.x, this.y]) box.addEventListener('change', () => this.draw());
    this.chart.addEventListener('click', (event) => {
      const box = this.chart.getBoundingClientRect(), { entry } = this;
      const at = entry.place((event.clientX - box.left) / this.scale, (event.clientY - box.top) / this.scale);
      this.x.value = (at.shot_x_m / entry.unit).toFixed(1);
      this.y.value = (at.shot_y_m / entry.unit).toFixed(1);
      this.draw();
    });
    find('log-more', HTMLDetailsElement).addEventListener('toggle', () => this.draw());
  }

  /** @param {number} offence @param {number} defence */
  #numbers(offence, defence) {
    const at = pairs.findIndex(([a, d]) => a === offence && d === defence);
    this.offence.value = String(offence);
    this.defence.value = String(defence);
    this.other.hidden = at >= 0;
    press(this.pairs, this.pairs.children[at < 0 ? pairs.length : at]);
    this.#offerSpots();
  }

  /** @param {string} id */
  #ended(id) {
    this.outcome = id;
    press(this.outcomes, this.outcomes.children[this.entry.outcomes.findIndex((one) => one.id === id)] ?? null);
    if (this.began) this.#watch();
  }

  /** Starts the watch, or stops it into the box. */
  #watch() {
    clearInterval(this.ticking);
    if (this.began) {
      this.seconds.value = Math.min((performance.now() - this.began) / 1000, Number(this.seconds.max)).toFixed(1);
      this.began = 0;
      this.watch.textContent = 'Start watch';
      return;
    }
    this.began = performance.now();
    this.ticking = setInterval(() => {
      write(this.watch, `Stop at ${Math.floor((performance.now() - this.began) / 1000)} s`);
    }, 250);
    this.watch.textContent = 'Stop';
  }

  /** The spots of the stage with so many in. */
  #offerSpots() {
    const { text } = this.board.history;
    /** @type {{defenders: number, spots: {id: string}[]}[]} */
    const stages = text ? JSON.parse(text).stages : [];
    const spots = stages.find((stage) => stage.spots.length === numberIn(this.defence))?.spots ?? [];
    const ids = spots.map((spot) => spot.id), now = ids.join(' ');
    if (now === this.spots) return;
    this.spots = now;
    this.men.replaceChildren();
    for (const id of ids) {
      this.#key(this.men, id, () => {
        const key = [...this.men.children].find((one) => one.textContent === id);
        key?.setAttribute('aria-pressed', String(key.getAttribute('aria-pressed') !== 'true'));
      });
    }
  }

  /** What stands in the form. @returns {Partial<Body>} */
  #given() {
    const { unit } = this.entry, x = numberIn(this.x), y = numberIn(this.y), note = this.note.value.trim();
    const out = [...this.men.children].filter((key) => key.getAttribute('aria-pressed') === 'true')
      .map((key) => key.textContent ?? '').concat(this.jerseys.value.split(/[\s,;#]+/).filter(Boolean));
    const seconds = numberIn(this.seconds), passes = numberIn(this.passes);
    return {
      offence: numberIn(this.offence) ?? 0, defence: numberIn(this.defence) ?? 0, outcome: this.outcome,
      ...(seconds === undefined ? {} : { seconds }), ...(passes === undefined ? {} : { passes }),
      ...(x === undefined || y === undefined ? {} : { shot_x_m: x * unit, shot_y_m: y * unit }),
      ...(out.length > 0 ? { out } : {}), ...(note ? { note } : {}),
    };
  }

  async #done() {
    if (this.outcome === '') {
      this.#refuse('Say first what ended it.');
      this.outcomes.querySelector('button')?.focus();
      return;
    }
    if (this.began) this.#watch();
    const long = tooLong(find('log-form', HTMLFormElement), this.log.team.known.takes);
    if (long) {
      this.#refuse(`Not logged: ${long.words}`);
      find('log-more', HTMLDetailsElement).open = true;
      long.box.focus();
      return;
    }
    const given = this.#given(), refused = this.entry.put(given);
    if (refused) {
      this.#refuse(`Not logged: ${refused}.`);
      return;
    }
    const { id } = this;
    this.clear();
    await this.log.done(given, id);
  }

  /** @param {string} words */
  #refuse(words) {
    write(find('log-now', HTMLParagraphElement), words);
    this.board.say(words);
  }

  /** Ready for the next break, with the numbers of the last. */
  clear() {
    clearInterval(this.ticking);
    this.began = 0;
    this.watch.textContent = 'Start watch';
    this.id = this.outcome = '';
    press(this.outcomes, null);
    for (const box of [this.seconds, this.passes, this.x, this.y, this.jerseys, this.note]) box.value = '';
    press(this.men, null);
    this.#title();
    this.draw();
  }

  /** A break that is to be put right. @param {Body} body */
  open(body) {
    this.clear();
    this.id = body.id;
    this.#numbers(body.offence, body.defence);
    this.#ended(body.outcome);
    this.seconds.value = body.seconds === undefined ? '' : String(body.seconds);
    this.passes.value = body.passes === undefined ? '' : String(body.passes);
    const { unit } = this.entry;
    if (body.shot_x_m !== undefined && body.shot_y_m !== undefined) {
      this.x.value = String(Number((body.shot_x_m / unit).toFixed(2)));
      this.y.value = String(Number((body.shot_y_m / unit).toFixed(2)));
    }
    const spots = [...this.men.children], rest = [];
    for (const who of body.out ?? []) {
      const key = spots.find((one) => one.textContent === who);
      if (key) key.setAttribute('aria-pressed', 'true');
      else rest.push(who);
    }
    this.jerseys.value = rest.join(', ');
    this.note.value = body.note ?? '';
    find('log-more', HTMLDetailsElement).open = true;
    this.#title();
    this.draw();
    find('log-title', HTMLElement).focus();
  }

  #title() {
    write(find('log-title', HTMLElement), this.id ? 'Put this break right' : 'New break');
    write(find('log-done', HTMLButtonElement), this.id ? 'Save the change' : 'Done');
    find('log-cancel', HTMLButtonElement).hidden = this.id === '';
  }

  /** Another scheme or unit. */
  renew() {
    const unit = this.board.view.metres ? 'm' : 'yd';
    write(find('log-x-name', HTMLSpanElement), `Right, ${unit}`);
    write(find('log-y-name', HTMLSpanElement), `Out, ${unit}`);
    if (!this.pairs.querySelector('[aria-pressed="true"]')) this.#numbers(6, 4);
    this.spots = ' ';
    this.#offerSpots();
  }

  /** The chart, when it is to be seen. */
  draw() {
    const more = find('log-more', HTMLDetailsElement), room = this.chart.parentElement?.clientWidth ?? 0;
    if (!more.open || room === 0) return;
    this.entry.draw(this.#given(), Math.min(room, 480) * pointsPerPixel, chartHeight);
    this.scale = Math.min(1 / pointsPerPixel, room / pageSize(this.board.core).width);
    show(this.board, this.chart, this.scale);
  }
}
