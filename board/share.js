// SPDX-License-Identifier: GPL-3.0-or-later
// Sharing on the local network: the code and its picture, who has joined, and the end of it. And the
// other side of it: a player's device that asks for the code.
import { button, make, pane } from './panes.js';
import { find } from './dom.js';

/** @typedef {import('./server.js').Server} Server */
/** @typedef {import('./server.js').Sharing} Sharing */

const look = 1500; // ms between two looks while the pane is open
const edge = 4;    // modules of quiet round the picture
const svg = 'http://www.w3.org/2000/svg';

/** The picture, dark on light whatever the theme: that is what cameras read. @param {string[]} rows */
function picture(rows) {
  const side = rows.length + 2 * edge;
  const image = document.createElementNS(svg, 'svg');
  image.setAttribute('viewBox', `0 0 ${side} ${side}`);
  image.setAttribute('role', 'img');
  image.setAttribute('aria-label', 'The address and the code, to scan');
  const paper = document.createElementNS(svg, 'rect'), dark = document.createElementNS(svg, 'path');
  paper.setAttribute('width', String(side));
  paper.setAttribute('height', String(side));
  paper.setAttribute('fill', '#fff');
  dark.setAttribute('d', rows.flatMap((row, y) => [...row].map((module, x) =>
    module === '1' ? `M${x + edge} ${y + edge}h1v1h-1z` : '')).join(''));
  dark.setAttribute('fill', '#000');
  image.append(paper, dark);
  return image;
}

/** "1 h 5 min", "8 min", "under a minute". @param {number} seconds */
function time(seconds) {
  const minutes = Math.floor(seconds / 60);
  if (minutes < 1) return 'under a minute';
  return minutes < 60 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
}

export class Share {
  /** @param {Server} server */
  constructor(server) {
    this.server = server;
    this.timer = 0;
    this.shown = '';
    const opener = find('share', HTMLButtonElement);
    opener.hidden = false;
    opener.addEventListener('click', () => this.open());
    this.words = make('p', '', { role: 'status' });
    this.code = make('div', '', { class: 'join' });
    this.list = make('ul');
    this.minutes = make('input', '', { type: 'number', min: '1', max: '720', value: '120' });
    const label = make('label', 'Minutes ', { class: 'pick' });
    label.append(this.minutes);
    this.begin = button('Share', () => this.act(() => this.server.share(Number(this.minutes.value))));
    this.end = button('End sharing', () => this.act(() => this.server.share(0)));
    const row = make('div', '', { class: 'row' });
    row.append(label, this.begin, this.end);
    this.pane = pane('share-pane', 'Share with the team', [
      make('p', 'Devices on the same network can open the board to look, no more. '
        + 'Others on that Wi-Fi can read what is sent: no surnames, no birth dates.', { class: 'quiet' }),
      row, this.words, this.code, this.list,
    ]);
    this.pane.addEventListener('close', () => clearTimeout(this.timer));
  }

  open() {
    this.pane.showModal();
    this.look();
  }

  /** @param {() => Promise<void>} what */
  async act(what) {
    try {
      await what();
    } catch (error) {
      this.words.textContent = /** @type {Error} */ (error).message;
      return;
    }
    await this.look();
  }

  async look() {
    clearTimeout(this.timer);
    try {
      this.show(await this.server.sharing());
    } catch (error) {
      this.words.textContent = /** @type {Error} */ (error).message;
    }
    if (this.pane.open) this.timer = setTimeout(() => this.look(), look);
  }

  /** @param {Sharing} now */
  show(now) {
    this.end.hidden = !now.wanted && !now.open;
    this.begin.textContent = now.open ? 'Share for so long from now' : 'Share';
    const words = now.open
      ? `Shared for another ${time(now.share_s_left ?? 0)}. `
        + `This code lets one device in and is good for ${time(now.code_s_left ?? 0)}.`
      : now.refused || (now.wanted ? 'Sharing begins ...' : 'Nothing is shared.');
    if (this.words.textContent !== words) this.words.textContent = words;
    const shown = JSON.stringify([now.code, now.address, now.devices.map((device) => device.id)]);
    if (shown === this.shown) return;
    this.shown = shown;
    this.code.replaceChildren();
    if (now.code) {
      if (now.qr) this.code.append(picture(now.qr));
      const text = make('p', 'Scan it, or type ');
      text.append(make('b', now.address), ' and the code ', make('b', now.code));
      this.code.append(text);
    }
    this.list.replaceChildren(...now.devices.map((device) => {
      const name = device.name || `Device ${device.id}`;
      const item = make('li', `${name}, ${device.address}, joined ${time(device.joined_s_ago)} ago `);
      const away = button('Remove', () => this.act(() => this.server.remove(device.id)));
      away.setAttribute('aria-label', `Remove ${name}`);
      item.append(away);
      return item;
    }));
  }
}

/** A player's device asks for the code until it is let in. @param {Server} server
 * @param {string | null} refused why the code in the address was not good */
export function join(server, refused) {
  return new Promise((done) => {
    const words = make('p', refused ?? '', { role: 'status' });
    const code = make('input', '', { type: 'text', autocomplete: 'off', autocapitalize: 'characters' });
    const name = make('input', '', { type: 'text', autocomplete: 'off', maxlength: '24' });
    const label = make('label', 'Code ', { class: 'pick' }), called = make('label', 'Number ', { class: 'pick' });
    label.append(code);
    called.append(name);
    const row = make('div', '', { class: 'row' });
    const enter = async () => {
      try {
        await server.enter('join', code.value.trim(), name.value.trim());
        await server.greet();
        dialog.close();
      } catch (error) {
        words.textContent = /** @type {Error} */ (error).message;
      }
    };
    row.append(label, called, button('Join', enter));
    code.addEventListener('keydown', (event) => { if (event.key === 'Enter') enter(); });
    const dialog = pane('join-pane', 'Join the team', [
      make('p', 'Type the code on the coach\'s screen, and your number if you like.'), row, words,
    ]);
    dialog.addEventListener('close', () => done(undefined));
    dialog.showModal();
  });
}
