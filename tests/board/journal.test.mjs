// SPDX-License-Identifier: GPL-3.0-or-later
// The crash journal: nothing that was told to be kept is lost when the browser is killed, nobody's work
// is shown to another document, and storage that refuses is reported in words.
import assert from 'node:assert/strict';
import { copyFile, mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { after, before, test } from 'node:test';
import { boardFile, checks, frames, launch, launchOwn, openBoard, patience, reasonToSkip, root } from './page.mjs';

const skip = await reasonToSkip();
if (skip) console.log(`# skipped: ${skip}`);
const check = checks(skip);
const rounds = 12;
let browser, folder;
before(async () => {
  if (skip) return;
  browser = await launch();
  folder = await mkdtemp(join(tmpdir(), 'breakwater-'));
});
after(async () => {
  await browser?.close();
  if (folder) await rm(folder, { recursive: true, force: true });
});

const line = (page) => page.locator('#saved').textContent();
const offer = (page) => page.locator('#left');

async function visit(context, file = boardFile) {
  const page = await context.newPage();
  page.setDefaultTimeout(patience);
  page.on('dialog', (dialog) => dialog.accept());
  await page.goto(pathToFileURL(file).href);
  await page.waitForSelector('html[data-ready]');
  return page;
}

/** Begins editing homes with the keys on one man. */
async function edits(page) {
  await page.locator('#modes input[value="1"]').check({ force: true });
  await frames(page);
  const man = page.locator('#tokens button[aria-label^="Low left"]');
  await man.focus();
  return man;
}

/** Where low left stands, in tenths of yards out: each edit moves him by five. */
async function out(page) {
  const label = await page.locator('#tokens button[aria-label^="Low left"]').getAttribute('aria-label');
  return Math.round(10 * Number(/([\d.]+) yd out/.exec(label)[1]));
}

const kept = (page) => page.waitForFunction(() =>
  /working copy is kept/.test(document.getElementById('saved').textContent));

/** The page has looked for work left behind, and found none. */
async function nothingLeft(page) {
  await page.waitForSelector('#left[data-looked]', { state: 'attached' });
  assert.ok(await offer(page).isHidden());
}

/** Nothing is in the journal any more. */
const emptied = (page) => page.waitForFunction(() => new Promise((done, fail) => {
  const opening = indexedDB.open('breakwater-journal', 1);
  opening.onerror = fail;
  opening.onsuccess = () => {
    const db = opening.result, [shelf] = db.objectStoreNames;
    const count = db.transaction(shelf).objectStore(shelf).count();
    count.onerror = fail;
    count.onsuccess = () => {
      db.close();
      done(count.result === 0);
    };
  };
}));

/** From a start of the browser until edits are going in, in the middle of which it will die. Returns
 * where the man stood when the page last promised to keep it. */
async function oneLife(page, round, found) {
  if (round > 0) {
    await page.waitForSelector('#left:not([hidden])');
    assert.match(await page.locator('#left-words').textContent(), /^Unsaved work of .+ on Harbour\.$/);
    assert.ok(await page.locator('#undo').isDisabled()); // nothing was taken up by itself
    await page.click('#left-take');
    await page.waitForSelector('#left', { state: 'hidden' });
    await edits(page);
    assert.ok(await out(page) >= found, `round ${round}: ${await out(page)} after ${found}`);
    await page.click('#undo'); // taking it up was an edit like others
    await frames(page);
    assert.equal(await out(page), 25);
    await page.click('#redo');
  }
  await edits(page);
  await page.keyboard.press('ArrowUp');
  await frames(page);
  await kept(page);
  const promised = await out(page);
  const more = async () => { for (;;) await page.keyboard.press('ArrowUp', { delay: 1 }); };
  more().catch(() => {}); // it ends with the browser
  return promised;
}

check(`${rounds} kills during editing: what was told to be kept is offered, and taken up`, async () => {
  const profile = await mkdtemp(join(folder, 'profile-'));
  let seed = 20260;
  const random = () => (seed = (seed * 48271) % 2147483647) / 2147483647;
  let found = 0;
  for (let round = 0; round < rounds; round++) {
    const own = await launchOwn(profile);
    try {
      found = await oneLife(await visit(own.context), round, found);
      // Any moment will do for a kill: no check asks how far the editing has come by then.
      await new Promise((done) => setTimeout(done, 120 * random()));
    } finally {
      await own.kill();
    }
  }
});

check('a reload during editing offers the work; thrown away, it can be brought back, then is gone',
  async () => {
    const context = await browser.newContext();
    const page = await visit(context);
    await (await edits(page)).press('ArrowUp');
    await kept(page);
    await page.reload();
    await page.waitForSelector('#left:not([hidden])');
    await page.click('#left-away');
    await page.waitForFunction(() =>
      /^Thrown away: the work of .* on Harbour\.$/.test(document.getElementById('left-words').textContent));
    await page.click('#left-take');
    await page.waitForSelector('#left', { state: 'hidden' });
    await edits(page);
    assert.equal(await out(page), 30);
    await page.reload();
    await page.waitForSelector('#left:not([hidden])');
    await page.click('#left-away');
    await page.getByRole('button', { name: 'Let it go' }).click();
    await page.waitForSelector('#left', { state: 'hidden' });
    assert.equal(await page.evaluate(() => document.activeElement.id), 'save');
    await page.reload();
    await nothingLeft(page);
    await context.close();
  });

check('saving and undoing leave nothing behind', async () => {
  const context = await browser.newContext();
  await context.addInitScript(() => { delete globalThis.showSaveFilePicker; });
  const page = await visit(context);
  const man = await edits(page);
  await man.press('ArrowUp');
  await kept(page);
  await Promise.all([page.waitForEvent('download'), page.click('#save')]);
  await emptied(page);
  await page.reload();
  await nothingLeft(page);
  await (await edits(page)).press('ArrowUp');
  await kept(page);
  await page.click('#undo');
  await emptied(page);
  await page.reload();
  await nothingLeft(page);
  await context.close();
});

const give = async (page, name, text) => {
  await page.setInputFiles('#file', { name, mimeType: 'application/json', buffer: Buffer.from(text) });
  await page.waitForFunction((line) => document.getElementById('saved').textContent === line,
    `${name}, unchanged.`);
};

check('two documents in two files of one profile never see each other\'s work', async () => {
  const context = await browser.newContext();
  const here = join(folder, 'here.html'), there = join(folder, 'there.html');
  await copyFile(boardFile, here);
  await copyFile(boardFile, there);
  const terns = await readFile(join(root, 'examples/terns.json'), 'utf8');
  const jetty = terns.replace('"terns-harbour"', '"jetty-1"').replace('"Harbour"', '"Jetty"');
  const nameless = jetty.replace(/ *"id": "jetty-1",\n/, '');
  const first = await visit(context, here);
  await give(first, 'jetty.json', jetty);
  await (await edits(first)).press('ArrowUp');
  await kept(first);
  await first.close();
  const second = await visit(context, there);
  await nothingLeft(second); // the example, and not this page's
  await give(second, 'nameless.json', nameless);
  await nothingLeft(second); // no id: goes by name and what it was, so it is another
  await give(second, 'jetty.json', jetty);
  await second.waitForSelector('#left:not([hidden])'); // the same document, wherever it is opened
  await give(second, 'jetty.json', jetty.replace('"Jetty"', '"Jetty two"'));
  await second.waitForFunction(() =>
    /another version of this file/.test(document.getElementById('left-words').textContent));
  const third = await visit(context, here); // where it was edited, it is offered before it is opened
  await third.waitForSelector('#left:not([hidden])');
  assert.match(await third.locator('#left-words').textContent(), /^Unsaved work of .* on Jetty\.$/);
  await third.click('#left-take');
  await third.waitForFunction(() =>
    document.getElementById('scheme-name').textContent.startsWith('Jetty'));
  await edits(third);
  assert.equal(await out(third), 30);
  await context.close();
});

check('two windows of one document keep two copies', async () => {
  const context = await browser.newContext();
  const one = await visit(context);
  await (await edits(one)).press('ArrowUp');
  await kept(one);
  const two = await visit(context);
  await two.waitForSelector('#left:not([hidden])');
  await two.bringToFront();
  const man = await edits(two);
  await man.press('ArrowUp');
  await man.press('ArrowUp');
  await kept(two);
  const three = await visit(context);
  await three.waitForSelector('#left:not([hidden])');
  const seen = [];
  for (let i = 0; i < 2; i++) {
    await three.click('#left-take');
    await edits(three);
    seen.push(await out(three));
    await frames(three);
  }
  assert.deepEqual(seen.sort(), [30, 35]);
  await context.close();
});

/** Opens the board with a storage that misbehaves; the page goes on, and says so once. */
async function withTrouble(stub, body) {
  const board = await openBoard(browser, { before: stub });
  board.page.on('dialog', (dialog) => dialog.accept());
  await (await edits(board.page)).press('ArrowUp');
  await board.page.locator('#tokens button[aria-label^="Low left"]').press('ArrowUp');
  await frames(board.page);
  assert.equal(await out(board.page), 35);
  await body(board.page);
  assert.deepEqual(board.seen.errors, []);
  await board.context.close();
}
const keeping = (page) => page.locator('#keeping').textContent();

check('storage that throws is reported in words once, and the page goes on', () => withTrouble(() => {
  const no = () => { throw new DOMException('The operation is insecure.', 'SecurityError'); };
  Object.defineProperty(globalThis, 'indexedDB', { get: no });
  Object.defineProperty(globalThis, 'localStorage', { get: no });
}, async (page) => {
  await page.waitForSelector('#keeping:not([hidden])');
  assert.equal(await keeping(page), 'This browser keeps no working copy of your edits (it says: The '
    + 'operation is insecure). Nothing else is lost: save to a file often.');
  assert.equal(await line(page), 'Changed, not saved yet.');
}));

check('without a data base the plain store serves', () => withTrouble(() => {
  Object.defineProperty(globalThis, 'indexedDB', { value: undefined });
}, async (page) => {
  await kept(page);
  await page.reload();
  await page.waitForSelector('#left:not([hidden])');
  await page.click('#left-take');
  await edits(page);
  assert.equal(await out(page), 35);
}));

check('a full store is told, and taken back once there is room', () => withTrouble(() => {
  globalThis.full = true;
  const { put } = IDBObjectStore.prototype;
  IDBObjectStore.prototype.put = function (...given) {
    if (globalThis.full) throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
    return put.apply(this, given);
  };
}, async (page) => {
  await page.waitForSelector('#keeping:not([hidden])');
  assert.match(await keeping(page), /quota has been exceeded\)/);
  await page.evaluate(() => { globalThis.full = false; });
  await page.locator('#tokens button[aria-label^="Low left"]').press('ArrowUp');
  await kept(page);
  assert.ok(await page.locator('#keeping').isHidden());
}));

check('a real quota: the browser itself refuses', async () => {
  const context = await browser.newContext();
  const page = await visit(context);
  const session = await context.newCDPSession(page);
  await session.send('Storage.overrideQuotaForOrigin', { origin: 'file://', quotaSize: 1 })
    .catch(() => {}); // an opaque origin may not take one; then the stubbed test above is all there is
  await (await edits(page)).press('ArrowUp');
  await page.waitForFunction(() => !document.getElementById('keeping').hidden
    || /working copy is kept/.test(document.getElementById('saved').textContent));
  assert.equal(await out(page), 30);
  await context.close();
});

check('what is no entry of ours in the store is passed over', () => withTrouble(() => {
  Object.defineProperty(globalThis, 'indexedDB', { value: undefined });
  localStorage.setItem('breakwater-journal/1/id:terns-harbour/strange', '{"text": 5}');
}, async (page) => {
  await kept(page);
  assert.ok(await offer(page).isHidden());
}));
