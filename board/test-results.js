// SPDX-License-Identifier: GPL-3.0-or-later
// What came of a test: sentences, curve, table, film, rotations, limits. Words and pictures are the
// core's own.
import { find, write } from './dom.js';
import { show } from './easel.js';
import { Film } from './test-film.js';
import { Figure, Word } from './tester.js';

/** @typedef {import('./board.js').Board} Board */
/** @typedef {import('./tester.js').Tester} Tester */

const findings = () => /** @type {const} */ ([['Worth now', Word.worth], ['Time bought', Word.bought],
  ['Plateau', Word.plateau], ['Seconds missing', Word.missing]]);
const comparisons = ['Worth now', 'Plateau', 'Best play'];
const inHundred = (/** @type {number} */ worth) => String(Math.floor(worth * 100 + 0.5));
const seconds = (/** @type {number} */ s) => `${s.toFixed(1)} s`;

/** @template {keyof HTMLElementTagNameMap} K @param {K} tag @param {string} text */
function make(tag, text) {
  const element = document.createElement(tag);
  element.textContent = text;
  return element;
}

export class Results {
  /** @param {Board} board @param {Tester} tester */
  constructor(board, tester) {
    this.board = board;
    this.tester = tester;
    this.article = find('test-results', HTMLElement);
    this.curve = find('test-curve', HTMLCanvasElement);
    this.table = /** @type {HTMLTableElement} */ (find('test-numbers-table', HTMLDetailsElement).querySelector('table'));
    this.steps = find('test-steps', HTMLOListElement);
    this.weak = find('test-weak', HTMLOListElement);
    this.back = find('test-back', HTMLButtonElement);
    this.sides = find('test-film-sides', HTMLDivElement);
    this.film = new Film(board, tester);
    this.film.moved = () => this.#mark();
    this.pair = false;
    this.side = 0;    // whose answer is filmed
    this.number = -1; // the answer, or a weak rotation
    this.back.addEventListener('click', () => this.#open(-1, true));
    this.sides.addEventListener('change', () => {
      this.side = Number(/** @type {HTMLInputElement} */ (this.sides.querySelector('input:checked')).value);
      this.#fillSide();
    });
  }

  hide() {
    this.film.pause();
    this.article.hidden = true;
  }

  /** Everything anew. @param {boolean} pair @param {string[]} names of A and B */
  fill(pair, names) {
    const { tester } = this;
    this.pair = pair;
    this.side = 0;
    this.article.hidden = false;
    write(find('test-headline', HTMLHeadingElement), pair ? 'A and B on the same break' : tester.say(Word.owner));
    write(find('test-situation', HTMLParagraphElement), `${tester.say(Word.situation)} ${tester.say(Word.lateMen)}`);
    find('test-sides', HTMLDivElement).replaceChildren(...(pair ? names.map((name, side) =>
      make('p', `${'AB'[side]}: ${name}.`)) : []));
    this.#fillFindings();
    this.#fillTable();
    this.#offerSides(names);
    this.#fillSide();
    find('test-limits', HTMLDetailsElement).replaceChildren(
      make('summary', 'How to read this, and what the model leaves out'),
      ...tester.list(Word.limit).map((text) => make('p', text)));
    this.draw();
  }

  #fillFindings() {
    const { tester } = this, list = find('test-findings', HTMLDListElement);
    const rows = this.pair
      ? comparisons.map((name, i) => [name, tester.say(Word.compare, 0, i)])
      : findings().map(([name, word]) => [name, tester.say(word)]);
    list.replaceChildren(...rows.flatMap(([name, text]) => [make('dt', name), make('dd', text)]));
    write(find('test-curve-note', HTMLParagraphElement), this.pair
      ? 'A solid with discs, B dashed with squares. Thick: typical play, the forecast, with two standard errors of the simulation. Thin: best play, the stress test.'
      : 'Discs: typical play, the forecast, with two standard errors of the simulation. Diamonds: best play, the stress test. Dots: numbers even at once.');
  }

  #fillTable() {
    const { tester, table } = this, n = tester.figure(Figure.rollouts);
    const sides = this.pair ? [0, 1] : [0];
    const letter = (/** @type {number} */ side) => (this.pair ? ` ${'AB'[side]}` : '');
    write(/** @type {HTMLElement} */ (table.caption),
      `Goals in 100 such breaks. Typical from ${n} simulated breaks, with two standard errors either side.`);
    const heads = ['Within', ...sides.flatMap((side) => [`Typical${letter(side)}`, `Best${letter(side)}`]),
      ...(this.pair ? [] : ['Even'])];
    const head = document.createElement('tr');
    head.append(...heads.map((text) => Object.assign(make('th', text), { scope: 'col' })));
    /** @type {HTMLTableSectionElement} */ (table.tHead).replaceChildren(head);
    const rows = [];
    for (let t = 1; t <= 10; t++) {
      const cells = sides.flatMap((side) => [
        `${inHundred(tester.figure(Figure.typical, side, t))} (${tester.say(Word.range, side, t)})`,
        inHundred(tester.figure(Figure.best, side, t))]);
      if (!this.pair) cells.push(inHundred(tester.figure(Figure.settled, 0, t)));
      rows.push([`${t} s`, cells]);
    }
    table.tBodies[0].replaceChildren(...rows.map(([name, cells]) => this.#row(name, cells)), ...this.#moments(sides, heads.length));
  }

  /** @param {any} name @param {any} cells */
  #row(name, cells) {
    const row = document.createElement('tr');
    row.append(Object.assign(make('th', name), { scope: 'row' }), ...cells.map((/** @type {string} */ text) => make('td', text)));
    return row;
  }

  /** Rows below the seconds: when the late men are in, and what follows. @param {number[]} sides @param {number} width */
  #moments(sides, width) {
    const { tester } = this;
    const rows = /** @type {[string, (side: number) => string][]} */ ([
      ['Numbers even', (side) => {
        const at = tester.figure(Figure.evenS, side);
        return at < 0 ? 'never' : seconds(at);
      }],
      ['Time bought', (side) => (tester.figure(Figure.holds, side) ? 'all 10 s' : seconds(tester.figure(Figure.boughtS, side)))],
      ['Plateau', (side) => inHundred(tester.figure(Figure.plateau, side))],
      ['Seconds missing', (side) => seconds(tester.figure(Figure.missingS, side))],
    ]);
    tester.figures(Figure.lateS).forEach((_, i) => rows.splice(i, 0, [
      `In: ${tester.say(Word.lateMan, 0, i)}`, (side) => {
        const at = tester.figure(Figure.lateS, side, i);
        return at < 0 ? 'not in 10 s' : seconds(at);
      }]));
    const span = (width - 1) / sides.length;
    return rows.map(([name, text]) => {
      const row = this.#row(name, sides.map(text));
      for (const cell of row.querySelectorAll('td')) cell.colSpan = span;
      return row;
    });
  }

  /** @param {string[]} names */
  #offerSides(names) {
    this.sides.hidden = !this.pair;
    this.sides.replaceChildren(...(this.pair ? names : []).map((name, side) => {
      const label = document.createElement('label'), input = document.createElement('input');
      Object.assign(input, { type: 'radio', name: 'test-film-side', value: String(side), checked: side === 0 });
      label.append(input, make('span', `Against ${'AB'[side]}`));
      label.title = name;
      return label;
    }));
  }

  /** What belongs to one side: the answer's steps and the rotations. */
  #fillSide() {
    const { tester, side } = this;
    const at = tester.figures(Figure.stepAt, side);
    this.steps.replaceChildren(...tester.list(Word.step, side).map((text, i) =>
      this.#choice(`${i + 1}. at ${seconds(at[i])}`, text, () => {
        if (this.number >= 0) this.#open(-1, false);
        this.film.pause();
        this.film.go(at[i]);
      })));
    const names = tester.list(Word.rotation, side);
    this.weak.replaceChildren(...names.map((name, i) => this.#choice(`${i + 1}. ${name}`,
      `${tester.say(Word.cost, side, i)} ${tester.say(Word.behind, side, i)}`, () => this.#open(i, true))));
    if (names.length === 0) this.weak.append(make('li', 'None: the men are in place when the ball arrives.'));
    write(find('test-faults', HTMLParagraphElement), tester.say(Word.faults, side));
    this.#open(-1, false);
  }

  /** @param {string} head @param {string} text @param {() => void} act */
  #choice(head, text, act) {
    const item = document.createElement('li'), button = document.createElement('button');
    button.type = 'button';
    button.append(make('b', head), text);
    button.addEventListener('click', act);
    item.append(button);
    return item;
  }

  /** Films the answer or a rotation. @param {number} number @param {boolean} look go there */
  #open(number, look) {
    const title = find('test-film-title', HTMLHeadingElement);
    this.number = number;
    this.film.load(this.side, number);
    write(title, number < 0 ? 'What beats it, step by step' : `Weak rotation: ${this.tester.say(Word.film)}`);
    write(find('test-answer', HTMLParagraphElement), number < 0 ? `Best play, the stress test. ${this.tester.say(Word.answer, this.side)}`
      : `Typical play, the forecast. ${this.tester.say(Word.cost, this.side, number)} ${this.tester.say(Word.behind, this.side, number)}`);
    this.steps.hidden = number >= 0; // they are the answer's
    this.back.hidden = number < 0;
    this.#mark();
    if (look) title.scrollIntoView({ block: 'start' });
    if (look) this.board.say(`${title.textContent}. ${this.film.words.textContent} ${this.film.late.textContent}`);
  }

  /** Which step is under way, which rotation is shown. */
  #mark() {
    const mark = (/** @type {HTMLElement} */ list, /** @type {number} */ index) =>
      list.querySelectorAll('button').forEach((button, i) => {
        if (i === index) button.setAttribute('aria-current', 'true');
        else button.removeAttribute('aria-current');
      });
    mark(this.steps, this.number < 0 ? this.film.now : -1);
    mark(this.weak, this.number);
  }

  /** The pictures, in the look and at the width of now. */
  draw() {
    if (this.article.hidden) return;
    const width = /** @type {HTMLElement} */ (this.curve.parentElement).clientWidth;
    if (width === 0) return;
    const scale = Math.min(width / 320, Math.max(this.board.look.scale, Math.min(1.6, width / 460)));
    this.tester.core.call.test_draw_curve(Math.min(width / scale, 640), 250);
    show(this.board, this.curve, scale);
    this.film.draw();
  }
}
