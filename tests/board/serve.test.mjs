// SPDX-License-Identifier: GPL-3.0-or-later
// The board as the program serves it: on this computer, and under a name of the local network (mapped
// to this computer in the browser), where a page has fewer powers.
import assert from 'node:assert/strict';
import { copyFile, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { checks, frames, launch, reasonToSkip, root, row } from './page.mjs';
import { serveBoard } from './program.mjs';

const skip = await reasonToSkip();
if (skip) console.log(`# skipped: ${skip}`);
const check = checks(skip);
let browser, folder;
before(async () => {
  if (skip) return;
  browser = await launch(['--host-resolver-rules=MAP club.test 127.0.0.1']);
  folder = await mkdtemp(join(tmpdir(), 'breakwater-'));
});
after(async () => {
  await browser?.close();
  if (folder) await rm(folder, { recursive: true });
});

/** The program on a copy of the demo scheme; ends with the test. */
async function serve(t, name, ...options) {
  const file = join(folder, name);
  await copyFile(join(root, 'examples/terns.json'), file);
  const { address, port, stop, said } = await serveBoard(t, file, ...options);
  t.after(async () => assert.equal(await stop(), 0));
  return { file, address, origin: `http://127.0.0.1:${port}`, said };
}

/** A page with the board in a tab of its own, and everything that went wrong in it. */
async function visit(t, address, options = {}) {
  const context = await browser.newContext({ viewport: { width: 1000, height: 800 }, ...options });
  const page = await context.newPage(), errors = [];
  page.on('dialog', (dialog) => dialog.accept());
  page.on('pageerror', (error) => errors.push(error.message));
  t.after(() => context.close());
  await page.goto(address);
  await page.waitForSelector('html[data-ready]');
  return { page, context, errors };
}

const saved = (page) => page.locator('#saved').textContent();
const rename = async (page, x) => {
  await page.locator('#modes input[value="1"]').check({ force: true });
  await page.selectOption('#who', { label: 'top left' });
  await page.fill('#x', x);
  await page.keyboard.press('Tab');
  await frames(page);
};

check('the coach opens his file, edits, saves, reloads, and finds it again', async (t) => {
  const { file, address, origin } = await serve(t, 'mine.json');
  const { page, errors } = await visit(t, address);
  assert.equal(page.url(), `${origin}/`);
  assert.equal(await saved(page), 'mine.json, unchanged.');
  await rename(page, '-7');
  assert.match(await saved(page), /^mine\.json, changed, not saved yet/);
  await page.click('#save');
  await page.waitForFunction(() => /^Saved: mine\.json was written at /.test(document.getElementById('saved').textContent));
  const spots = JSON.parse(await readFile(file, 'utf8')).stages[1].spots;
  assert.deepEqual(spots.find((spot) => spot.id === 'TL').home, [-7, 13]);
  await page.reload();
  await page.waitForSelector('html[data-ready]');
  assert.equal(await saved(page), 'mine.json, unchanged.');
  assert.match((await row(page, 'top left'))[2], /^7\.0 yd left/);
  assert.deepEqual(errors, []);
});

check('nothing that a served start asks for is missing, its icon included', async (t) => {
  const { address, origin } = await serve(t, 'start.json');
  const { context } = await visit(t, `${origin}/`), page = await context.newPage(), missing = [];
  page.on('response', (answer) => {
    if (answer.status() >= 400) missing.push(`${answer.status()} ${answer.url()}`);
  });
  for (const go of [() => page.goto(address), () => page.reload()]) {
    await go();
    await page.waitForSelector('html[data-ready]');
  }
  // A browser without a window asks for no icon by itself; what it would ask for is there and can be drawn.
  const drawn = await page.evaluate(async () => {
    const image = new Image();
    image.src = /** @type {HTMLLinkElement} */ (document.querySelector('link[rel="icon"]')).href;
    await image.decode();
    return image.naturalWidth;
  });
  assert.ok(drawn > 0);
  assert.deepEqual(missing, []);
});

check('an edit made elsewhere is not written over, and neither is lost', async (t) => {
  const { file, address } = await serve(t, 'two.json');
  const { page, errors } = await visit(t, address);
  const other = (await readFile(file, 'utf8')).replace('"Harbour"', '"Jetty"');
  await writeFile(file, other);
  await rename(page, '-7');
  await page.click('#save');
  await page.waitForSelector('#conflict-pane[open]');
  assert.equal(await readFile(file, 'utf8'), other);
  const [copy] = await Promise.all([page.waitForEvent('download'), page.click('#conflict-pane button:has-text("copy")')]);
  assert.equal(copy.suggestedFilename(), 'copy-of-two.json');
  assert.match(await readFile(await copy.path(), 'utf8'), /"home": \[-7, 13\]/);
  await page.click('#conflict-pane button:has-text("again")');
  await page.waitForFunction(() => document.getElementById('scheme-name').textContent.startsWith('Jetty'));
  assert.deepEqual(errors, []);
});

check('an address is good once; without one the page shows the example and says why', async (t) => {
  const { address, origin } = await serve(t, 'once.json');
  await visit(t, address);
  const second = await visit(t, address);
  assert.match(await second.page.locator('#notice').textContent(), /used already/);
  const bare = await visit(t, `${origin}/`);
  assert.match(await bare.page.locator('#notice').textContent(), /address that the program printed/);
  assert.ok(await bare.page.locator('#share').isHidden());
  assert.deepEqual([...second.errors, ...bare.errors], []);
});

check('inline script that somebody brought in does not run', async (t) => {
  const { address } = await serve(t, 'policy.json');
  const { page } = await visit(t, address);
  const blocked = await page.evaluate(() => new Promise((done) => {
    document.addEventListener('securitypolicyviolation', (event) => done(event.effectiveDirective));
    const script = document.createElement('script');
    script.textContent = 'window.injected = true';
    document.body.append(script);
  }));
  assert.equal(blocked, 'script-src-elem');
  assert.equal(await page.evaluate(() => window.injected), undefined);
});

check('the picture book is made and handed over', async (t) => {
  const { address } = await serve(t, 'book.json');
  const { page, errors } = await visit(t, address);
  await page.click('#print');
  const [book] = await Promise.all([page.waitForEvent('download'),
    page.click('#print-pane button:has-text("Picture book")')]);
  assert.match(book.suggestedFilename(), /-book\.pdf$/);
  assert.equal((await readFile(await book.path())).subarray(0, 5).toString(), '%PDF-');
  assert.deepEqual(errors, []);
});

/** The demo scheme's three men in, with a lesson of two stops: few breaks to test, a film of eight seconds. */
async function small() {
  const scheme = JSON.parse(await readFile(join(root, 'examples/terns.json'), 'utf8'));
  const stop = (ball) => ({ ball, pause: 0.5 });
  return JSON.stringify({ ...scheme, stages: scheme.stages.filter((stage) => stage.defenders === 3), late: [],
    lessons: [{ id: 'short', name: 'Short', stage: 3, stops: [stop('top'), stop('tl')] }] });
}

check('a packet and a film are made and handed over', async (t) => {
  const { file, address } = await serve(t, 'packet.json');
  await writeFile(file, await small());
  const { page, errors } = await visit(t, address);
  await page.click('#print');
  const made = async (name) => {
    const [file] = await Promise.all([page.waitForEvent('download', { timeout: 240000 }),
      page.click(`#print-pane button:text-is("${name}")`)]);
    const bytes = await readFile(await file.path());
    await page.waitForSelector(`#print-pane [role=status]:has-text("${name}: handed")`);
    return { name: file.suggestedFilename(), bytes };
  };
  const packet = await made('Packet'), film = await made('Film');
  assert.match(packet.name, /-packet\.pdf$/);
  assert.equal(packet.bytes.subarray(0, 5).toString(), '%PDF-');
  assert.match(film.name, /-film\.mp4$/);
  assert.equal(film.bytes.subarray(4, 8).toString(), 'ftyp');
  assert.deepEqual(errors, []);
});

check('a run is cancelled, and another can begin', async (t) => {
  const { address } = await serve(t, 'cancel.json');
  const { page, errors } = await visit(t, address);
  await page.click('#print');
  await page.click('#print-pane button:has-text("Test report")');
  await page.click('#print-pane button:has-text("Cancel")');
  await page.waitForSelector('#print-pane [role=status]:has-text("Cancelled")');
  assert.ok(await page.locator('#print-pane button:has-text("Picture book")').isEnabled());
  assert.deepEqual(errors, []);
});

check('a device of the network joins by the code, looks, may not write, and is removed', async (t) => {
  const { file, address } = await serve(t, 'shared.json', '--share', '--host', 'club.test', '--address', '127.0.0.1');
  const coach = await visit(t, address);
  await coach.page.click('#share');
  await coach.page.waitForSelector('.join b');
  const [base, code] = await coach.page.locator('.join b').allTextContents();
  assert.match(base, /^http:\/\/club\.test:\d+\/$/);
  assert.match(code, /^[BCDFGHJKLMNPQRSTVWXZ]{4}-[BCDFGHJKLMNPQRSTVWXZ]{4}$/);
  assert.ok(await coach.page.locator('.join svg').isVisible());

  const player = await visit(t, base, { viewport: { width: 390, height: 800 }, hasTouch: true });
  assert.equal(await player.page.evaluate(() => isSecureContext), false);
  await player.page.fill('#join-pane input >> nth=0', 'BCDFGHJK');
  await player.page.click('#join-pane button:has-text("Join")');
  await player.page.waitForSelector('#join-pane [role=status]:has-text("not the code")');
  await player.page.fill('#join-pane input >> nth=0', code.toLowerCase());
  await player.page.fill('#join-pane input >> nth=1', '17');
  await player.page.click('#join-pane button:has-text("Join")');
  await player.page.waitForFunction(() => document.getElementById('saved').textContent.includes('coach'));
  assert.ok(await player.page.locator('#save').isHidden());
  const refusals = await player.page.evaluate(async (text) => {
    const heads = { 'Breakwater-Secret': sessionStorage.getItem('breakwater-secret'), 'If-Match': '"x"' };
    const all = [['PUT', 'scheme'], ['POST', 'jobs?kind=test'], ['GET', 'share'], ['DELETE', 'share']];
    return Promise.all(all.map(async ([method, what]) =>
      (await fetch(`api/${what}`, { method, headers: heads, body: method === 'PUT' ? text : undefined })).status));
  }, '{}');
  assert.deepEqual(refusals, [403, 403, 403, 403]);

  await coach.page.waitForSelector('#share-pane li:has-text("17")');
  const next = (await coach.page.locator('.join b').allTextContents())[1];
  assert.notEqual(next, code);
  await coach.page.click('#share-pane li button');
  await coach.page.waitForSelector('#share-pane li', { state: 'detached' });
  assert.equal(await player.page.evaluate(async () => (await fetch('api/scheme',
    { headers: { 'Breakwater-Secret': sessionStorage.getItem('breakwater-secret') } })).status), 403);
  await coach.page.click('#share-pane button:has-text("End")');
  await coach.page.waitForSelector('#share-pane [role=status]:has-text("Nothing is shared")');
  await assert.rejects(fetch(base.replace('club.test', '127.0.0.1')));
  assert.equal(await readFile(file, 'utf8'), await readFile(join(root, 'examples/terns.json'), 'utf8'));
  assert.deepEqual([...coach.errors, ...player.errors], []);
});

check('axe finds nothing in the panes that serving adds', async (t) => {
  const { address } = await serve(t, 'axe.json', '--share', '--host', 'club.test', '--address', '127.0.0.1');
  const { page } = await visit(t, address);
  const axe = await readFile(join(root, 'node_modules/axe-core/axe.min.js'), 'utf8');
  const look = async (pane) => {
    await page.evaluate(axe);
    const found = await page.evaluate((id) => window.axe.run(`#${id}`), pane);
    assert.deepEqual(found.violations.map((one) => one.id), [], pane);
    await page.keyboard.press('Escape');
  };
  await page.click('#share');
  await page.waitForSelector('.join b');
  await look('share-pane');
  await page.click('#print');
  await look('print-pane');
});
