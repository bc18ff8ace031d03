// SPDX-License-Identifier: GPL-3.0-or-later
// The mode Test: a break is chosen, run in a worker, and looked at.
import { find, write } from './dom.js';
import { Results } from './test-results.js';
import { Run } from './test-run.js';
import { TestForm } from './test-form.js';
import { Tester, Word } from './tester.js';

/** @typedef {import('./board.js').Board} Board */

export class TestMode {
  id = 'test';
  name = 'Test';
  alone = true;

  /** @param {Board} board */
  constructor(board) {
    this.board = board;
    this.tester = new Tester(board.core);
    this.form = new TestForm(board, this.tester);
    this.results = new Results(board, this.tester);
    this.text = ''; // of the scheme that form and results are about
    this.drawn = ''; // the look and width of the pictures
    /** The run under way. @type {Run | null} */
    this.under = null;
    this.go = find('test-run', HTMLButtonElement);
    this.stop = find('test-cancel', HTMLButtonElement);
    this.bar = find('test-progress', HTMLProgressElement);
    this.line = find('test-progress-words', HTMLParagraphElement);
    this.form.form.addEventListener('submit', (event) => {
      event.preventDefault();
      this.#start();
    });
    this.stop.addEventListener('click', () => this.under?.cancel());
  }

  /** Another scheme, or an edit of it: results of the one before are no longer true. */
  renew() {
    const { text } = this.board.history;
    if (text === this.text) return;
    const stale = this.text !== '' && !this.results.article.hidden;
    this.under?.cancel();
    this.text = text;
    this.tester.take(0, text);
    this.form.renew();
    this.#empty();
    if (stale) this.#note('The scheme has changed since the last test: run it again.');
  }

  leave() {
    this.results.film.pause();
  }

  /** A frame was drawn: the pictures follow a change of look or width. */
  show() {
    const now = `${document.documentElement.dataset.theme} ${innerWidth} ${innerHeight} ${devicePixelRatio}`;
    if (now === this.drawn) return;
    this.drawn = now;
    this.results.draw();
  }

  /** What Picture hands over: the film as it stands. */
  picture() {
    const scale = this.results.article.hidden ? 0 : this.results.film.ink();
    return scale === 0 ? null : { scale, name: this.tester.say(Word.film) };
  }

  #empty() {
    this.results.hide();
    find('test-empty', HTMLDivElement).hidden = false;
  }

  /** @param {string} words */
  #note(words) {
    write(find('test-note', HTMLParagraphElement), words);
    if (words) this.board.say(words);
  }

  /** @param {boolean} busy */
  #busy(busy) {
    this.go.disabled = busy;
    this.stop.hidden = !busy;
    find('test-progress-row', HTMLDivElement).hidden = !busy;
    this.bar.value = 0;
    write(this.line, '');
    (busy ? this.stop : this.go).focus();
  }

  async #start() {
    const request = this.form.request();
    if ('refused' in request) {
      this.#note(request.refused);
      return;
    }
    this.#note('');
    const run = this.under = new Run(this.tester, ({ share, words }) => {
      this.bar.value = share;
      write(this.line, `${words}.`);
    });
    this.#busy(true);
    this.board.say('The test is running.');
    const outcome = await run.start(request);
    this.under = null;
    this.#busy(false);
    if ('cancelled' in outcome) this.#note('Cancelled.');
    else if ('refused' in outcome) this.#note(`Not tested: ${outcome.refused}.`);
    else this.#finish(request, outcome.results);
  }

  /** @param {import('./tester.js').Request} request @param {Uint8Array[]} results */
  #finish(request, results) {
    const refused = this.tester.prepare(request);
    const taken = !refused && results.every((bytes, side) => this.tester.adopt(side, bytes));
    if (!taken) {
      this.#empty();
      this.#note(`Not tested: ${refused ?? 'the result could not be taken over'}.`);
      return;
    }
    if (results.length < 2) this.tester.core.call.test_forget(1);
    find('test-empty', HTMLDivElement).hidden = true;
    this.results.fill(results.length > 1, this.form.names());
    const headline = find('test-headline', HTMLHeadingElement);
    headline.focus({ preventScroll: true });
    headline.scrollIntoView({ block: 'start' });
    const first = find('test-findings', HTMLDListElement).querySelector('dd');
    this.board.say(`The test is done. ${first?.textContent ?? ''}`);
  }
}
