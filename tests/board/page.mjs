// SPDX-License-Identifier: GPL-3.0-or-later
// What the board's tests share: the page in a real browser, opened from disk. Tests are skipped, with
// the reason, only when the browser or the packages are not installed.
import assert from 'node:assert/strict';
import { access, readdir, readFile, rm } from 'node:fs/promises';
import { execFile, spawn } from 'node:child_process';
import { dirname, join } from 'node:path';
import { after, before, test } from 'node:test';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { promisify } from 'node:util';

export const root = join(dirname(fileURLToPath(import.meta.url)), '../..');
export const build = process.env.BW_BUILD ?? join(root, 'build');
// All build trees share the pages.
export const boardFile = join(root, 'build/board/breakwater-board.html');
export const boardFolder = join(root, 'build/board/static');
export const moduleFile = join(root, 'build/wasm/breakwater.wasm');
export const testModuleFile = join(root, 'build/wasm/breakwater-test.wasm');
/** How long anything is waited for, in milliseconds: a hang is what is longer, never a busy machine. */
export const patience = 120_000;
/** The browser that people have. What is asked of it and not of the page (first use, the full screen, what it
 * keeps when it is killed) is tried in it; the rest in its engine without windows, which paints with half the processor's time. */
export const wholeBrowser = process.env.BW_CHROMIUM ?? '/usr/bin/chromium';
const browserFile = process.env.BW_CHROMIUM ?? '/usr/bin/chromium-headless-shell';
export const run = promisify(execFile);

const chromiumFlags = ['--headless', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run',
  '--disable-background-networking', '--disable-component-update', '--disable-sync'];

async function there(file) {
  return access(file).then(() => true, () => false);
}

/** Why the browser tests cannot run, or false. */
export async function reasonToSkip() {
  for (const file of [browserFile, wholeBrowser]) {
    if (!await there(file)) return `no browser at ${file}: tools/setup.sh check`;
  }
  for (const name of ['playwright-core', 'axe-core']) {
    if (!await there(join(root, 'node_modules', name))) {
      return `node_modules/${name} is not there: npm ci --ignore-scripts`;
    }
  }
  return false;
}

/** @param {string[]} more arguments of the browser */
export async function launch(more = [], executablePath = browserFile) {
  const { chromium } = await import('playwright-core');
  return chromium.launch({
    executablePath,
    args: [...chromiumFlags, ...more],
  });
}

/** Declares tests that are skipped with their reason where they cannot run, and fail when they hang. */
export const checks = (skip) => (name, body) => test(name, { skip, timeout: 2 * patience }, body);

/** The frame of a file of tests on the board from disk, with one browser for all of them. `check` declares
 * a test, skipped with its reason where it cannot run; `withBoard` makes a body of one that gets a fresh
 * page, in which nothing may have gone wrong afterwards; `open` opens a page and leaves the rest to it. */
export async function boardTests(executablePath = browserFile) {
  const skip = await reasonToSkip();
  if (skip) console.log(`# skipped: ${skip}`);
  let browser;
  before(async () => { if (!skip) browser = await launch([], executablePath); });
  after(async () => { await browser?.close(); });
  const open = (options) => openBoard(browser, options);
  return {
    open,
    check: checks(skip),
    async withBoard(body, options) {
      const board = await open(options);
      await body(board.page, board);
      assert.deepEqual(board.seen.errors, []);
      await board.context.close();
    },
  };
}

/** The document that Save hands over. */
export async function saved(page) {
  const [download] = await Promise.all([page.waitForEvent('download'), page.click('#save')]);
  return JSON.parse(await readFile(await download.path(), 'utf8'));
}

/** Until nobody of a killed group lives: a helper that is not gone yet would still hold the data base's lock,
 * which no power cut leaves. Those that are dead but that nobody has asked about do not count. */
async function groupGone(group) {
  const lives = async () => {
    for (const process of await readdir('/proc')) {
      if (!/^\d+$/.test(process)) continue;
      const stat = await readFile(`/proc/${process}/stat`, 'utf8').catch(() => '');
      const [state, , of] = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
      if (Number(of) === group && state !== 'Z') return true;
    }
    return false;
  };
  while (await lives()) await new Promise((done) => setTimeout(done, 10));
}

/** A browser of its own with a profile that outlives it, to be killed as a power cut would. */
export async function launchOwn(profile) {
  const { chromium } = await import('playwright-core');
  const child = spawn(wholeBrowser, [...chromiumFlags, `--user-data-dir=${profile}`,
    '--remote-debugging-port=0', 'about:blank'], { detached: true, stdio: 'ignore' });
  const gone = new Promise((done) => child.once('exit', done));
  const told = join(profile, 'DevToolsActivePort');
  let port;
  for (const end = Date.now() + 30000; !port; await new Promise((done) => setTimeout(done, 30))) {
    if (Date.now() > end) throw new Error('the browser did not start');
    port = (await readFile(told, 'utf8').catch(() => '')).split('\n')[0];
  }
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${port}`);
  return {
    context: browser.contexts()[0],
    async kill() {
      process.kill(-child.pid, 'SIGKILL'); // the browser and all its helpers: a group of their own
      await gone;
      await groupGone(child.pid);
      await rm(told, { force: true });
    },
  };
}

/** A fresh page with the board, with the network off. Saving is by download unless `picker` is asked
 * for: a picker is a window of the system, which no test can press. With `clock` its time can be
 * stopped (stopTime). */
export async function openBoard(browser, options = {}) {
  const context = await browser.newContext({
    viewport: { width: 1000, height: 800 }, offline: true, ...options, before: undefined, picker: undefined, clock: undefined,
  });
  const page = await context.newPage();
  page.setDefaultTimeout(patience);
  if (options.clock) await page.clock.install();
  if (!options.picker) await page.addInitScript(() => { delete globalThis.showSaveFilePicker; });
  if (options.before) await page.addInitScript(options.before);
  const seen = { requests: [], errors: [] };
  page.on('request', (request) => seen.requests.push(request.url()));
  page.on('pageerror', (error) => seen.errors.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') seen.errors.push(message.text());
  });
  await page.goto(pathToFileURL(boardFile).href);
  await page.waitForSelector('html[data-ready]');
  return { page, context, seen };
}

/** Middle of a token's button on the page, by the beginning of its name. */
export async function middle(page, name) {
  const button = page.locator(`#tokens button[aria-label^="${name}"]`);
  await button.scrollIntoViewIfNeeded();
  const box = await button.boundingBox();
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

export async function drag(page, from, to, steps = 12) {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps });
  await page.mouse.up();
}

/** From here on the page's time stands still, whatever the machine is at: its clocks, timers and frames
 * go on only by the milliseconds given to the function returned (so `frames` and `rest` would wait for
 * ever). */
export async function stopTime(page) {
  await page.clock.pauseAt(await page.evaluate(() => Date.now()) + 60_000);
  return (milliseconds) => page.clock.runFor(milliseconds);
}

/** Waits until what was done has been drawn. */
export const frames = (page) => page.evaluate(() => new Promise((done) => {
  requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done)));
}));

/** Waits until nobody runs any more. */
export async function rest(page) {
  await frames(page);
  await page.waitForSelector('#field[aria-busy="false"]');
}

/** A cell's text with ordinary spaces. */
export const plain = (text) => text.replaceAll('\u00a0', ' ').trim();

/** A row of the table of where everyone stands: [who, does, place, late]. */
export async function row(page, who) {
  const cells = page.locator('#rows tr', { hasText: who }).first().locator('th, td');
  return (await cells.allTextContents()).map(plain);
}
