// SPDX-License-Identifier: GPL-3.0-or-later
// Dialogs over the board, made when they are first opened.

/**
 * A new element with a text and attributes.
 * @template {keyof HTMLElementTagNameMap} K
 * @param {K} kind @param {string} [text] @param {Record<string, string>} [attributes]
 * @returns {HTMLElementTagNameMap[K]}
 */
export function make(kind, text = '', attributes = {}) {
  const element = document.createElement(kind);
  element.textContent = text;
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  return element;
}

/** A button that does something. @param {string} text @param {() => void} act */
export function button(text, act) {
  const element = make('button', text, { type: 'button' });
  element.addEventListener('click', act);
  return element;
}

/** A dialog with a heading and a button that closes it; what is given goes between.
 * @param {string} id @param {string} title @param {(HTMLElement | SVGElement)[]} content */
export function pane(id, title, content) {
  const dialog = make('dialog', '', { id, 'aria-labelledby': `${id}-title` });
  const row = make('div', '', { class: 'row' });
  row.append(button('Close', () => dialog.close()));
  dialog.append(make('h2', title, { id: `${id}-title` }), ...content, row);
  document.body.append(dialog);
  return dialog;
}
