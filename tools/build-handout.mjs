// SPDX-License-Identifier: GPL-3.0-or-later
// build-handout.mjs MODULE.wasm FOLDER: the hand-out without its scheme, FOLDER/template.html. The program
// puts titles, pictures and data where the template has {{names}} (src/report/handout.c). Script and style
// are inside and allowed by their hashes; the colours are the core's own, written into the style sheet so
// that they are there with scripts off.
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { bundle, embed, fill, hash, put, root } from './bundle.mjs';

const [wasm, out] = process.argv.slice(2);
if (!wasm || !out) {
  console.error('usage: node tools/build-handout.mjs MODULE.wasm FOLDER');
  process.exit(2);
}
const most = 250 * 1000; // bytes: what is left of 400 kB is for the scheme's own pictures and words

/** Themes of screens in the core's order, with the least width of a line. */
const themes = ['chart', 'sun', 'dark'];

const { instance } = await WebAssembly.instantiate(await readFile(wasm), {});
const core = instance.exports;
const text = (at) => {
  const bytes = new Uint8Array(core.memory.buffer);
  return new TextDecoder().decode(bytes.subarray(at, bytes.indexOf(0, at)));
};
const roles = [];
for (let i = 0; text(core.bw_hand_role(i)) !== ''; i++) roles.push(text(core.bw_hand_role(i)));

/** Custom properties of a theme. */
function colours(id) {
  const theme = [0, 1, 2, 3].find((i) => text(core.bw_hand_theme(i)) === id);
  return roles.map((role, i) => `--${role}:#${core.bw_hand_colour(theme, i).toString(16).padStart(6, '0')}`).join(';');
}

const css = [
  `:root{${colours('chart')}}`,
  `@media (prefers-color-scheme:dark){:root:not([data-theme]){${colours('dark')};color-scheme:dark}}`,
  ...themes.map((id) => `:root[data-theme=${id}]{${colours(id)};color-scheme:${id === 'dark' ? 'dark' : 'light'}}`),
  ...roles.map((role) => `.f-${role}{fill:var(--${role})}.s-${role}{stroke:var(--${role})}`),
].join('\n');

const font = (await readFile(join(root, 'assets/fonts/B612-Bold.otf'))).toString('base64');
const face = `@font-face{font-family:"Breakwater B612";font-weight:700;src:url(data:font/otf;base64,${font})}`;
const style = `${face}\n${css}\n${await bundle('../handout/style.css')}`;
const script = await bundle('../handout/main.js',
  { format: 'iife', plugins: [embed({ core: { file: wasm, kind: 'binary', name: 'core.wasm' } }, false)] });

const policy = ["default-src 'none'", `script-src ${hash(script)} 'wasm-unsafe-eval'`, `style-src ${hash(style)}`,
  'font-src data:', "base-uri 'none'", "form-action 'none'"].join('; ');
const page = fill(await readFile(join(root, 'handout/index.html'), 'utf8'), {
  '<meta charset="utf-8">':
    `<meta charset="utf-8">\n<meta http-equiv="Content-Security-Policy" content="${policy}">`,
  '<link rel="stylesheet" href="style.css">': `<style>${style}</style>`,
  '<script src="main.js"></script>': `<script>${script}</script>`,
});
await put(join(out, 'template.html'), page);

const size = Buffer.byteLength(page);
console.log(`${out}/template.html: ${Math.round(size / 1000)} kB`);
if (size > most) {
  console.error(`that is more than ${most / 1000} kB`);
  process.exit(1);
}
