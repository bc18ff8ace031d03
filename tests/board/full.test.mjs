// SPDX-License-Identifier: GPL-3.0-or-later
// Full screen before a room: large, gone through with a clicker, undone, and Record in plain sight.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { boardTests, drag, frames, middle, rest, root, row, wholeBrowser } from './page.mjs';

const { check, withBoard } = await boardTests(wholeBrowser);

const lessons = async (page) => {
  await page.click('#nav a[href="#lessons"]');
  await page.waitForSelector('#mode-lessons:not([hidden])');
  await rest(page);
};
const fill = async (page) => {
  await page.click('#full');
  await page.waitForSelector('html.filled');
  await frames(page);
};
const key = async (page, name) => {
  await page.keyboard.press(name);
  await rest(page);
};
const stop = (page) => page.locator('#stops [aria-current] b').evaluate((b) => parseInt(b.textContent, 10));
const stops = (page) => page.locator('#stops li').count();
const place = (page) => page.locator('#landmark').evaluate((select) => select.selectedOptions[0].text);

/** Height of the letters of each word on the chart, CSS px, as last painted. */
const watchLetters = () => {
  globalThis.letters = {};
  const paint = CanvasRenderingContext2D.prototype.fillText;
  CanvasRenderingContext2D.prototype.fillText = function (text, ...rest) {
    globalThis.letters[text] = parseFloat(/([\d.]+)px/.exec(this.font)[1]) * this.getTransform().d / devicePixelRatio;
    return paint.call(this, text, ...rest);
  };
};

check('the chart is as large as the screen, its duty words 3 in 100 of its height', async () => {
  for (const [width, height] of [[1440, 900], [1280, 720], [1024, 768], [820, 1180], [360, 740]]) {
    await withBoard(async (page) => {
      const axe = await readFile(join(root, 'node_modules/axe-core/axe.min.js'), 'utf8');
      for (const mode of ['design', 'lessons']) {
        if (mode === 'lessons') await lessons(page);
        await page.evaluate(() => { globalThis.letters = {}; });
        await fill(page);
        await rest(page);
        const letters = await page.evaluate(() => globalThis.letters);
        const field = await page.locator('#field').boundingBox(), where = `${mode} ${width}x${height}`;
        const wide = width > 1.4 * height;
        if (wide) assert.ok(field.height > 0.93 * height, `${where} ${field.height}`);
        else assert.ok(field.width > 0.66 * width, `${where} ${field.width}`);
        if (height > width) assert.ok(field.width > 0.9 * width, `${where} ${field.width}`);
        for (const word of ['adjacent', 'crease', 'ball']) {
          if (wide) assert.ok(letters[word] >= 0.03 * height, `${where} ${word} ${letters[word]}`);
          else assert.ok(letters[word] >= Math.min(0.026 * Math.min(width, height), 0.03 * height), `${where} ${word} ${letters[word]}`);
        }
        assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), where);
        if (height >= 700) assert.ok(await page.evaluate(() => document.documentElement.scrollHeight <= innerHeight), where);
        for (const target of await page.locator('button:visible:not(#tokens button), #stages label:visible').all()) {
          const box = await target.boundingBox();
          assert.ok(box.height >= 47.5 && box.width >= 47.5, `${where} ${await target.textContent()} ${JSON.stringify(box)}`);
          assert.ok(box.x >= 0 && box.y >= 0 && box.x + box.width <= width && box.y + box.height <= height, where);
        }
        for (const theme of width === 1440 ? ['0', '1', '2'] : []) {
          await page.locator('#theme').evaluate((select, value) => { // it is put away
            select.value = value;
            select.dispatchEvent(new Event('change'));
          }, theme);
          await frames(page);
          await page.evaluate(axe);
          const found = await page.evaluate(() => globalThis.axe.run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'] }));
          assert.deepEqual(found.violations.map((one) => `${where} ${theme}: ${one.id} ${one.nodes[0].html}`), []);
        }
        await page.click('#full-leave');
        await page.waitForSelector('html:not(.filled)');
      }
    }, { viewport: { width, height }, before: watchLetters });
  }
});

check('a clicker goes from stop to stop, plays, and makes the screen black', () => withBoard(async (page) => {
  await lessons(page);
  await fill(page);
  for (const [next, back] of [['PageDown', 'PageUp'], ['ArrowRight', 'ArrowLeft'], ['ArrowDown', 'ArrowUp']]) {
    assert.equal(await stop(page), 1);
    await key(page, next);
    assert.equal(await stop(page), 2, next);
    await key(page, next);
    assert.equal(await stop(page), 3, next);
    await key(page, back);
    await key(page, back);
  }
  for (const dark of ['.', 'b']) {
    await key(page, dark);
    assert.ok(await page.locator('#blank').isVisible(), dark);
    await key(page, 'PageDown'); // brings the field back, and does no more
    assert.ok(await page.locator('#blank').isHidden());
    assert.equal(await stop(page), 1);
  }
  await page.keyboard.press('Space');
  await page.waitForFunction(() => document.getElementById('lesson-time').valueAsNumber > 0.3);
  assert.equal(await page.locator('#lesson-play').textContent(), 'Pause');
  await page.keyboard.press('Space');
  assert.equal(await page.locator('#lesson-play').textContent(), 'Play');
  // After a touch the keys are the clicker's again.
  await page.click('#lesson-on');
  await frames(page);
  const at = await stop(page);
  await key(page, 'ArrowRight');
  assert.equal(await stop(page), at + 1);
  await key(page, 'Escape');
  await page.waitForSelector('html:not(.filled)');
  await key(page, 'PageUp'); // the page's own again
  assert.equal(await stop(page), at + 1);
}, { before: () => { delete Element.prototype.requestFullscreen; } }));

check('in Design a clicker takes the ball from named place to named place, and a man\'s keys stay his', () =>
  withBoard(async (page) => {
    await fill(page);
    const names = await page.locator('#landmark option').allTextContents();
    const first = await place(page), seen = new Set([first]);
    for (const next of ['PageDown', 'ArrowRight', 'Space']) {
      await key(page, next);
      seen.add(await place(page));
    }
    assert.equal(seen.size, 4, [...seen].join());
    for (let i = 0; i < 3; i++) await key(page, 'PageUp');
    assert.equal(await place(page), first);
    await key(page, 'PageUp'); // before the first comes the last
    assert.ok(names.includes(await place(page)) && !seen.has(await place(page)));
    await key(page, 'PageDown');
    await page.locator('#stages label', { hasText: '5 in' }).click();
    await frames(page);
    assert.equal(await page.locator('#tokens button[aria-label]').count(), 7);
    await key(page, 'ArrowRight'); // not another stage
    assert.equal(await page.locator('#tokens button').count(), 7);
    assert.notEqual(await place(page), first);
    await page.locator('#tokens button[aria-label^="Ball"]').focus();
    const was = (await row(page, 'ball'))[2];
    await key(page, 'ArrowUp');
    assert.notEqual((await row(page, 'ball'))[2], was);
    assert.equal(await place(page), 'between places');
  }));

check('Record is off in a new lesson, in plain sight where it is on, and a what-if is kept only then', () =>
  withBoard(async (page) => {
    const toss = async (dx) => {
      await rest(page);
      const ball = await middle(page, 'Ball');
      await drag(page, ball, { x: ball.x + dx, y: ball.y + 90 });
      await rest(page);
    };
    const badge = page.locator('#recording');
    await lessons(page);
    await page.check('#lesson-record');
    assert.ok(await badge.isVisible());
    await page.click('#lesson-new');
    await frames(page);
    assert.ok(!await page.isChecked('#lesson-record'));
    assert.ok(await badge.isHidden());
    await fill(page);
    await toss(-120); // a what-if
    assert.equal(await stops(page), 1);
    await page.click('#full-leave');
    await page.check('#lesson-record');
    await fill(page);
    assert.ok(await badge.isVisible());
    assert.match(await badge.textContent(), /^Recording/);
    const dot = await badge.locator('.dot').evaluate((one) => getComputedStyle(one).backgroundColor);
    assert.equal(dot, 'rgb(217, 43, 43)');
    await toss(200);
    assert.equal(await stops(page), 2);
    await page.click('#full-undo');
    await frames(page);
    assert.equal(await stops(page), 1);
    await page.locator('#stages label', { hasText: '3 in' }).click();
    await frames(page);
    assert.equal(await page.locator('#tokens button').count(), 5);
    await page.locator('#stages label', { hasText: '4 in' }).click();
    await badge.click();
    await frames(page);
    assert.ok(await badge.isHidden());
    await toss(-120);
    assert.equal(await stops(page), 1);
    const man = await middle(page, 'Low right');
    await drag(page, man, { x: man.x + 60, y: man.y - 20 });
    await frames(page);
    await page.locator('#bubble-choices button', { hasText: 'For now' }).click();
    await frames(page);
    await page.click('#full-undo');
    await rest(page);
    assert.ok(!(await row(page, 'low right'))[1].includes('moved'));
    assert.equal(await stops(page), 1);
  }));
