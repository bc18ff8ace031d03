// SPDX-License-Identifier: GPL-3.0-or-later
// Undo and redo without limit: every state of the document as its canonical text.

export class History {
  /** @param {string} text */
  constructor(text) {
    /** @type {string[]} */
    this.states = [text];
    this.at = 0;
  }

  get text() { return this.states[this.at]; }
  get canUndo() { return this.at > 0; }
  get canRedo() { return this.at + 1 < this.states.length; }

  /** True when this is news. @param {string} text */
  push(text) {
    if (text === this.text) return false;
    this.states.length = this.at + 1;
    this.states.push(text);
    this.at++;
    return true;
  }

  /** One step back (-1) or forward (1); the text there, or null. @param {number} by */
  step(by) {
    const to = this.at + by;
    if (to < 0 || to >= this.states.length) return null;
    this.at = to;
    return this.text;
  }
}
