// SPDX-License-Identifier: GPL-3.0-or-later
// Elements of the page, found and written to.

/**
 * The element with this id, of this kind.
 * @template {HTMLElement} T
 * @param {string} id @param {new () => T} kind @returns {T}
 */
export function find(id, kind) {
  const element = document.getElementById(id);
  if (!(element instanceof kind)) throw new Error(`no ${kind.name} #${id}`);
  return element;
}

/** @param {HTMLElement} element @param {string} text */
export function write(element, text) {
  if (element.textContent !== text) element.textContent = text;
}

/** A select's options, anew only when they differ.
 * @param {HTMLSelectElement} select @param {string[]} names */
export function offer(select, names) {
  const now = [...select.options].map((option) => option.text);
  if (now.length === names.length && now.every((name, i) => name === names[i])) return;
  select.replaceChildren(...names.map((name, i) => new Option(name, String(i))));
}

/** Chooses the radio button with this value. @param {HTMLElement} group @param {number} value */
export function check(group, value) {
  const radio = group.querySelector(`input[value="${value}"]`);
  if (radio instanceof HTMLInputElement && !radio.checked) radio.checked = true;
}

/** The value of the chosen radio button. @param {HTMLElement} group */
export function chosen(group) {
  return Number(/** @type {HTMLInputElement} */ (group.querySelector('input:checked')).value);
}
