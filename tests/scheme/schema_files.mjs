/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The JSON Schema's verdict on every document that is kept: it takes the valid ones and the demo,
/// refuses those that expected.txt says it can tell to be broken, and takes those that only the reader
/// can. The third holds the schema to what it claims and no more.
import {readFileSync, readdirSync} from "node:fs";
import {valid} from "./schema.mjs";

const root = process.env.BW_ROOT ?? ".";
const read = (name) => readFileSync(`${root}/${name}`, "utf8");
const schema = JSON.parse(read("docs/scheme.schema.json"));

let checks = 0;
let failures = 0;
function check(passed, what) {
    checks++;
    if (passed) return;
    failures++;
    console.error(`not so: ${what}`);
}

for (const file of readdirSync(`${root}/tests/scheme/valid`)) {
    check(valid(schema, JSON.parse(read(`tests/scheme/valid/${file}`))), `${file} keeps to the schema`);
}
check(valid(schema, JSON.parse(read("examples/terns.json"))), "the demo keeps to the schema");

const seen = {text: 0, schema: 0, reader: 0};
for (const line of read("tests/scheme/broken/expected.txt").split("\n")) {
    if (line === "" || line.startsWith("#")) continue;
    const [file, who] = line.split("\t");
    check(who in seen, `${file}: who can tell is text, schema or reader, not ${who}`);
    seen[who]++;
    if (who === "text") continue;
    const keeps = valid(schema, JSON.parse(read(`tests/scheme/broken/${file}`)));
    check(keeps === (who === "reader"), `${file}: ${who} can tell, and the schema ${keeps ? "takes" : "refuses"} it`);
}
check(Object.values(seen).every((n) => n >= 10), "there are documents of every kind");

console.log(`schema_files: ${checks} checks, ${failures} failed`);
process.exit(failures ? 1 : 0);
