// SPDX-License-Identifier: GPL-3.0-or-later
// "Saved" is always true: to a file the coach chose, or handed to the browser's downloads.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { after, before } from 'node:test';
import { checks, frames, launch, openBoard, reasonToSkip, root } from './page.mjs';

const skip = await reasonToSkip();
if (skip) console.log(`# skipped: ${skip}`);
const check = checks(skip);
let browser;
before(async () => { if (!skip) browser = await launch(); });
after(async () => { await browser?.close(); });

async function withBoard(body, options) {
  const { page, context, seen } = await openBoard(browser, options);
  page.on('dialog', (dialog) => dialog.accept());
  await body(page);
  assert.deepEqual(seen.errors, []);
  await context.close();
}

const line = (page) => page.locator('#saved').textContent();
const notice = (page) => page.locator('#notice').textContent();

/** One edit: a home goes up by half a yard. */
async function edit(page, times = 1) {
  await page.locator('#modes input[value="1"]').check({ force: true });
  await frames(page);
  for (let i = 0; i < times; i++) {
    await page.locator('#tokens button[aria-label^="Low left"]').press('ArrowUp');
  }
  await frames(page);
}

/** A picker that writes into the page's own memory, and can be told to misbehave. */
function stubPicker() {
  const files = globalThis.files = {};
  globalThis.trouble = '';
  globalThis.asked = 0;
  globalThis.showSaveFilePicker = async ({ suggestedName }) => {
    globalThis.asked++;
    if (globalThis.trouble === 'no') throw new DOMException('The user aborted a request.', 'AbortError');
    const name = `chosen-${suggestedName}`;
    return {
      name,
      async createWritable() {
        let text = '';
        return {
          async write(bytes) {
            if (globalThis.trouble === 'full') throw new DOMException('The disk is full.', 'QuotaExceededError');
            text += new TextDecoder().decode(bytes);
          },
          async close() { files[name] = globalThis.trouble === 'short' ? text.slice(1) : text; },
        };
      },
      async getFile() { return new File([files[name]], name); },
    };
  };
}

check('the file picker: the real name is told once the file is whole, and asked for once', () =>
  withBoard(async (page) => {
    await edit(page);
    await page.click('#save');
    await page.waitForFunction(() => document.getElementById('saved').textContent.startsWith('Saved:'));
    assert.match(await line(page), /^Saved: chosen-harbour-port-merrow-terns\.json was written at \d/);
    const written = await page.evaluate(() => globalThis.files);
    const [text] = Object.values(written);
    assert.equal(JSON.parse(text).stages[1].spots[0].home[1], 3);
    await edit(page);
    assert.match(await line(page), /^Changed since chosen-.* was written at \d/);
    await page.click('#save');
    await page.waitForFunction(() => document.getElementById('saved').textContent.startsWith('Saved:'));
    assert.equal(await page.evaluate(() => globalThis.asked), 1);
    await page.click('#save-as');
    await page.waitForFunction(() => globalThis.asked === 2);
  }, { picker: true, before: stubPicker }));

check('a picker closed without a file saves nothing and says so', () => withBoard(async (page) => {
  await edit(page);
  await page.evaluate(() => { globalThis.trouble = 'no'; });
  await page.click('#save');
  await page.waitForFunction(() => document.getElementById('status').textContent
    === 'Not saved: no file was chosen.');
  assert.match(await line(page), /^Changed, not saved yet/);
}, { picker: true, before: stubPicker }));

check('a file that was not written whole is not called saved: the next way is taken, in words', () =>
  withBoard(async (page) => {
    for (const [trouble, why] of [['full', /The disk is full/], ['short', /bytes instead of/]]) {
      await edit(page);
      await page.evaluate((trouble) => { globalThis.trouble = trouble; }, trouble);
      const [download] = await Promise.all([page.waitForEvent('download'), page.click('#save')]);
      assert.ok((await readFile(await download.path(), 'utf8')).startsWith('{'));
      await page.waitForFunction(() => document.getElementById('saved').textContent.startsWith('Saved:'));
      assert.match(await line(page), /handed to the browser's downloads at/);
      assert.match(await notice(page), why);
      assert.match(await notice(page), /Instead .* was handed to the browser's downloads/);
    }
  }, { picker: true, before: stubPicker }));

check('without a picker it is a download, and no more is claimed', () => withBoard(async (page) => {
  await edit(page);
  await Promise.all([page.waitForEvent('download'), page.click('#save')]);
  assert.match(await line(page),
    /^Saved: harbour-port-merrow-terns\.json was handed to the browser's downloads at \d/);
  assert.ok(await page.locator('#save-as').isHidden());
}));

check('after ten edits the line asks for saving, and undoing them takes it back', () =>
  withBoard(async (page) => {
    await edit(page, 9);
    assert.match(await line(page), /^Changed, not saved yet/);
    await edit(page);
    assert.match(await line(page), /^10 edits since .*, in no file yet: press Save\./);
    assert.ok(await page.locator('#saved.nag').isVisible());
    for (let i = 0; i < 10; i++) await page.click('#undo');
    assert.equal(await line(page), 'The example scheme, unchanged.');
  }));

check('after ten minutes with one edit too', () => withBoard(async (page) => {
  await page.clock.install();
  await page.reload();
  await page.waitForSelector('html[data-ready]');
  await page.locator('#modes input[value="1"]').check({ force: true });
  await page.locator('#tokens button[aria-label^="Low left"]').press('ArrowUp');
  assert.match(await line(page), /^Changed, not saved yet/);
  await page.clock.fastForward('11:00');
  assert.match(await line(page), /^Changed since .*, in no file yet: press Save\./);
}));

check('the picture as SVG is the chart with its font inside, and draws by itself', () =>
  withBoard(async (page) => {
    const [download] = await Promise.all([page.waitForEvent('download'), page.click('#drawing')]);
    assert.match(download.suggestedFilename(), /^2-2-.*\.svg$/);
    const svg = await readFile(await download.path(), 'utf8');
    assert.match(svg, /^<svg [^>]*xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
    assert.equal(svg.match(/@font-face/g).length, 2);
    const regular = await readFile(join(root, 'assets/fonts/B612-Regular.otf'));
    assert.ok(svg.includes(regular.toString('base64')));
    assert.match(svg, />adjacent</);
    const width = await page.evaluate((svg) => {
      const plain = svg.replace(/<style>.*?<\/style>/s, ''); // the page's own policy forbids it here
      const parsed = new DOMParser().parseFromString(plain, 'image/svg+xml');
      if (parsed.querySelector('parsererror')) return null;
      return parsed.documentElement.getAttribute('viewBox').split(' ').map(Number)[2];
    }, svg);
    assert.equal(width, 560, 'points, the same from every screen');
  }));
