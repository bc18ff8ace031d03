// SPDX-License-Identifier: GPL-3.0-or-later
// Forgetting a player: every place that speaks of him is shown, and the coach says of each whether it goes.
import { button, make } from './panes.js';
import { find, write } from './dom.js';
import { mustFit } from './limits.js';

/** @typedef {import('./team.js').Team} Team */
/** @typedef {import('./team.js').Place} Place */

/** @param {string} id */
const box = (id) => find(id, HTMLInputElement);

/** "revisions 1 to 3", nothing outside schemes. @param {Place} place */
function revisions({ first_revision: first, last_revision: last }) {
  if (!first) return '';
  return first === last ? ` (in revision ${first})` : ` (in revisions ${first} to ${last})`;
}

/** Where a place is, and the words around it. @param {Place} place */
function shown(place) {
  const item = make('li'), words = make('p', place.before);
  words.append(make('mark', place.said), place.after);
  item.append(make('p', `${place.where}${revisions(place)}: ${place.what}`, { class: 'quiet' }), words);
  return item;
}

/** @param {number} count @param {string} one */
const counted = (count, one) => `${count} ${one}${count === 1 ? '' : 's'}`;

export class Forget {
  /** @param {Team} team @param {(act: () => Promise<string>) => Promise<void>} attempt says what became of it
   * @param {() => Promise<void>} changed reads the roster anew */
  constructor(team, attempt, changed) {
    this.team = team;
    this.changed = changed;
    this.list = find('forget-list', HTMLFormElement);
    this.places = find('forget-places', HTMLOListElement);
    /** @type {{jersey: number, name?: string, seen: string, places: Place[]} | null} */
    this.looked = null;
    const form = find('forget-form', HTMLFormElement);
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      attempt(() => this.#look());
    });
    this.list.addEventListener('submit', (event) => {
      event.preventDefault();
      attempt(() => this.#forget());
    });
    find('forget-stop', HTMLButtonElement).addEventListener('click', () => this.#close());
  }

  async #look() {
    mustFit(find('forget-form', HTMLFormElement), this.team.known.takes);
    const jersey = box('forget-jersey').valueAsNumber, name = box('forget-name').value.trim();
    const asked = { jersey, ...(name ? { name } : {}) };
    const { seen, places, named } = await this.team.places(asked);
    this.looked = { ...asked, seen, places };
    this.#title(places.length === 0 ? `No text speaks of number ${jersey}`
      : `${counted(places.length, 'place')} that may speak of number ${jersey}`);
    write(find('forget-words', HTMLParagraphElement), `${named ? '' : 'No full name was looked for: the roster has none. '
    }The sprints, quiz results and marks of that number go too. What goes is gone for good; copies and exports made before still have it.`);
    this.places.replaceChildren(...places.map((place) => this.#asked(place)));
    this.#undecided();
    find('forget-go', HTMLButtonElement).hidden = false;
    write(find('forget-go', HTMLButtonElement), `Forget number ${jersey} for good`);
    write(find('forget-stop', HTMLButtonElement), 'Leave everything as it is');
    return find('forget-title', HTMLHeadingElement).textContent ?? '';
  }

  /** Shows the list under a heading, which has the focus. @param {string} words */
  #title(words) {
    const title = find('forget-title', HTMLHeadingElement);
    this.list.hidden = false;
    write(title, words);
    title.focus();
  }

  /** A place with its choice; what is not sure has none yet. @param {Place} place */
  #asked(place) {
    const item = shown(place), choice = make('select', '', { required: '', 'aria-label': `Place ${place.number}` });
    choice.append(new Option('Decide ...', ''), new Option('Goes', 'goes'), new Option('Stays', 'stays'));
    if (place.sure) choice.value = 'goes';
    item.append(choice);
    return item;
  }

  get #choices() { return [...this.places.querySelectorAll('select')]; }

  /** One key for all that is left to decide, when it is much. */
  #undecided() {
    const row = find('forget-all', HTMLDivElement), open = () => this.#choices.filter((one) => one.value === '');
    row.replaceChildren();
    if (open().length < 2) return;
    for (const [words, value] of [['All others go', 'goes'], ['All others stay', 'stays']]) {
      row.append(button(words, () => {
        for (const one of open()) one.value = value;
      }));
    }
  }

  async #forget() {
    if (!this.looked) return '';
    const { jersey, name, seen, places } = this.looked;
    const struck = this.#choices.map((one) => one.value === 'goes');
    const strike = places.filter((_, i) => struck[i]).map((place) => place.number);
    const stay = places.filter((_, i) => !struck[i]);
    const what = await this.team.forget({ jersey, ...(name ? { name } : {}), seen, places: places.length, strike });
    this.looked = null;
    await this.changed();
    find('forget-form', HTMLFormElement).reset();
    const words = `Number ${jersey} is forgotten: ${counted(what.splits, 'sprint')}, ${counted(what.quiz_results, 'quiz result')
    }, his number in ${counted(what.breaks, 'break')}; struck in ${counted(what.texts, 'text')}.`;
    this.#title(words);
    write(find('forget-words', HTMLParagraphElement), stay.length === 0 ? 'No place was left.'
      : `${counted(stay.length, 'place')} ${stay.length === 1 ? 'stays as it was' : 'stay as they were'}:`);
    this.places.replaceChildren(...stay.map(shown));
    find('forget-all', HTMLDivElement).replaceChildren();
    find('forget-go', HTMLButtonElement).hidden = true;
    write(find('forget-stop', HTMLButtonElement), 'Close this list');
    return words;
  }

  #close() {
    this.looked = null;
    this.list.hidden = true;
    this.places.replaceChildren();
    box('forget-jersey').focus();
  }
}
