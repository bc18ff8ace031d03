// SPDX-License-Identifier: GPL-3.0-or-later
// Logging at the sideline, in a real browser on the served page: three taps; the program stopped in the
// middle and started anew; the browser killed; everything in the team file exactly once.
import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { copyFile, mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { after, before, test } from 'node:test';
import { build, frames, launch, launchOwn, reasonToSkip, root, run } from './page.mjs';

const skip = await reasonToSkip();
if (skip) console.log(`# skipped: ${skip}`);
const check = (name, body) => test(name, { skip }, body);
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

/** The program on them; `stop` ends it, as Ctrl-C or as a crash would. */
async function serve(t, { scheme, team }, ...options) {
  const child = spawn(program, ['board', scheme, '--team', team, '--json', ...options]);
  const gone = new Promise((done) => child.once('exit', done));
  const stop = async (signal = 'SIGINT') => {
    child.kill(signal);
    await gone;
  };
  t.after(() => stop());
  const [line] = await new Promise((done) =>
    createInterface(child.stdout).once('line', (...all) => done(all)));
  return { ...JSON.parse(line), stop };
}

const ready = (page) => page.waitForSelector('html[data-ready]', patience);
const goTo = async (page, mode) => {
  await page.click(`#nav a[href="#${mode}"]`);
  await page.waitForSelector(`#mode-${mode}:not([hidden])`, patience);
  await frames(page);
};

async function visit(t, address, options = {}) {
  const context = await browser.newContext({ viewport: { width: 1000, height: 900 }, ...options });
  const page = await context.newPage(), errors = [];
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
  assert.match(await words(page), /has stopped, or cannot be reached/);
  const waiting = Number((await words(page)).split(' ')[0]);
  assert.ok(waiting >= 30, `${waiting} waiting`);
  assert.equal(await page.locator('#log-list li').count(), 50);
  assert.equal((await inFile(names.team)).length, 50 - waiting);
  const second = await serve(t, names, '--port', String(first.port));
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

check('an answer that is lost on the way doubles nothing', async (t) => {
  const names = await files('lost'), { address } = await serve(t, names);
  const { page } = await visit(t, address);
  await goTo(page, 'log');
  let lost = 0;
  await page.route('**/api/team/entries', async (route) => {
    if (route.request().method() !== 'POST' || lost === 3) return route.fallback();
    lost++;
    await route.fetch(); // it arrives, and its answer never comes back
    return route.abort();
  });
  await tap(page, '6v4', 'Goal');
  await page.waitForFunction(() => !document.getElementById('log-send').hidden);
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
  const second = await serve(t, names, '--port', String(first.port));
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
  const other = await serve(t, theirs, '--port', String(first.port));
  const next = await context.newPage();
  await next.goto(other.address);
  await ready(next);
  await goTo(next, 'log');
  await told(next, /^Nothing to keep yet/);
  assert.equal((await inFile(theirs.team)).length, 0);
});

check('undo takes back each step; an edit and what was taken out too', async (t) => {
  const names = await files('undo'), { address } = await serve(t, names);
  const { page, errors } = await visit(t, address);
  await goTo(page, 'log');
  const list = async () => (await page.locator('#log-list li p').allTextContents()).map((one) => one.split(' Not yet')[0]);
  await tap(page, '4v3', 'Goal');
  await tap(page, '5v4', 'Whistle');
  await page.click('#log-list li:nth-child(2) button:text-is("Edit")');
  assert.equal(await page.locator('#log-title').textContent(), 'Put this break right');
  await page.click('#log-outcomes button:text-is("Shot wide")');
  await page.click('#log-done');
  await told(page, /^2 breaks, all/);
  assert.deepEqual(await list(), ['2. 5v4, whistle', '1. 4v3, shot wide']);
  await page.click('#log-list li:nth-child(1) button:text-is("Take out")');
  await told(page, /^1 break, all/);
  await page.click('#log-undo');
  await told(page, /^2 breaks, all/);
  assert.deepEqual(await list(), ['2. 5v4, whistle', '1. 4v3, shot wide']);
  await page.click('#log-undo');
  await page.waitForFunction(() => document.getElementById('log-list').textContent.includes('1. 4v3, goal'), null, patience);
  await told(page, /^2 breaks, all/);
  assert.deepEqual(await list(), ['2. 5v4, whistle', '1. 4v3, goal']);
  await page.reload();
  await ready(page);
  await page.waitForFunction(() => document.querySelectorAll('#log-list li').length === 2, null, patience);
  await page.click('#log-undo'); // after a reload: the newest of this game
  await told(page, /^1 break, all/);
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
  assert.deepEqual(errors, []);
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

check('without a team file the page offers none of it', async (t) => {
  const scheme = join(folder, 'bare.json');
  await copyFile(join(root, 'examples/terns.json'), scheme);
  const child = spawn(program, ['board', scheme, '--json']);
  t.after(() => child.kill('SIGINT'));
  const [line] = await new Promise((done) => createInterface(child.stdout).once('line', (...all) => done(all)));
  const { page } = await visit(t, JSON.parse(line).address);
  assert.deepEqual(await page.locator('#nav a').allTextContents(), ['Design', 'Test', 'Lessons']);
});
