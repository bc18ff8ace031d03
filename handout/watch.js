// SPDX-License-Identifier: GPL-3.0-or-later
// A rotation as it runs: the ball goes, the unit follows at the speed of the model. Every place is the
// core's, asked for by the time.
import { find, make, mark } from './dom.js';
import { man, picture, ringMan } from './pictures.js';

const step = 0.25; // seconds, where motion is not wanted

/** @param {import('./main.js').Page} page */
export function offerWatch(page) {
  const { hand, about } = page;
  const from = find('from', HTMLSelectElement), to = find('to', HTMLSelectElement);
  const film = find('film', HTMLElement), time = find('time', HTMLInputElement);
  const play = find('play', HTMLButtonElement), slow = find('slow', HTMLInputElement);
  const still = matchMedia('(prefers-reduced-motion: reduce)');
  let seconds = 0, all = 0, running = false, last = 0;
  /** @type {SVGSVGElement | null} */
  let svg = null;
  /** @type {SVGElement | null} */
  let ring = null;

  const starts = [...new Set(about.rotations.map(([a]) => a))];
  from.append(...starts.map((a) => make('option', { value: a }, about.places[a].name)));

  const offerTo = () => {
    const before = to.value;
    const ends = about.rotations.filter(([a]) => a === Number(from.value)).map(([, b]) => b);
    to.replaceChildren(...ends.map((b) => make('option', { value: b }, about.places[b].name)));
    if (ends.includes(Number(before))) to.value = before;
  };

  const words = () => (still.matches ? 'Step' : running ? 'Stop' : seconds >= all ? 'Again' : 'Play');

  const show = () => {
    if (!svg) return;
    const frame = hand.frame(seconds), own = page.spots[page.stage];
    frame.men.forEach(({ x, y, duty }, spot) => {
      const one = man(/** @type {SVGSVGElement} */ (svg), spot);
      const id = about.stages[page.stage].spots[spot].id;
      one?.setAttribute('href', `#m-${id}-${duty}`);
      one?.setAttribute('x', String(x));
      one?.setAttribute('y', String(y));
    });
    if (ring) {
      ring.setAttribute('cx', String(frame.men[own].x));
      ring.setAttribute('cy', String(frame.men[own].y));
    }
    const ball = svg.querySelector('.ball-mark');
    ball?.setAttribute('x', String(frame.x));
    ball?.setAttribute('y', String(frame.y));
    time.value = String(seconds);
    time.setAttribute('aria-valuetext', `${seconds.toFixed(1)} of ${all.toFixed(1)} seconds${frame.moving ? ', ball on its way' : ''}`);
    play.textContent = words();
  };

  const tick = (/** @type {number} */ now) => {
    if (!running) return;
    seconds = Math.min(all, seconds + (now - last) / 1000 * (slow.checked ? 0.5 : 1));
    last = now;
    running = seconds < all;
    show();
    if (running) requestAnimationFrame(tick);
  };

  const load = () => {
    running = false;
    seconds = 0;
    const a = Number(from.value), b = Number(to.value), own = page.spots[page.stage];
    all = hand.call.rotate(page.stage, a, b);
    time.max = String(all);
    svg = picture(page.stage, a);
    const { x, y } = about.places[a], end = about.places[b];
    svg.insertBefore(mark('path', { class: page.passSolid ? 'pass solid' : 'pass', d: `M${x} ${y}L${end.x} ${end.y}` }), svg.children[1] ?? null);
    svg.setAttribute('aria-label', `The ball goes from ${about.places[a].name} to ${end.name}`);
    ring = own >= 0 ? ringMan(svg, own) : null;
    film.replaceChildren(svg);
    find('late', HTMLElement).textContent = hand.said(hand.call.lateness(own))?.words ?? '';
    show();
  };

  from.addEventListener('change', () => { offerTo(); load(); });
  to.addEventListener('change', load);
  time.addEventListener('input', () => {
    running = false;
    seconds = Number(time.value);
    show();
  });
  play.addEventListener('click', () => {
    if (seconds >= all) seconds = 0;
    else if (still.matches) seconds = Math.min(all, seconds + step);
    else running = !running;
    if (seconds === 0 && !still.matches) running = true;
    last = performance.now();
    show();
    if (running) requestAnimationFrame(tick);
  });
  /** The coach's weakest rotation of a stage comes up first. */
  let stage = -1;
  page.changed.push(() => {
    if (stage !== page.stage) {
      stage = page.stage;
      const weak = page.weak.find(([s, a, b]) => s === stage && about.rotations.some(([x, y]) => x === a && y === b));
      if (weak) from.value = String(weak[1]);
      offerTo();
      if (weak) to.value = String(weak[2]);
    }
    load();
  });
}
