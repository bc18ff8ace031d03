// SPDX-License-Identifier: GPL-3.0-or-later
// The chart as a picture file: pixels, or lines that stay sharp at any size.
import { find } from './dom.js';
import { picture } from './easel.js';
import { fileName } from './files.js';
import { download } from './savers.js';

/** @typedef {import('./board.js').Board} Board */
/** @typedef {() => Promise<Uint8Array>} Load */
/** @typedef {{regular: Load, bold: Load}} Fonts */

const magnify = 3; // pixels of a picture for each CSS px of the chart

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

/** @param {Board} board */
async function asPixels(board) {
  const canvas = picture(board, board.field.scale, magnify);
  /** @type {Blob | null} */
  const blob = await new Promise((done) => canvas.toBlob(done));
  return blob;
}

/** The core writes it from the ink it draws. @param {Board} board @param {Fonts} fonts */
async function asLines(board, fonts) {
  const { core } = board, style = core.encoder.encode(await faces(fonts));
  board.field.draw();
  core.bytes.set(style, core.input);
  const length = core.call.svg(board.theme, style.length), at = core.call.output();
  return length > 0 ? new Blob([core.bytes.slice(at, at + length)], { type: 'image/svg+xml' }) : null;
}

/** @param {Board} board @param {Fonts} fonts */
export function offerPictures(board, fonts) {
  /** @param {Blob | null} blob @param {string} kind */
  const hand = (blob, kind) => {
    if (!blob) {
      board.warn('The picture could not be made: this browser gave no image.');
      return;
    }
    const name = `${fileName(board.view.title)}.${kind}`;
    download(blob, name);
    board.say(`Picture handed to the browser's downloads as ${name}.`);
  };
  find('picture', HTMLButtonElement).addEventListener('click', async () => {
    board.field.draw();
    hand(await asPixels(board), 'png');
  });
  find('drawing', HTMLButtonElement).addEventListener('click', async () => {
    hand(await asLines(board, fonts), 'svg');
  });
}
