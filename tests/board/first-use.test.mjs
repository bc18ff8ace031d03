// SPDX-License-Identifier: GPL-3.0-or-later
// A newcomer's first quarter of an hour on the one file: the ball dragged, a man pinned, a test run and
// its answer played, the file saved and opened again.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { after, before, test } from 'node:test';
import { drag, frames, launch, middle, openBoard, reasonToSkip, rest, row, wholeBrowser } from './page.mjs';

const skip = await reasonToSkip();
if (skip) console.log(`# skipped: ${skip}`);
let browser;
before(async () => { if (!skip) browser = await launch([], wholeBrowser); });
after(async () => { await browser?.close(); });

test('first use: drag, pin, test, play the answer, save, reopen', { skip, timeout: 240_000 }, async () => {
  const { page, context, seen } = await openBoard(browser, { viewport: { width: 1280, height: 900 } });
  assert.ok(await page.isVisible('#invite'));
  const ball = await middle(page, 'Ball'), goal = await page.locator('#field').boundingBox();
  await drag(page, ball, { x: ball.x + 3, y: goal.y + goal.height * 0.86 }); // toward X, behind the goal
  assert.ok(await page.isHidden('#invite'));
  await rest(page);
  assert.match((await row(page, 'ball'))[2], /behind/);

  await page.locator('#modes input[value="2"]').check({ force: true });
  await frames(page);
  const man = await middle(page, 'Low left');
  await drag(page, man, { x: man.x - 30, y: man.y - 20 });
  await frames(page);
  const pinned = await row(page, 'low left');
  assert.match(pinned[1], /pinned/);

  await page.click('#nav a[href="#test"]');
  await page.locator('#test-numbers input[value="4,3"]').check({ force: true });
  await page.selectOption('#test-late', '0');
  await page.locator('#test-effort input[value="1"]').check({ force: true });
  await page.click('#test-run');
  await page.waitForSelector('#test-run:not([disabled])', { timeout: 240000 });
  assert.match(await page.textContent('#test-results'), /of 100|in 100/);
  await page.click('#test-play');
  await page.waitForFunction(() => document.getElementById('test-scrub').valueAsNumber > 0.2);

  await page.click('#nav a[href="#design"]');
  const [download] = await Promise.all([page.waitForEvent('download'), page.click('#save')]);
  const text = await readFile(await download.path(), 'utf8');
  assert.deepEqual(seen.errors, []);
  await context.close();

  const again = await openBoard(browser);
  await again.page.setInputFiles('#file', { name: 'mine.json', mimeType: 'application/json',
    buffer: Buffer.from(text) });
  await frames(again.page);
  const [landmark] = Object.keys(JSON.parse(text).stages[1].pins).slice(-1);
  const names = JSON.parse(text).landmarks;
  const place = names.findIndex((one) => one.id === landmark);
  assert.ok(place >= 0);
  for (let l = 0; l < names.length; l++) {
    await again.page.selectOption('#landmark', String(l));
    await rest(again.page);
    if ((await row(again.page, 'low left'))[2] === pinned[2]) break;
    assert.ok(l + 1 < names.length, 'the pin is nowhere in the file');
  }
  await again.context.close();
});
