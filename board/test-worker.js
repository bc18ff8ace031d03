// SPDX-License-Identifier: GPL-3.0-or-later
// Runs in a worker: one side's trial in pieces, with a word after each. Cancelling is ending the worker.
import { Core } from './core.js';
import { Tester } from './tester.js';

/** @typedef {{module: WebAssembly.Module, request: import('./tester.js').Request, side: number}} Order */

/** @param {Order} order */
async function work({ module, request, side }) {
  const tester = new Tester(new Core(await WebAssembly.instantiate(module, {})));
  const refused = tester.prepare(request) ?? tester.begin(side);
  if (refused) return postMessage({ refused });
  for (;;) {
    const more = tester.step();
    if (typeof more === 'string') return postMessage({ refused: more });
    if (!more) break;
    postMessage({ progress: tester.progress() });
  }
  postMessage({ result: tester.result(side) });
}

addEventListener('message', ({ data }) => {
  work(data).catch((error) => postMessage({ refused: `the test broke off: ${error.message}` }));
});
