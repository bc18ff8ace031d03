// SPDX-License-Identifier: GPL-3.0-or-later
// Editing, undo, opening and saving in the self-contained board.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { after, before } from 'node:test';
import { checks, drag, frames, launch, middle, openBoard, reasonToSkip, root, row } from './page.mjs';

const skip = await reasonToSkip();
if (skip) console.log(`# skipped: ${skip}`);
const check = checks(skip);
let browser;
before(async () => { if (!skip) browser = await launch(); });
after(async () => { await browser?.close(); });

async function withBoard(body) {
  const { page, context, seen } = await openBoard(browser);
  page.on('dialog', (dialog) => dialog.accept());
  await body(page);
  assert.deepEqual(seen.errors, []);
  await context.close();
}

const mode = async (page, value) => {
  await page.locator(`#modes input[value="${value}"]`).check({ force: true });
  await frames(page);
};

async function save(page) {
  const [download] = await Promise.all([page.waitForEvent('download'), page.click('#save')]);
  return { name: download.suggestedFilename(), text: await readFile(await download.path(), 'utf8') };
}

const open = async (page, name, text) => {
  await page.setInputFiles('#file', { name, mimeType: 'application/json', buffer: Buffer.from(text) });
  await page.waitForFunction((line) => document.getElementById('saved').textContent === line,
    `${name}, unchanged.`);
};

check('a home is dragged, the other side follows, undo and redo go both ways', () =>
  withBoard(async (page) => {
    const places = async () => [(await row(page, 'low left'))[2], (await row(page, 'low right'))[2]];
    await mode(page, 1);
    const was = await places();
    assert.deepEqual(was, ['3.5 yd left, 2.5 yd out', '3.5 yd right, 2.5 yd out']);
    const from = await middle(page, 'Low left');
    await drag(page, from, { x: from.x - 40, y: from.y - 30 });
    await frames(page);
    const [left, right] = await places();
    assert.notEqual(left, was[0]);
    assert.equal(right, left.replace('left', 'right'));
    assert.match(await page.locator('#saved').textContent(), /^Changed, not saved/);
    await page.click('#undo');
    await frames(page);
    assert.deepEqual(await places(), was);
    await page.keyboard.press('Control+Shift+Z');
    await frames(page);
    assert.deepEqual(await places(), [left, right]);
    for (let i = 0; i < 12; i++) {
      await page.locator('#tokens button[aria-label^="Low left"]').press('ArrowUp');
    }
    for (let i = 0; i < 13; i++) await page.click('#undo');
    await frames(page);
    assert.deepEqual(await places(), was);
    assert.ok(await page.locator('#undo').isDisabled());
  }));

check('unlocked, one side moves alone', () => withBoard(async (page) => {
  await mode(page, 1);
  await page.uncheck('#mirror');
  await page.selectOption('#who', { label: 'top left' });
  await page.fill('#x', '-7');
  await page.keyboard.press('Tab');
  await frames(page);
  assert.equal((await row(page, 'top left'))[2], '7.0 yd left, 13.0 yd out');
  assert.equal((await row(page, 'top right'))[2], '5.5 yd right, 13.0 yd out');
  const { text } = await save(page);
  const spots = JSON.parse(text).stages[1].spots;
  assert.deepEqual(spots.find((spot) => spot.id === 'TL').home, [-7, 13]);
  assert.deepEqual(spots.find((spot) => spot.id === 'TR').home, [5.5, 13]);
}));

check('a man is pinned at a landmark, mirrored, found in the file, and unpinned', () =>
  withBoard(async (page) => {
    await mode(page, 2);
    await page.selectOption('#landmark', { label: 'right wing' });
    await frames(page);
    const who = page.locator('#tokens button[aria-label^="Top right"]');
    await who.press('ArrowLeft');
    await who.press('ArrowDown');
    await frames(page);
    const at = (await row(page, 'top right'))[2];
    assert.match((await row(page, 'top right'))[1], /pinned/);
    await page.selectOption('#landmark', { label: 'left wing' });
    await frames(page);
    assert.match((await row(page, 'top left'))[1], /pinned/);
    assert.equal((await row(page, 'top left'))[2], at.replace('right', 'left'));
    const pins = JSON.parse((await save(page)).text).stages[1].pins;
    assert.ok('TR' in pins.wr && !pins.wl?.TL, JSON.stringify(pins));
    await page.selectOption('#who', { label: 'top left' });
    await page.click('#unpin');
    await frames(page);
    assert.doesNotMatch((await row(page, 'top left'))[1], /pinned/);
    assert.ok(!('TR' in (JSON.parse((await save(page)).text).stages[1].pins.wr ?? {})));
  }));

check('what is saved and opened again is saved as the same bytes', () => withBoard(async (page) => {
  const first = await save(page);
  assert.match(first.name, /\.json$/);
  assert.match(await page.locator('#saved').textContent(), /^Saved: .* at /);
  await open(page, first.name, first.text);
  assert.equal((await save(page)).text, first.text);
  const metres = await readFile(join(root, 'tests/scheme/valid/metres.json'), 'utf8');
  await open(page, 'metres.json', metres);
  assert.equal(await page.locator('#x-name').textContent(), 'Right, m');
  const again = await save(page);
  assert.equal(again.name, 'metres.json');
  await open(page, 'metres.json', again.text);
  assert.equal((await save(page)).text, again.text);
}));

check('a file is dragged in; a broken one is refused in words and nothing is lost', () =>
  withBoard(async (page) => {
    const before = (await save(page)).text;
    const drop = async (name, text) => {
      const data = await page.evaluateHandle(([name, text]) => {
        const transfer = new DataTransfer();
        transfer.items.add(new File([text], name));
        return transfer;
      }, [name, text]);
      await page.dispatchEvent('body', 'drop', { dataTransfer: data });
    };
    await drop('bad.json', before.replace('"pickup"', '"pikup"'));
    await page.waitForSelector('#notice:not([hidden])');
    assert.match(await page.locator('#notice').textContent(), /Not opened: .*pikup.*pickup/);
    assert.equal((await save(page)).text, before);
    await drop('good.json', before.replace('"Harbour"', '"Jetty"'));
    await page.waitForSelector('#notice', { state: 'hidden' });
    assert.match(await page.locator('#scheme-name').textContent(), /^Jetty/);
  }));

check('findings are live and each leads to its place', () => withBoard(async (page) => {
  await mode(page, 1);
  await page.uncheck('#mirror');
  await page.selectOption('#who', { label: 'top left' });
  await page.fill('#x', '-14');
  await page.keyboard.press('Tab');
  await frames(page);
  const findings = page.locator('#findings button');
  assert.ok(await findings.count() > 0);
  await page.locator('#stages input').first().check({ force: true });
  await findings.first().click();
  await frames(page);
  assert.equal(await page.locator('#stages input:checked').getAttribute('value'), '1');
}));

check('the picture is a PNG of 560 points from every screen, three pixels to a 96th of an inch', () => withBoard(async (page) => {
  const [download] = await Promise.all([page.waitForEvent('download'), page.click('#picture')]);
  const bytes = await readFile(await download.path());
  assert.equal(bytes.subarray(1, 4).toString(), 'PNG');
  assert.equal(bytes.readUInt32BE(16), 3 * 560 * 96 / 72);
}));
