// SPDX-License-Identifier: GPL-3.0-or-later
// The chart as a picture file: pixels, or lines that stay sharp at any size.
import { find } from './dom.js';
import { picture } from './easel.js';
import { fileName } from './files.js';
import { themeNumber } from './look.js';
import { download } from './savers.js';

/** @typedef {import('./board.js').Board} Board */
/** @typedef {() => Promise<Uint8Array>} Load */
/** @typedef {{regular: Load, bold: Load}} Fonts */

const magnify = 3; // pixels of a picture for each CSS px of the chart
const width = 560; // of a picture of the field, points: the same from every device

/** @param {Uint8Array} bytes */
function base64(bytes) {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text);
}

/** The font goes with an SVG, as it does with the native program's. @param {Fonts} fonts */
async function faces(fonts) {
  const files = [base64(await fonts.regular()), base64(await fonts.bold())];
  return files.map((file, i) => `@font-face{font-family:B612;font-weight:${i === 0 ? 400 : 700};`
    + `src:url(data:font/otf;base64,${file})}`).join('');
}

/** What is to be a picture, into the core's ink: of a mode that has its own, or the field.
 * @param {Board} board @returns {{scale: number, name: string} | null} */
function draw(board) {
  const mode = board.modes.now;
  if (mode?.picture) return mode.picture();
  const { core } = board;
  core.call.say();
  core.call.picture(width, core.write(edition()));
  board.wake(); // the core's chart is the picture's now, not the page's
  return { scale: board.look.scale, name: board.view.title };
}

/** Which state of the scheme it is, for who finds the picture later. */
function edition() {
  return `As of ${new Date().toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' })}.`;
}

/** @param {Board} board @param {number} scale */
async function asPixels(board, scale) {
  const canvas = picture(board, scale, magnify);
  /** @type {Blob | null} */
  const blob = await new Promise((done) => canvas.toBlob(done));
  return blob;
}

/** The core writes it from the ink it draws. @param {Board} board @param {Fonts} fonts */
async function asLines(board, fonts) {
  const { core } = board, style = core.encoder.encode(await faces(fonts));
  draw(board); // anew: something else may have been drawn while the fonts came
  core.bytes.set(style, core.input);
  const length = core.call.svg(themeNumber(board.theme), style.length), at = core.call.output();
  return length > 0 ? new Blob([core.bytes.slice(at, at + length)], { type: 'image/svg+xml' }) : null;
}

/** @param {Board} board @param {Fonts} fonts */
export function offerPictures(board, fonts) {
  /** @param {string} kind @param {(scale: number) => Promise<Blob | null>} make */
  const hand = async (kind, make) => {
    const drawn = draw(board);
    if (!drawn) {
      board.warn('There is no picture here yet.');
      return;
    }
    const blob = await make(drawn.scale);
    board.warn(blob ? null : 'The picture could not be made: this browser gave no image.');
    if (!blob) return;
    const name = `${fileName(drawn.name)}.${kind}`;
    download(blob, name);
    board.say(`Picture handed to the browser's downloads as ${name}.`);
  };
  find('picture', HTMLButtonElement).addEventListener('click', () =>
    hand('png', (scale) => asPixels(board, scale)));
  find('drawing', HTMLButtonElement).addEventListener('click', () =>
    hand('svg', () => asLines(board, fonts)));
}
