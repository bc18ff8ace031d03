// SPDX-License-Identifier: GPL-3.0-or-later
// How much room the page has for the chart and for the key below it, CSS px.

const leastKey = 260;          // a narrower key gets a row of its own
const over = 13.2, tabs = 50;  // above the chart at the top of the page, rem; more with tabs, CSS px
const largest = 1.8;           // CSS px in a point; on the whole screen it is larger (full.js)
const under = 90;              // kept for the key below it, when it needs no more
const low = '(max-height: 31.99rem) and (min-width: 36rem)'; // as in style.css: the chart stands beside all else

/** @typedef {{width: number, height: number, key: number, scale: number}} Room the chart's scale: CSS px in a point */

/** The width of the page's first column. @param {HTMLElement} main */
function column(main) {
  const style = getComputedStyle(main), first = parseFloat(style.gridTemplateColumns);
  return style.display === 'grid' && first > 0 ? first : main.clientWidth - 2 * parseFloat(style.paddingLeft);
}

/** @param {boolean} wide two columns @param {number} key its height */
function tall(wide, key) {
  const root = document.documentElement.classList;
  const rem = parseFloat(getComputedStyle(document.documentElement).fontSize);
  const top = over * rem + (root.contains('tabbed') ? tabs : 0);
  if (wide) return Math.max(300, innerHeight - top - Math.max(under, key + 10)); // it stays in sight with its key
  if (root.contains('watch')) return innerHeight * 0.4;
  return innerWidth > innerHeight ? Math.max(240, innerHeight - top) : innerHeight * 0.72;
}

/** Asking a page for its sizes is slow: only after something may have changed them.
 * @param {HTMLElement} box of the chart @param {HTMLElement} key @returns {Room} */
export function roomFor(box, key) {
  const main = /** @type {HTMLElement} */ (box.closest('main'));
  const beside = window.matchMedia(low).matches, row = /** @type {HTMLElement} */ (key.parentElement);
  const width = column(main);
  const height = beside ? innerHeight - 16 : tall(window.matchMedia('(min-width: 60rem)').matches, key.clientHeight);
  const zoom = /** @type {HTMLElement} */ (document.getElementById('zoom'));
  const wide = beside ? row.clientWidth : width;
  const left = wide - zoom.offsetWidth - parseFloat(getComputedStyle(row).columnGap) - 1;
  return { width, height: Math.max(height, 200), key: left < leastKey ? wide : left, scale: Math.min(largest, width / 520) };
}
