// SPDX-License-Identifier: GPL-3.0-or-later
// What this coach likes, whatever the document: the look and the habit of lines. Kept by the browser
// when it keeps anything; a page without it begins as it would for a stranger.

const key = 'breakwater-taste-1'; // of no document

/** @typedef {{theme?: string, lines?: number}} Taste */

/** @returns {Taste} */
export function taste() {
  try {
    const kept = JSON.parse(localStorage.getItem(key) ?? '{}');
    return kept && typeof kept === 'object' ? kept : {};
  } catch {
    return {};
  }
}

/** @param {Taste} news */
export function keepTaste(news) {
  try {
    localStorage.setItem(key, JSON.stringify({ ...taste(), ...news }));
  } catch {
    // A browser that keeps nothing: the choice holds for this visit, as it would for a stranger.
  }
}
