// SPDX-License-Identifier: GPL-3.0-or-later
// Trials under way: a worker for each side, so that the page stays awake and both run at once; where the
// browser has no worker to give, the page runs them itself, piece by piece.
import startWorker from 'embedded:worker';
import { Tester } from './tester.js';

/** @typedef {import('./tester.js').Request} Request */
/** @typedef {{share: number, words: string}} Progress */
/** @typedef {{results: Uint8Array[]} | {refused: string} | {cancelled: true}} Outcome */

const breath = () => new Promise((done) => setTimeout(done));

export class Run {
  /** @param {Tester} tester @param {(progress: Progress) => void} tell */
  constructor(tester, tell) {
    this.tester = tester;
    this.tell = tell;
    this.cancelled = false;
    /** @type {Progress[]} */
    this.progress = [];
    /** @type {Worker[]} */
    this.workers = [];
    /** @type {() => void} */
    this.broken = () => {};
  }

  /** @param {Request} request @returns {Promise<Outcome>} */
  async start(request) {
    const sides = request.texts[1] === null ? [0] : [0, 1];
    this.progress = sides.map(() => ({ share: 0, words: '' }));
    const end = new Promise((done) => { this.broken = () => done({ cancelled: true }); });
    const all = Promise.all(sides.map((side) => this.#side(request, side)))
      .then((results) => ({ results }), (error) => ({ refused: error.message }));
    const outcome = await /** @type {Promise<Outcome>} */ (Promise.race([all, end]));
    this.#dismiss();
    return outcome;
  }

  cancel() {
    this.cancelled = true;
    this.#dismiss();
    this.broken();
  }

  #dismiss() {
    for (const worker of this.workers) worker.terminate();
    this.workers = [];
  }

  /** @param {number} side @param {Progress} progress */
  #note(side, progress) {
    if (this.cancelled) return;
    this.progress[side] = progress;
    const least = this.progress.reduce((a, b) => (b.share < a.share ? b : a));
    const letter = this.progress.length > 1 ? `${'AB'[this.progress.indexOf(least)]}. ` : '';
    const share = this.progress.reduce((sum, one) => sum + one.share, 0) / this.progress.length;
    this.tell({ share, words: letter + least.words });
  }

  /** @param {Request} request @param {number} side @returns {Promise<Uint8Array>} */
  async #side(request, side) {
    const { module } = this.tester.core;
    const worker = module && await startWorker().catch(() => null);
    if (!worker) return this.#here(request, side);
    if (this.cancelled) worker.terminate();
    this.workers.push(worker);
    return new Promise((done, fail) => {
      worker.onmessage = ({ data }) => {
        if (data.progress) this.#note(side, data.progress);
        else if (data.result) done(data.result);
        else fail(new Error(data.refused));
      };
      // A worker that cannot even start leaves the work to the page.
      worker.onerror = () => this.#here(request, side).then(done, fail);
      worker.postMessage({ module, request, side });
    });
  }

  /** Without a worker; one side after the other, for they share the page's one tester.
   * @param {Request} request @param {number} side @returns {Promise<Uint8Array>} */
  #here(request, side) {
    this.queue = (this.queue ?? Promise.resolve(new Uint8Array())).then(async () => {
      const refused = this.tester.begin(side);
      if (refused) throw new Error(refused);
      for (;;) {
        await breath();
        const more = !this.cancelled && this.tester.step();
        if (typeof more === 'string') throw new Error(more);
        if (!more) return this.tester.result(side);
        this.#note(side, this.tester.progress());
      }
    });
    return this.queue;
  }
}
