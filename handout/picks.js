// SPDX-License-Identifier: GPL-3.0-or-later
// Which stage is looked at, and which spot is yours in each.
import { find, make } from './dom.js';

/** @typedef {import('./main.js').Page} Page */

/** One choice of a group. @param {string} group @param {number} value @param {string} large
 * @param {string} small @param {() => void} act */
function choice(group, value, large, small, act) {
  const input = /** @type {HTMLInputElement} */ (make('input', { type: 'radio', name: group, value }));
  input.addEventListener('change', act);
  return make('label', {}, input, make('span', {}, large, make('small', {}, small)));
}

/** The cards are new: what was kept of them goes back. @param {Page} page */
export function putCards({ hand, keep }) {
  for (let i = 0; i < hand.call.cards(); i++) {
    const kept = keep.data.cards[hand.said(hand.call.card(i)).key];
    if (Array.isArray(kept) && kept.every(Number.isFinite)) {
      hand.call.put_card(i, kept[0], kept[1], kept[2], kept[3], kept[4]);
    }
  }
}

/** Your spot in a stage; and, where you have none yet, in the others that know its code.
 * @param {Page} page @param {number} stage @param {string} id */
function pick(page, stage, id) {
  page.about.stages.forEach(({ defenders, spots }, s) => {
    const spot = spots.findIndex((one) => one.id === id);
    if (spot < 0 || (s !== stage && page.spots[s] >= 0)) return;
    page.spots[s] = spot;
    page.keep.data.spots[defenders] = id;
    page.hand.call.pick(s, spot);
  });
}

/** @param {Page} page */
function showSpots(page) {
  const group = find('spots', HTMLFieldSetElement), { spots } = page.about.stages[page.stage];
  while (group.children.length > 1) group.lastElementChild?.remove();
  spots.forEach(({ id, name }, i) => {
    const label = choice('spot', i, id, name, () => {
      pick(page, page.stage, id);
      putCards(page);
      page.keep.save();
      page.changed.forEach((tell) => tell());
    });
    if (page.spots[page.stage] === i) /** @type {HTMLInputElement} */ (label.querySelector('input')).checked = true;
    group.append(label);
  });
}

/** @param {Page} page @param {string} own the spot this copy was made for, or '' */
export function offerPicks(page, own) {
  const stages = find('stages', HTMLFieldSetElement);
  page.spots = page.about.stages.map(() => -1);
  page.about.stages.forEach(({ defenders, spots }, s) => {
    const kept = page.keep.data.spots[defenders];
    if (spots.some((one) => one.id === kept)) pick(page, s, kept);
  });
  page.about.stages.forEach((_, s) => { if (own && page.spots[s] < 0) pick(page, s, own); });
  putCards(page);
  const first = page.spots.findIndex((spot) => spot >= 0);
  page.stage = Math.max(first, 0);
  page.changed.unshift(() => showSpots(page));
  page.about.stages.forEach(({ defenders }, s) => {
    const shape = document.querySelector(`#book .stage[data-stage="${s}"] h2`)?.textContent?.split(',')[0] ?? '';
    const label = choice('stage', s, String(defenders), shape, () => {
      page.stage = s;
      page.changed.forEach((tell) => tell());
    });
    if (s === page.stage) /** @type {HTMLInputElement} */ (label.querySelector('input')).checked = true;
    stages.append(label);
  });
  page.changed.forEach((tell) => tell());
}
