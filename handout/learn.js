// SPDX-License-Identifier: GPL-3.0-or-later
// Walking through the ball places of a stage: a still each, your own line first.
import { find, make } from './dom.js';
import { article, ringMan } from './pictures.js';

/** @param {import('./main.js').Page} page */
export function offerLearn(page) {
  const place = find('place', HTMLSelectElement), shown = find('shown', HTMLElement);
  const { places } = page.about;
  place.append(...places.map(({ name }, i) => make('option', { value: i }, `Ball: ${name}`)));

  const show = () => {
    const one = article(page.stage, place.selectedIndex), spot = page.spots[page.stage];
    const svg = /** @type {SVGSVGElement} */ (one.querySelector('svg'));
    if (spot >= 0) {
      ringMan(svg, spot);
      one.querySelector(`.jobs [data-spot="${spot}"]`)?.classList.add('you');
    } else {
      one.append(make('p', { class: 'quiet' }, 'Pick your spot above to see what is yours.'));
    }
    shown.replaceChildren(one);
  };
  /** @param {number} by */
  const step = (by) => {
    place.selectedIndex = (place.selectedIndex + by + places.length) % places.length;
    show();
  };
  place.addEventListener('change', show);
  find('before', HTMLElement).addEventListener('click', () => step(-1));
  find('after', HTMLElement).addEventListener('click', () => step(1));
  page.changed.push(show);
}
