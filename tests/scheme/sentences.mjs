// SPDX-License-Identifier: GPL-3.0-or-later
// Holds every use of a sentence against the catalogues: each place of a sentence is filled where it is said
// (or is a word of core/wordbook.def), each argument has a place, each sentence is said somewhere.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const root = process.env.BW_ROOT ?? ".";
const src = join(root, "src");
const read = path => readFileSync(join(src, path), "utf8");
const files = readdirSync(src, { recursive: true }).filter(path => /\.(c|h|def)$/.test(path));
const faults = [];

const words = new Set(
  [...read("core/wordbook.def").matchAll(/^BW_(?:PEOPLE|SPELLING)\("(\w+)"/gm)].map(m => m[1]));

/** The places of a sentence that need an argument. */
function placesOf(text) {
  const names = [...text.matchAll(/\{(\w+)(?:\|[^}]*)?\}/g)].map(m => m[1][0].toLowerCase() + m[1].slice(1));
  return new Set(names.filter(name => !words.has(name)));
}

const sentences = new Map();
for (const path of files.filter(path => path.endsWith("catalogue.def"))) {
  for (const m of read(path).matchAll(/^BW_SENTENCE\((\w+),((?:\s*"(?:[^"\\]|\\.)*")+)\)/gm)) {
    const text = [...m[2].matchAll(/"((?:[^"\\]|\\.)*)"/g)].map(part => part[1]).join("");
    if (sentences.has(m[1])) faults.push(`${path}: ${m[1]} stands twice`);
    sentences.set(m[1], { path, places: placesOf(text), said: false });
  }
  const rows = read(path).match(/^BW_SENTENCE\(/gm)?.length ?? 0;
  const known = [...sentences.values()].filter(s => s.path === path).length;
  if (rows !== known) faults.push(`${path}: ${rows - known} sentences cannot be read`);
}

/** The text of a call from its name to the bracket that closes it. */
function callAt(text, start) {
  let depth = 0;
  for (let i = text.indexOf("(", start); i < text.length; i++) {
    if (text[i] === '"') for (i++; text[i] !== '"'; i++) if (text[i] === "\\") i++;
    if (text[i] === "(") depth++;
    if (text[i] === ")" && --depth === 0) return text.slice(start, i + 1);
  }
  return "";
}

const idsIn = text => [...text.matchAll(/\bbw_s_(\w+)/g)].map(m => m[1]);
const namesIn = text => [...text.matchAll(/\b(?:bw_(?:\w+_)?as|as)_\w+\(\s*"(\w+)"/g)].map(m => m[1]);
const line = (text, at) => text.slice(0, at).split("\n").length;

for (const path of files.filter(path => /\.[ch]$/.test(path) && !/catalogue\.[ch]$/.test(path))) {
  const text = read(path).replace(/\/\/.*$/gm, "").replace(/\\\n/g, " \n");
  const ids = idsIn(text);
  const filled = new Set([...namesIn(text), ...[...text.matchAll(/bw_own_word\(&\w+, "(\w+)"/g)].map(m => m[1])]);
  const asked = new Set();
  for (const id of ids) {
    const sentence = sentences.get(id);
    if (!sentence) {
      faults.push(`src/${path}: no catalogue has ${id}`);
      continue;
    }
    sentence.said = true;
    for (const place of sentence.places) {
      asked.add(place);
      if (!filled.has(place)) faults.push(`src/${path}: nothing fills {${place}} of ${id}`);
    }
  }
  if (ids.length > 0) {
    for (const name of filled)
      if (!asked.has(name)) faults.push(`src/${path}: no sentence said there has a place {${name}}`);
  }
  // A call that names its sentences and arguments itself is held against them one by one.
  const kept = [...text.matchAll(/\bbw_arg (\w+) =\s*\w+\(\s*"(\w+)"|bw_own_word\(&(\w+), "(\w+)"\)/g)]
    .map(m => [m[0], m[1] ?? m[3], m[2] ?? m[4]]);
  const macros = [...text.matchAll(/^#define (\w+)\(([^\n]*\n(?:[^\n]* \n)*[^\n]*)/gm)];
  for (const m of text.matchAll(/\bbw_(?:put_sentence|put_plain_sentence|lint_say)\(/g)) {
    let call = callAt(text, m.index);
    const literal = idsIn(call);
    if (literal.length === 0) continue;
    for (const [, name, body] of macros) if (call.includes(`${name}(`)) call += body;
    const names = new Set(namesIn(call));
    for (const [, variable, name] of kept) if (new RegExp(`\\b${variable}\\b`).test(call)) names.add(name);
    for (const id of literal) {
      for (const place of sentences.get(id)?.places ?? [])
        if (!names.has(place)) faults.push(`src/${path}:${line(text, m.index)}: nothing fills {${place}} of ${id}`);
    }
  }
}
for (const [id, sentence] of sentences)
  if (!sentence.said) faults.push(`src/${sentence.path}: ${id} is never said`);
if (sentences.size < 50) faults.push(`only ${sentences.size} sentences were found`);
for (const fault of faults) console.error(fault);
console.log(`${sentences.size} sentences`);
process.exit(faults.length === 0 ? 0 : 1);
