// SPDX-License-Identifier: GPL-3.0-or-later
// Elements found and made.

/** The element with an id, of the kind it must be.
 * @template {Element} T @param {string} id @param {new () => T} kind @returns {T} */
export function find(id, kind) {
  const element = document.getElementById(id);
  if (!(element instanceof kind)) throw new Error(`the page has no ${id}`);
  return element;
}

/** @param {string} name @param {Record<string, string | number>} [attributes]
 * @param {...(Node | string)} inside */
export function make(name, attributes = {}, ...inside) {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, String(value));
  element.append(...inside);
  return element;
}

/** @param {string} name @param {Record<string, string | number>} attributes */
export function mark(name, attributes) {
  const element = document.createElementNS('http://www.w3.org/2000/svg', name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, String(value));
  return element;
}

/** A button that does something. @param {string} words @param {() => void} act @param {string} [kind] */
export function button(words, act, kind) {
  const element = /** @type {HTMLButtonElement} */ (make('button', { type: 'button' }, words));
  if (kind) element.className = kind;
  element.addEventListener('click', act);
  return element;
}
