// SPDX-License-Identifier: GPL-3.0-or-later
// Three ways to say a place: a tap, the arrow keys or two numbers, a name. All put the same cross, which
// counts only once "Answer" is pressed.
import { button, make } from './dom.js';
import { cross, empty } from './pictures.js';

const fingerWidth = 48; // CSS px: about 9 mm on most screens
const chartWidth = 320; // units of the pictures: BW_HAND_WIDTH

/**
 * @param {import('./main.js').Page} page @param {import('./hand.js').Question} question
 * @param {(x: number, y: number, finger: number) => void} answer @returns {Element[]}
 */
export function askPlace({ hand, about }, question, answer) {
  const svg = empty(question.stage, question.landmark);
  svg.setAttribute('aria-hidden', 'true');
  svg.removeAttribute('role');
  svg.removeAttribute('aria-label');
  const field = make('div', {
    id: 'ask', tabindex: 0, role: 'application',
    'aria-label': 'Field. Tap where you stand, or move the cross with the arrow keys.',
  }, svg);
  const said = make('p', { id: 'at', role: 'status' }, 'Tap the field where you stand.');
  const right = /** @type {HTMLInputElement} */ (make('input', { type: 'number', step: 0.5, inputmode: 'decimal', 'aria-label': `${about.unit} to the right, left with a minus` }));
  const out = /** @type {HTMLInputElement} */ (make('input', { type: 'number', step: 0.5, inputmode: 'decimal', 'aria-label': `${about.unit} out from the goal line` }));
  const names = /** @type {HTMLSelectElement} */ (make('select', { 'aria-label': 'A place by its name' },
    make('option', { value: '' }, 'by name'), ...(question.names ?? []).map((one, i) => make('option', { value: i }, one.name))));
  /** @type {{x: number, y: number, right: number, out: number, words: string} | null} */
  let at = null;
  /** @type {SVGElement[]} */
  let marks = [];
  const done = button('Answer', () => {
    if (!at) return;
    const width = svg.getBoundingClientRect().width || chartWidth;
    answer(at.x, at.y, fingerWidth / 2 * chartWidth / width);
  }, 'main');
  done.disabled = true;

  /** @param {NonNullable<typeof at>} place @param {Element} [typed] the box being typed into */
  const put = (place, typed) => {
    at = place;
    marks.forEach((one) => one.remove());
    marks = cross(place.x, place.y);
    svg.append(...marks);
    said.textContent = `Your answer: ${place.words}`;
    if (typed !== right) right.value = String(place.right);
    if (typed !== out) out.value = String(place.out);
    if (typed !== names) names.value = '';
    done.disabled = false;
  };

  /** @type {number | null} */
  let down = null;
  field.addEventListener('pointerdown', (event) => { down = event.pointerId; });
  field.addEventListener('pointercancel', () => { down = null; });
  field.addEventListener('pointerup', (event) => {
    const matrix = svg.getScreenCTM();
    if (down !== event.pointerId || !matrix) return;
    down = null;
    const box = svg.getBoundingClientRect();
    if (event.clientX < box.left || event.clientX > box.right || event.clientY < box.top || event.clientY > box.bottom) return;
    const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    put(hand.said(hand.call.place(point.x, point.y)));
  });
  /** @type {Record<string, [number, number]>} */
  const ways = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };
  field.addEventListener('keydown', (event) => {
    const way = ways[event.key];
    if (!way && event.key !== 'Enter') return;
    event.preventDefault(); // the page must not scroll, nor this key press what comes next
    if (!way) return done.click();
    const by = event.shiftKey ? 2 : 0.5, now = at ?? { right: 0, out: 5 };
    put(hand.said(hand.call.point(now.right + by * way[0], now.out + by * way[1])));
  });
  for (const box of [right, out]) {
    box.addEventListener('input', () => {
      if (right.value === '' || out.value === '') return;
      put(hand.said(hand.call.point(right.valueAsNumber, out.valueAsNumber)), box);
    });
  }
  names.addEventListener('change', () => {
    const one = question.names?.[Number(names.value)];
    if (one && names.value !== '') put(hand.said(hand.call.place(one.x, one.y)), names);
  });
  return [field, said, done, make('details', { class: 'more' }, make('summary', {}, 'Without tapping'),
    make('div', { class: 'moves' }, make('label', {}, 'right ', right), make('label', {}, 'out ', out)), names)];
}
