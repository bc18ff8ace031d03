// SPDX-License-Identifier: GPL-3.0-or-later
// Paints an ink list (src/draw/ink.h) on a canvas. Nothing is decided here.
import { enumeration } from './abi.js';

/** @typedef {import('./core.js').Core} Core */
/** @typedef {{colours: string[], weight: number, least: number, scale: number, bold: boolean}} Look  least: CSS px
 * of a thin line; scale: the fewest in a point; bold: all words are */

export const family = 'Breakwater B612';

// draw/ink.h
const Ink = enumeration('ink_kind', 'fill', 'stroke', 'text', 'clip', 'unclip');
const Verb = enumeration('verb', 'move', 'line', 'curve', 'shut');
const Cap = enumeration('cap', 'round');
const Weight = enumeration('weight', 'bold');
const Align = enumeration('align', 'leftAlign', 'centreAlign', 'rightAlign');
/** What is read of the list's head. */
const page = { used: 0, width: 0, height: 0 };
const decoration = new Set(['grid', 'contour']);

/** A path's numbers onto the context. @param {CanvasRenderingContext2D} c @param {Float64Array} n */
function trace(c, n) {
  c.beginPath();
  for (let i = 0; i < n.length;) {
    const verb = n[i++];
    if (verb === Verb.move) c.moveTo(n[i++], n[i++]);
    else if (verb === Verb.line) c.lineTo(n[i++], n[i++]);
    else if (verb === Verb.curve) c.bezierCurveTo(n[i++], n[i++], n[i++], n[i++], n[i++], n[i++]);
    else if (verb === Verb.shut) c.closePath();
    else return;
  }
}

/** @param {number} align @returns {CanvasTextAlign} */
const alignment = (align) => (align === Align.leftAlign ? 'left' : align === Align.rightAlign ? 'right' : 'center');

/** The size of the page in the core's ink, points. @param {Core} core */
export function pageSize(core) {
  return core.memory.reader('ink', page)(core.call.ink());
}

/**
 * @param {CanvasRenderingContext2D} c @param {Core} core @param {Look} look
 * @param {string[]} roles @param {number} scale canvas pixels in a point
 * @param {number} pixel canvas pixels in a CSS pixel
 */
export function paint(c, core, look, roles, scale, pixel) {
  const { layout, data, bytes } = core;
  const head = core.call.ink(), field = layout.item.fields;
  const at = (/** @type {string} */ name) => field[name].offset;
  const [kind, role, size, style, align] = ['kind', 'role', 'size', 'style', 'align'].map(at);
  const [length, numbers, text, dash] = ['bytes', 'numbers', 'text', 'dash'].map(at);
  const end = head + data.getInt32(head + layout.ink.fields.used.offset, true);
  const int = (/** @type {number} */ a) => data.getInt32(a, true);
  const thinnest = look.least * pixel / scale;
  c.setTransform(1, 0, 0, 1, 0, 0);
  c.clearRect(0, 0, c.canvas.width, c.canvas.height);
  c.setTransform(scale, 0, 0, scale, 0, 0);
  c.lineJoin = 'round';
  for (let item = head + layout.ink.size; item < end; item += int(item + length)) {
    const n = new Float64Array(data.buffer, item + layout.item.size, int(item + numbers));
    const colour = look.colours[int(item + role)];
    switch (int(item + kind)) {
      case Ink.fill:
        c.fillStyle = colour;
        trace(c, n);
        c.fill();
        break;
      case Ink.stroke: {
        const width = data.getFloat64(item + size, true) * look.weight;
        const thin = decoration.has(roles[int(item + role)]) ? 0 : thinnest;
        const on = data.getFloat64(item + dash, true), off = data.getFloat64(item + dash + 8, true);
        c.strokeStyle = colour;
        c.lineWidth = Math.max(width, thin);
        c.lineCap = int(item + style) === Cap.round ? 'round' : 'butt';
        c.setLineDash(off > 0 ? [on, off] : []);
        trace(c, n);
        c.stroke();
        break;
      }
      case Ink.text: {
        const from = item + layout.item.size + 8 * n.length;
        const words = core.decoder.decode(bytes.subarray(from, from + int(item + text)));
        const bold = look.bold || int(item + style) === Weight.bold ? 'bold ' : '';
        c.fillStyle = colour;
        c.font = `${bold}${data.getFloat64(item + size, true)}px "${family}", sans-serif`;
        c.textAlign = alignment(int(item + align));
        c.fillText(words, n[0], n[1]);
        break;
      }
      case Ink.clip:
        c.save();
        c.beginPath();
        c.rect(n[0], n[1], n[2], n[3]);
        c.clip();
        break;
      case Ink.unclip:
        c.restore();
        break;
    }
  }
}
