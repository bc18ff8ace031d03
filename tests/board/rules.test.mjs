// SPDX-License-Identifier: GPL-3.0-or-later
// The interface's rules where they hold for every page or origin: docs/board.md has the table.
import assert from 'node:assert/strict';
import { readFile, readdir } from 'node:fs/promises';
import { createServer } from 'node:http';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { after, before, test } from 'node:test';
import {
  boardFile, boardFolder, checks, drag, frames, launch, middle, openBoard, plain, reasonToSkip, rest, root, row,
} from './page.mjs';

const skip = await reasonToSkip();
if (skip) console.log(`# skipped: ${skip}`);
const check = checks(skip);
const types = { html: 'text/html', js: 'text/javascript', css: 'text/css', wasm: 'application/wasm' };
const lan = 'board.clubhouse.test'; // a name that is not this machine's, as a tablet on the same net has it
let browser, host, port;

before(async () => {
  if (skip) return;
  const names = await readdir(boardFolder);
  host = createServer(async (request, response) => {
    const name = request.url === '/' ? 'index.html' : request.url.slice(1);
    if (!names.includes(name)) return response.writeHead(404).end();
    response.writeHead(200, { 'Content-Type': types[name.split('.').pop()] ?? 'application/octet-stream' });
    response.end(await readFile(join(boardFolder, name)));
  });
  await new Promise((done) => host.listen(0, '127.0.0.1', done));
  port = host.address().port;
  browser = await launch([`--host-resolver-rules=MAP ${lan} 127.0.0.1`]);
});
after(async () => {
  await browser?.close();
  host?.close();
});

async function withBoard(body, options) {
  const board = await openBoard(browser, options);
  await body(board.page, board);
  assert.deepEqual(board.seen.errors, []);
  await board.context.close();
}

check('rule 2: Tab reaches every control and comes out again, each with a visible focus', () =>
  withBoard(async (page) => {
    await page.locator('#rule summary').click();
    const all = await page.evaluate(() => [...document.querySelectorAll(
      'button, select, summary, input:not([hidden]), a[href]')].filter((one) => one.checkVisibility()
      && !one.disabled && !(one.type === 'radio' && !one.checked)).length);
    await page.evaluate(() => document.activeElement.blur());
    const seen = new Set(), unseen = [];
    for (let i = 0; i < all + 3; i++) {
      await page.keyboard.press('Tab');
      const now = await page.evaluate(() => {
        const one = document.activeElement, shown = one.type === 'radio' ? one.nextElementSibling : one;
        if (one === document.body) return null;
        one.dataset.walk ??= String(document.querySelectorAll('[data-walk]').length);
        const style = getComputedStyle(shown);
        return { id: one.dataset.walk, width: parseFloat(style.outlineWidth), line: style.outlineStyle,
          name: one.id || one.getAttribute('aria-label') || one.textContent };
      });
      if (!now) continue; // the browser's own bar, and round again
      seen.add(now.id);
      if (now.line === 'none' || now.width < 2) unseen.push(now.name);
    }
    assert.deepEqual(unseen, []);
    assert.equal(seen.size, all);
  }));

/** How far the middle of the top left man's button lies from the middle of his drawn disc, CSS px. */
const offCentre = (page) => page.evaluate(() => {
  const canvas = document.getElementById('canvas'), box = canvas.getBoundingClientRect();
  const ratio = canvas.width / box.width;
  const pixels = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height);
  const dark = (x, y) => {
    const at = 4 * (Math.floor(y) * canvas.width + Math.floor(x));
    return pixels.data[at + 3] > 128 && pixels.data[at] < 128;
  };
  const b = document.querySelector('#tokens button[aria-label^="Top left"]').getBoundingClientRect();
  const x = (b.x + b.width / 2 - box.x) * ratio, y = (b.y + b.height / 2 - box.y) * ratio;
  const reach = box.width < 440 ? 15 : 19; // of a disc with its rings, and not of the words below it
  const edge = (dx, dy) => {
    for (let r = reach * ratio; r > 0; r -= 0.25) if (dark(x + dx * r, y + dy * r)) return r;
    return 0;
  };
  return Math.hypot((edge(1, 0) - edge(-1, 0)) / 2, (edge(0, 1) - edge(0, -1)) / 2) / ratio;
});

check('rule 3: buttons stay on their marks with the page at 200 % and with the field larger', async () => {
  for (const options of [{ viewport: { width: 500, height: 400 }, deviceScaleFactor: 2 }, {}]) {
    await withBoard(async (page) => {
      await page.selectOption('#theme', '1');
      await page.locator('#tokens button[aria-label^="Top left"]').focus();
      for (const key of ['', '+', '+', '-']) {
        if (key) await page.keyboard.press(key);
        await page.evaluate(() => document.activeElement.dispatchEvent(new FocusEvent('focus')));
        await frames(page);
        const off = await offCentre(page);
        assert.ok(off <= 1, `${off.toFixed(2)} px after "${key}"`);
      }
    }, options);
  }
});

check('rule 4: a hundred random scenes: the table and the buttons say the same', () =>
  withBoard(async (page) => {
    let seed = 7;
    const random = (most) => {
      seed = (seed * 1103515245 + 12345) % 2147483648;
      return seed % most;
    };
    await page.selectOption('#set', { label: '2-2-2' });
    for (let scene = 0; scene < 100; scene++) {
      await page.evaluate(([x, y]) => {
        for (const [id, value] of [['x', x], ['y', y]]) document.getElementById(id).value = value;
        document.getElementById('y').dispatchEvent(new Event('change'));
      }, [random(300) / 10 - 15, random(230) / 10 - 7]);
      if (scene % 9 === 0) await page.selectOption('#landmark', String(random(10)));
      await frames(page);
      const { labels, places } = await page.evaluate(() => ({
        labels: [...document.querySelectorAll('#tokens button')].map((one) => one.getAttribute('aria-label')),
        places: [...document.querySelectorAll('#rows td:nth-child(3)')].map((one) => one.textContent),
      }));
      assert.equal(labels.length, places.length);
      labels.forEach((label, i) => assert.ok(label.includes(plain(places[i])), `${label} / ${places[i]}`));
    }
  }));

check('rule 6: axe finds nothing with the rule open, the field larger, danger and a refusal shown', () =>
  withBoard(async (page) => {
    await page.context().setOffline(false);
    await page.locator('#rule summary').click();
    await page.check('#danger');
    await page.click('#zoom-in');
    await page.click('#add-man');
    await page.setInputFiles('#file', { name: 'a.json', mimeType: 'application/json', buffer: Buffer.from('{') });
    await page.waitForSelector('#notice:not([hidden])');
    const axe = await readFile(join(root, 'node_modules/axe-core/axe.min.js'), 'utf8');
    for (const theme of ['0', '1', '2']) {
      await page.selectOption('#theme', theme);
      await frames(page);
      await page.evaluate(axe);
      const found = await page.evaluate(() => globalThis.axe.run({
        runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] }));
      assert.deepEqual(found.violations.flatMap((v) => v.nodes.map((n) => `${v.id}: ${n.html}`)), [], theme);
    }
  }));

check('rule 11: in grey, what is chosen still differs by more than its colour', () =>
  withBoard(async (page) => {
    const styles = await page.evaluate(() => [...document.querySelectorAll('#stages input')].map((one) => ({
      chosen: one.checked, line: getComputedStyle(one.nextElementSibling).textDecorationLine })));
    for (const one of styles) assert.equal(one.line, one.chosen ? 'underline' : 'none');
    assert.equal(await page.locator('tr.picked th').evaluate((one) =>
      getComputedStyle(one).textDecorationLine), 'underline');
  }));

/** Runs in the page before it: keeps the size of all type and the width of all lines drawn, CSS px. */
function measureInk() {
  globalThis.ink = { type: [], lines: [], regular: 0 };
  const of = (c) => c.getTransform().a * c.canvas.getBoundingClientRect().width / c.canvas.width;
  const { fillText, stroke } = CanvasRenderingContext2D.prototype;
  CanvasRenderingContext2D.prototype.fillText = function (...given) {
    globalThis.ink.type.push(parseFloat(/([\d.]+)px/.exec(this.font)[1]) * of(this));
    globalThis.ink.regular += /bold|700/.test(this.font) ? 0 : 1;
    fillText.apply(this, given);
  };
  CanvasRenderingContext2D.prototype.stroke = function (...given) {
    if (this.strokeStyle === '#000000') globalThis.ink.lines.push(this.lineWidth * of(this));
    stroke.apply(this, given);
  };
}

check('rule 12: in the sun the chart and its key have bold type of 18 px and lines of 3 px', async () => {
  for (const width of [360, 820, 1440]) {
    await withBoard(async (page) => {
      await page.selectOption('#theme', '1');
      await page.selectOption('#set', { label: '2-2-2' });
      await rest(page);
      await page.evaluate(() => { globalThis.ink = { type: [], lines: [], regular: 0 }; });
      await page.selectOption('#landmark', '3');
      await rest(page);
      await page.click('#zoom-in');
      await rest(page);
      const ink = await page.evaluate(() => globalThis.ink);
      assert.ok(ink.type.length > 20 && ink.lines.length > 20);
      assert.ok(Math.min(...ink.type) > 17.9, `${Math.min(...ink.type)} px`);
      assert.equal(ink.regular, 0);
      assert.ok(Math.min(...ink.lines) > 2.95, `${Math.min(...ink.lines)} px`);
    }, { before: measureInk, viewport: { width, height: 900 } });
  }
});

check('forced colours: what is chosen stays marked, and the chart keeps its ground', () =>
  withBoard(async (page) => {
    const marked = await page.evaluate(() => ({
      stage: getComputedStyle(document.querySelector('#stages input:checked + span')).borderTopStyle,
      token: getComputedStyle(document.querySelector('#tokens [aria-pressed=true]')).outlineStyle,
      tick: getComputedStyle(document.getElementById('danger')).appearance,
      canvas: getComputedStyle(document.getElementById('canvas')).forcedColorAdjust,
    }));
    assert.deepEqual(marked, { stage: 'double', token: 'solid', tick: 'auto', canvas: 'none' });
  }, { forcedColors: 'active' }));

check('the look begins as the machine has it, and then as the coach last chose it', async () => {
  const context = await browser.newContext({ colorScheme: 'dark' });
  const look = async (choose) => {
    const page = await context.newPage();
    await page.goto(pathToFileURL(boardFile).href);
    await page.waitForSelector('html[data-ready]');
    const begun = await page.evaluate(() => document.documentElement.dataset.theme);
    if (choose) await page.selectOption('#theme', choose);
    await page.close();
    return begun;
  };
  assert.equal(await look('1'), 'dark');
  assert.equal(await look(), 'sun');
  await context.close();
});

for (const [where, address, secure] of [['file', () => pathToFileURL(boardFile).href, true],
  ['loopback', () => `http://127.0.0.1:${port}/`, true],
  ['a name on the local net', () => `http://${lan}:${port}/`, false]]) {
  check(`rule 21: from ${where} everything Design does works, and nothing throws`, async () => {
    const context = await browser.newContext({ viewport: { width: 1000, height: 800 } });
    const page = await context.newPage(), errors = [];
    page.on('pageerror', (error) => errors.push(error.message));
    await page.addInitScript(() => { delete globalThis.showSaveFilePicker; });
    await page.goto(address());
    await page.waitForSelector('html[data-ready]');
    assert.equal(await page.evaluate(() => isSecureContext), secure);
    const from = await middle(page, 'Ball');
    await drag(page, from, { x: from.x + 90, y: from.y + 120 });
    await rest(page);
    assert.notEqual((await row(page, 'ball'))[2], 'in the middle, 15.0 yd out');
    await page.locator('#rule summary').click();
    await page.locator('#knob-1').press('ArrowRight');
    await page.click('#add-man');
    await page.click('#zoom-in');
    await page.check('#danger');
    for (const theme of ['1', '2', '0']) await page.selectOption('#theme', theme);
    await page.selectOption('#lines', '1');
    const [download] = await Promise.all([page.waitForEvent('download'), page.click('#save')]);
    const saved = JSON.parse(await readFile(await download.path(), 'utf8'));
    assert.equal(saved.stages[1].rule.cushion, 2.25);
    await page.click('#undo');
    await frames(page);
    assert.equal(await page.inputValue('#knob-1'), '2');
    assert.deepEqual(errors, []);
    await context.close();
  });
}

check('rule 27: the key is on the screen in every mode, theme and width', async () => {
  for (const viewport of [{ width: 320, height: 640 }, { width: 1440, height: 900 }]) {
    await withBoard(async (page) => {
      for (const mode of ['0', '1', '2']) {
        await page.locator(`#modes input[value="${mode}"]`).check({ force: true });
        await frames(page);
        const inked = await page.evaluate(() => {
          const key = document.getElementById('key');
          const { data } = key.getContext('2d').getImageData(0, 0, key.width, key.height);
          let count = 0;
          for (let i = 3; i < data.length; i += 4) count += data[i] > 128;
          return { count, shown: key.checkVisibility(), wide: key.getBoundingClientRect().right <= innerWidth };
        });
        assert.ok(inked.shown && inked.wide && inked.count > 300, `${viewport.width}, mode ${mode}`);
      }
    }, { viewport });
  }
});
