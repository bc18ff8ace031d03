// SPDX-License-Identifier: GPL-3.0-or-later
// What the page looks like at the sizes and in the looks that people have: what is in sight, what covers what.
import assert from 'node:assert/strict';
import { readFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { checks, drag, frames, launch, middle, openBoard, reasonToSkip, rest, root, row } from './page.mjs';

const skip = await reasonToSkip();
if (skip) console.log(`# skipped: ${skip}`);
const check = checks(skip);
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

check('on a phone nothing scrolls sideways with every panel open', () =>
  withBoard(320, 640, async (page) => {
    for (const mode of ['design', 'test', 'lessons']) {
      await page.evaluate((hash) => { location.hash = hash; }, mode);
      await page.waitForSelector(`#mode-${mode}:not([hidden])`);
      await page.evaluate(() => document.querySelectorAll('details').forEach((panel) => { panel.open = true; }));
      await frames(page);
      assert.ok(await page.evaluate(() => document.documentElement.scrollWidth) <= 320, mode);
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

check('in Pins the arrow keys walk the ball from place to place', () => withBoard(1000, 800, async (page) => {
  await page.check('#modes input[value="2"]', { force: true });
  await rest(page);
  await page.locator('#tokens button').first().focus();
  const place = async () => (await row(page, 'ball'))[2];
  const top = await place();
  await page.keyboard.press('ArrowRight');
  await rest(page);
  const right = await place();
  assert.match(right, /right/);
  await page.keyboard.press('ArrowDown');
  await rest(page);
  assert.notEqual(await place(), right);
  await page.keyboard.press('ArrowUp');
  await rest(page);
  await page.keyboard.press('ArrowLeft');
  await rest(page);
  assert.equal(await place(), top);
}));

check('men put one by one become part of a set, and their number can be changed', () => withBoard(1000, 800, async (page) => {
  const attackers = () => page.locator('#tokens button[aria-label^="Attacker"]').count();
  await page.click('#add-man');
  await frames(page);
  assert.equal(await attackers(), 1);
  await page.selectOption('#set', { label: '2-2-2' });
  await frames(page);
  assert.equal(await attackers(), 5);
  await page.fill('#men', '6');
  await page.press('#men', 'Tab');
  await frames(page);
  assert.equal(await attackers(), 6);
  await page.click('#remove-man'); // now they stand as the coach put them
  await frames(page);
  await page.fill('#men', '3');
  await page.press('#men', 'Tab');
  await frames(page);
  assert.equal(await attackers(), 3);
  await page.selectOption('#set', { label: '2-2-2' });
  await frames(page);
  assert.equal(await attackers(), 3); // as many as were asked for last
}));

check('a ball dragged past any edge stays whole in the picture', () => withBoard(360, 740, async (page) => {
  const field = await boxOf(page, '#field'), outside = { x: field.x + field.width + 300, y: field.y + 100 };
  for (const to of [outside, { x: -200, y: field.y + 200 }, { x: field.x + 100, y: -100 }]) {
    await drag(page, await middle(page, 'Ball'), to);
    await rest(page);
    const ball = await middle(page, 'Ball'), now = await boxOf(page, '#field'), ring = 12;
    assert.ok(ball.x - ring > now.x && ball.x + ring < now.x + now.width, `${ball.x}`);
    assert.ok(ball.y - ring > now.y && ball.y + ring < now.y + now.height, `${ball.y}`);
  }
}));

check('in every look the rings of ball and picked ball cross nobody\'s letters in the first view', async () => {
  for (const [width, height] of [[360, 740], [740, 360], [1440, 900]]) {
    await withBoard(width, height, async (page) => {
      for (const look of looks) {
        await page.selectOption('#theme', { index: looks.indexOf(look) });
        await rest(page);
        const { apart, ring } = await page.evaluate(() => {
          const [ball, , ...men] = [...document.querySelectorAll('#tokens button')];
          const at = (button) => { const b = button.getBoundingClientRect(); return { x: b.x + b.width / 2, y: b.y + b.height / 2 }; };
          const from = at(ball), style = getComputedStyle(ball, '::before');
          return { ring: parseFloat(style.width) / 2,
            apart: men.map((man) => { const to = at(man); return Math.hypot(to.x - from.x, to.y - from.y); }) };
        });
        const letters = look === 'sun' || width > 400 ? 7 : 4.5; // CSS px: half as high as they are
        for (const far of apart) assert.ok(far >= ring + letters - 0.5, `${look} ${width}: ${far.toFixed(1)} ${ring}`);
      }
    });
  }
});

check('the picture and the drawing say what they are of, and of when', () => withBoard(360, 740, async (page) => {
  await page.clock.setFixedTime(new Date(2031, 4, 3, 12));
  const [download] = await Promise.all([page.waitForEvent('download'), page.click('#drawing')]);
  const text = (await readFile(await download.path(), 'utf8')).replace(/<style>[^]*?<\/style>/, '');
  const words = [...text.matchAll(/<text[^>]*>([^<]*)/g)].map(([, one]) => one).join(' ').replaceAll('&quot;', '"');
  for (const word of ['Harbour', 'Port Merrow Terns', '4 in: 2-2 "harbour", ball at top centre', 'goalkeeper',
    'on the ball', 'Distances in yards', 'As of 3 May 2031.']) {
    assert.ok(words.includes(word), `${word} is not in: ${words}`);
  }
  const [picture] = await Promise.all([page.waitForEvent('download'), page.click('#picture')]);
  const png = await readFile(await picture.path());
  assert.ok(png.readUInt32BE(16) > 2000 && png.readUInt32BE(20) > png.readUInt32BE(16));
  await rest(page); // and the page shows its own chart again
  const ball = await middle(page, 'Ball'), field = await boxOf(page, '#field');
  assert.ok(Math.abs(ball.x - field.x - field.width / 2) < 2);
}));

check('a picture given for a scheme is called one', () => withBoard(1000, 800, async (page) => {
  const given = async (bytes) => {
    await page.setInputFiles('#file', { name: 'x.png', mimeType: 'image/png', buffer: Buffer.from(bytes) });
    await page.waitForFunction(() => !document.getElementById('notice').hidden);
    return page.textContent('#notice');
  };
  assert.match(await given([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13]), /this is a picture \(PNG\), not a scheme/);
  assert.match(await given(Buffer.from('%PDF-1.7\n')), /this is a PDF, not a scheme/);
  assert.match(await given([0xff, 0xfe, 0x41, 0]), /not UTF-8 text/);
}));
