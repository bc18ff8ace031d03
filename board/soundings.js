// SPDX-License-Identifier: GPL-3.0-or-later
// Where a yard matters: what it costs the picked man to stand off his suggested home, as soundings.
import { find, write } from './dom.js';
import { show } from './easel.js';

/** @typedef {import('./board.js').Board} Board */
/** @typedef {import('./core.js').Token} Token */
/** @typedef {import('./suggestion.js').Suggestion} Suggestion */

const scale = 4 / 3, widest = 420; // CSS px in a point; of the picture
const two = 2;                     // places off in the sentence

/** @param {number} goals a break */
const inHundred = (goals) => `${goals >= 0.0005 ? '+' : ''}${(100 * goals).toFixed(1)}`;

export class Soundings {
  /** @param {Board} board */
  constructor(board) {
    this.board = board;
    this.canvas = find('suggest-map', HTMLCanvasElement);
    this.drawn = '';
  }

  /** The map of the man who is picked, drawn anew when it would look different.
   * @param {Suggestion} suggestion @param {Token | null} man */
  show(suggestion, man) {
    const map = man && suggestion.precision.homes.find(({ spots }) => spots.includes(man.code));
    this.canvas.hidden = !map;
    const room = Math.min(/** @type {HTMLElement} */ (this.canvas.parentElement).clientWidth, widest);
    const now = [map?.spot, man?.code, room, devicePixelRatio, this.board.look.colours.join()].join();
    if (now === this.drawn) return;
    this.drawn = now;
    if (!man || !map) {
      this.#say('Where a yard matters', 'Pick a man on the chart to see how much a yard matters there.', '');
      return;
    }
    // The map is of the right one of a pair; his image's is its mirror image.
    const costs = map.cost_by_out_then_right.map((line) => (man.code === map.spot ? line : [...line].reverse()));
    this.#draw(suggestion, man, costs, room);
    this.#write(suggestion, man, costs);
  }

  /** @param {Suggestion} suggestion @param {Token} man @param {(number | null)[][]} costs
   * @param {number} room */
  #draw({ precision, homes }, man, costs, room) {
    const { call } = this.board.core, home = homes.find(({ spot }) => spot === man.code);
    if (!home || room < 150) return;
    call.sound_begin(home.new_x, home.new_y, precision.step, precision.chance);
    costs.forEach((line, out) => line.forEach((cost, across) => {
      if (cost !== null) call.sound(out, across, cost);
    }));
    call.soundings(man.index, room / scale);
    show(this.board, this.canvas, scale);
  }

  /** @param {Suggestion} suggestion @param {Token} man @param {(number | null)[][]} costs */
  #write({ precision, units }, man, costs) {
    const unit = units === 'm' ? 'metre' : 'yard', middle = (costs.length - 1) / 2;
    const ways = [['in', -two, 0], ['out', two, 0], ['to the left', 0, -two], ['to the right', 0, two]]
      .map(([way, out, across]) => {
        const cost = costs[middle + Number(out)][middle + Number(across)];
        return `${way} ${cost === null ? 'not possible' : inHundred(cost)}`;
      });
    this.#say(`Where a yard matters: ${man.name}`,
      `Round his suggested home, places one ${unit} apart: goals in 100 breaks more (+) or fewer (-) when he `
      + `stands there. Up to ${inHundred(precision.chance)} is chance (tinted): anywhere in there is as good.`,
      `Two ${unit}s ${ways.join(', ')}.`);
  }

  /** @param {string} title @param {string} words @param {string} ways */
  #say(title, words, ways) {
    write(find('suggest-map-title', HTMLElement), title);
    write(find('suggest-map-words', HTMLElement), words);
    write(find('suggest-map-ways', HTMLElement), ways);
  }
}
