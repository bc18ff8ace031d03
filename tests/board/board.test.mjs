// SPDX-License-Identifier: GPL-3.0-or-later
// The self-contained board in a browser, opened from disk with the network off.
import assert from 'node:assert/strict';
import { readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { boardFile, boardTests, drag, frames, middle, plain, rest, root, row, stopTime } from './page.mjs';

const { check, open, withBoard } = await boardTests();

/** Where a token's place is on the page, as the core has it: the button's own style. */
const placeOf = async (page, who) => (await row(page, who))[2];

check('one file under 600 kB: one classic script, nothing fetched, injected script refused', async () => {
  const html = await readFile(boardFile, 'utf8');
  assert.ok((await stat(boardFile)).size < 600000);
  assert.equal(html.match(/<script[ >]/g).length, 1);
  assert.doesNotMatch(html, /type="?module|<link |src="|@import|url\((?!data:)/);
  assert.match(html, /Content-Security-Policy" content="default-src 'none'/);
  assert.doesNotMatch(html, /unsafe-inline|'unsafe-eval'/);
  const board = await open();
  assert.deepEqual(board.seen.requests.filter((url) => !url.startsWith('file:')), []);
  assert.equal(board.seen.requests.length, 1);
  await board.page.evaluate(() => {
    const script = document.createElement('script');
    script.textContent = 'globalThis.intruded = true';
    document.body.append(script);
  });
  assert.equal(await board.page.evaluate(() => globalThis.intruded), undefined);
  await board.context.close();
});

check('the mouse drags the ball and the unit runs after it at a man\'s speed', () =>
  withBoard(async (page) => {
    const from = await middle(page, 'Ball'), man = await middle(page, 'Top left');
    const pass = await stopTime(page);
    await drag(page, from, { x: from.x + 180, y: from.y + 160 });
    await pass(50);
    assert.notEqual(await placeOf(page, 'ball'), 'in the middle, 15.0 yd out');
    const late = Number.parseFloat((await row(page, 'top left'))[3]);
    assert.ok(late > 0.3, `late ${late}`);
    let took = 0;
    for (; await page.getAttribute('#field', 'aria-busy') !== 'false' && took < 20; took += 0.1) await pass(100);
    assert.ok(took > 0.8 && took < 8, `${took} s`);
    const now = await middle(page, 'Top left');
    assert.ok(Math.hypot(now.x - man.x, now.y - man.y) > 20);
  }, { clock: true }));

check('a finger drags the ball; a broken-off touch puts it back', () =>
  withBoard(async (page) => {
    const touch = await page.context().newCDPSession(page);
    const send = (type, points) => touch.send('Input.dispatchTouchEvent', { type, touchPoints: points });
    const from = await middle(page, 'Ball'), was = await placeOf(page, 'ball');
    const swipe = async (end) => {
      await send('touchStart', [from]);
      for (let i = 1; i <= 6; i++) await send('touchMove', [{ x: from.x + 20 * i, y: from.y + 15 * i }]);
      await frames(page);
      assert.ok(await page.locator('#callout').isVisible());
      await send(end, []);
      await frames(page);
    };
    await swipe('touchCancel');
    assert.equal(await placeOf(page, 'ball'), was);
    await swipe('touchEnd');
    assert.notEqual(await placeOf(page, 'ball'), was);
  }, { hasTouch: true, viewport: { width: 820, height: 1100 } }));

check('nothing happens on pointer-down, and Esc drops a drag', () =>
  withBoard(async (page) => {
    const from = await middle(page, 'Ball'), was = await placeOf(page, 'ball');
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await frames(page);
    assert.equal(await placeOf(page, 'ball'), was);
    await page.mouse.move(from.x + 90, from.y + 90, { steps: 4 });
    await page.keyboard.press('Escape');
    await page.mouse.up();
    await frames(page);
    assert.equal(await placeOf(page, 'ball'), was);
  }));

check('rule 1: every token is placed by taps only, then by typing only', () =>
  withBoard(async (page) => {
    await page.selectOption('#set', { label: '2-2-2' });
    await frames(page);
    const field = await page.locator('#field').boundingBox();
    const names = ['Ball', 'Attacker 1', 'Attacker 5'];
    for (const [i, name] of names.entries()) {
      const at = await middle(page, name);
      await page.mouse.click(at.x, at.y);
      const to = { x: field.x + field.width * (0.4 + 0.1 * i), y: field.y + field.height * 0.88 };
      await page.mouse.click(to.x, to.y);
      await frames(page);
      const now = await middle(page, name);
      assert.ok(Math.hypot(now.x - to.x, now.y - to.y) < 4, name);
    }
    for (const [i, name] of ['ball', 'attacker 1', 'attacker 5'].entries()) {
      await page.selectOption('#who', { label: name });
      await page.fill('#x', String(-4 - i));
      await page.fill('#y', String(8 + i));
      await page.keyboard.press('Tab');
      await frames(page);
      assert.equal(await placeOf(page, name), `${4 + i}.0 yd left, ${8 + i}.0 yd out`);
    }
  }));

check('rule 2: keys alone move the ball, choose a stage, walk the tokens', () =>
  withBoard(async (page) => {
    for (let i = 0; i < 20; i++) {
      await page.keyboard.press('Tab');
      if (await page.evaluate(() => document.activeElement?.getAttribute('aria-label')
        ?.startsWith('Ball'))) break;
    }
    const outline = await page.evaluate(() => getComputedStyle(document.activeElement).outlineWidth);
    assert.equal(outline, '3px');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Shift+ArrowDown');
    await frames(page);
    assert.equal(await placeOf(page, 'ball'), '1.0 yd right, 13.0 yd out');
    await page.keyboard.press(']');
    assert.match(await page.evaluate(() => document.activeElement.getAttribute('aria-label')), /^Goalkeeper/);
    await page.keyboard.press(']');
    assert.match(await page.evaluate(() => document.activeElement.getAttribute('aria-label')), /^Low left/);
    await page.keyboard.press('[');
    await page.keyboard.press('[');
    await page.keyboard.press('Enter');
    assert.equal(await page.evaluate(() => document.activeElement.id), 'x');
    await page.locator('#stages input').first().focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await frames(page);
    const count = await page.locator('#tokens button').count();
    assert.ok(count === 7 || count === 5, `${count} tokens`);
  }));

check('rule 3: each button\'s middle is within 1 px of its drawn disc, at 1x, 2x and 3x', async () => {
  for (const deviceScaleFactor of [1, 2, 3]) {
    await withBoard(async (page) => {
      await page.selectOption('#theme', '1'); // black on white: a disc is what is black
      await frames(page);
      const off = await page.evaluate(() => {
        const canvas = document.getElementById('canvas');
        const box = canvas.getBoundingClientRect(), ratio = canvas.width / box.width;
        const pixels = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height);
        const dark = (x, y) => pixels.data[4 * (Math.floor(y) * canvas.width + Math.floor(x))] < 128;
        return [...document.querySelectorAll('#tokens button')].map((button) => {
          const b = button.getBoundingClientRect();
          const x = (b.x + b.width / 2 - box.x) * ratio, y = (b.y + b.height / 2 - box.y) * ratio;
          // From outside the mark inward, the first dark pixel on either side.
          const reach = (button.getAttribute('aria-label').startsWith('Ball') ? 14 : 18) * ratio;
          const edge = (dx, dy) => {
            for (let r = reach; r > 0; r -= 0.25) if (dark(x + dx * r, y + dy * r)) return r;
            return 0;
          };
          const across = (edge(1, 0) - edge(-1, 0)) / 2, along = (edge(0, 1) - edge(0, -1)) / 2;
          return { name: button.getAttribute('aria-label'), off: Math.hypot(across, along) / ratio };
        }).filter((one) => one.name.startsWith('Top') || one.name.startsWith('Ball'));
      });
      assert.ok(off.length >= 3);
      for (const one of off) assert.ok(one.off <= 1, `${one.name} ${one.off.toFixed(2)} px`);
    }, { deviceScaleFactor });
  }
});

check('rule 4: the table, the buttons and the caption speak of the same places', () =>
  withBoard(async (page) => {
    for (const landmark of ['0', '4', '9']) {
      await page.selectOption('#landmark', landmark);
      await frames(page);
      const labels = await page.locator('#tokens button').evaluateAll((all) =>
        all.map((button) => button.getAttribute('aria-label')));
      const places = (await page.locator('#rows td:nth-child(3)').allTextContents()).map(plain);
      assert.equal(labels.length, places.length);
      labels.forEach((label, i) => assert.ok(label.includes(places[i]), `${label} / ${places[i]}`));
      assert.match(labels[0], /^Ball /);
      assert.match(labels[1], /^Goalkeeper, .*Goes with the ball/); // read in this order
    }
  }));

check('the goalkeeper has a button on his mark, says where he stands, and is not moved', () =>
  withBoard(async (page) => {
    const at = await middle(page, 'Goalkeeper'), was = await row(page, 'goalkeeper');
    assert.deepEqual(was.slice(0, 3), ['G goalkeeper', 'goal', 'in the middle, on the goal line']);
    await drag(page, at, { x: at.x + 60, y: at.y - 60 });
    await page.locator('#tokens button[aria-label^="Goalkeeper"]').press('ArrowUp');
    assert.match(await page.locator('#status').textContent(), /goalkeeper goes with the ball/);
    await page.selectOption('#who', { label: 'goalkeeper' });
    assert.ok(await page.locator('#x').isDisabled());
    assert.deepEqual(await row(page, 'goalkeeper'), was);
    await page.selectOption('#landmark', { index: 3 });
    await rest(page);
    assert.notDeepEqual(await row(page, 'goalkeeper'), was);
    assert.ok(Math.abs((await middle(page, 'Goalkeeper')).x - at.x) > 4);
  }));

check('rule 5: at most six messages during a three-second drag', () =>
  withBoard(async (page) => {
    await page.evaluate(() => {
      globalThis.messages = 0;
      new MutationObserver((list) => { globalThis.messages += list.length; })
        .observe(document.getElementById('status'), { childList: true, characterData: true, subtree: true });
    });
    const from = await middle(page, 'Ball'), pass = await stopTime(page);
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    for (let i = 0; i < 60; i++) {
      await page.mouse.move(from.x + 150 * Math.sin(i / 9), from.y + 60 + 50 * Math.cos(i / 7));
      await pass(50);
    }
    await page.mouse.up();
    await pass(10000);
    const messages = await page.evaluate(() => globalThis.messages);
    assert.ok(messages >= 1 && messages <= 6, `${messages} messages`);
    assert.match(await page.locator('#status').textContent(), /^Ball .*\./);
  }, { clock: true }));

check('rule 6: axe finds nothing, in three themes and three modes', () =>
  withBoard(async (page) => {
    await page.context().setOffline(false);
    const axe = await readFile(join(root, 'node_modules/axe-core/axe.min.js'), 'utf8');
    for (const theme of ['0', '1', '2']) {
      for (const mode of ['0', '1', '2']) {
        await page.selectOption('#theme', theme);
        await page.locator(`#modes input[value="${mode}"]`).check({ force: true });
        await frames(page);
        await page.evaluate(axe);
        const found = await page.evaluate(() => globalThis.axe.run({
          runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] }));
        const faults = found.violations.flatMap((v) => v.nodes.map((n) => `${v.id}: ${n.html}`));
        assert.deepEqual(faults, [], `theme ${theme}, mode ${mode}`);
      }
    }
  }));

check('rules 7, 9, 10: targets of 48 px, touch-action on the field alone, no sideways scrolling', async () => {
  for (const [width, height] of [[320, 640], [360, 780], [640, 320], [1024, 768]]) {
    await withBoard(async (page) => {
      await page.selectOption('#set', { label: '2-2-2' });
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      assert.ok(wide <= width, `${wide} px wide at ${width}`);
      const small = await page.evaluate(() =>
        [...document.querySelectorAll('button, select, input[type=number], label:has(input)')]
          .filter((one) => one.offsetParent !== null)
          .map((one) => ({ name: one.id || one.textContent, box: one.getBoundingClientRect() }))
          .filter(({ box }) => box.height < 48 || box.width < 48).map(({ name }) => name));
      assert.deepEqual(small, [], `at ${width}`);
      const still = await page.evaluate(() => [...document.querySelectorAll('*')]
        .filter((one) => getComputedStyle(one).touchAction === 'none').map((one) => one.id));
      assert.deepEqual(still, ['field']);
      const meta = await page.locator('meta[name=viewport]').getAttribute('content');
      assert.doesNotMatch(meta, /user-scalable|maximum-scale/);
    }, { viewport: { width, height } });
  }
});

check('rule 14: nothing moves by itself; with reduced motion the unit is there at a cut', () =>
  withBoard(async (page) => {
    const canvas = page.locator('#canvas'), pass = await stopTime(page);
    const one = await canvas.screenshot();
    await pass(400);
    assert.ok(one.equals(await canvas.screenshot()));
    await page.selectOption('#landmark', '9');
    await pass(100);
    const late = await row(page, 'top left');
    await pass(200);
    assert.deepEqual(await row(page, 'top left'), late); // a still picture
    await pass(700);
    assert.equal((await row(page, 'top left'))[3], 'there');
  }, { reducedMotion: 'reduce', clock: true }));
