// SPDX-License-Identifier: GPL-3.0-or-later
// What a suggestion says: its rows, each one thing to take, and its evidence in words.

/**
 * @typedef {{before: number, after: number, gain: number, more_than_chance: boolean,
 *   in_100_breaks: string}} Gain
 * @typedef {{what: string, key: string, spots: string[], unit: string, before: number, after: number,
 *   practice: number}} Turn
 * @typedef {{spot: string, x: number, y: number, new_x: number, new_y: number}} Home
 * @typedef {{on: string, held_out: boolean, level?: string, breaks: number, seeds: number, typical: Gain,
 *   best: Gain}} Evidence
 * @typedef {{spot: string, spots: string[], cost_by_out_then_right: (number | null)[][]}} Map goals a
 *   break more, by places out and then to the right; null: a place that cannot be had
 * @typedef {{units: string, defenders: number, shape: string, candidates: number,
 *   training_breaks: number, numbers: Turn[], homes: Home[], goals_a_break: Evidence[],
 *   verdict: string, limits: string[], precision: {step: number, chance: number, homes: Map[]}}}
 *   Suggestion what `breakwater tune --json` writes
 * @typedef {{name: string, words: string, spots: string[], key: string, after: number}} Row
 *   a man or a pair (spots), or a number of the rule (key)
 */

/** @param {string} words */
const capital = (words) => words[0].toUpperCase() + words.slice(1);

/** @param {Turn} turn @param {number} value */
const shown = ({ unit }, value) => value.toFixed(unit ? 1 : 2);

/** @param {Turn} turn */
function turned(turn) {
  const unit = turn.unit && ` ${turn.unit}`;
  return `${shown(turn, turn.before)} to ${shown(turn, turn.after)}${unit}`;
}

/** One row for each man or pair and each number that changes. @param {Suggestion} suggestion */
export function rowsOf(suggestion) {
  /** @type {Row[]} */
  const rows = [];
  for (const turn of suggestion.numbers) {
    if (turn.before === turn.after) continue;
    const [name] = turn.what.split(', '), way = turn.spots.length > 0 ? `${turn.key} ` : '';
    const row = turn.spots.length > 0 && rows.find(({ spots }) => spots.join() === turn.spots.join());
    if (row) row.words += `; ${way}${turned(turn)}`;
    else {
      rows.push({ name: capital(name), words: capital(`${way}${turned(turn)}`), spots: turn.spots,
        key: turn.key, after: turn.after });
    }
  }
  return rows;
}

/** How many numbers stay as they are, in words, or nothing. @param {Suggestion} suggestion */
export function keptOf({ numbers }) {
  const kept = numbers.filter(({ before, after }) => before === after).length;
  if (kept === numbers.length) return 'Nothing better was found: every number stays as it is.';
  return kept > 0 ? `${kept} of ${numbers.length} numbers stay as they are.` : '';
}

/** @param {Evidence} one */
export function headOf(one) {
  const level = one.level ? ` (${one.level.replace('-', ' ')})` : '';
  const breaks = one.breaks === 1 ? '1 break' : `${one.breaks} breaks`;
  return `${one.held_out ? 'Held out' : 'Tried on'}: ${one.on}${level}, ${breaks}, ${one.seeds} seeds`;
}

/** @param {Evidence} one */
export function linesOf({ typical, best }) {
  return [`Typical play, the forecast: ${typical.in_100_breaks}.`,
    `Best play, the stress test: ${best.in_100_breaks}.`];
}
