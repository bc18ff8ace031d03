// SPDX-License-Identifier: GPL-3.0-or-later
// What the page looks like at the sizes and in the looks that people have: what is in sight, what covers what.
import assert from 'node:assert/strict';
import { readFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { frames, launch, openBoard, reasonToSkip, rest, root } from './page.mjs';

const skip = await reasonToSkip();
if (skip) console.log(`# skipped: ${skip}`);
const check = (name, body) => test(name, { skip }, body);
const looks = ['chart', 'sun', 'dark'];
let browser;
before(async () => { if (!skip) browser = await launch(); });
after(async () => { await browser?.close(); });

/** Runs with a fresh board of a size; nothing may have gone wrong in it afterwards. */
async function withBoard(width, height, body) {
  const board = await openBoard(browser, { viewport: { width, height } });
  await body(board.page);
  assert.deepEqual(board.seen.errors, []);
  await board.context.close();
}

const boxOf = (page, selector) => page.locator(selector).boundingBox();

/** Is the whole of it in the window? */
async function inSight(page, selector) {
  const box = await boxOf(page, selector), { width, height } = page.viewportSize();
  return box.x >= -1 && box.y >= -1 && box.x + box.width <= width + 1 && box.y + box.height <= height + 1;
}

check('no legend has a width: WebKit would keep the widest it ever had, and the page would scroll sideways', async () => {
  const folder = join(root, 'board');
  const sheets = (await readdir(folder)).filter((name) => name.endsWith('.css'));
  let rules = 0;
  for (const name of sheets) {
    const text = (await readFile(join(folder, name), 'utf8')).replace(/\/\*[^]*?\*\//g, '');
    for (const [, selector, body] of text.matchAll(/([^{}]+)\{([^{}]*)\}/g)) {
      if (!/legend\s*(,|$)/.test(selector.trim())) continue;
      rules++;
      assert.doesNotMatch(body, /(^|[;{\s])(min-|max-)?width\s*:/, `${name}: ${selector.trim()}`);
    }
  }
  assert.ok(rules >= 3, `${rules} rules`);
});

check('a window made narrow, then low, then wide again never scrolls sideways', () =>
  withBoard(1440, 900, async (page) => {
    for (const [width, height] of [[447, 900], [1440, 900], [820, 1180], [740, 360], [360, 740], [900, 700]]) {
      await page.setViewportSize({ width, height });
      await rest(page);
      assert.ok(await page.evaluate(() => document.documentElement.scrollWidth) <= width, `${width} x ${height}`);
    }
  }));

for (const [width, height] of [[720, 450], [740, 360], [360, 740], [900, 700], [820, 1180], [1440, 900]]) {
  check(`a lesson plays in full sight at ${width} x ${height}`, () => withBoard(width, height, async (page) => {
    for (const look of looks) {
      await page.selectOption('#theme', { index: looks.indexOf(look) });
      await page.evaluate(() => { location.hash = '#lessons'; });
      await rest(page);
      await page.click('#lesson-play');
      await frames(page);
      assert.equal(await page.textContent('#lesson-play'), 'Pause');
      assert.ok(await inSight(page, '#field'), look);
      assert.ok(await inSight(page, '#lesson-play'), look);
      await page.click('#lesson-play');
    }
  }));
}

check('on a low screen the field is as high as the screen lets it be, and it stays while the rest scrolls', () =>
  withBoard(740, 360, async (page) => {
    await rest(page);
    for (const part of ['#words', '#places caption', '#findings']) {
      await page.locator(part).evaluate((element) => element.scrollIntoView({ block: 'start' }));
      assert.ok(await inSight(page, '#field'), part);
    }
    assert.ok((await boxOf(page, '#field')).height > 320);
  }));

check('with attackers and danger the whole key stands below the chart, in the window', async () => {
  for (const look of looks) {
    await withBoard(1440, 900, async (page) => {
      await page.selectOption('#theme', { index: looks.indexOf(look) });
      await page.selectOption('#set', { label: '2-2-2' });
      await page.check('#danger');
      await rest(page);
      assert.ok(await inSight(page, '#key'), look);
      assert.ok(await inSight(page, '#field'), look);
    });
  }
  await withBoard(900, 700, async (page) => {
    await rest(page);
    assert.ok(await inSight(page, '#field'));
  });
});
