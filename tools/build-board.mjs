// SPDX-License-Identifier: GPL-3.0-or-later
// build-board.mjs MODULE.wasm OUT.html: the board as one self-contained page. One classic script with
// core, fonts and example inside; style and script allowed by their hashes, and nothing else.
import { build } from 'esbuild';
import { createHash } from 'node:crypto';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const [wasm, out] = process.argv.slice(2);
if (!wasm || !out) {
  console.error('usage: node tools/build-board.mjs MODULE.wasm OUT.html');
  process.exit(2);
}
const most = 600 * 1000; // bytes: what a phone on a sideline can be sent

const embedded = {
  core: [wasm, 'binary'],
  regular: [join(root, 'assets/fonts/B612-Regular.otf'), 'binary'],
  bold: [join(root, 'assets/fonts/B612-Bold.otf'), 'binary'],
  demo: [join(root, 'examples/terns.json'), 'text'],
};
const embed = {
  name: 'embed',
  setup(build) {
    build.onResolve({ filter: /^embedded:/ }, ({ path }) => ({ path, namespace: 'embedded' }));
    build.onLoad({ filter: /.*/, namespace: 'embedded' }, async ({ path }) => {
      const [file, loader] = embedded[path.slice('embedded:'.length)];
      return { contents: await readFile(file), loader };
    });
  },
};
const common = { bundle: true, minify: true, write: false, charset: 'utf8', legalComments: 'none' };

async function bundle(file, more) {
  const result = await build({ ...common, ...more, entryPoints: [join(root, 'board', file)] });
  return result.outputFiles[0].text.trim();
}

const hash = (text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

const script = await bundle('main.js', { format: 'iife', target: 'es2022', plugins: [embed] });
const style = await bundle('style.css', {});
const policy = [
  "default-src 'none'", `script-src ${hash(script)} 'wasm-unsafe-eval'`, `style-src ${hash(style)}`,
  "img-src blob:", "base-uri 'none'", "form-action 'none'",
].join('; ');

let page = await readFile(join(root, 'board/index.html'), 'utf8');
function put(tag, text) {
  if (!page.includes(tag)) throw new Error(`board/index.html has no ${tag}`);
  page = page.replace(tag, () => text);
}
put('<meta charset="utf-8">',
  `<meta charset="utf-8">\n<meta http-equiv="Content-Security-Policy" content="${policy}">`);
put('<link rel="stylesheet" href="style.css">', `<style>${style}</style>`);
put('<script src="main.js"></script>', `<script>${script}</script>`);

const size = Buffer.byteLength(page);
await mkdir(dirname(out), { recursive: true });
await writeFile(out, page);
console.log(`${out}: ${Math.round(size / 1000)} kB`);
if (size > most) {
  console.error(`that is more than ${most / 1000} kB`);
  process.exit(1);
}
