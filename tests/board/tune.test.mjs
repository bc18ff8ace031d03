// SPDX-License-Identifier: GPL-3.0-or-later
// Better spots suggested by the program: asked for, shown as rings, taken man by man; and where there is
// no program, a sentence and nothing else.
import assert from 'node:assert/strict';
import { copyFile, mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { checks, frames, launch, openBoard, reasonToSkip, root, row } from './page.mjs';
import { serveBoard } from './program.mjs';

const skip = await reasonToSkip();
if (skip) console.log(`# skipped: ${skip}`);
const check = checks(skip);
let browser, folder;
before(async () => {
  if (skip) return;
  browser = await launch();
  folder = await mkdtemp(join(tmpdir(), 'breakwater-'));
});
after(async () => {
  await browser?.close();
  if (folder) await rm(folder, { recursive: true });
});

/** The program on a copy of the demo scheme, and its page; runs are made as short as they can be. */
async function visit(t, name, tries = 60) {
  const file = join(folder, name);
  await copyFile(join(root, 'examples/terns.json'), file);
  const { address, stop } = await serveBoard(t, file);
  const context = await browser.newContext({ viewport: { width: 1200, height: 900 } });
  const page = await context.newPage(), errors = [], asked = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await page.route(/api\/jobs\?/, (route) => {
    asked.push(new URL(route.request().url()).searchParams);
    route.continue({ url: `${route.request().url()}&tries=${tries}&breaks=4` });
  });
  t.after(async () => {
    await context.close();
    assert.equal(await stop(), 0);
    assert.deepEqual(errors, []);
  });
  await page.goto(address);
  await page.waitForSelector('html[data-ready]');
  await page.click('#suggest summary >> nth=0');
  await page.evaluate(() => {
    globalThis.said = [];
    const status = document.getElementById('status');
    new MutationObserver(() => globalThis.said.push(status.textContent)).observe(status, { childList: true });
  });
  return { page, asked };
}

const homes = (page) => page.evaluate(() => [...document.querySelectorAll('#rows tr')].map((one) => one.textContent).join());
const suggested = (page) => page.waitForSelector('#suggest-results:not([hidden])', { timeout: 120000 });
const takes = (page) => page.locator('#suggest-rows button:visible');

/** What the live region said so far. */
const said = (page) => page.evaluate(() => globalThis.said);

/** What axe finds on the page as it is. */
async function axe(page) {
  const source = await readFile(join(root, 'node_modules/axe-core/axe.min.js'), 'utf8');
  await page.evaluate(source); // not as a script of the page, which its policy would not let in
  return page.evaluate(async () => (await axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] }))
    .violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target).join(' ')}`));
}

check('a suggestion is asked for, shown, taken man by man, undone, and put away', async (t) => {
  const { page, asked } = await visit(t, 'take.json');
  await page.locator('#suggest-may label', { hasText: 'Low left' }).locator('input').uncheck();
  await page.fill('#suggest-within', '1.5');
  await page.click('#suggest-run');
  assert.equal(await page.evaluate(() => document.activeElement.id), 'suggest-cancel');
  await suggested(page);
  assert.equal(asked[0].get('kind'), 'tune');
  assert.equal(asked[0].get('stage'), '4');
  assert.equal(asked[0].get('within'), '1.5');
  assert.match(asked[0].get('keep'), /^L[LR]$/);
  assert.equal(await page.evaluate(() => document.activeElement.id), 'suggest-title');
  assert.ok(await page.locator('#modes input[value="1"]').isChecked());
  // What is doubtful is said above what can be taken.
  const verdict = await page.locator('#suggest-verdict').boundingBox();
  const first = await page.locator('#suggest-rows li').first().boundingBox();
  assert.ok(verdict.y < first.y);
  assert.ok(!/minute/.test(await page.locator('#suggest-form').textContent())); // how long nobody knows
  assert.match(await page.locator('#suggest-evidence').textContent(), /Typical play, the forecast: .* two standard errors/);
  assert.ok((await said(page)).includes(await page.locator('#suggest-verdict').textContent()));
  assert.match(await page.locator('#caption').textContent(), /dashed ring/);
  assert.ok(!/Low left/.test(await page.locator('#suggest-rows').textContent()));

  // Where a yard matters: of the man who is picked, kept or not, and the mirror image for his twin.
  const ways = () => page.locator('#suggest-map-ways').textContent();
  assert.equal(await page.locator('#suggest-map-title').textContent(), 'Where a yard matters: low left');
  const leftMan = /to the left (.*), to the right (.*)\./.exec(await ways());
  await page.selectOption('#who', { label: 'low right' });
  await frames(page);
  const rightMan = /to the left (.*), to the right (.*)\./.exec(await ways());
  assert.deepEqual([leftMan[1], leftMan[2]], [rightMan[2], rightMan[1]]);
  assert.ok((await page.locator('#suggest-map').boundingBox()).width > 250);

  const start = await homes(page), count = await takes(page).count();
  assert.ok(count >= 2);
  const pair = page.locator('#suggest-rows li', { hasText: 'Top left and top right' });
  const [, wide] = /Wide [\d.]+ to ([\d.]+) yd/.exec(await pair.textContent()) ?? [];
  await pair.locator('button').focus();
  await page.keyboard.press('Enter');
  await frames(page);
  assert.equal(await takes(page).count(), count - 1);
  assert.match(await page.locator('#suggest-part').textContent(), /^1 of \d+ taken\. The verdict .* of all of it together/);
  assert.ok(await pair.locator('.taken').isVisible());
  assert.ok((await said(page)).some((words) => /^Taken: Top left and top right, /.test(words)));
  // Both of a pair moved, alike, to where the row says.
  const [left, right] = [(await row(page, 'top left'))[2], (await row(page, 'top right'))[2]];
  assert.equal(left.replace('left', 'right'), right);
  if (wide) assert.ok(right.startsWith(`${wide} yd right`), `${right} is not ${wide} wide`);
  assert.ok(await page.evaluate(() => document.activeElement.closest('#suggest') !== null));

  await page.click('#undo');
  await frames(page);
  assert.equal(await homes(page), start);
  assert.equal(await takes(page).count(), count);
  await page.click('#suggest-all');
  await frames(page);
  assert.equal(await takes(page).count(), 0);
  assert.ok(await page.locator('#suggest-all').isDisabled());
  assert.ok(!/dashed ring/.test(await page.locator('#caption').textContent()));
  await page.click('#undo'); // all of it was one edit
  await frames(page);
  assert.equal(await homes(page), start);

  // Another stage has no suggestion, and says where it is.
  await page.locator('#stages input').nth(2).check({ force: true });
  await frames(page);
  assert.match(await page.locator('#suggest-elsewhere').textContent(), /4 in/);
  assert.equal(await takes(page).count(), 0);
  await page.locator('#stages input').nth(1).check({ force: true });
  await frames(page);
  assert.equal(await takes(page).count(), count);

  for (const theme of ['chart', 'dark', 'sun']) {
    const index = await page.evaluate((id) => [...document.querySelectorAll('#theme option')]
      .findIndex((one) => one.text.toLowerCase().includes(id)), theme);
    if (index >= 0) await page.selectOption('#theme', { index });
    assert.deepEqual(await axe(page), [], theme);
  }
  await page.setViewportSize({ width: 320, height: 700 });
  await frames(page);
  assert.ok(await page.evaluate(() => document.documentElement.scrollWidth) <= 320);
  for (const box of await page.locator('#suggest button:visible, #suggest label.tick:visible, #suggest summary:visible').all()) {
    assert.ok((await box.boundingBox()).height >= 48);
  }
  await page.click('#suggest-away');
  assert.ok(await page.locator('#suggest-results').isHidden());
  assert.equal(await page.evaluate(() => document.activeElement.id), 'suggest-run');
});

check('a run is cancelled, nothing changes, and another can be asked for', async (t) => {
  const { page } = await visit(t, 'cancel.json', 5000);
  const start = await homes(page);
  await page.click('#suggest-run');
  await page.waitForSelector('#suggest-progress-words:has-text("of 100 parts")');
  await page.keyboard.press('Enter'); // the focus is on Cancel
  await page.waitForSelector('#suggest-note:has-text("Cancelled.")');
  assert.ok(await page.locator('#suggest-results').isHidden());
  assert.equal(await homes(page), start);
  assert.ok(await page.locator('#suggest-run').isEnabled());
  assert.equal(await page.evaluate(() => document.activeElement.id), 'suggest-run');
});

check('where all is kept, the program\'s sentence is shown', async (t) => {
  const { page } = await visit(t, 'kept.json');
  for (const box of await page.locator('#suggest-may input').all()) await box.uncheck();
  await page.click('#suggest-run');
  await page.waitForSelector('#suggest-note:has-text("nothing to tune; let something move")');
});

check('from disk there is one sentence, and nothing dead', async () => {
  const { page, context, seen } = await openBoard(browser);
  assert.ok(await page.locator('#suggest').isHidden());
  assert.match(await page.locator('#suggest-none').textContent(), /breakwater board/);
  assert.ok(await page.locator('#suggest-none').isVisible());
  assert.deepEqual(seen.errors, []);
  await context.close();
});
