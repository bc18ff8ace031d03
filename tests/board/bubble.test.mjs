// SPDX-License-Identifier: GPL-3.0-or-later
// A man dragged while nobody edits: what it means is asked beside him, and done as it was answered.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { boardTests, drag, frames, middle, rest, root, row, saved } from './page.mjs';

const { check, withBoard } = await boardTests();

/** Drags a man by CSS px; where he was and where he was let go. */
async function pull(page, name, dx, dy) {
  await rest(page);
  const from = await middle(page, name), to = { x: from.x + dx, y: from.y + dy };
  const was = (await row(page, name.toLowerCase()))[2];
  await drag(page, from, to);
  await frames(page);
  return { was, to, now: (await row(page, name.toLowerCase()))[2] };
}

const names = (page) => page.locator('#bubble-choices b').allTextContents();
const choose = async (page, name) => {
  await page.locator('#bubble-choices button', { hasText: name }).click();
  await frames(page);
};
const landmark = async (page, label) => {
  await page.selectOption('#landmark', { label });
  await rest(page);
};

check('a drag of a man is answered beside the finger, inside the screen, in every look', async () => {
  for (const [width, height] of [[1440, 900], [820, 1180], [360, 740]]) {
    await withBoard(async (page) => {
      const axe = await readFile(join(root, 'node_modules/axe-core/axe.min.js'), 'utf8');
      for (const theme of ['0', '1', '2']) {
        await page.selectOption('#theme', theme);
        for (const name of theme === '0' ? ['Top left', 'Low left', 'Top right', 'Goalkeeper'] : ['Low left', 'Top left']) {
          const { to } = await pull(page, name, 24, name.startsWith('Top') ? 40 : -30);
          const box = await page.locator('#bubble').boundingBox(), nav = await page.locator('#nav').boundingBox();
          const where = `${width} ${theme} ${name} ${JSON.stringify(box)}`;
          assert.ok(box.x >= 0 && box.y >= 0 && box.x + box.width <= width, where);
          assert.ok(box.y + box.height <= (nav.y > height / 2 ? nav.y : height), where);
          const apart = Math.max(box.x - to.x, to.x - box.x - box.width, box.y - to.y, to.y - box.y - box.height);
          if (name !== 'Goalkeeper') assert.ok(apart >= 24 && apart < 60, `${where} ${apart}`);
          const words = await page.locator('#bubble-words').textContent();
          assert.match(words, name === 'Goalkeeper' ? /^The goalkeeper goes with the ball/ : new RegExp(`^${name} runs by the rule`));
          for (const target of await page.locator('#bubble button:visible').all()) {
            assert.ok((await target.boundingBox()).height >= 47.5, where);
          }
          if (name === 'Low left' && width === 360) {
            await page.evaluate(axe);
            const found = await page.evaluate(() => globalThis.axe.run('#bubble', { runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'] }));
            assert.deepEqual(found.violations.map((one) => `${where}: ${one.id} ${one.nodes[0].html}`), []);
          }
          await page.keyboard.press('Escape');
          assert.ok(await page.locator('#bubble').isHidden());
        }
      }
    }, { viewport: { width, height } });
  }
});

check('for now: on the screen alone, until the ball moves or it is undone', () => withBoard(async (page) => {
  const file = await saved(page);
  for (const back of ['ball', 'undo', 'keys']) {
    const { was, now } = await pull(page, 'Low left', 30, -50);
    assert.notEqual(now, was);
    const others = await row(page, 'top left');
    await choose(page, 'For now');
    assert.ok(await page.locator('#bubble').isHidden());
    assert.match(await page.locator('#hint').textContent(), /^Moved for now: low left\./);
    await rest(page);
    assert.equal((await row(page, 'low left'))[2], now);
    assert.deepEqual(await row(page, 'top left'), others);
    assert.deepEqual(await saved(page), file);
    if (back === 'ball') {
      await landmark(page, 'left wing');
      await landmark(page, 'top centre');
    }
    if (back === 'undo') await page.click('#undo');
    if (back === 'keys') await page.keyboard.press('Control+z');
    await rest(page);
    assert.equal((await row(page, 'low left'))[2], was);
    assert.ok(await page.locator('#undo').isDisabled());
  }
}));

check('a touch elsewhere, Put back and Escape: nothing was meant', () => withBoard(async (page) => {
  for (const way of ['words', 'field', 'Put back', 'Escape']) {
    const { was } = await pull(page, 'Low left', 30, -50);
    if (way === 'words') await page.click('#caption');
    if (way === 'Put back') await page.click('#bubble-back');
    if (way === 'Escape') await page.keyboard.press('Escape');
    if (way === 'field') { // and his ball is thrown as always
      const ball = await middle(page, 'Ball');
      await drag(page, ball, { x: ball.x - 40, y: ball.y + 4 });
    }
    await rest(page);
    assert.ok(await page.locator('#bubble').isHidden(), way);
    if (way === 'field') await landmark(page, 'top centre');
    assert.equal((await row(page, 'low left'))[2], was, way);
  }
}));

check('move home: with this ball he stands there, undone in the bubble; where no home can, it says so', () =>
  withBoard(async (page) => {
    const file = await saved(page);
    const { was, now } = await pull(page, 'Low right', 30, -25);
    assert.deepEqual(await names(page), ['For now', 'Move home', 'Pin here']);
    await choose(page, 'Move home');
    assert.match(await page.locator('#bubble-words').textContent(), /^Home moved: low right .* low left does the same/);
    assert.equal((await row(page, 'low right'))[2], now);
    const homes = (one) => one.stages[1].spots.find(({ id }) => id === 'LR').home;
    const edited = await saved(page);
    assert.notDeepEqual(homes(edited), homes(file));
    assert.deepEqual(edited.stages[1].pins, file.stages[1].pins);
    await page.click('#undo');
    await frames(page);
    assert.equal((await row(page, 'low right'))[2], was);
    await pull(page, 'Low right', 30, -25);
    await choose(page, 'Move home');
    await choose(page, 'Undo');
    assert.deepEqual(await saved(page), file);
    await pull(page, 'Top right', -40, 40); // on the ball
    assert.deepEqual(await names(page), ['For now', 'Pin here']);
    assert.match(await page.locator('#bubble-note').textContent(), /^No home can do it/);
  }));

check('pin: where the ball is at a named place, else at the nearest, to which it goes', () => withBoard(async (page) => {
  const file = await saved(page);
  await landmark(page, 'left wing');
  const first = await pull(page, 'Top right', 0, 50);
  await choose(page, 'Pin here');
  assert.match(await page.locator('#bubble-words').textContent(), /^Pinned: top right .* left wing/);
  const cells = await row(page, 'top right');
  assert.equal(cells[2], first.now);
  assert.match(cells[1], /pinned/);
  await page.click('#undo');
  assert.deepEqual(await saved(page), file);
  const ball = await middle(page, 'Ball');
  await drag(page, ball, { x: ball.x + 12, y: ball.y - 12 });
  const { now } = await pull(page, 'Top right', 0, 50);
  await choose(page, 'Pin for the ball at: left wing');
  assert.match((await row(page, 'ball'))[2], /./);
  assert.equal(await page.locator('#landmark option:checked').textContent(), 'left wing');
  assert.equal((await row(page, 'top right'))[2], now);
  assert.notDeepEqual((await saved(page)).stages[1].pins, file.stages[1].pins);
}));

check('by keys and by numbers: the same question, reached with Tab, answered, and back to the man', () =>
  withBoard(async (page) => {
    const man = page.locator('#tokens button[aria-label^="Low right"]');
    await rest(page);
    const was = (await row(page, 'low right'))[2];
    await man.focus();
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowUp');
    await frames(page);
    assert.match(await page.locator('#status').textContent(), /^Low right runs by the rule\..*Tab leads to: For now, Move home, Pin here\.$/);
    await page.keyboard.press('Tab');
    assert.equal(await page.evaluate(() => document.activeElement.querySelector('b')?.textContent), 'For now');
    await page.keyboard.press('Escape');
    await rest(page);
    assert.equal((await row(page, 'low right'))[2], was);
    assert.equal(await page.evaluate(() => document.activeElement.getAttribute('aria-label').slice(0, 9)), 'Low right');
    await page.selectOption('#who', { label: 'low right' });
    await page.fill('#x', '6');
    await page.press('#x', 'Tab');
    await frames(page);
    assert.ok(await page.locator('#bubble').isVisible());
    await choose(page, 'Move home');
    assert.equal((await row(page, 'low right'))[2].split(',')[0], '6.0 yd right');
  }));

check('in Lessons a man is moved for now too, and no stop is made of it', () => withBoard(async (page) => {
  await page.click('#nav a[href="#lessons"]');
  await page.waitForSelector('#mode-lessons:not([hidden])');
  await rest(page);
  const file = await saved(page);
  await page.getByRole('button', { name: 'Step on', exact: true }).click();
  const { was, now } = await pull(page, 'Top left', 10, 60);
  assert.notEqual(was, now);
  await choose(page, 'For now');
  await rest(page);
  assert.equal((await row(page, 'top left'))[2], now);
  assert.deepEqual(await saved(page), file);
  await page.getByRole('button', { name: 'Step on', exact: true }).click();
  await page.getByRole('button', { name: 'Step back', exact: true }).click();
  await frames(page);
  assert.equal((await row(page, 'top left'))[2], was);
}));
