// SPDX-License-Identifier: GPL-3.0-or-later
// What this phone remembers: spots, cards, quizzes and colours. The key carries the document's id and the
// edition of its text, since all pages opened from files may share one storage.

/** @typedef {{day: number, asked: number, right: number, code: string,
 *   answers: {card: string, right: boolean, x: number | null, y: number | null, ms: number}[]}} Taken */
/** @typedef {{version: 1, spots: Record<string, string>, cards: Record<string, number[]>,
 *   quizzes: Taken[], theme: string}} Kept */

const mostQuizzes = 60;

/** @returns {Kept} */
const nothing = () => ({ version: 1, spots: {}, cards: {}, quizzes: [], theme: '' });

/** @param {unknown} value @returns {value is Kept} */
function isKept(value) {
  const kept = /** @type {Partial<Kept> | null} */ (value);
  return typeof kept === 'object' && kept !== null && kept.version === 1 && typeof kept.spots === 'object'
    && typeof kept.cards === 'object' && Array.isArray(kept.quizzes) && typeof kept.theme === 'string';
}

export class Keep {
  /** @param {string} document @param {number} edition @param {(words: string) => void} say */
  constructor(document, edition, say) {
    this.key = `breakwater-handout:1:${document}:${edition}`;
    this.say = say;
    this.data = nothing();
    try {
      const text = localStorage.getItem(this.key);
      const value = text === null ? null : JSON.parse(text);
      if (isKept(value)) this.data = value;
      say('Your answers are kept on this phone, in this browser, for this hand-out only.');
    } catch {
      this.refused();
    }
  }

  refused() {
    this.say('This browser refuses to store anything here, so your answers are gone when you close the page. '
      + 'Write the result code down if your coach wants it.');
  }

  save() {
    this.data.quizzes = this.data.quizzes.slice(-mostQuizzes);
    try {
      localStorage.setItem(this.key, JSON.stringify(this.data));
    } catch {
      this.refused();
    }
  }

  forget() {
    this.data = { ...nothing(), spots: this.data.spots, theme: this.data.theme };
    try {
      localStorage.removeItem(this.key);
    } catch {
      this.refused();
    }
    this.save();
  }
}
