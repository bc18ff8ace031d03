// SPDX-License-Identifier: GPL-3.0-or-later
// Logging at the sideline, in a real browser on the served page: three taps; into games old and new, before and
// after a reload; the program stopped in the middle and started anew; the browser killed; everything in the team
// file exactly once. What the pages sent meanwhile is held against the server's own table at the end.
import assert from 'node:assert/strict';
import { copyFile, mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { build, checks, frames, launch, launchOwn, reasonToSkip, root, run } from './page.mjs';
import { lastingPort, serveBoard } from './program.mjs';

const skip = await reasonToSkip();
if (skip) console.log(`# skipped: ${skip}`);
const check = checks(skip);
const patience = { timeout: 120000 };
const program = join(build, 'breakwater');
let browser, folder, axe;

const ask = (...words) => run(program, words);

before(async () => {
  if (skip) return;
  browser = await launch();
  axe = await readFile(join(root, 'node_modules/axe-core/axe.min.js'), 'utf8');
  folder = await mkdtemp(join(tmpdir(), 'breakwater-'));
});
after(async () => {
  await browser?.close();
  if (folder) await rm(folder, { recursive: true });
});

/** A scheme and a new team file. */
async function files(name, ...revisions) {
  const scheme = join(folder, `${name}.json`), team = join(folder, `${name}.team`);
  await copyFile(join(root, 'examples/terns.json'), scheme);
  await ask('team', 'new', team, '--name', 'Port Merrow Terns');
  for (const one of revisions.length > 0 ? revisions : ['terns.json']) {
    await ask('team', 'scheme', team, join(root, 'examples', one));
  }
  return { scheme, team };
}

/** The program on them, at a port it can come back to. */
const serve = async (t, { scheme, team }, port) =>
  serveBoard(t, scheme, '--team', team, '--port', String(port ?? await lastingPort()));

const ready = (page) => page.waitForSelector('html[data-ready]', patience);
const goTo = async (page, mode) => {
  await page.click(`#nav a[href="#${mode}"]`);
  await page.waitForSelector(`#mode-${mode}:not([hidden])`, patience);
  await frames(page);
};

/** What was sent for the team file, by the server's table of it. @type {Record<string, Set<string>>} */
const sent = { break: new Set(), game: new Set(), player: new Set(), spot: new Set(), sprint: new Set(), forget: new Set() };
let takes; // the tables

/** Keeps the keys of a thing and of what lies in it. */
function keep(table, thing) {
  for (const [key, value] of Object.entries(thing)) {
    sent[table].add(key);
    const { of } = takes?.[table]?.[key] ?? {};
    if (of && typeof value === 'object') [value].flat().forEach((one) => keep(of, one));
  }
}

/** Notes what a page sends; an answer that refuses it is a fault of the page. */
function listen(page, errors) {
  page.on('request', (request) => {
    const [, what] = /api\/team\/(\w+)/.exec(request.url()) ?? [], text = request.postData();
    if (!what || !text) return;
    const body = JSON.parse(text);
    if (body.entries) body.entries.forEach((one) => keep('break', one));
    else keep({ entries: 'break', games: 'game', players: 'player', splits: 'sprint', places: 'forget', forget: 'forget' }[what], body);
  });
  page.on('response', async (answer) => {
    const { pathname } = new URL(answer.url());
    if (answer.status() === 422) errors.push(`${pathname}: ${await answer.text()}`);
    if (pathname === '/api/team' && answer.ok()) ({ takes } = await answer.json().catch(() => ({ takes })));
  });
}

async function visit(t, address, options = {}) {
  const context = await browser.newContext({ viewport: { width: 1000, height: 900 }, ...options });
  const page = await context.newPage(), errors = [];
  listen(page, errors);
  page.setDefaultTimeout(patience.timeout);
  page.on('pageerror', (error) => errors.push(error.message));
  t.after(() => context.close());
  await page.goto(address);
  await ready(page);
  return { page, context, errors };
}

async function newGame(page, opponent, day = '2026-04-11') {
  await page.click('#log-new-game summary');
  await page.fill('#log-date', day);
  await page.fill('#log-opponent', opponent);
  await page.click('#log-game-form button');
}

async function tap(page, pair, outcome) {
  await page.click(`#log-pairs button:text-is("${pair}")`);
  await page.click(`#log-outcomes button:text-is("${outcome}")`);
  await page.click('#log-done');
}

const words = (page) => page.locator('#log-words').textContent();
const told = (page, pattern) => page.waitForFunction((source) =>
  new RegExp(source).test(document.getElementById('log-words').textContent), pattern.source, patience);
/** Until the file has been told everything, what was taken out too: that stands in a line of its own. */
const nothingWaits = (page) => page.waitForSelector('#log-waits', { state: 'hidden', ...patience });
const inFile = async (team) => JSON.parse((await ask('log', team, 'list', '--json')).stdout).breaks;

check('three taps log a break, and it is in the team file', async (t) => {
  const names = await files('taps'), { address } = await serve(t, names);
  const { page, errors } = await visit(t, address, { hasTouch: true, viewport: { width: 390, height: 800 } });
  await goTo(page, 'log');
  await newGame(page, 'Saltmarsh Otters');
  for (const key of ['#log-pairs button:text-is("5v4")', '#log-outcomes button:text-is("Shot saved")', '#log-done']) {
    await page.tap(key);
  }
  await told(page, /^1 break, all in the team file/);
  const [entry] = await inFile(names.team);
  assert.equal(entry.offence, 5);
  assert.equal(entry.defence, 4);
  assert.equal(entry.outcome, 'save');
  assert.equal(entry.revision, 1);
  assert.match(entry.time, /^20\d\d-\d\d-\d\dT\d\d:\d\d:\d\dZ$/);
  // The next one with the same numbers takes two.
  await page.tap('#log-outcomes button:text-is("Goal")');
  await page.tap('#log-done');
  await told(page, /^2 breaks, all/);
  assert.equal((await inFile(names.team))[1].offence, 5);
  assert.deepEqual(errors, []);
});

check('a break that is hardly meant so is kept, and that is said where it stands', async (t) => {
  const names = await files('odd'), { address } = await serve(t, names);
  const { page, errors } = await visit(t, address);
  const remark = page.locator('#log-list .waiting', { hasText: 'Kept, but' });
  const shotAt = async (x) => {
    await page.fill('#log-x', x);
    await page.fill('#log-y', '5');
    await page.click('#log-done');
  };
  await goTo(page, 'log');
  await page.click('#log-more summary');
  await page.click('#log-pairs button:text-is("6v4")');
  await page.click('#log-outcomes button:text-is("Shot saved")');
  await shotAt('36');
  await remark.waitFor(patience);
  assert.match(await remark.textContent(), /Kept, but is it right\? A shot from 36.* right was taken off the field; the sideline is at .*\.$/);
  await told(page, /^1 break, all in the team file/);
  await page.click('#log-list button:text-is("Edit")');
  await shotAt('3.6');
  await remark.waitFor({ state: 'detached', ...patience });
  await nothingWaits(page);
  await page.click('#log-list button:text-is("Edit")'); // put right the wrong way round
  await shotAt('-36');
  await remark.filter({ hasText: /36.* left was taken off the field/ }).waitFor(patience);
  assert.equal((await inFile(names.team)).length, 1);
  assert.deepEqual(errors, []);
});

check('the boxes hold what the server takes, and what is too long is met on the page', async (t) => {
  const names = await files('limits'), { address } = await serve(t, names);
  const { page, errors } = await visit(t, address);
  await goTo(page, 'log');
  const range = (id) => page.locator(id).evaluate((box) => [Number(box.min), Number(box.max)]);
  const of = (table, key) => [takes[table][key].least, takes[table][key].most];
  assert.deepEqual(await range('#log-seconds'), of('break', 'seconds'));
  assert.deepEqual(await range('#log-passes'), of('break', 'passes'));
  assert.deepEqual(await range('#log-offence'), of('break', 'offence'));
  await page.click('#log-more summary');
  await page.fill('#log-note', `${'ä'.repeat(takes.break.note.most >> 1)}no`);
  await tap(page, '6v4', 'Goal');
  assert.match(await page.locator('#log-now').textContent(), /^Not logged: Note: there is room for \d+ letters .* 1 too many\.$/);
  assert.equal((await inFile(names.team)).length, 0);
  await page.fill('#log-note', `${'ä'.repeat(takes.break.note.most >> 1)}n`);
  await page.click('#log-done');
  await told(page, /^1 break, all in the team file/);
  assert.equal((await inFile(names.team))[0].note.length, (takes.break.note.most >> 1) + 1);
  await goTo(page, 'roster');
  assert.deepEqual(await range('#roster-jersey'), of('player', 'jersey'));
  const [least, most] = await range('#split-distance'), metres = of('sprint', 'distance_m');
  assert.ok(least * 0.9144 >= metres[0] && least * 0.9144 < metres[0] + 0.02, `${least} yd`);
  assert.ok(most * 0.9144 <= metres[1] && most * 0.9144 > metres[1] - 0.02, `${most} yd`);
  await page.fill('#roster-jersey', '8');
  await page.fill('#roster-initials', 'x'.repeat(takes.player.initials.most + 2));
  await page.click('#roster-form button');
  await page.waitForFunction(() => /^Initials: there is room .* 2 too many\.$/.test(document.getElementById('roster-note').textContent),
    undefined, patience);
  assert.deepEqual(errors, []);
});

check('what may be said beside: seconds, passes, place, men, note', async (t) => {
  const names = await files('beside'), { address } = await serve(t, names);
  const { page, errors } = await visit(t, address);
  await goTo(page, 'log');
  await page.click('#log-pairs button:text-is("6v4")');
  await page.click('#log-more summary');
  await page.click('#log-watch');
  await page.click('#log-outcomes button:text-is("Goal")'); // what ends the break stops the watch
  assert.match(await page.inputValue('#log-seconds'), /^\d+\.\d$/);
  await page.fill('#log-seconds', '4.2');
  await page.click('#log-pass');
  await page.click('#log-pass');
  const { width, height } = await page.locator('#log-chart').boundingBox();
  await page.click('#log-chart', { position: { x: width * 0.6, y: height * 0.5 } });
  assert.ok(Number(await page.inputValue('#log-x')) > 0);
  assert.ok(Number(await page.inputValue('#log-y')) > 0);
  await page.fill('#log-x', '-3');
  await page.fill('#log-y', '8');
  await page.click('#log-spots button:text-is("TL")');
  await page.fill('#log-jerseys', '#12');
  await page.fill('#log-note', 'late from the box, 100 % his');
  await page.click('#log-done');
  await told(page, /^1 break, all/);
  const [entry] = await inFile(names.team);
  assert.deepEqual(entry.out, ['TL', '12']);
  assert.equal(entry.seconds, 4.2);
  assert.equal(entry.passes, 2);
  assert.equal(entry.shot_x_yd, -3);
  assert.equal(entry.shot_y_yd, 8);
  assert.equal(entry.note, 'late from the box, 100 % his');
  assert.match(await page.locator('#log-list p').textContent(),
    /6v4, goal, 4\.2 s, 2 passes, shot from 3\.0 yd left, 8\.0 yd out, out of place: TL, 12/);
  await page.fill('#log-jerseys', 'nobody');
  await page.click('#log-outcomes button:text-is("Whistle")');
  await page.click('#log-done');
  assert.match(await page.locator('#log-now').textContent(), /^Not logged: "nobody" is no spot/);
  assert.equal((await inFile(names.team)).length, 1);
  assert.deepEqual(errors, []);
});

check('fifty breaks with the program gone in the middle are all there exactly once', async (t) => {
  const names = await files('fifty'), first = await serve(t, names);
  const { page, errors } = await visit(t, first.address);
  await goTo(page, 'log');
  await newGame(page, 'Gullhaven Petrels');
  const outcomes = ['Goal', 'Shot saved', 'Shot wide', 'Loose ball', 'Whistle'];
  const log = async (from, to) => {
    for (let i = from; i < to; i++) await tap(page, i % 2 ? '6v4' : '5v4', outcomes[i % outcomes.length]);
  };
  await log(0, 20);
  await first.stop('SIGKILL');
  await log(20, 50);
  await told(page, /^\d+ of 50 not yet in the team file; kept in this browser/);
  assert.match(await page.locator('#log-why').textContent(), /has stopped, or cannot be reached/);
  const waiting = Number((await words(page)).split(' ')[0]);
  assert.ok(waiting >= 30, `${waiting} waiting`);
  assert.equal(await page.locator('#log-list li').count(), 50);
  assert.equal((await inFile(names.team)).length, 50 - waiting);
  const second = await serve(t, names, first.port);
  await page.goto(second.address); // only its fragment is another: the page stays
  await told(page, /^50 breaks, all in the team file/);
  const there = await inFile(names.team);
  assert.equal(there.length, 50);
  assert.equal(new Set(there.map((one) => one.id)).size, 50);
  there.forEach((one, i) => assert.equal(one.offence, i % 2 ? 6 : 5, `break ${i}`));
  await page.click('#log-undo'); // as far back as the game goes
  await told(page, /^49 breaks, all/);
  assert.deepEqual(errors, []);
});

/** Nine breaks into one game: three, three after a reload, three around the program's death and a network that is
 * off; two of them put right, one while nobody can be told. `choose` makes the game the chosen one. */
async function nine(t, names, choose, old) {
  const first = await serve(t, names), before = await inFile(names.team);
  const { page, context, errors } = await visit(t, first.address);
  const all = (n) => told(page, new RegExp(`^${old.length + n} breaks, all in the team file`));
  const again = async () => {
    await ready(page);
    await page.waitForSelector('#mode-log:not([hidden])', patience);
    await choose(page, true);
  };
  const change = async (row, outcome) => {
    await page.click(`#log-list li:nth-child(${row}) button:text-is("Edit")`);
    await page.click(`#log-outcomes button:text-is("${outcome}")`);
    await page.click('#log-done');
    // The words beside the list are those of before until the list has the change.
    await page.waitForSelector(`#log-list li:nth-child(${row}):has-text("${outcome.toLowerCase()}")`, patience);
    await frames(page);
  };
  await goTo(page, 'log');
  await choose(page, false);
  for (const outcome of ['Goal', 'Shot saved', 'Whistle']) await tap(page, '5v4', outcome);
  await all(3);
  await page.reload();
  await again();
  await tap(page, '6v4', 'Goal');
  await context.setOffline(true);
  await tap(page, '6v4', 'Shot wide');
  await tap(page, '6v4', 'Loose ball');
  await page.waitForFunction((n) => document.querySelectorAll('#log-list li').length === n, old.length + 6, patience);
  await change(3, 'Matched up in time'); // the goal, which the file has or has not got yet
  await told(page, new RegExp(`^\\d of ${old.length + 6} not yet in the team file`));
  await context.setOffline(false);
  await all(6);
  await first.stop('SIGKILL');
  await tap(page, '4v3', 'Goal');
  await told(page, new RegExp(`^1 of ${old.length + 7} not yet in the team file`));
  const second = await serve(t, names, first.port);
  await page.goto(second.address); // only its fragment is another: the page stays
  await all(7);
  await page.reload();
  await again();
  await tap(page, '4v3', 'Shot wide');
  await tap(page, '4v3', 'Whistle');
  if (old.length > 0) await change(9 + old.length, 'Whistle'); // one from before this page
  await all(9);
  const file = await inFile(names.team), here = file.filter((one) => !before.some(({ id }) => id === one.id));
  assert.equal(file.length, before.length + 9);
  assert.deepEqual(here.map((one) => `${one.offence}v${one.defence} ${one.outcome}`),
    ['5v4 goal', '5v4 save', '5v4 whistle', '6v4 matched-up', '6v4 wide', '6v4 ground-ball', '4v3 goal', '4v3 wide', '4v3 whistle']);
  assert.equal(new Set([...here, ...old].map((one) => one.game)).size, 1, 'all in one game');
  assert.ok(here[0].game > 0);
  if (old.length > 0) {
    const { outcome, ...rest } = old[0], now = file.find(({ id }) => id === old[0].id);
    assert.equal(now.outcome, 'whistle');
    assert.deepEqual({ ...now, outcome }, { outcome, ...rest }, 'nothing else of it was touched');
  }
  assert.deepEqual(errors, []);
  return here;
}

for (const opponent of ['first', 'middle', 'last']) {
  check(`nine breaks go into the ${opponent} game of a season that the file holds`, async (t) => {
    const names = await season(`old-${opponent}`), file = await inFile(names.team);
    const games = [...new Set(file.map((one) => one.game))];
    const game = games.at({ first: 0, middle: games.length >> 1, last: -1 }[opponent]);
    const old = file.filter((one) => one.game === game);
    // The page lists the newest first, as the season was played.
    await nine(t, names, (page) => page.selectOption('#log-game', { index: games.length - 1 - games.indexOf(game) }), old);
  });
}

check('nine breaks go into a game that was made on the page', async (t) => {
  const names = await season('made'), label = '2026-09-12, Ó Bréa & "Sons"';
  const known = new Set((await inFile(names.team)).map((one) => one.game));
  const here = await nine(t, names, (page, there) => (there ? page.selectOption('#log-game', { label })
    : newGame(page, 'Ó Bréa & "Sons"', '2026-09-12')), []);
  assert.ok(!known.has(here[0].game), 'a game of its own');
});

check('what an older page left refused goes in when the page is opened anew', async (t) => {
  const names = await season('refused'), { address } = await serve(t, names);
  const { page, errors } = await visit(t, address);
  await goTo(page, 'log');
  const before = (await inFile(names.team)).length;
  const refuse = (route) => (route.request().method() === 'POST'
    ? route.fulfill({ status: 422, body: 'a game has a key that is not known here.\n' }) : route.fallback());
  await page.route('**/api/team/entries*', refuse);
  await tap(page, '6v4', 'Goal');
  await page.waitForSelector('#log-list .waiting:has-text("Not taken by the team file")', patience);
  await page.unroute('**/api/team/entries*', refuse);
  assert.equal((await inFile(names.team)).length, before);
  await page.reload();
  await ready(page);
  await told(page, /breaks?, all in the team file/);
  assert.equal((await inFile(names.team)).length, before + 1);
  await page.route('**/api/team/entries*', refuse);
  await tap(page, '6v4', 'Whistle');
  await page.waitForSelector('#log-list .waiting:has-text("Not taken by the team file")', patience);
  await page.unroute('**/api/team/entries*', refuse);
  await page.click('#log-send'); // or when the coach asks for it
  await told(page, /breaks?, all in the team file/);
  assert.equal((await inFile(names.team)).length, before + 2);
  assert.deepEqual(errors.filter((words) => !words.includes('/api/team/entries')), []);
});

for (const [name, viewport] of [['a phone', { width: 390, height: 800 }], ['a small phone', { width: 320, height: 640 }],
  ['a computer', { width: 1200, height: 900 }]]) {
  check(`on ${name} the log's keys stand still whatever waits`, async (t) => {
    const names = await season(`still-${viewport.width}`), { address } = await serve(t, names);
    const { page, context } = await visit(t, address, { viewport });
    const keys = () => page.evaluate(() => Object.fromEntries([...document.querySelectorAll('#mode-log .key')]
      .filter((key) => key.checkVisibility()).map((key) => [key.textContent, key.getBoundingClientRect()])
      .map(([words, box]) => [words, [box.left, box.top + scrollY, box.width, box.height].map(Math.round).join(' ')])));
    await goTo(page, 'log');
    for (const look of [0, 1]) {
      await page.selectOption('#theme', { index: look });
      await page.selectOption('#log-game', { index: 1 + look });
      if (look === 0) await page.click('#log-more summary');
      await page.evaluate(() => scrollTo(0, 0));
      const stand = await keys();
      assert.ok(Object.keys(stand).length > 18, 'keys of the form and of what may be said beside');
      const still = async (state) => {
        await frames(page);
        await page.evaluate(() => scrollTo(0, 0));
        assert.deepEqual(await keys(), stand, `${state}, look ${look}`);
      };
      await page.fill('#log-note', 'late from the box, and nobody took the wing');
      await tap(page, '6v4', 'Goal');
      await told(page, /breaks?, all in the team file/);
      await still('saved');
      await context.setOffline(true);
      await tap(page, '6v4', 'Matched up in time');
      await page.waitForFunction(() => /cannot be reached/.test(document.getElementById('log-why').textContent), null, patience);
      await still('waiting, the network off');
      await page.click('#log-done');
      await still('nothing to log');
      await page.selectOption('#log-game', { index: 4 });
      await still('another game waits');
      await page.selectOption('#log-game', { index: 1 + look });
      const refuse = (route) => (route.request().method() === 'POST'
        ? route.fulfill({ status: 422, body: 'it is not so.\n' }) : route.fallback());
      await page.route('**/api/team/entries*', refuse);
      await context.setOffline(false);
      await page.waitForSelector('#log-list .waiting:has-text("it is not so")', patience);
      await still('refused');
      await page.unroute('**/api/team/entries*', refuse);
      await page.click('#log-send');
      await told(page, /breaks?, all in the team file/);
      await still('saved again');
    }
  });
}

check('an answer that is lost on the way doubles nothing', async (t) => {
  const names = await files('lost'), { address } = await serve(t, names);
  const { page } = await visit(t, address);
  await goTo(page, 'log');
  let lost = 0;
  await page.route('**/api/team/entries*', async (route) => {
    if (route.request().method() !== 'POST' || lost === 3) return route.fallback();
    lost++;
    await route.fetch(); // it arrives, and its answer never comes back
    return route.abort();
  });
  await tap(page, '6v4', 'Goal');
  await page.waitForFunction(() => !document.getElementById('log-waits').hidden);
  await page.click('#log-list button:text-is("Edit")'); // put right while nobody knows that it is there
  await page.click('#log-outcomes button:text-is("Shot wide")');
  await page.click('#log-done');
  await tap(page, '5v4', 'Whistle');
  await told(page, /^2 breaks, all in the team file/);
  const there = await inFile(names.team);
  assert.deepEqual(there.map((one) => one.outcome), ['wide', 'whistle']);
  assert.ok(lost >= 1);
});

check('the browser is killed with breaks on hold; opened again it brings them in', async (t) => {
  const names = await files('killed'), first = await serve(t, names);
  const profile = await mkdtemp(join(folder, 'profile-'));
  let own = await launchOwn(profile), page = await own.context.newPage();
  await page.goto(first.address, patience);
  await ready(page);
  await goTo(page, 'log');
  await newGame(page, 'Tarn Head Plovers');
  await first.stop('SIGKILL');
  for (let i = 0; i < 8; i++) {
    await tap(page, '6v5', 'Turnover we forced');
    await told(page, new RegExp(`^${i + 1} of ${i + 1} not yet`));
  }
  await own.kill();
  const second = await serve(t, names, first.port);
  own = await launchOwn(profile);
  t.after(() => own.kill());
  page = await own.context.newPage();
  await page.goto(second.address, patience);
  await ready(page);
  await goTo(page, 'log');
  await told(page, /^8 breaks, all in the team file/);
  assert.equal((await inFile(names.team)).length, 8);
});

check('breaks of one team never go into another team\'s file', async (t) => {
  const names = await files('ours'), first = await serve(t, names), theirs = await files('theirs');
  const { page, context } = await visit(t, first.address);
  await goTo(page, 'log');
  await first.stop('SIGKILL');
  await tap(page, '6v4', 'Goal');
  await told(page, /^1 of 1 not yet/);
  const other = await serve(t, theirs, first.port);
  const next = await context.newPage();
  await next.goto(other.address);
  await ready(next);
  await goTo(next, 'log');
  await told(next, /^Nothing to keep yet/);
  assert.equal((await inFile(theirs.team)).length, 0);
});

check('a tab that is brought to another team\'s program begins anew and sends it nothing', async (t) => {
  const names = await files('here'), first = await serve(t, names), theirs = await files('there');
  const { page } = await visit(t, first.address);
  await goTo(page, 'log');
  await tap(page, '6v4', 'Goal');
  await told(page, /^1 break, all/);
  await first.stop('SIGKILL');
  await page.click('#log-list button:text-is("Take out")');
  await tap(page, '5v4', 'Goal');
  await told(page, /^1 of 1 not yet/);
  const other = await serve(t, theirs, first.port);
  await page.goto(other.address);
  await told(page, /^Nothing to keep yet/);
  assert.equal((await inFile(theirs.team)).length, 0);
  await other.stop();
  const second = await serve(t, names, first.port);
  await page.goto(second.address);
  await told(page, /^1 break, all/);
  await nothingWaits(page);
  assert.deepEqual((await inFile(names.team)).map((one) => one.offence), [5]);
});

check('undo takes back each step; an edit and what was taken out too', async (t) => {
  const names = await files('undo'), { address } = await serve(t, names);
  const { page, errors } = await visit(t, address);
  await goTo(page, 'log');
  // The list and the words follow when the browser has kept a change: only then is the file told of it.
  const listed = (...wanted) => page.waitForFunction((all) => JSON.stringify(all)
    === JSON.stringify([...document.querySelectorAll('#log-list li p')].map((p) => p.textContent.split(' Not yet')[0])), wanted, patience);
  await tap(page, '4v3', 'Goal');
  await tap(page, '5v4', 'Whistle');
  await page.click('#log-list li:nth-child(2) button:text-is("Edit")');
  assert.equal(await page.locator('#log-title').textContent(), 'Put this break right');
  await page.click('#log-outcomes button:text-is("Shot wide")');
  await page.click('#log-done');
  await listed('2. 5v4, whistle', '1. 4v3, shot wide');
  await told(page, /^2 breaks, all/);
  await page.click('#log-list li:nth-child(1) button:text-is("Take out")');
  await told(page, /^1 break, all/);
  await page.click('#log-undo');
  await listed('2. 5v4, whistle', '1. 4v3, shot wide');
  await told(page, /^2 breaks, all/);
  await page.click('#log-undo');
  await listed('2. 5v4, whistle', '1. 4v3, goal');
  await told(page, /^2 breaks, all/);
  await page.reload();
  await ready(page);
  await page.waitForFunction(() => document.querySelectorAll('#log-list li').length === 2, null, patience);
  await page.click('#log-undo'); // after a reload: the newest of this game
  await told(page, /^1 break, all/);
  await nothingWaits(page);
  assert.deepEqual((await inFile(names.team)).map((one) => one.outcome), ['goal']);
  assert.deepEqual(errors, []);
});

check('by keys alone a break is logged, put right and taken back', async (t) => {
  const names = await files('keys'), { address } = await serve(t, names);
  const { page } = await visit(t, address);
  await goTo(page, 'log');
  const reach = async (text) => {
    for (let i = 0; i < 120; i++) {
      await page.keyboard.press('Tab');
      if (await page.evaluate((t2) => {
        const now = document.activeElement;
        return (now?.getAttribute('aria-label') ?? now?.textContent ?? '').startsWith(t2);
      }, text)) return;
    }
    assert.fail(`${text} cannot be reached`);
  };
  for (const key of ['5v4', 'Loose ball', 'Done']) {
    await reach(key);
    await page.keyboard.press('Enter');
  }
  await told(page, /^1 break, all/);
  await reach('Edit break 1');
  await page.keyboard.press('Enter');
  await reach('Whistle');
  await page.keyboard.press('Space');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter'); // Done stands next
  await page.waitForFunction(() => document.querySelector('#log-list p').textContent.includes('whistle'));
  await reach('Undo'); // the scheme's own is put away here
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => document.querySelector('#log-list p').textContent.includes('loose ball'));
});

check('a player and his sprint are kept by number boxes', async (t) => {
  const names = await files('roster'), { address } = await serve(t, names);
  const { page, errors } = await visit(t, address);
  await goTo(page, 'roster');
  assert.ok(await page.locator('#roster-name').isHidden());
  await page.fill('#roster-jersey', '12');
  await page.fill('#roster-initials', 'A.V.');
  await page.fill('#roster-spots', 'TL P');
  await page.fill('#roster-fixed', 'TL');
  await page.click('#roster-form button');
  await page.waitForSelector('#roster-table tbody tr:has-text("#12")');
  await page.fill('#split-jersey', '12');
  await page.fill('#split-distance', '20');
  await page.fill('#split-seconds', '2.95');
  await page.click('#split-form button');
  await page.waitForFunction(() => /splits/.test(document.querySelector('#roster-table .legs').textContent));
  assert.match(await page.locator('#roster-table tbody tr').first().textContent(), /#12A\.V\.TL \(settled\), P/);
  const sheet = (await ask('team', 'export', names.team, '--sheet', 'splits')).stdout;
  assert.match(sheet, /12,.*,20,2\.95,move/);
  // A slip is met with the value; the same pressed again is meant.
  await page.fill('#split-distance', '20');
  await page.fill('#split-seconds', '0.9');
  await page.click('#split-form button');
  await page.waitForFunction(() => /faster than anybody has run.*press Keep again/.test(document.getElementById('roster-note').textContent));
  assert.doesNotMatch((await ask('team', 'export', names.team, '--sheet', 'splits')).stdout, /,20,0\.9,/);
  await page.click('#split-form button');
  await page.waitForFunction(() => document.getElementById('roster-note').textContent === '');
  assert.match((await ask('team', 'export', names.team, '--sheet', 'splits')).stdout, /12,.*,20,0\.9,move/);
  await page.fill('#split-jersey', '99');
  await page.fill('#split-seconds', '2.95');
  await page.click('#split-form button');
  await page.waitForFunction(() => document.getElementById('roster-note').textContent !== '');
  await ask('team', 'set', names.team, 'full-names', 'on');
  await goTo(page, 'log');
  await goTo(page, 'roster');
  await page.waitForSelector('#roster-name:visible');
  await page.click('#roster-table button[aria-label="Change number 12"]');
  await page.fill('#roster-name', 'Ansel Vane-Marrow');
  await page.click('#roster-form button');
  await page.waitForSelector('#roster-table td:text-is("Ansel Vane-Marrow")');
  assert.deepEqual(errors, []);
});

check('a player is forgotten place by place', async (t) => {
  const names = await files('forget');
  await ask('team', 'set', names.team, 'full-names', 'on');
  await ask('team', 'player', names.team, '12', '--initials', 'Q.Z.', '--name', 'Quillon Zimmer');
  await ask('team', 'player', names.team, '5', '--name', 'Ann Lee');
  for (const note of ['Zimmer slid late, asleep', 'ZIMMER, Quillon', 'no 12 and Lee of Leeds']) {
    await ask('log', names.team, 'add', '6v4', 'goal', '--note', note);
  }
  const { address } = await serve(t, names), { page, errors } = await visit(t, address);
  await goTo(page, 'roster');
  await page.click('#roster-table [aria-label="Change number 12"]');
  assert.equal(await page.inputValue('#forget-jersey'), '12');
  await page.fill('#forget-name', 'Quillon Zimmer');
  await page.click('#forget-form button');
  await page.waitForSelector('#forget-places li:nth-child(3)');
  assert.equal(await page.locator('#forget-title').textContent(), '3 places that may speak of number 12');
  assert.ok(await page.locator('#forget-title').evaluate((one) => one === document.activeElement));
  assert.deepEqual(await page.locator('#forget-places mark').allTextContents(), ['Zimmer', 'ZIMMER, Quillon', '12']);
  assert.deepEqual(await page.locator('#forget-places select').evaluateAll((all) => all.map((one) => one.value)), ['', 'goes', '']);
  await page.evaluate(axe);
  const found = await page.evaluate(() => window.axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'] }));
  assert.deepEqual(found.violations.map((one) => [one.id, one.nodes.map((node) => node.html)]), []);
  if (process.env.BW_PICTURES) await page.screenshot({ path: `${process.env.BW_PICTURES}-ask.png`, fullPage: true });

  // Nothing goes before each is decided.
  await page.click('#forget-go');
  assert.ok(await page.locator('#forget-list').evaluate((form) => !form.checkValidity()));
  assert.match((await ask('team', 'show', names.team)).stdout, /Quillon Zimmer/);
  // A list that is no longer the file's is refused, and nothing is changed.
  await page.selectOption('[aria-label="Place 1"]', 'goes');
  await page.selectOption('[aria-label="Place 3"]', 'stays');
  await ask('log', names.team, 'add', '6v4', 'goal', '--note', '#12 once more');
  await page.click('#forget-go');
  await page.waitForFunction(() => /look at the list again/.test(document.getElementById('roster-note').textContent));
  assert.match((await ask('team', 'show', names.team)).stdout, /Quillon Zimmer/);

  await page.click('#forget-form button');
  await page.waitForSelector('#forget-places li:nth-child(4)');
  await page.selectOption('[aria-label="Place 3"]', 'stays');
  await page.click('#forget-all button:text-is("All others go")');
  await page.click('#forget-go');
  await page.waitForSelector('#forget-title:has-text("Number 12 is forgotten")');
  assert.deepEqual(await page.locator('#forget-places li p:last-child').allTextContents(), ['no 12 and Lee of Leeds']);
  assert.equal(await page.locator('#forget-words').textContent(), '1 place stays as it was:');
  assert.equal(await page.locator('#roster-table tbody th').count(), 1);
  assert.equal(await page.inputValue('#roster-name') + await page.inputValue('#split-jersey'), ''); // nor in a box
  if (process.env.BW_PICTURES) await page.screenshot({ path: `${process.env.BW_PICTURES}-done.png`, fullPage: true });
  const log = (await ask('log', names.team, 'list')).stdout;
  assert.match(log, /_ slid late, asleep/);
  assert.match(log, /#_ once more/);
  assert.doesNotMatch(log, /zimmer/i);
  await page.click('#forget-stop');
  assert.ok(await page.locator('#forget-list').isHidden());
  assert.equal(errors.length, 1); // the list that was refused
  assert.match(errors[0], /team\/forget: it has changed/);
});

/** A season in the file. */
async function season(name) {
  const names = await files(name, 'terns-early.json', 'terns.json');
  await ask('log', names.team, 'import', join(root, 'examples/terns-season.csv'));
  await ask('team', 'import', names.team, join(root, 'examples/terns-roster.csv'), '--sheet', 'roster');
  return names;
}

check('the review counts first and never says a bare rate', async (t) => {
  const names = await season('season'), { address } = await serve(t, names);
  const { page, errors } = await visit(t, address);
  await goTo(page, 'review');
  await page.waitForSelector('#review-parts svg');
  assert.equal(await page.locator('#review-title').textContent(), 'Port Merrow Terns: 121 breaks in 14 games');
  const text = await page.locator('#mode-review').innerText();
  assert.match(text, /28 of 121, about 23 in 100 \(likely 17 to 31\)/);
  assert.match(text, /3 of 9, too few to say/);
  assert.deepEqual(text.match(/\d+(\.\d+)? ?%(?! interval)/g), null); // "95 % interval" is how one reads it
  for (const line of text.split('\n')) {
    if (/in 100/.test(line) && !/breaks$|shots$/.test(line)) {
      assert.match(line, /likely|could still be|likely|fits what was seen/, line);
    }
  }
  await page.click('#review-model');
  await page.waitForSelector('#review-parts h3:text-is("The model beside it")', patience);
  assert.match(await page.locator('#mode-review').innerText(), /the model expected [\d.]+ goals/);
  const [pdf] = await Promise.all([page.waitForEvent('download', patience), page.click('#review-pdf')]);
  assert.equal((await readFile(await pdf.path())).subarray(0, 5).toString(), '%PDF-');
  assert.deepEqual(errors, []);
});

check('axe finds nothing, nothing scrolls sideways, keys are large', async (t) => {
  const names = await season('axe'), { address } = await serve(t, names);
  const { page, errors } = await visit(t, address, { viewport: { width: 320, height: 640 } });
  assert.equal(await page.locator('[aria-live="polite"]').count(), 1);
  for (const mode of ['log', 'roster', 'review']) {
    await goTo(page, mode);
    if (mode === 'review') await page.waitForSelector('#review-parts svg');
    if (mode === 'log') {
      await page.click('#log-more summary');
      await page.click('#log-new-game summary');
    }
    for (const theme of ['chart', 'sun', 'dark']) {
      await page.selectOption('#theme', { index: ['chart', 'sun', 'dark'].indexOf(theme) });
      await frames(page);
      await page.evaluate(axe);
      const found = await page.evaluate(() => window.axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] }));
      assert.deepEqual(found.violations.map((one) => [one.id, one.nodes.map((node) => node.html)]), [], `${mode} ${theme}`);
      assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), `${mode} ${theme}`);
      const small = await page.evaluate((id) => [...document.querySelectorAll(`#mode-${id} :is(button, input, select, summary)`)]
        .filter((one) => one.checkVisibility()).map((one) => ({ box: one.getBoundingClientRect(), name: one.id || one.textContent,
          least: one.classList.contains('key') ? 56 : 48 }))
        .filter(({ box, least }) => box.width < least - 0.5 || box.height < least - 0.5).map(({ name }) => name), mode);
      assert.deepEqual(small, [], `${mode} ${theme}`);
    }
  }
  await goTo(page, 'log');
  const gaps = await page.evaluate(() => [...document.querySelectorAll('#mode-log .keys')].filter((one) => one.offsetParent)
    .map((group) => getComputedStyle(group)).map((style) => [style.rowGap, style.columnGap]).flat());
  assert.ok(gaps.every((gap) => Number.parseFloat(gap) >= 8), gaps.join(' '));
  assert.deepEqual(errors, []);
});

check('the pages sent what the server takes: no key more, and every key there is', () => {
  for (const [table, keys] of Object.entries(sent)) {
    const taken = Object.keys(takes[table]).filter((key) => takes[table][key].is !== 'told');
    assert.deepEqual([...keys].sort(), taken.sort(), table);
  }
});

check('without a team file the page offers none of it', async (t) => {
  const scheme = join(folder, 'bare.json');
  await copyFile(join(root, 'examples/terns.json'), scheme);
  const { address } = await serveBoard(t, scheme);
  const { page } = await visit(t, address);
  assert.deepEqual(await page.locator('#nav a').allTextContents(), ['Design', 'Test', 'Lessons']);
});
