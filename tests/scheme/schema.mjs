/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A validator for the part of JSON Schema 2020-12 that docs/scheme.schema.json uses, written from the
/// specification so that the schema is tested by something other than the reader it describes. A
/// keyword that it does not know is an error: nothing in the schema may go untested.

const types = {
    object: (v) => v !== null && typeof v === "object" && !Array.isArray(v),
    array: Array.isArray,
    string: (v) => typeof v === "string",
    number: (v) => typeof v === "number",
    boolean: (v) => typeof v === "boolean",
};

const same = (a, b) => JSON.stringify(a) === JSON.stringify(b);
const characters = (text) => [...text].length;
const has = (object, key) => Object.hasOwn(object, key);

/// Each keyword: whether the value passes it. Keywords about one type pass values of another.
const keywords = {
    $ref: (s, v, root) => valid(find(root, s.$ref), v, root),
    type: (s, v) => types[s.type](v),
    const: (s, v) => same(s.const, v),
    enum: (s, v) => s.enum.some((choice) => same(choice, v)),
    minimum: (s, v) => !types.number(v) || v >= s.minimum,
    maximum: (s, v) => !types.number(v) || v <= s.maximum,
    minLength: (s, v) => !types.string(v) || characters(v) >= s.minLength,
    maxLength: (s, v) => !types.string(v) || characters(v) <= s.maxLength,
    pattern: (s, v) => !types.string(v) || new RegExp(s.pattern, "u").test(v),
    minItems: (s, v) => !types.array(v) || v.length >= s.minItems,
    maxItems: (s, v) => !types.array(v) || v.length <= s.maxItems,
    uniqueItems: (s, v) =>
        !types.array(v) || !s.uniqueItems || new Set(v.map((x) => JSON.stringify(x))).size === v.length,
    items: (s, v, root) => !types.array(v) || v.every((x) => valid(s.items, x, root)),
    required: (s, v) => !types.object(v) || s.required.every((key) => has(v, key)),
    properties: (s, v, root) =>
        !types.object(v) ||
        Object.entries(s.properties).every(([key, sub]) => !has(v, key) || valid(sub, v[key], root)),
    additionalProperties: (s, v, root) =>
        !types.object(v) ||
        Object.keys(v).every(
            (key) => has(s.properties ?? {}, key) || valid(s.additionalProperties, v[key], root)),
    propertyNames: (s, v, root) =>
        !types.object(v) || Object.keys(v).every((key) => valid(s.propertyNames, key, root)),
    allOf: (s, v, root) => s.allOf.every((sub) => valid(sub, v, root)),
    anyOf: (s, v, root) => s.anyOf.some((sub) => valid(sub, v, root)),
    not: (s, v, root) => !valid(s.not, v, root),
    if: (s, v, root) => valid((valid(s.if, v, root) ? s.then : s.else) ?? true, v, root),
};

/// They say something to people or are read by another keyword.
const silent = new Set(["$schema", "$defs", "title", "description", "default", "then", "else"]);

function find(root, ref) {
    if (!ref.startsWith("#/")) throw new Error(`a reference out of the document: ${ref}`);
    const found = ref.slice(2).split("/").reduce((at, key) => at?.[key], root);
    if (found === undefined) throw new Error(`a reference to nothing: ${ref}`);
    return found;
}

export function valid(schema, value, root = schema) {
    if (typeof schema === "boolean") return schema;
    return Object.keys(schema).every((keyword) => {
        if (silent.has(keyword)) return true;
        if (!has(keywords, keyword)) throw new Error(`a keyword without a test: ${keyword}`);
        return keywords[keyword](schema, value, root);
    });
}
