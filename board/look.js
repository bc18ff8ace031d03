// SPDX-License-Identifier: GPL-3.0-or-later
// Themes: the core's colours for canvas and page alike.
import { enumeration } from './abi.js';
import { List } from './core.js';
import { find, offer } from './dom.js';
import { keepTaste, taste } from './taste.js';

/** @typedef {import('./core.js').Core} Core */

const Theme = enumeration('theme', 'chart', 'sun', 'dark');
const Lines = enumeration('lines', 'runSolid', 'passSolid');

/** Names of the core's themes for people; the fourth, for 1-bit printers, is not for screens.
 * @type {{id: keyof typeof Theme, name: string}[]} */
export const themes = [
  { id: 'chart', name: 'Sea chart' },
  { id: 'sun', name: 'Sun' },
  { id: 'dark', name: 'Dark room' },
];

/** What the core calls one of them. @param {number} theme */
export const themeNumber = (theme) => Theme[themes[theme].id];

/**
 * Puts a theme on the page and returns what the painter needs.
 * @param {Core} core @param {number} theme @returns {import('./paint.js').Look}
 */
export function wear(core, theme) {
  const root = document.documentElement, number = themeNumber(theme);
  const colours = core.names(List.roles).map((role, i) => {
    const colour = '#' + core.call.colour(number, i).toString(16).padStart(6, '0');
    root.style.setProperty('--' + role, colour);
    return colour;
  });
  const sun = themes[theme].id === 'sun';
  root.dataset.theme = themes[theme].id;
  root.style.colorScheme = themes[theme].id === 'dark' ? 'dark' : 'light';
  return {
    colours,
    weight: core.call.weight(number),
    least: sun ? 3 : 2,
    scale: sun ? 2 : 4 / 3, // the smallest type of a chart is 9 points
    bold: sun,
  };
}

/** The theme of the last visit; on the first one, dark where the whole machine is dark. */
function firstTheme() {
  const kept = themes.findIndex((one) => one.id === taste().theme);
  if (kept >= 0) return kept;
  const asked = matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'chart';
  return themes.findIndex((one) => one.id === asked);
}

/** The controls of how the field looks. @param {import('./board.js').Board} board */
export function offerLooks(board) {
  const theme = find('theme', HTMLSelectElement), danger = find('danger', HTMLInputElement);
  const lines = find('lines', HTMLSelectElement);
  offer(theme, themes.map((one) => one.name));
  theme.selectedIndex = firstTheme();
  board.dress(theme.selectedIndex);
  theme.addEventListener('change', () => {
    board.dress(theme.selectedIndex);
    keepTaste({ theme: themes[theme.selectedIndex].id });
  });
  offer(lines, ['run solid, pass dashed', 'pass solid, run dashed']);
  lines.selectedIndex = taste().lines === 1 ? 1 : 0;
  const draw = () => board.core.call.lines(lines.selectedIndex === 1 ? Lines.passSolid : Lines.runSolid);
  draw();
  lines.addEventListener('change', () => {
    draw();
    keepTaste({ lines: lines.selectedIndex });
    board.wake();
  });
  danger.addEventListener('change', () => {
    board.core.call.danger(danger.checked ? 1 : 0);
    board.wake();
  });
}
