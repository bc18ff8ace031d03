// SPDX-License-Identifier: GPL-3.0-or-later
// The core's page of ink on a canvas: on the screen, and as a picture by itself.
import { pageSize, paint } from './paint.js';

/** @typedef {import('./board.js').Board} Board */

const mostPixels = 4e6; // of a canvas on the screen

/** @param {HTMLCanvasElement} canvas */
function context(canvas) {
  return /** @type {CanvasRenderingContext2D} */ (canvas.getContext('2d'));
}

/**
 * Sizes a canvas to the core's page and paints it, sharp on a dense screen.
 * @param {Board} board @param {HTMLCanvasElement} canvas @param {number} scale CSS px in a point
 */
export function show(board, canvas, scale) {
  const page = pageSize(board.core);
  const width = page.width * scale, height = page.height * scale;
  const ratio = Math.min(devicePixelRatio, Math.sqrt(mostPixels / (width * height)));
  const across = Math.round(width * ratio), down = Math.round(height * ratio);
  if (canvas.width !== across || canvas.height !== down) {
    canvas.width = across;
    canvas.height = down;
    canvas.style.width = `${width}px`;
    canvas.style.height = `${height}px`;
  }
  paint(context(canvas), board.core, board.look, board.roles, scale * ratio, ratio);
}

/**
 * The core's page as a picture, on the theme's own ground.
 * @param {Board} board @param {number} scale CSS px in a point
 * @param {number} times pixels in a CSS px
 */
export function picture(board, scale, times) {
  const canvas = document.createElement('canvas'), page = pageSize(board.core);
  canvas.width = Math.round(page.width * scale * times);
  canvas.height = Math.round(page.height * scale * times);
  const c = context(canvas);
  paint(c, board.core, board.look, board.roles, scale * times, times);
  c.globalCompositeOperation = 'destination-over';
  c.fillStyle = board.look.colours[board.roles.indexOf('page')];
  c.setTransform(1, 0, 0, 1, 0, 0);
  c.fillRect(0, 0, canvas.width, canvas.height);
  return canvas;
}
