# SPDX-License-Identifier: GPL-3.0-or-later
# `teach --only handout`: one page that asks for nothing, with every picture and every answer in its HTML.
. "${BW_ROOT:?}/tests/cli/lib.sh"
scheme=$BW_ROOT/examples/terns.json
out=$scratch/handouts
export SOURCE_DATE_EPOCH=1776470400

run 0 teach "$scheme" -o "$out" --only handout --json
json 'j.files.length === 1 && j.files[0].part === "handout" && j.files[0].pages === 0'
check "it alone" test "$(ls -A "$out")" = handout.html
check "under 400 kB" test "$(wc -c <"$out/handout.html")" -lt 400000
cp "$out/handout.html" "$scratch/first.html"
run 0 teach "$scheme" -o "$out" --only handout
check "the same bytes twice" cmp -s "$out/handout.html" "$scratch/first.html"

# What a script-less reader has: the text between the tags, looked at with the scheme beside it.
cat >"$scratch/look.mjs" <<'END'
import { readFileSync } from 'node:fs';
const page = readFileSync(process.argv[2], 'utf8'), scheme = JSON.parse(readFileSync(process.argv[3], 'utf8'));
const wrong = [];
const must = (holds, what) => { if (!holds) wrong.push(what); };
const bare = page.replace(/<script>[^]*?<\/script>|<style>[^]*?<\/style>/g, '');
must(!/\{\{/.test(bare), 'every mark of the template is filled');
must(!/(?:src|href|action|data|poster)="(?!#)/.test(bare.replace(/<meta[^>]*>/g, '')), 'no outside reference');
const style = /<style>([^]*?)<\/style>/.exec(page)[1];
must(!/@import|url\((?!data:)/.test(style), 'no outside reference in the style');
must(!/https?:/.test(bare.replace('http://www.w3.org/2000/svg', '')), 'no address');
must((page.match(/<script(?! type="application\/json")/g) ?? []).length === 1, 'one script');
const policy = /Content-Security-Policy" content="([^"]*)"/.exec(page)?.[1] ?? '';
must(policy.startsWith("default-src 'none'") && !/unsafe-inline|unsafe-eval'(?<!wasm-unsafe-eval')/.test(policy), 'a strict policy');
const { createHash } = await import('node:crypto');
const script = /<script>([^]*?)<\/script>/.exec(page)[1];
must(policy.includes(createHash('sha256').update(script).digest('base64')), 'the script is the one allowed');
const stages = page.split('<section class="stage"').slice(1);
must(stages.length === scheme.stages.length, 'a section for each stage');
let answers = 0;
stages.forEach((text, s) => {
  const articles = text.split('<article').slice(1), stage = scheme.stages[s];
  must(articles.length === scheme.landmarks.length, `stage ${s}: a picture for each ball place`);
  articles.forEach((one, l) => {
    for (let k = 0; k < stage.spots.length; k++) {
      must(new RegExp(`<use href="#m-${stage.spots[k].id}-\\d" data-spot="${k}"`).test(one), `${s}.${l}.${k}: on the picture`);
      must(new RegExp(`<li data-spot="${k}">.*<b class="code">${stage.spots[k].id}</b>.*<i>.+</i>`).test(one), `${s}.${l}.${k}: his job`);
    }
  });
  answers += stage.spots.length * scheme.landmarks.length;
});
must((page.match(/<details><summary>Ball [^<]*Where do you stand\?<\/summary><p>Your place: /g) ?? []).length === answers, 'an answer for each question');
const ids = new Set([...page.matchAll(/ id="([^"]+)"/g)].map((m) => m[1]));
must([...page.matchAll(/href="#([^"]+)"/g)].every((m) => ids.has(m[1])), 'every mark used is there');
const data = JSON.parse(/id="data">([^]*?)<\/script>/.exec(page)[1]);
must(data.version === 1 && data.scheme.name === scheme.name && !('notes' in data.scheme), 'the data');
for (const one of wrong) console.error(one);
process.exit(wrong.length ? 1 : 0);
END
check "everything is in it" node "$scratch/look.mjs" "$scratch/first.html" "$scheme"

# Names that would be markup stay names.
node -e '
    const fs = require("fs"), scheme = JSON.parse(fs.readFileSync(process.argv[1], "utf8"));
    scheme.name = "</script><b>\"&";
    scheme.id = "a\"</script>\\";
    scheme.notes = "only the coach";
    scheme.stages = scheme.stages.filter(stage => stage.defenders === 6); // no break to test
    delete scheme.late;
    delete scheme.lessons;
    fs.writeFileSync(process.argv[2], JSON.stringify(scheme));' "$scheme" "$scratch/odd.json"
run 0 teach "$scratch/odd.json" -o "$scratch/odd" --only handout
check "odd names harm nothing" node "$scratch/look.mjs" "$scratch/odd/handout.html" "$scratch/odd.json"
check "the coach's notes stay with the coach" sh -c "! grep -q 'only the coach' '$scratch/odd/handout.html'"

# What cannot be written is named.
mkdir -p "$scratch/taken/handout.html"
run 3 teach "$scheme" -o "$scratch/taken" --only handout
talks "taken/handout.html: error"
finish
