// SPDX-License-Identifier: GPL-3.0-or-later
// The program that served this page, when one did (docs/serve.md). On a static host and in the
// self-contained file there is none, and nothing is asked for.

/**
 * @typedef {'coach' | 'player' | 'nobody'} Rights
 * @typedef {{rights: Rights, shared: boolean, scheme: boolean, team: boolean,
 *   name: string}} Hello
 * @typedef {{text: string, tag: string}} Kept a text in the coach's file, and what tells it from others
 * @typedef {{id: number, state: 'running' | 'done' | 'failed' | 'cancelled', done: number,
 *   count: number, kind: string, ending: string, message: string}} Run
 * @typedef {{id: number, name: string, address: string, joined_s_ago: number}} Device
 * @typedef {{wanted: boolean, open: boolean, refused: string, address?: string, code?: string,
 *   code_s_left?: number, share_s_left?: number, qr?: string[], devices: Device[]}} Sharing
 * @typedef {'test' | 'book' | 'report' | 'strip' | 'packet' | 'cards' | 'quiz' | 'wall' | 'film'
 *   | 'review' | 'review-pages' | 'tune' | 'tune-sheets'} Kind
 *   what a run makes: JSON, a film (MP4), or a PDF
 * @typedef {Record<string, string | number>} Values options of `breakwater test`: offence, defence,
 *   set, start, late, seconds, level, seed; quick: 1; paper, theme; large: 1, spot;
 *   lesson: its id; width; for better spots stage, keep, within, spacing,
 *   mix, practice
 * @typedef {{signal?: AbortSignal, progress?: (done: number, count: number) => void}} Watch
 */

const place = 'breakwater-secret'; // in this tab's storage: a reload goes on, another tab does not
const pause = 400;                 // ms between two looks at a run

/** A request that was turned away; its message is the server's sentence. */
export class Refused extends Error {
  /** @param {number} status of HTTP; 0: no answer at all @param {string} words */
  constructor(status, words) {
    super(words);
    this.status = status;
  }
}

export class Server {
  /** @param {Hello} hello @param {string} secret */
  constructor(hello, secret) {
    this.hello = hello;
    this.secret = secret;
  }

  /** The server of this page and what we may do there, or null. A token or code in the address is used
   * and taken out of it. */
  static async find() {
    if (!('served' in document.documentElement.dataset)) return null;
    const given = /^#(start|join)=([A-Za-z0-9-]+)$/.exec(location.hash);
    if (given) history.replaceState(null, '', location.pathname);
    const server = new Server({ rights: 'nobody', shared: false, scheme: false, team: false, name: '' },
      sessionStorage.getItem(place) ?? '');
    /** @type {string | null} */
    let refused = null;
    if (given) refused = await server.enter(given[1], given[2]).then(() => null, (error) => error.message);
    await server.greet();
    return { server, refused };
  }

  /** Who we are now. */
  async greet() {
    this.hello = await (await this.ask('GET', 'hello')).json();
  }

  /** Swaps a launch token ('start') or a join code ('join') for a secret.
   * @param {string} way @param {string} word @param {string} [name] of this device */
  async enter(way, word, name = '') {
    const query = name ? `?name=${encodeURIComponent(name)}` : '';
    const { secret } = await (await this.ask('POST', way + query, word)).json();
    this.secret = secret;
    sessionStorage.setItem(place, secret);
  }

  /** One request; the answer when it was a good one, Refused otherwise.
   * @param {string} method @param {string} what @param {string} [body]
   * @param {Record<string, string>} [heads] */
  async ask(method, what, body, heads = {}) {
    /** @type {Response} */
    let answer;
    try {
      answer = await fetch(`api/${what}`, {
        method, body, headers: this.secret ? { ...heads, 'Breakwater-Secret': this.secret } : heads,
      });
    } catch {
      throw new Refused(0, 'The program that served this page has stopped, or cannot be reached.');
    }
    if (!answer.ok) throw new Refused(answer.status, (await answer.text()).trim());
    return answer;
  }

  get coach() { return this.hello.rights === 'coach'; }

  /** The coach's file as it lies on the disk. @returns {Promise<Kept>} */
  async load() {
    const answer = await this.ask('GET', 'scheme');
    return { text: await answer.text(), tag: answer.headers.get('ETag') ?? '' };
  }

  /** Writes over the text with this tag; gives the new tag. Refused with status 412 when the file is no
   * longer that text. @param {string} text @param {string} tag */
  async save(text, tag) {
    const answer = await this.ask('PUT', 'scheme', text, { 'If-Match': tag });
    return answer.headers.get('ETag') ?? '';
  }

  /**
   * A heavy run of the program, on all cores: its result's bytes. Refused with status 409 while another
   * goes on. When the signal aborts, the run is cancelled and the promise refused with status 0.
   * @param {Kind} kind @param {string} text the scheme @param {Values} [values] @param {Watch} [watch]
   * @returns {Promise<Blob>}
   */
  async run(kind, text, values = {}, watch = {}) {
    const query = new URLSearchParams({ kind });
    for (const [name, value] of Object.entries(values)) query.set(name, String(value));
    /** @type {Run} */
    let run = await (await this.ask('POST', `jobs?${query}`, text)).json();
    while (run.state === 'running') {
      await new Promise((done) => setTimeout(done, pause));
      if (watch.signal?.aborted) {
        await this.ask('DELETE', `jobs/${run.id}`);
        throw new Refused(0, 'Cancelled.');
      }
      run = await (await this.ask('GET', `jobs/${run.id}`)).json();
      watch.progress?.(run.done, run.count);
    }
    if (run.state !== 'done') throw new Refused(0, run.message);
    return (await this.ask('GET', `jobs/${run.id}/file`)).blob();
  }

  /** The same figures as `breakwater test --json`.
   * @param {string} text @param {Values} [values] @param {Watch} [watch] @returns {Promise<any>} */
  async test(text, values = {}, watch = {}) {
    return JSON.parse(await (await this.run('test', text, values, watch)).text());
  }

  /** @returns {Promise<Sharing>} */
  async sharing() { return (await this.ask('GET', 'share')).json(); }

  /** Begins to share for so many minutes, or ends it with 0. @param {number} minutes */
  async share(minutes) {
    if (minutes > 0) await this.ask('POST', `share?minutes=${minutes}`);
    else await this.ask('DELETE', 'share');
  }

  /** Takes a device's rights away. @param {number} id */
  async remove(id) { await this.ask('DELETE', `devices/${id}`); }
}
