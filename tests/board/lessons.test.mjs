// SPDX-License-Identifier: GPL-3.0-or-later
// The mode Lessons in the self-contained board: built by doing, played, called out.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { checks, drag, frames, launch, middle, openBoard, reasonToSkip, root, saved, stopTime } from './page.mjs';

const skip = await reasonToSkip();
if (skip) console.log(`# skipped: ${skip}`);
const check = checks(skip);
let browser;
before(async () => { if (!skip) browser = await launch(); });
after(async () => { await browser?.close(); });

async function withLessons(body, options) {
  const { page, context, seen } = await openBoard(browser, options);
  page.on('dialog', (dialog) => dialog.accept());
  await page.evaluate(() => { location.hash = 'lessons'; });
  await page.waitForSelector('#mode-lessons:not([hidden])');
  await frames(page);
  await body(page);
  assert.deepEqual(seen.errors, []);
  await context.close();
}

const press = async (page, name) => {
  await page.getByRole('button', { name, exact: true }).click();
  await frames(page);
};
const stops = (page) => page.locator('#stops b').allTextContents();
const value = (page) => page.locator('#lesson-time').getAttribute('aria-valuetext');

/** A new lesson of three stops, put with a finger, a tap and the list of places. */
async function build(page) {
  await press(page, 'New lesson');
  await page.check('#lesson-record');
  const ball = await middle(page, 'Ball'), field = await page.locator('#field').boundingBox();
  await drag(page, ball, { x: field.x + field.width * 0.2, y: ball.y + 60 });
  await frames(page);
  const mouse = page.mouse;
  await mouse.click(field.x + field.width * 0.75, ball.y + 30);
  await frames(page);
  await page.selectOption('#landmark', { label: 'behind the goal' });
  await frames(page);
}

check('a lesson is built by putting the ball, undone and done again, and is in the file', () =>
  withLessons(async (page) => {
    await build(page);
    const built = await stops(page);
    assert.equal(built.length, 4);
    assert.equal(built[0], '1. Ball at top centre');
    assert.equal(built[3], '4. Ball behind the goal');
    await press(page, 'Undo');
    assert.equal((await stops(page)).length, 3);
    await press(page, 'Redo');
    assert.deepEqual(await stops(page), built);
    await page.locator('#stops button').nth(3).click();
    await page.fill('#lesson-name', 'Over the top');
    await page.keyboard.press('Tab');
    await page.fill('#stop-pause', '3.5');
    await page.keyboard.press('Tab');
    await page.fill('#stop-caption', 'Low pair hold.\nNobody chases.');
    await page.keyboard.press('Tab');
    await frames(page);
    const lesson = (await saved(page)).lessons.at(-1);
    assert.equal(lesson.name, 'Over the top');
    assert.deepEqual(lesson.stops[3], { ball: 'x', pause: 3.5, caption: 'Low pair hold. Nobody chases.' });
    await page.fill('#stop-caption', '');
    await page.keyboard.press('Tab');
    await frames(page);
    assert.match(await page.locator('#stop-made').textContent(), /^Empty, so it is made from the duties: "Ball /);
    assert.ok(!('caption' in (await saved(page)).lessons.at(-1).stops[3]));
  }));

check('stops are put in another order, moved and removed without dragging; a lesson is deleted', () =>
  withLessons(async (page) => {
    await build(page);
    const built = (await stops(page)).map((stop) => stop.slice(3));
    await press(page, 'Up');
    assert.deepEqual((await stops(page)).map((stop) => stop.slice(3)), [built[0], built[1], built[3], built[2]]);
    await press(page, 'Down');
    assert.deepEqual((await stops(page)).map((stop) => stop.slice(3)), built);
    await page.selectOption('#landmark', { label: 'left wing' }); // recording: one more
    await frames(page);
    assert.equal((await stops(page)).length, 5);
    await press(page, 'Remove');
    await page.uncheck('#lesson-record');
    await page.selectOption('#landmark', { label: 'right wing' });
    await frames(page);
    assert.deepEqual((await stops(page)).map((stop) => stop.slice(3)), built);
    await press(page, 'Move to the ball');
    assert.equal((await stops(page))[3], '4. Ball on the right wing');
    const count = await page.locator('#lesson option').count();
    await press(page, 'Delete');
    assert.equal(await page.locator('#lesson option').count(), count - 1);
  }));

check('by keys alone: a lesson, two stops, a play', () => withLessons(async (page) => {
  await page.focus('#lesson-new');
  await page.keyboard.press('Enter');
  await frames(page);
  await page.locator('#tokens button[aria-label^="Ball"]').focus();
  for (let i = 0; i < 6; i++) await page.keyboard.press('Shift+ArrowLeft');
  await frames(page);
  assert.equal((await stops(page)).length, 1); // keys go step by step: no stop until it is said
  await page.focus('#stop-add');
  await page.keyboard.press('Enter');
  await frames(page);
  assert.equal((await stops(page)).length, 2);
  await page.focus('#lesson-play');
  await page.keyboard.press('Space');
  await page.waitForFunction(() => document.getElementById('lesson-time').valueAsNumber > 0.5);
  await page.keyboard.press('Space');
  assert.equal(await page.locator('#lesson-play').textContent(), 'Play');
}));

check('limits are met with a plain sentence, and what no file may say is not done', () =>
  withLessons(async (page) => {
    for (let i = 0; i < 9; i++) await press(page, 'New lesson');
    await press(page, 'New lesson');
    assert.match(await page.locator('#notice').textContent(), /^A scheme has room for 12 lessons/);
    await page.fill('#stop-pause', '75');
    await page.keyboard.press('Tab');
    assert.match(await page.locator('#notice').textContent(), /^A pause is 0 to 60 seconds/);
    await page.fill('#lesson-name', '');
    await page.keyboard.press('Tab');
    assert.match(await page.locator('#notice').textContent(), /^Not done: "name" is empty/);
    await page.fill('#stop-caption', 'ä'.repeat(200));
    await page.keyboard.press('Tab');
    assert.match(await page.locator('#notice').textContent(), /^A caption has room for 239 letters/);
  }));

check('it plays only when told to, is stepped and scrubbed, and goes on from a finger', () =>
  withLessons(async (page) => {
    const at = () => page.locator('#lesson-time').evaluate((range) => range.valueAsNumber);
    const pass = await stopTime(page);
    const press = async (name) => {
      await page.getByRole('button', { name, exact: true }).click();
      await pass(50);
    };
    const still = await page.locator('#canvas').screenshot();
    await pass(400);
    assert.ok(still.equals(await page.locator('#canvas').screenshot()));
    assert.equal(await at(), 0);
    await press('Step on');
    assert.equal(await page.locator('#stops [aria-current] b').textContent(), '2. Ball at top right');
    await page.focus('#lesson-time');
    await page.keyboard.press('End');
    await pass(50);
    assert.match(await value(page), /^22\.\d of 22\.\d seconds, ball at top centre$/);
    await page.keyboard.press('Home');
    for (let i = 0; i < 22; i++) await page.keyboard.press('ArrowRight');
    await pass(50);
    assert.match(await value(page), /^2\.2 of 22\.\d seconds, pass to be at top right$/);
    await press('Play');
    await pass(900);
    await press('Pause');
    const first = await at() - 2.2;
    assert.ok(first > 0.8 && first < 1.1, `${first}`);
    await page.check('#lesson-slow');
    const before = await at();
    await press('Play');
    await pass(900);
    const slow = await at() - before;
    assert.ok(slow > 0.35 && slow < 0.55, `${slow}: half the speed`);
    const from = await middle(page, 'Ball');
    await drag(page, from, { x: from.x - 60, y: from.y + 40 });
    await pass(900);
    assert.ok(await at() - before < slow + 0.05); // the finger stopped it
    assert.equal(await page.locator('#lesson-play').textContent(), 'Play');
    await pass(10000); // and the unit ran on from there, though the whole drag went by between two frames
    assert.equal(await page.getAttribute('#field', 'aria-busy'), 'false');
  }, { clock: true }));

check('with reduced motion it cuts from stop to stop', () => withLessons(async (page) => {
  const seen = new Set(), pass = await stopTime(page);
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  for (let i = 0; i < 40; i++) {
    seen.add(await value(page));
    await pass(100);
  }
  assert.ok(seen.size >= 2 && seen.size <= 4, [...seen].join('; '));
}, { reducedMotion: 'reduce', clock: true }));

for (const missing of [false, true]) {
  check(`a team meeting: the field fills the ${missing ? 'window' : 'screen'}, and Esc leads back`, () =>
    withLessons(async (page) => {
      await press(page, 'Full screen');
      const size = page.viewportSize(), field = await page.locator('#field').boundingBox();
      assert.ok(field.height > size.height * 0.55, JSON.stringify(field));
      assert.ok(await page.locator('.bar').isHidden());
      const letters = await page.locator('#lesson-words').evaluate((p) => parseFloat(getComputedStyle(p).fontSize));
      assert.ok(letters >= 22);
      await press(page, 'Step on');
      assert.match(await page.locator('#lesson-words').textContent(), /^Ball at top right/);
      assert.equal(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), true);
      if (missing) await page.keyboard.press('Escape');
      else await press(page, 'Leave full screen');
      await page.waitForSelector('.bar', { state: 'visible' });
    }, missing ? { before: () => { delete Element.prototype.requestFullscreen; } } : {}));
}

check('the caller: huge, at its beat, spoken, awake, and stopped', () => withLessons(async (page) => {
  const pass = await stopTime(page);
  const press = async (name) => {
    await page.getByRole('button', { name, exact: true }).click();
    await pass(50);
  };
  await page.fill('#caller-beat', '1');
  await page.check('#caller-speak');
  await page.check('#caller-shuffle');
  await press('Start calling');
  const spot = () => page.locator('#caller-spot').textContent();
  const first = await spot();
  assert.ok(await page.locator('#caller-spot').evaluate((p) => parseFloat(getComputedStyle(p).fontSize)) > 100);
  await pass(900);
  assert.equal(await spot(), first, 'not before its beat');
  await pass(200);
  assert.notEqual(await spot(), first);
  await press('Pause');
  const held = await spot();
  await pass(5000);
  assert.equal(await spot(), held);
  await press('Next place');
  assert.notEqual(await spot(), held);
  assert.equal(await page.locator('#caller-call').textContent(), 'Call: harbour');
  assert.equal(await page.locator('#caller-awake').textContent(), 'The screen stays awake.');
  const { spoken } = await page.evaluate(() => globalThis.heard);
  assert.ok(spoken.length >= 3 && spoken[0] === first, spoken.join());
  await press('Stop calling');
  assert.equal(await page.evaluate(() => globalThis.heard.released), 1);
  assert.ok(await page.locator('#caller').isHidden());
}, { before: () => {
  globalThis.heard = { spoken: [], released: 0 };
  Object.defineProperty(globalThis, 'speechSynthesis', { value: {
    speak: (words) => globalThis.heard.spoken.push(words.text), cancel() {},
    getVoices: () => [{ name: 'one' }], addEventListener() {} } });
  Object.defineProperty(navigator, 'wakeLock', { value: {
    request: async () => ({ release: async () => { globalThis.heard.released++; } }) } });
}, clock: true }));

check('the caller without speech and wake lock: a hidden control and a line', () => withLessons(async (page) => {
  assert.ok(await page.locator('#caller-speak').isHidden());
  await press(page, 'Start calling');
  await page.waitForFunction(() =>
    /cannot keep the screen awake/.test(document.getElementById('caller-awake').textContent));
  await page.keyboard.press('Escape');
  assert.ok(await page.locator('#caller').isHidden());
}, { before: () => {
  delete globalThis.speechSynthesis;
  Object.defineProperty(navigator, 'wakeLock', { value: undefined });
} }));

check('the caller in a browser without a voice says so, and offers none; one that comes late is taken', () => withLessons(async (page) => {
  assert.ok(await page.locator('#caller-speak').isDisabled());
  assert.match(await page.locator('#caller-voiceless').textContent(), /no voice/);
  assert.ok(await page.locator('#caller-voiceless').isVisible());
  await page.evaluate(() => globalThis.voices.come());
  assert.ok(await page.locator('#caller-speak').isEnabled());
  assert.ok(await page.locator('#caller-voiceless').isHidden());
}, { before: () => {
  const voices = new EventTarget();
  let all = [];
  Object.assign(voices, { getVoices: () => all, speak() {}, cancel() {},
    come() { all = [{ name: 'one' }]; voices.dispatchEvent(new Event('voiceschanged')); } });
  globalThis.voices = voices;
  Object.defineProperty(globalThis, 'speechSynthesis', { value: voices });
} }));

const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
check('axe finds nothing on any screen of lessons, in three themes', () => withLessons(async (page) => {
  const axe = await readFile(join(root, 'node_modules/axe-core/axe.min.js'), 'utf8');
  const clean = async (where) => {
    await page.evaluate(axe);
    const found = await page.evaluate((runOnly) => globalThis.axe.run({ runOnly }), rules);
    assert.deepEqual(found.violations.map((one) => `${where}: ${one.id} ${one.nodes[0].html}`), []);
  };
  await page.evaluate(() => {
    document.getElementById('left').hidden = document.getElementById('keeping').hidden = false;
    document.getElementById('left-words').textContent = 'Unsaved work of 14:32 on Harbour.';
    document.getElementById('keeping').textContent = 'This browser keeps no working copy.';
  });
  for (const theme of ['0', '1', '2']) {
    await page.selectOption('#theme', theme);
    await frames(page);
    await clean(`lessons ${theme}`);
    await press(page, 'Full screen');
    await clean(`full ${theme}`);
    await press(page, 'Leave full screen');
    await press(page, 'Start calling');
    await clean(`caller ${theme}`);
    await press(page, 'Stop calling');
  }
}));

check('at 320 px nothing scrolls sideways; at 360 px everything to touch is 48 px', async () => {
  for (const width of [320, 360]) {
    await withLessons(async (page) => {
      await build(page);
      for (const state of ['plain', 'Full screen', 'Start calling']) {
        if (state !== 'plain') await press(page, state);
        assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), `${width} ${state}`);
        const small = await page.evaluate(() => [...document.querySelectorAll('button, select, input, textarea')]
          .filter((one) => one.checkVisibility({ visibilityProperty: true }))
          .map((one) => ({ id: one.id, box: (one.closest('label.tick, .choices label') ?? one).getBoundingClientRect() }))
          .filter(({ box }) => box.width > 0 && (box.height < 47.5 || box.width < 47.5))
          .map(({ id, box }) => `${id} ${box.width}x${box.height}`));
        if (width === 360) assert.deepEqual(small, [], state);
        if (state === 'Full screen') await press(page, 'Leave full screen');
        if (state === 'Start calling') await press(page, 'Stop calling');
      }
    }, { viewport: { width, height: 700 } });
  }
});
