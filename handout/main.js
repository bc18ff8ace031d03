// SPDX-License-Identifier: GPL-3.0-or-later
// The hand-out: a plain page of pictures that becomes a thing to walk through, watch and answer.
import loadCore from 'embedded:core';
import { find } from './dom.js';
import { Hand } from './hand.js';
import { Keep } from './keep.js';
import { offerLearn } from './learn.js';
import { offerPicks } from './picks.js';
import { offerQuiz } from './quiz.js';
import { offerWatch } from './watch.js';

/** @typedef {{hand: Hand, about: import('./hand.js').About, keep: Keep, stage: number, spots: number[],
 *   edition: number, passSolid: boolean, weak: number[][], changed: (() => void)[]}} Page */

/** What can be told when something is missing. @param {string} words */
function notice(words) {
  const element = find('notice', HTMLElement);
  element.textContent = words;
  element.hidden = false;
}

async function makeHand() {
  if (typeof WebAssembly === 'undefined' || typeof DecompressionStream === 'undefined') {
    notice('This browser is too old for the film and the quiz. Every picture and every answer is below.');
    return null;
  }
  const { instance } = await WebAssembly.instantiate(await loadCore(), {});
  return new Hand(instance);
}

function offerModes() {
  const picks = find('picks', HTMLElement);
  const buttons = [...document.querySelectorAll('#nav button')];
  for (const button of buttons) {
    button.addEventListener('click', () => {
      for (const one of buttons) {
        const on = one === button, id = /** @type {HTMLElement} */ (one).dataset.mode ?? '';
        one.setAttribute('aria-pressed', String(on));
        find(id, HTMLElement).hidden = !on;
      }
      picks.hidden = button.id === 'to-quiz' && document.querySelector('#quiz .asked') !== null;
    });
  }
}

/** @param {Keep} keep */
function offerLooks(keep) {
  const theme = find('theme', HTMLSelectElement), root = document.documentElement;
  const dark = matchMedia('(prefers-color-scheme: dark)').matches;
  theme.value = keep.data.theme || (dark ? 'dark' : 'chart');
  root.dataset.theme = theme.value;
  theme.addEventListener('change', () => {
    root.dataset.theme = keep.data.theme = theme.value;
    keep.save();
  });
}

async function start() {
  const data = JSON.parse(find('data', HTMLScriptElement).textContent ?? '');
  if (data.version !== 1) return notice('This page is newer than its program. Every picture is below.');
  const hand = await makeHand();
  if (!hand) return;
  if (!hand.take(data.scheme)) return notice('The plan in this page is damaged. Every picture is below.');
  const keep = new Keep(data.scheme.id ?? '', data.edition, (words) => {
    find('kept', HTMLElement).textContent = words;
  });
  /** @type {Page} */
  const page = {
    hand, about: hand.about(), keep, stage: 0, spots: [], edition: data.edition, passSolid: data.passSolid,
    weak: data.weak, changed: [],
  };
  for (const [stage, , to, spot, weakness] of page.weak) hand.call.weak(stage, to, spot, weakness);
  offerLooks(keep);
  offerModes();
  offerLearn(page);
  offerWatch(page);
  offerQuiz(page);
  offerPicks(page, data.spot);
  find('key-here', HTMLElement).append(.../** @type {Element} */ (document.querySelector('#key')).children);
  find('book', HTMLElement).hidden = true;
  find('app', HTMLElement).hidden = false;
  document.documentElement.dataset.ready = '';
}

start().catch(() => notice('The film and the quiz did not start. Every picture and every answer is below.'));
