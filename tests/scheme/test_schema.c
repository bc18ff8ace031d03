/* SPDX-License-Identifier: GPL-3.0-or-later */
/// docs/scheme.schema.json against the reader it describes. The keys and choices must be the reader's
/// own. What the schema refuses, the reader must refuse too, so that no document is accepted that the
/// schema does not describe; the schema's verdicts come from an independent validator (schema.mjs).
#include "core/field.h"
#include "core/level.h"
#include "file/document.h"
#include "harness.h"
#include "scheme/keys.h"
#include <jansson.h>
#include <stdlib.h>

static json_t *schema;

static const json_t *definition(const bw_keys *keys) {
    if (strcmp(keys->name, "scheme") == 0) return schema;
    return json_object_get(json_object_get(schema, "$defs"), keys->name);
}

static bool lists(const json_t *array, const char *word) {
    for (size_t i = 0; i < json_array_size(array); i++) {
        const char *text = json_string_value(json_array_get(array, i));
        if (text && strcmp(text, word) == 0) return true;
    }
    return false;
}

static void the_keys_are_the_readers(void) {
    for (int noun = 0; noun < BW_NOUN_COUNT; noun++) {
        const bw_keys *keys = bw_keys_of((bw_noun)noun);
        const json_t *described = definition(keys);
        const json_t *properties = json_object_get(described, "properties");
        const json_t *required = json_object_get(described, "required");
        CHECK(keys->count <= BW_MAX_KEYS);
        CHECK_INT(json_object_size(properties), keys->count);
        for (int k = 0; k < keys->count; k++) {
            CHECK(json_object_get(properties, keys->key[k].word) != NULL);
            CHECK_INT(lists(required, keys->key[k].word), keys->key[k].required);
        }
    }
}

static const json_t *choices(const char *key) {
    const json_t *properties = json_object_get(schema, "properties");
    return json_object_get(json_object_get(properties, key), "enum");
}

static void fields_and_levels_are_the_cores(void) {
    CHECK_INT(json_array_size(choices("field")), bw_field_count());
    for (int i = 0; i < bw_field_count(); i++)
        CHECK(lists(choices("field"), bw_field_at(i)->id));
    CHECK_INT(json_array_size(choices("level")), bw_level_count());
    for (int i = 0; i < bw_level_count(); i++)
        CHECK(lists(choices("level"), bw_level_at(i)->id));
}

/// Cuts a line at its next tab or end and moves on.
static char *next_field(char **line) {
    char *field = *line;
    size_t length = strcspn(field, "\t\n");
    *line = field + length + (field[length] != '\0');
    field[length] = '\0';
    return field;
}

static void what_it_refuses_the_reader_refuses(void) {
    static bw_scheme scheme;
    int refused = 0, read = 0;
    char *line = NULL;
    size_t room = 0;
    FILE *mutants = popen("node tests/scheme/schema_mutants.mjs", "r");
    CHECK(mutants != NULL);
    if (!mutants) return;
    while (getline(&line, &room, mutants) > 0) {
        char *rest = line;
        const bool keeps = strcmp(next_field(&rest), "keeps") == 0;
        const char *place = next_field(&rest), *document = next_field(&rest);
        bw_error error;
        const bool reads = bw_document_parse(document, strlen(document), &scheme, &error) == BW_OK;
        if (reads && !keeps) fprintf(stderr, "%s: read, against the schema\n", place);
        CHECK(keeps || !reads);
        refused += !keeps;
        read += reads;
    }
    free(line);
    CHECK_INT(pclose(mutants), 0);
    // The demo itself and many of its changes must be read, or nothing was tried.
    CHECK(refused > 500);
    CHECK(read > 50);
}

int main(int argc, char **argv) {
    schema = json_load_file("docs/scheme.schema.json", JSON_REJECT_DUPLICATES, NULL);
    CHECK(schema != NULL);
    RUN(the_keys_are_the_readers);
    RUN(fields_and_levels_are_the_cores);
    RUN(what_it_refuses_the_reader_refuses);
    json_decref(schema);
    return test_report(argc, argv);
}
