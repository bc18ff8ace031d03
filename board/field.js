// SPDX-License-Identifier: GPL-3.0-or-later
// The chart on the screen: canvas, one real button over each token, and what fingers, mouse and keys
// do to them.
import { Kind, Mode, Part } from './core.js';
import { write } from './dom.js';
import { show } from './easel.js';
import { Bubble } from './bubble.js';
import { roomFor } from './room.js';
import { Zoom } from './zoom.js';

/** @typedef {import('./core.js').View} View */
/** @typedef {import('./core.js').Token} Token */
/** @typedef {import('./board.js').Board} Board */

const hit = 24;           // CSS px from a token's middle that take hold of it at least
const ring = 12;          // points: a mark with its edge pattern
const lean = 8;           // CSS px that the ball is taken for nearer than a man
const still = 4;          // CSS px a finger may slip in a tap
const calloutHalf = 125;  // CSS px: half of the widest callout
const above = 84;         // CSS px (22 mm) from the finger to the callout
const step = 0.5, stride = 2; // shown units an arrow key moves, and with shift

/** May this token be moved in this mode? @param {View} view @param {Token} token */
export function movable(view, token) {
  if (token.kind === Kind.keeper) return false;
  return view.mode !== Mode.homes || token.kind === Kind.defender;
}

/** CSS px by which a token gives way to a neighbour under a finger: while nobody edits, men run by
 * themselves and the ball is meant. @param {View} view @param {Token} token */
function gives(view, token) {
  if (!movable(view, token)) return hit;
  return token.kind === Kind.defender && view.mode === Mode.play ? lean : 0;
}

/** Moves an element without laying the page out anew. @param {HTMLElement} element
 * @param {number} x @param {number} y CSS px */
function put(element, x, y) {
  const quarter = (/** @type {number} */ at) => Math.round(4 * at) / 4; // sizes stay whole
  element.style.translate = `${quarter(x)}px ${quarter(y)}px`;
}

export class Field {
  /** @param {Board} board @param {HTMLElement} box */
  constructor(board, box) {
    this.board = board;
    this.box = box;
    this.canvas = /** @type {HTMLCanvasElement} */ (box.querySelector('#canvas'));
    this.ground = /** @type {HTMLCanvasElement} */ (box.querySelector('#ground'));
    this.grounded = ''; // what the ground was painted for
    this.tokens = /** @type {HTMLElement} */ (box.querySelector('#tokens'));
    this.callout = /** @type {HTMLElement} */ (box.querySelector('output'));
    this.invite = /** @type {HTMLElement} */ (box.querySelector('#invite'));
    this.touched = false;
    this.key = /** @type {HTMLCanvasElement} */ (document.getElementById('key'));
    this.explained = ''; // what the key below the chart was drawn for
    this.scale = 4 / 3; // CSS px in a point
    /** @type {{id: number, token: number, from: {x: number, y: number}, grip: {x: number, y: number},
     *    now: {x: number, y: number}, moved: boolean, news: boolean, pans: boolean} | null} */
    this.drag = null;
    /** Where the focused token was when it got the focus, for Esc. */
    this.before = { token: -1, x: 0, y: 0 };
    /** @type {import('./room.js').Room | null} */
    this.measured = null;
    new ResizeObserver(() => this.resized()).observe(/** @type {HTMLElement} */ (box.closest('main')));
    addEventListener('resize', () => this.resized());
    this.bubble = new Bubble(board, box);
    this.zoom = new Zoom(board, box, () => this.abandon());
    box.addEventListener('pointerdown', (event) => this.#down(event));
    box.addEventListener('pointermove', (event) => this.#move(event));
    box.addEventListener('pointerup', (event) => this.#up(event));
    box.addEventListener('pointercancel', () => this.abandon());
    box.addEventListener('lostpointercapture', () => this.abandon());
    box.addEventListener('keydown', (event) => this.#keys(event));
  }

  /** CSS px from a token's middle that still take hold of it. */
  get reach() { return Math.max(hit, ring * this.scale); }

  /** Room for the chart and for its key, CSS px, and how many are in a point. */
  room() {
    return this.measured ??= this.board.full?.on ? this.board.full.room() : roomFor(this.box, this.key);
  }

  /** The page may have other room now. */
  resized() {
    this.measured = null;
    this.board.wake();
  }

  /** Scrolls the page until the whole chart is in sight. */
  reveal() {
    const { top, bottom } = this.box.getBoundingClientRect();
    if (top < -1 || bottom > innerHeight + 1) this.box.scrollIntoView({ block: 'nearest' });
  }

  /** The newest finger position into the core: once a frame. */
  apply() {
    const drag = this.drag;
    if (!drag || !drag.moved || !drag.news) return;
    drag.news = false;
    if (drag.pans) {
      this.board.core.call.pan((drag.now.x - drag.from.x) / this.scale, (drag.now.y - drag.from.y) / this.scale);
      drag.from = drag.now;
      return;
    }
    const at = { x: drag.now.x - drag.grip.x, y: drag.now.y - drag.grip.y };
    this.board.core.call.drag(drag.token, at.x / this.scale, at.y / this.scale);
  }

  /** Lets the core draw, at the size there is room for: everything, or only some of it.
   * @param {number} [parts] */
  draw(parts = Part.ground | Part.marks) {
    const room = this.room();
    this.scale = Math.max(this.board.look.scale, room.scale);
    this.board.core.call.draw_part(room.width / this.scale, room.height / this.scale, parts);
  }

  /** Paints the ground when it is another, then the marks; the ground is a canvas below theirs. */
  paint() {
    this.draw(Part.marks);
    show(this.board, this.canvas, this.scale);
    const view = this.board.core.view();
    const now = [view.ground, this.scale, devicePixelRatio, this.board.look.colours.join()].join();
    if (now === this.grounded) return view;
    this.grounded = now;
    this.draw(Part.ground);
    show(this.board, this.ground, this.scale);
    return view;
  }

  /** @param {View} view @param {boolean} all the buttons are put in their places, else only those in use */
  show(view, all) {
    const box = this.box.style;
    box.setProperty('--reach', `${2 * this.reach}px`);
    box.width = this.canvas.style.width;
    box.height = this.canvas.style.height;
    while (this.tokens.children.length > view.token_count) this.tokens.lastElementChild?.remove();
    view.token.forEach((token, i) => {
      const button = this.tokens.children[i];
      if (all || i === this.drag?.token || !button || button === document.activeElement) this.#place(view, token, i);
    });
    const busy = String(view.running !== 0);
    if (this.box.getAttribute('aria-busy') !== busy) this.box.setAttribute('aria-busy', busy);
    this.#callOut(view);
    this.#inviteTo(view);
    this.zoom.show(view);
    this.bubble.show(view, this.scale);
  }

  /** The key, when what it must explain has changed. @param {View} view */
  showKey(view) {
    const manned = view.token.some((token) => token.duty === 'man');
    const { key: width } = this.room();
    const now = [manned, view.mode, view.danger, view.attackers > 0, view.ghosts > 0, view.lines, this.scale, width, devicePixelRatio,
      this.board.look.colours.join()].join();
    if (now === this.explained) return;
    this.explained = now;
    this.board.core.call.key(width / this.scale);
    const was = this.key.style.height;
    show(this.board, this.key, this.scale);
    if (this.key.style.height !== was) this.resized(); // it takes other room
  }

  /** @param {View} view @param {Token} token @param {number} i */
  #place(view, token, i) {
    let button = /** @type {HTMLButtonElement | undefined} */ (this.tokens.children[i]);
    if (!button) {
      button = document.createElement('button');
      button.type = 'button';
      button.addEventListener('click', (event) => {
        if (event.detail === 0) this.#enter(i);
      });
      button.addEventListener('focus', () => this.#focused(i));
      this.tokens.append(button);
    }
    const within = (/** @type {number} */ at, /** @type {number} */ most) =>
      Math.min(Math.max(at, 0), most) * this.scale; // one out of the picture can still get the focus
    put(button, within(token.px, view.width), within(token.py, view.height));
    button.classList.toggle('away', token.away !== 0);
    button.hidden = view.mode === Mode.homes && token.kind !== Kind.defender;
    button.classList.toggle('free', movable(view, token));
    button.classList.toggle('held', this.drag !== null && this.drag.moved && this.drag.token === i);
    const mark = `${(token.reach * this.scale).toFixed(1)}px`;
    if (button.style.getPropertyValue('--mark') !== mark) button.style.setProperty('--mark', mark);
    const pressed = String(this.board.picked === i);
    if (button.getAttribute('aria-pressed') !== pressed) button.setAttribute('aria-pressed', pressed);
    // A name changes when the finger lets go, not sixty times a second.
    if ((this.drag === null || !button.hasAttribute('aria-label'))
      && button.getAttribute('aria-label') !== token.label) {
      button.setAttribute('aria-label', token.label);
    }
  }

  /** Until the first touch, the ball says what to do with it. @param {View} view */
  #inviteTo(view) {
    this.invite.hidden = this.touched || view.mode !== Mode.play;
    const [ball] = view.token;
    put(this.invite, ball.px * this.scale + hit, ball.py * this.scale);
  }

  /** @param {View} view */
  #callOut(view) {
    const drag = this.drag;
    const shown = drag !== null && drag.moved && !drag.pans;
    this.callout.hidden = !shown;
    if (!shown) return;
    const token = view.token[drag.token];
    const y = token.py * this.scale, width = view.width * this.scale;
    write(this.callout, token.place);
    const half = Math.min(calloutHalf, width / 2); // asking for its size would lay the page out anew
    const x = Math.min(Math.max(token.px * this.scale, half), width - half);
    put(this.callout, x, y > above + 16 ? y - above : y + above);
  }

  /** @param {PointerEvent} event */
  #point(event) {
    const box = this.box.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  }

  /** The token under a finger, -1 for none: the nearest middle, those that are there to be moved first.
   * @param {{x: number, y: number}} p */
  #under(p) {
    const view = this.board.view;
    let best = -1, least = Infinity;
    view.token.forEach((token, i) => {
      if (token.away || (view.mode === Mode.homes && token.kind !== Kind.defender)) return;
      const away = Math.hypot(token.px * this.scale - p.x, token.py * this.scale - p.y);
      if (away > this.reach) return;
      const cost = away + gives(view, token) - (i === this.board.picked ? 0.5 : 0);
      if (cost < least) {
        least = cost;
        best = i;
      }
    });
    return best;
  }

  /** @param {PointerEvent} event */
  #down(event) {
    if (this.drag || event.button !== 0 || !event.isPrimary) return;
    this.touched = true;
    const p = this.#point(event), token = this.#under(p), view = this.board.view;
    const grip = token < 0 ? { x: 0, y: 0 }
      : { x: p.x - view.token[token].at_x * this.scale, y: p.y - view.token[token].at_y * this.scale };
    this.drag = { id: event.pointerId, token, from: p, grip, now: p, moved: false, news: false,
      pans: view.zoom > 1 && (token < 0 || !movable(view, view.token[token])) };
    this.box.setPointerCapture(event.pointerId);
    if (token !== this.bubble.token) this.bubble.cancel();
    if (token >= 0) this.#remember(token);
  }

  /** @param {PointerEvent} event */
  #move(event) {
    const drag = this.drag;
    if (!drag || event.pointerId !== drag.id) return;
    drag.now = this.#point(event);
    if (!drag.moved && Math.hypot(drag.now.x - drag.from.x, drag.now.y - drag.from.y) > still) {
      const view = this.board.view;
      if (!drag.pans && (drag.token < 0 || !movable(view, view.token[drag.token]))) return;
      drag.moved = true;
      if (!drag.pans) this.board.pick(drag.token);
    }
    if (!drag.moved) return;
    drag.news = true;
    this.board.wake();
  }

  /** @param {PointerEvent} event */
  #up(event) {
    const drag = this.drag;
    if (!drag || event.pointerId !== drag.id) return;
    this.apply();
    this.drag = null;
    const slipped = Math.hypot(drag.now.x - drag.from.x, drag.now.y - drag.from.y) > still;
    if (drag.moved) {
      if (!drag.pans) this.#put(drag.token);
    } else if (drag.token >= 0) {
      this.board.pick(drag.token);
      if (slipped || this.board.view.token[drag.token].moved) this.#answer(drag.token);
    } else if (!slipped) {
      this.#tap(drag.from);
    }
    this.board.wake();
  }

  /** A tap on the open field sends the picked token there. @param {{x: number, y: number}} p */
  #tap(p) {
    const view = this.board.view, token = view.token[this.board.picked];
    if (!token || !movable(view, token)) {
      this.board.say('Pick the ball or another mark that can be moved, then tap where it goes.');
      return;
    }
    this.board.core.call.drag(this.board.picked, p.x / this.scale, p.y / this.scale);
    this.#put(this.board.picked);
  }

  /** @param {number} token that a finger has put down */
  #put(token) {
    if (token === 0) this.board.placed();
    else this.board.done();
    this.#answer(token);
  }

  /** Beside a man who was moved though he runs by himself, what that means. @param {number} token */
  #answer(token) {
    const one = this.board.view.token[token];
    if (one.moved || one.kind === Kind.keeper) this.bubble.ask(token);
  }

  /** A token was moved by numbers. @param {number} token */
  moved(token) {
    this.board.done();
    this.#answer(token);
  }

  /** A drag that was broken off leaves everything as it was. */
  abandon() {
    const drag = this.drag;
    this.drag = null;
    if (drag?.moved && !drag.pans) this.#restore();
  }

  /** @param {number} i */
  #focused(i) {
    this.#remember(i);
    if (!this.board.view.token[i]?.away) return;
    this.board.core.call.reveal(i);
    this.board.wake();
  }

  /** @param {number} i */
  #remember(i) {
    const token = this.board.view.token[i];
    if (token) this.before = { token: i, x: token.x, y: token.y };
  }

  #restore() {
    const { token, x, y } = this.before;
    if (token < 0) return;
    if (this.board.view.mode !== Mode.play) this.board.restore();
    const { kind, index } = this.board.view.token[token];
    if (kind === Kind.defender) this.board.core.call.call_back(index);
    else this.board.core.call.put(token, x, y);
    this.board.written = 0; // where it is again is told at once
    this.board.wake();
  }

  /** @param {number} i */
  #enter(i) {
    this.board.pick(i);
    this.board.words.focusNumbers();
  }

  /** @param {KeyboardEvent} event */
  #keys(event) {
    if (event.key === 'Escape') {
      if (this.drag) this.abandon();
      else this.#restore();
      return;
    }
    const i = [...this.tokens.children].indexOf(/** @type {Element} */ (event.target));
    if (i < 0 || event.altKey || event.ctrlKey || event.metaKey) return;
    if (event.key === 'Tab' && !event.shiftKey && this.bubble.open && i === this.bubble.token) {
      event.preventDefault();
      this.bubble.enter();
      return;
    }
    if (event.key === '[' || event.key === ']') {
      const shown = /** @type {HTMLButtonElement[]} */ ([...this.tokens.children])
        .filter((button) => !button.hidden);
      const at = shown.indexOf(/** @type {HTMLButtonElement} */ (event.target));
      shown[(at + (event.key === ']' ? 1 : shown.length - 1)) % shown.length].focus();
      return;
    }
    const times = { '+': 1.5, '=': 1.5, '-': 1 / 1.5, 0: 0 }[event.key];
    if (times !== undefined) {
      const token = this.board.view.token[i];
      this.zoom.by(times, { x: token.px * this.scale, y: token.py * this.scale });
      return;
    }
    const far = event.shiftKey ? stride : step;
    /** @type {Record<string, [number, number]>} */
    const ways = {
      ArrowLeft: [-far, 0], ArrowRight: [far, 0], ArrowUp: [0, far], ArrowDown: [0, -far],
    };
    const way = ways[event.key];
    if (!way) return;
    event.preventDefault();
    const view = this.board.view;
    this.board.pick(i);
    if (!movable(view, view.token[i])) {
      this.#answer(i);
      return;
    }
    this.board.core.call.nudge(i, way[0], way[1]);
    this.moved(i);
  }
}
