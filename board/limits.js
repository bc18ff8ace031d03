// SPDX-License-Identifier: GPL-3.0-or-later
// Boxes of the page that go into the team file: what they may hold is told by the server's own tables, and
// what is too much for it is met here, before it is sent.

/** @typedef {import('./team.js').Table} Table */

/** A box's member in the tables: data-takes="break.note". @param {Record<string, Table>} takes
 * @param {HTMLInputElement} box */
function memberOf(takes, box) {
  const [table, key] = (box.dataset.takes ?? '').split('.');
  return takes[table]?.[key];
}

/** Tells the boxes of a form their ranges. Numbers in another unit than the file's come with what one of
 * it is there. @param {HTMLElement} form @param {Record<string, Table>} takes @param {number} [unit] */
export function tellBoxes(form, takes, unit = 1) {
  for (const box of form.querySelectorAll('input[data-takes]')) {
    if (!(box instanceof HTMLInputElement)) continue;
    const { is, least = 0, most = 0 } = memberOf(takes, box) ?? {}, by = box.dataset.takes?.endsWith('_m') ? unit : 1;
    if (is !== 'number') continue;
    // What the range is cut to lies within it.
    box.min = String(Math.ceil(least / by * 100 - 1e-6) / 100);
    box.max = String(Math.floor(most / by * 100 + 1e-6) / 100);
  }
}

/** A sentence about the first text of a form that the file has no room for, and its box; null when all fit.
 * The file counts bytes: letters beyond English take two to four.
 * @param {HTMLElement} form @param {Record<string, Table>} takes */
export function tooLong(form, takes) {
  for (const box of form.querySelectorAll('input[data-takes]')) {
    if (!(box instanceof HTMLInputElement)) continue;
    const { is, most = 0 } = memberOf(takes, box) ?? {};
    const over = is === 'text' ? new TextEncoder().encode(box.value.trim()).length - most : 0;
    if (over <= 0) continue;
    const name = box.labels?.[0]?.firstChild?.textContent?.trim() ?? 'This';
    return { box, words: `${name}: there is room for ${most} letters (those with accents count as two), and here are ${over} too many.` };
  }
  return null;
}

/** The same, thrown. @param {HTMLElement} form @param {Record<string, Table>} takes */
export function mustFit(form, takes) {
  const long = tooLong(form, takes);
  if (!long) return;
  long.box.focus();
  throw new Error(long.words);
}
