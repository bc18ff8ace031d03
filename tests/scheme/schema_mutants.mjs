/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Prints documents with the schema's verdict on each, for test_schema.c to hold against the reader's:
/// a line is the verdict ("keeps" or "breaks"), the place that was changed, and the document, with tabs
/// between. Every value of the demo scheme is taken out, joined by a stranger, and given every other
/// type in turn.
import {readFileSync} from "node:fs";
import {valid} from "./schema.mjs";

const root = process.env.BW_ROOT ?? ".";
const schema = JSON.parse(readFileSync(`${root}/docs/scheme.schema.json`, "utf8"));
const demo = JSON.parse(readFileSync(`${root}/examples/terns.json`, "utf8"));

// What the demo does not use is used here, so that it is tried too.
demo.lead = "left";
demo.sets = [{id: "own", name: "Our own", at: [[0, 15], [-9, 10], [9, 10]]}];
demo.stages[1].spots[1] = {id: "LR", mirror_of: "LL"};
demo.landmarks[2] = {id: "tr", mirror_of: "tl"};
demo.lessons[0].stops[0].ball = [1, 14];

const strangers = [null, true, -5.5, "", "?", [], {}, [1], {strange: 1}, 1e6, "a\u0007b", "x".repeat(4000)];
const isObject = (v) => v !== null && typeof v === "object" && !Array.isArray(v);
const at = (document, way) => way.reduce((value, key) => value[key], document);

/// `mustBreak`: the schema itself is at fault if the document keeps to it.
function say(way, document, mustBreak = false) {
    const keeps = valid(schema, document);
    const place = `/${way.join("/")}`;
    if (keeps && mustBreak) throw new Error(`the schema lets a strange key pass in ${place}`);
    console.log([keeps ? "keeps" : "breaks", place, JSON.stringify(document)].join("\t"));
}

/// The ways to every value of a document.
function* ways(value, way = []) {
    yield way;
    if (value === null || typeof value !== "object") return;
    for (const key of Object.keys(value)) yield* ways(value[key], [...way, key]);
}

/// One way for each kind of value: entries of a list stand for one another unless their keys differ.
function* kinds() {
    const seen = new Set();
    for (const way of ways(demo)) {
        const value = at(demo, way);
        const place = way.map((key) => (/^[0-9]+$/.test(key) ? "0" : key)).join("/");
        const kind = place + (isObject(value) ? Object.keys(value).join() : typeof value);
        if (!seen.has(kind)) yield way;
        seen.add(kind);
    }
}

/// Prints a copy in which `change` was let loose on the container and key at the end of a way.
function sayChanged(way, change, mustBreak = false) {
    const copy = structuredClone({document: demo});
    const whole = ["document", ...way];
    change(at(copy, whole.slice(0, -1)), whole.at(-1));
    say(way, copy.document, mustBreak);
}

say([], demo);
for (const way of kinds()) {
    for (const stranger of strangers) sayChanged(way, (container, key) => (container[key] = stranger));
    if (isObject(at(demo, way))) sayChanged(way, (container, key) => (container[key]["?"] = 1), true);
    if (way.length === 0) continue;
    sayChanged(way, (container, key) =>
        Array.isArray(container) ? container.splice(key, 1) : delete container[key]);
}
