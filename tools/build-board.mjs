// SPDX-License-Identifier: GPL-3.0-or-later
// build-board.mjs MODULE.wasm FOLDER: the board in two forms from the same modules.
//   FOLDER/breakwater-board.html  one self-contained page: one classic script with core, fonts and
//                                 example inside; style and script allowed by their hashes only
//   FOLDER/static/                the page and its parts side by side, for any host
//   FOLDER/served.html            the same page, told that our own server gives it
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { bundle, embed, fill, hash, put, root } from './bundle.mjs';

const [wasm, out] = process.argv.slice(2);
if (!wasm || !out) {
  console.error('usage: node tools/build-board.mjs MODULE.wasm FOLDER');
  process.exit(2);
}
const most = 600 * 1000; // bytes: what a phone on a sideline can be sent

const fonts = join(root, 'assets/fonts');
const assets = {
  core: { file: wasm, kind: 'binary', name: 'core.wasm' },
  regular: { file: join(fonts, 'B612-Regular.otf'), kind: 'binary', name: 'regular.otf' },
  bold: { file: join(fonts, 'B612-Bold.otf'), kind: 'binary', name: 'bold.otf' },
  demo: { file: join(root, 'examples/terns.json'), kind: 'text', name: 'example.json' },
  worker: { text: await bundle('test-worker.js', { format: 'iife' }), kind: 'worker', name: 'worker.js' },
};
const template = await readFile(join(root, 'board/index.html'), 'utf8');
const style = await bundle('style.css');
const icon = await readFile(join(root, 'board/icon.svg'), 'utf8');

/** The template with its policy, its style and its script. */
function page(policy, styleTag, scriptTag) {
  const content = ["default-src 'none'", ...policy, "base-uri 'none'", "form-action 'none'"].join('; ');
  return fill(template, {
    '<meta charset="utf-8">':
      `<meta charset="utf-8">\n<meta http-equiv="Content-Security-Policy" content="${content}">`,
    '<link rel="stylesheet" href="style.css">': styleTag,
    '<script src="main.js"></script>': scriptTag,
  });
}

const classic = await bundle('main.js', { format: 'iife', plugins: [embed(assets, false)] });
const one = page([`script-src ${hash(classic)} 'wasm-unsafe-eval'`, `style-src ${hash(style)}`, 'img-src blob:',
  'worker-src blob:'],
  `<style>${style}</style>`, `<script>${classic}</script>`);
await put(join(out, 'breakwater-board.html'), one);

const folder = join(out, 'static');
const modular = await bundle('main.js', { format: 'esm', plugins: [embed(assets, true)] });
const parts = page(
  ["script-src 'self' 'wasm-unsafe-eval'", "style-src 'self'", "img-src 'self' blob: data:", "connect-src 'self'",
    "worker-src 'self'"],
  '<link rel="icon" href="icon.svg">\n<link rel="stylesheet" href="board.css">', '<script type="module" src="board.js"></script>');
await put(join(folder, 'index.html'), parts);
await put(join(out, 'served.html'), fill(parts, { '<html lang="en">': '<html lang="en" data-served>' }));
await put(join(folder, 'board.js'), modular);
await put(join(folder, 'board.css'), style);
await put(join(folder, 'icon.svg'), icon);
for (const { file, name, text } of Object.values(assets)) await put(join(folder, name), text ?? await readFile(file));

const size = Buffer.byteLength(one);
console.log(`${out}/breakwater-board.html: ${Math.round(size / 1000)} kB`);
if (size > most) {
  console.error(`that is more than ${most / 1000} kB`);
  process.exit(1);
}
