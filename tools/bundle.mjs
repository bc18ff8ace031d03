// SPDX-License-Identifier: GPL-3.0-or-later
// What the scripts that make pages share: bundling with esbuild, files put inside, hashes for a
// content security policy, pieces put into an HTML template.
import { build } from 'esbuild';
import { createHash } from 'node:crypto';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';

export const root = join(dirname(fileURLToPath(import.meta.url)), '..');

/** One minified text from an entry file of board/. */
export async function bundle(file, more = {}) {
  const result = await build({
    bundle: true, minify: true, write: false, charset: 'utf8', legalComments: 'none', target: 'es2022',
    ...more, entryPoints: [join(root, 'board', file)],
  });
  return result.outputFiles[0].text.trim();
}

/**
 * `import load from 'embedded:NAME'` gives a function that promises the bytes of a file, or its text.
 * `assets`: NAME -> { file, kind: 'binary' | 'text', name }. With `apart`, the file lies beside the
 * script under `name` and is fetched; otherwise it is inside the script, bytes compressed. Of kind
 * 'worker' it is a script's `text`, and what is promised is a worker that runs it: from beside, or from
 * an address made for it, since a page from disk may start no other.
 */
export const embed = (assets, apart) => ({
  name: 'embed',
  setup(build) {
    build.onResolve({ filter: /^embedded:/ }, ({ path }) => ({ path, namespace: 'embedded' }));
    build.onResolve({ filter: /^inside:/ }, ({ path }) => ({ path, namespace: 'inside' }));
    build.onLoad({ filter: /.*/, namespace: 'embedded' }, ({ path }) => {
      const id = path.slice('embedded:'.length);
      const { kind, name } = assets[id];
      return { resolveDir: root, contents: apart ? fetching(kind, name)
        : `import inside from 'inside:${id}'; ${unpacking[kind]}` };
    });
    build.onLoad({ filter: /.*/, namespace: 'inside' }, async ({ path }) => {
      const { file, kind, text } = assets[path.slice('inside:'.length)];
      if (kind === 'binary') return { contents: gzipSync(await readFile(file), { level: 9 }), loader: kind };
      return { contents: text ?? await readFile(file), loader: 'text' };
    });
  },
});

const unpacking = {
  text: 'export default async () => inside;',
  binary: `export default async () => {
  const stream = new Blob([inside]).stream().pipeThrough(new DecompressionStream('gzip'));
  return new Uint8Array(await new Response(stream).arrayBuffer());
};`,
  worker: `export default async () => {
  const address = URL.createObjectURL(new Blob([inside], { type: 'text/javascript' }));
  try { return new Worker(address); } finally { setTimeout(() => URL.revokeObjectURL(address), 60000); }
};`,
};
const fetching = (kind, name) => kind === 'worker'
  ? `export default async () => new Worker(new URL('${name}', import.meta.url));`
  : `export default async () => {
  const answer = await fetch(new URL('${name}', import.meta.url));
  if (!answer.ok) throw new Error('${name} did not come');
  return ${kind === 'text' ? 'answer.text()' : 'new Uint8Array(await answer.arrayBuffer())'};
};`;

/** A text's hash as a content security policy writes it. */
export const hash = (text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

/** A template with each key replaced by its value; every key must be there. */
export function fill(template, pieces) {
  let page = template;
  for (const [tag, text] of Object.entries(pieces)) {
    if (!page.includes(tag)) throw new Error(`the page has no ${tag}`);
    page = page.replace(tag, () => text);
  }
  return page;
}

/** Writes a file with its folder. */
export async function put(path, content) {
  await mkdir(dirname(path), { recursive: true });
  await writeFile(path, content);
}
