// SPDX-License-Identifier: GPL-3.0-or-later
// The pictures that stand in the page, taken up again: nothing is drawn anew but rings and lines.
import { mark } from './dom.js';

/** @param {number} stage @param {number} landmark */
export function article(stage, landmark) {
  const one = document.querySelector(
    `#book .stage[data-stage="${stage}"] article[data-landmark="${landmark}"]`);
  if (!one) throw new Error('a picture is missing');
  return /** @type {HTMLElement} */ (one.cloneNode(true));
}

/** The picture of a ball place. @param {number} stage @param {number} landmark */
export function picture(stage, landmark) {
  return /** @type {SVGSVGElement} */ (article(stage, landmark).querySelector('svg'));
}

/** The same with nobody on it but the ball. @param {number} stage @param {number} landmark */
export function empty(stage, landmark) {
  const svg = picture(stage, landmark);
  for (const man of svg.querySelectorAll('[data-spot]')) man.remove();
  return svg;
}

/** A man's mark in a picture. @param {SVGSVGElement} svg @param {number} spot */
export function man(svg, spot) {
  return /** @type {SVGUseElement | null} */ (svg.querySelector(`[data-spot="${spot}"]`));
}

/** Puts a ring round a man and brings him to the front. @param {SVGSVGElement} svg @param {number} spot */
export function ringMan(svg, spot) {
  const you = man(svg, spot);
  if (!you) return null;
  const ring = mark('circle', { class: 'you-ring', r: 18, cx: you.getAttribute('x') ?? 0, cy: you.getAttribute('y') ?? 0 });
  svg.append(you, ring);
  const ball = svg.querySelector('.ball-mark');
  if (ball) svg.append(ball);
  return ring;
}

/** A cross where somebody tapped. @param {number} x @param {number} y */
export function cross(x, y) {
  const d = `M${x - 8} ${y - 8}L${x + 8} ${y + 8}M${x + 8} ${y - 8}L${x - 8} ${y + 8}`;
  return [mark('path', { class: 'tap', d }), mark('path', { class: 'tap', d })];
}
