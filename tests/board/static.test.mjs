// SPDX-License-Identifier: GPL-3.0-or-later
// The board in parts, as any static host would give it: below a folder of its own, relative addresses
// only, allowed by its own policy, and showing what the one file shows.
import assert from 'node:assert/strict';
import { readFile, readdir } from 'node:fs/promises';
import { createServer } from 'node:http';
import { join } from 'node:path';
import { after, before } from 'node:test';
import { boardFolder, checks, launch, openBoard, reasonToSkip, row } from './page.mjs';

const skip = await reasonToSkip();
if (skip) console.log(`# skipped: ${skip}`);
const check = checks(skip);
const types = { html: 'text/html', js: 'text/javascript', css: 'text/css', wasm: 'application/wasm' };
let browser, host, address;

before(async () => {
  if (skip) return;
  const names = await readdir(boardFolder);
  host = createServer(async (request, response) => {
    const name = request.url === '/club/' ? 'index.html' : request.url.replace('/club/', '');
    if (!names.includes(name)) return response.writeHead(404).end();
    response.writeHead(200, { 'Content-Type': types[name.split('.').pop()] ?? 'application/octet-stream' });
    response.end(await readFile(join(boardFolder, name)));
  });
  await new Promise((done) => host.listen(0, '127.0.0.1', done));
  address = `http://127.0.0.1:${host.address().port}/club/`;
  browser = await launch();
});
after(async () => {
  await browser?.close();
  host?.close();
});

check('below any folder of any host, the board is the same', async () => {
  const context = await browser.newContext({ viewport: { width: 1000, height: 800 } });
  const page = await context.newPage();
  const errors = [], outside = [];
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('console', (message) => message.type() === 'error' && errors.push(message.text()));
  page.on('request', (request) => request.url().startsWith(address) || outside.push(request.url()));
  await page.goto(address);
  await page.waitForSelector('html[data-ready]');
  const own = await openBoard(browser);
  assert.deepEqual(await row(page, 'low left'), await row(own.page, 'low left'));
  assert.deepEqual(outside.filter((url) => !url.endsWith('/favicon.ico')), []);
  assert.deepEqual(errors.filter((words) => !words.includes('404')), []);
  await page.evaluate(() => {
    const script = document.createElement('script');
    script.textContent = 'window.injected = true';
    document.body.append(script);
  });
  assert.equal(await page.evaluate(() => window.injected), undefined);
  await Promise.all([context.close(), own.context.close()]);
});

check('a test runs in the worker beside the page', async () => {
  const context = await browser.newContext();
  const page = await context.newPage();
  const errors = [], workers = [];
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('worker', (worker) => workers.push(worker.url()));
  await page.goto(`${address}#test`);
  await page.waitForSelector('html[data-ready]');
  await page.locator('#test-numbers input[value="4,3"]').check({ force: true });
  await page.selectOption('#test-late', '0');
  await page.locator('#test-effort input[value="1"]').check({ force: true });
  await page.click('#test-run');
  await page.waitForSelector('#test-results:not([hidden])', { timeout: 240000 });
  assert.deepEqual(workers, [`${address}worker.js`]);
  assert.deepEqual(errors, []);
  await context.close();
});
