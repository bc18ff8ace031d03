// SPDX-License-Identifier: GPL-3.0-or-later
// Test mode in a browser, from disk with the network off: a break is run, told of, cancelled, looked at,
// played and compared, by finger and by keys alone.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { build, checks, frames, launch, openBoard, reasonToSkip, root, run, stopTime } from './page.mjs';

const skip = await reasonToSkip();
if (skip) console.log(`# skipped: ${skip}`);
const check = checks(skip);
let browser;
before(async () => { if (!skip) browser = await launch(); });
after(async () => { await browser?.close(); });

const done = { timeout: 240000 }; // a busy machine

async function withTests(body, options) {
  const board = await openBoard(browser, options);
  await board.page.evaluate(() => { location.hash = 'test'; });
  await board.page.waitForSelector('#mode-test:not([hidden])');
  await body(board.page, board);
  assert.deepEqual(board.seen.errors, []);
  assert.deepEqual(board.seen.requests.filter((url) => !/^(file|blob):/.test(url)), []);
  await board.context.close();
}

/** The smallest break there is, quickly: 4 against 3, nobody coming back. */
async function small(page) {
  await page.locator('#test-numbers input[value="4,3"]').check({ force: true });
  await page.selectOption('#test-late', '0');
  await page.locator('#test-effort input[value="1"]').check({ force: true });
}

async function finish(page) {
  await page.waitForSelector('#test-run:not([disabled])', done);
  assert.equal(await page.textContent('#test-note'), '');
  assert.ok(await page.isVisible('#test-results'));
}

async function runSmall(page) {
  await small(page);
  await page.click('#test-run');
  await finish(page);
}

const at = (page) => page.locator('#test-scrub').evaluate((input) => input.valueAsNumber);
const spoken = (page) => page.getAttribute('#test-scrub', 'aria-valuetext');
const picture = (page) => page.locator('#test-film').evaluate((canvas) => canvas.toDataURL());

check('what is usual for the scheme stands in the form, and follows the numbers', () =>
  withTests(async (page) => {
    assert.equal(await page.locator('#test-numbers input:checked').inputValue(), '6,4');
    assert.equal(await page.locator('#test-set option:checked').textContent(), '2-2-2');
    assert.equal(await page.locator('#test-start option:checked').textContent(), 'top centre');
    assert.equal(await page.locator('#test-late-men input').count(), 2);
    assert.match(await page.textContent('#test-late-men'), /First midfielder, yd behind/);
    await page.locator('#test-numbers input[value="5,4"]').check({ force: true });
    assert.equal(await page.locator('#test-late-men input').count(), 1);
    assert.deepEqual(await page.locator('#test-late option').allTextContents(), ['nobody', '1']);
    await page.selectOption('#test-late', '0');
    assert.equal(await page.locator('#test-late-men input').count(), 0);
  }));

check('a run tells its progress and comes to the numbers of the verb test', () =>
  withTests(async (page) => {
    await page.locator('#test-numbers input[value="4,3"]').check({ force: true });
    await page.fill('#test-late-men input', '25');
    await page.selectOption('#test-seconds', { label: '3' });
    await page.evaluate(() => {
      globalThis.told = [];
      const bar = document.getElementById('test-progress'), words = document.getElementById('test-progress-words');
      new MutationObserver(() => globalThis.told.push([bar.value, words.textContent]))
        .observe(words, { childList: true, characterData: true, subtree: true });
    });
    await page.click('#test-run');
    await finish(page);
    assert.equal(await page.evaluate(() => document.activeElement.id), 'test-headline');
    const told = (await page.evaluate(() => globalThis.told)).filter(([, words]) => words !== '');
    assert.ok(told.length > 8, `${told.length} pieces told`);
    assert.ok(told.some(([, words]) => /^Best play: \d+ of 10 seconds/.test(words)));
    told.forEach(([value], i) => assert.ok(i === 0 || value >= told[i - 1][0]));
    const { stdout } = await run(join(build, 'breakwater'), ['test', join(root, 'examples/terns.json'),
      '--offence', '4', '--defence', '3', '--late', '25', '--seconds', '3', '--json']);
    const native = JSON.parse(stdout).breaks[0];
    await page.click('#test-numbers-table summary');
    const rows = await page.locator('#test-numbers-table tbody tr').evaluateAll((all) =>
      all.map((row) => [...row.cells].map((cell) => cell.textContent)));
    for (let t = 0; t < 10; t++) {
      const [within, typical, best, even] = rows[t];
      assert.equal(within, `${t + 1} s`);
      assert.match(typical, /^\d+ \(\d+ to \d+\)$/);
      for (const [shown, exact] of [[typical, native.typical[t]], [best, native.best[t]], [even, native.even_numbers[t]]]) {
        assert.ok(Math.abs(Number.parseInt(shown, 10) - exact * 100) <= 0.51, `${within}: ${shown}, not ${exact}`);
      }
    }
    assert.equal(rows.find(([name]) => name === 'Time bought')[1],
      native.holds ? 'all 10 s' : `${native.time_bought_s.toFixed(1)} s`);
    assert.equal(rows.find(([name]) => name === 'In: first midfielder')[1], `${native.late_s[0].toFixed(1)} s`);
    assert.equal(await page.locator('#test-steps li').count(), native.answer.length);
    assert.match(await page.textContent('#test-findings'), /Within 3 s typical play scores in about \d+ of 100/);
    assert.match(await page.textContent('#test-results'), /typical play, the forecast.*best play, the stress test/s);
  }));

check('cancel ends a run at once, and another can be run', () =>
  withTests(async (page) => {
    await page.click('#test-run');
    await page.waitForFunction(() => document.getElementById('test-progress').value > 0, null, done);
    assert.equal(await page.evaluate(() => document.activeElement.id), 'test-cancel');
    await page.keyboard.press('Enter');
    await page.waitForSelector('#test-cancel', { state: 'hidden' });
    assert.equal(await page.textContent('#test-note'), 'Cancelled.');
    assert.ok(!await page.isVisible('#test-results'));
    await runSmall(page);
  }));

check('rule 15: the scrubber is a native range with its keys and says what happens', () =>
  withTests(async (page) => {
    await runSmall(page);
    const scrub = page.locator('#test-scrub');
    assert.equal(await scrub.getAttribute('type'), 'range');
    assert.equal(await scrub.evaluate((one) => one.closest('[role=toolbar]')), null);
    const end = Number(await scrub.getAttribute('max'));
    await scrub.focus();
    await page.keyboard.press('End');
    assert.equal(await at(page), end);
    assert.match(await spoken(page), /^\d\.\d of \d\.\d seconds, \d (passes|carries|holds|shoots)/);
    await page.keyboard.press('Home');
    assert.equal(await at(page), 0);
    await page.keyboard.press('ArrowRight');
    assert.ok(Math.abs(await at(page) - 0.1) < 1e-9);
    assert.match(await spoken(page), /^0\.1 of /);
    await page.keyboard.press('PageUp');
    assert.ok(await at(page) > 0.25);
    await page.keyboard.press('PageDown');
    assert.ok(await at(page) < 0.2);
    await page.keyboard.press('ArrowLeft');
    assert.ok(await at(page) < 0.1);
  }));

check('rule 14: the whole stands still first; played when asked, slowly if wanted, to its end', () =>
  withTests(async (page) => {
    await runSmall(page);
    const still = await picture(page), pass = await stopTime(page);
    await pass(300);
    assert.equal(await picture(page), still);
    assert.equal(await page.getAttribute('#test-whole', 'aria-pressed'), 'true');
    await page.click('#test-play');
    await pass(500);
    assert.ok(await at(page) > 0.3);
    await page.click('#test-play'); // pause
    assert.equal(await page.textContent('#test-play'), 'Play');
    const paused = await at(page);
    await pass(200);
    assert.equal(await at(page), paused);
    await page.selectOption('#test-speed', '0.25');
    await page.click('#test-play');
    await pass(800);
    const slow = await at(page) - paused;
    assert.ok(slow > 0.15 && slow < 0.25, `${slow}: a quarter of the speed`);
    await page.selectOption('#test-speed', '1');
    await pass(20000);
    assert.equal(await page.textContent('#test-play'), 'Play');
    assert.equal(await at(page), Number(await page.getAttribute('#test-scrub', 'max')));
    assert.notEqual(await picture(page), still);
    await page.click('#test-whole');
    assert.equal(await picture(page), still);
  }, { clock: true }));

check('steps: on, back, and by the list; the one under way is marked', () =>
  withTests(async (page) => {
    await runSmall(page);
    const marks = await page.locator('#test-steps b').allTextContents();
    await page.click('#test-next');
    assert.equal(await at(page), 0);
    await page.click('#test-next');
    assert.ok(marks[1] === undefined || marks[1].endsWith(`at ${(await at(page)).toFixed(1)} s`), marks[1]);
    await page.click('#test-previous');
    assert.equal(await at(page), 0);
    const last = page.locator('#test-steps button').last();
    await last.click();
    assert.equal(await last.getAttribute('aria-current'), 'true');
    assert.equal(await page.locator('#test-steps [aria-current]').count(), 1);
    assert.match(await spoken(page), /shoots/);
  }));

check('a weak rotation leads to its picture, and back', () =>
  withTests(async (page) => {
    await page.locator('#test-effort input[value="1"]').check({ force: true });
    await page.click('#test-run');
    await finish(page);
    const first = page.locator('#test-weak button').first();
    const name = (await first.locator('b').textContent()).replace('1. ', '');
    await first.click();
    assert.equal(await page.textContent('#test-film-title'), `Weak rotation: ${name}`);
    assert.match(await page.textContent('#test-film-late'), /^Late: \S+ \d\.\d s/);
    assert.match(await spoken(page), /seconds, ball from .* to /);
    assert.equal(await first.getAttribute('aria-current'), 'true');
    const [file] = await Promise.all([page.waitForEvent('download'), page.click('#picture')]);
    assert.equal(file.suggestedFilename(), `${name.toLowerCase().replaceAll(' ', '-')}.png`);
    await page.click('#test-back');
    assert.equal(await page.textContent('#test-film-title'), 'What beats it, step by step');
  }));

check('with reduced motion, playing steps from still to still', () =>
  withTests(async (page) => {
    await runSmall(page);
    await page.evaluate(() => {
      globalThis.seen = new Set();
      const tell = () => globalThis.seen.add(document.getElementById('test-scrub').value);
      new MutationObserver(tell).observe(document.getElementById('test-scrub'), { attributes: true });
    });
    await page.click('#test-play');
    await page.waitForFunction(() => document.getElementById('test-play').textContent === 'Play', null, done);
    const seen = await page.evaluate(() => globalThis.seen.size);
    const steps = await page.locator('#test-steps li').count();
    assert.ok(seen <= steps + 2, `${seen} stills for ${steps} steps`);
    assert.equal(await at(page), Number(await page.getAttribute('#test-scrub', 'max')));
  }, { reducedMotion: 'reduce' }));

check('compare: another level; a file; the version before the edits', () =>
  withTests(async (page) => {
    await small(page);
    await page.selectOption('#test-other', 'level');
    await page.selectOption('#test-other-level', '0');
    await page.click('#test-run');
    await finish(page);
    assert.match(await page.textContent('#test-sides'), /A: at level high school\.B: at level youth under 11\./);
    assert.match(await page.textContent('#test-findings'), /(more than chance|does not tell them apart)\./);
    assert.match(await page.textContent('#test-findings'), /give or take \d+/);
    await page.click('#test-numbers-table summary');
    assert.deepEqual(await page.locator('#test-numbers-table th[scope=col]').allTextContents(),
      ['Within', 'Typical A', 'Best A', 'Typical B', 'Best B']);
    await page.locator('#test-film-sides input[value="1"]').check({ force: true });
    assert.match(await page.textContent('#test-answer'), /^Best play, the stress test\. The answer: /);

    await page.selectOption('#test-other', 'file');
    await page.click('#test-run');
    assert.match(await page.textContent('#test-note'), /Choose the file/);
    await page.setInputFiles('#test-other-file', { name: 'broken.json', mimeType: 'application/json', buffer: Buffer.from('{"format": 9}') });
    await page.click('#test-run');
    await page.waitForFunction(() => document.getElementById('test-note').textContent.startsWith('Not tested: '), null, done);
    const text = await readFile(join(root, 'tests/scheme/valid/fresh.json'));
    await page.setInputFiles('#test-other-file', { name: 'fresh.json', mimeType: 'application/json', buffer: text });
    assert.equal(await page.textContent('#test-other-note'), 'B is fresh.json.');
    await page.click('#test-run');
    await finish(page);
    assert.match(await page.textContent('#test-sides'), /^A: Harbour, Port Merrow Terns\.B: /);

    await page.selectOption('#test-other', 'before');
    assert.match(await page.textContent('#test-other-note'), /no edits yet/);
    await page.click('#test-run');
    await finish(page);
    assert.match(await page.textContent('#test-findings'), /does not tell them apart/);
  }));

check('an edit of the scheme forgets the results and says so', () =>
  withTests(async (page) => {
    await runSmall(page);
    await page.evaluate(() => { location.hash = 'design'; });
    await page.locator('#modes input[value="1"]').check({ force: true });
    await page.selectOption('#who', { label: 'top left' });
    await page.fill('#x', '-5');
    await page.keyboard.press('Tab');
    await frames(page);
    await page.evaluate(() => { location.hash = 'test'; });
    await page.waitForSelector('#mode-test:not([hidden])');
    assert.ok(!await page.isVisible('#test-results'));
    assert.match(await page.textContent('#test-note'), /has changed since the last test/);
  }));

check('without a worker the page runs the test itself, and can cancel it', () =>
  withTests(async (page) => {
    await small(page);
    await page.click('#test-run');
    await page.waitForFunction(() => document.getElementById('test-progress').value > 0, null, done);
    await page.click('#test-cancel');
    assert.equal(await page.textContent('#test-note'), 'Cancelled.');
    await page.click('#test-run');
    await finish(page);
    assert.match(await page.textContent('#test-findings'), /typical play scores/);
  }, { before: () => { delete globalThis.Worker; } }));

check('rule 2: keys alone choose, run, scrub and open a rotation, with focus in sight', () =>
  withTests(async (page) => {
    await page.locator('#test-numbers input:checked').focus();
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('ArrowLeft');
    assert.equal(await page.locator('#test-numbers input:checked').inputValue(), '4,3');
    const walked = [];
    for (let i = 0; i < 20; i++) {
      await page.keyboard.press('Tab');
      const [id, outline] = await page.evaluate(() => {
        const one = document.activeElement;
        const shown = one.type === 'radio' ? one.nextElementSibling : one;
        return [one.id, getComputedStyle(shown).outlineStyle];
      });
      walked.push(id);
      assert.equal(outline, 'solid', id);
      if (id === 'test-run') break;
    }
    for (const id of ['test-set', 'test-start', 'test-late', 'test-level', 'test-seconds', 'test-seed', 'test-other', 'test-run']) {
      assert.ok(walked.includes(id), id);
    }
    await page.locator('#test-effort input[value="0"]').focus();
    await page.keyboard.press('ArrowRight'); // quick
    await page.locator('#test-run').focus();
    await page.keyboard.press('Enter');
    await finish(page);
    assert.equal(await page.evaluate(() => document.activeElement.id), 'test-headline');
    const reached = new Set();
    for (let i = 0; i < 30; i++) {
      await page.keyboard.press('Tab');
      reached.add(await page.evaluate(() => document.activeElement.id || document.activeElement.closest('ol')?.id));
    }
    for (const id of ['test-scrub', 'test-previous', 'test-play', 'test-next', 'test-whole', 'test-speed', 'test-steps']) {
      assert.ok(reached.has(id), id);
    }
  }));

check('rules 6, 7, 10, 12: axe in three themes, targets of 48 px, no sideways scrolling', () =>
  withTests(async (page) => {
    const axe = await readFile(join(root, 'node_modules/axe-core/axe.min.js'), 'utf8');
    await small(page);
    await page.selectOption('#test-other', 'level');
    await page.click('#test-run');
    await finish(page);
    await page.click('#test-numbers-table summary');
    await page.click('#test-limits summary');
    await page.evaluate(axe);
    for (const theme of ['0', '1', '2']) {
      await page.evaluate((index) => {
        const select = document.getElementById('theme');
        select.selectedIndex = Number(index);
        select.dispatchEvent(new Event('change'));
      }, theme);
      await frames(page);
      const found = await page.evaluate(() => globalThis.axe.run({
        runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] }));
      assert.deepEqual(found.violations.flatMap((v) => v.nodes.map((n) => `${v.id}: ${n.html}`)), [], `theme ${theme}`);
      for (const [width, height] of [[320, 640], [360, 780], [640, 360], [1024, 768]]) {
        await page.setViewportSize({ width, height });
        await frames(page);
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        assert.ok(wide <= width, `${wide} px wide at ${width}, theme ${theme}`);
        const small = await page.evaluate(() =>
          [...document.querySelectorAll('#mode-test :is(button, select, input:not([type=radio]):not([type=file]), summary, label:has(input[type=radio]))')]
            .filter((one) => one.offsetParent !== null)
            .map((one) => ({ name: one.id || one.textContent, box: one.getBoundingClientRect() }))
            .filter(({ box }) => box.height < 48 || box.width < 48).map(({ name }) => name));
        assert.deepEqual(small, [], `at ${width}`);
      }
      await page.setViewportSize({ width: 1000, height: 800 });
    }
  }));
