/* SPDX-License-Identifier: GPL-3.0-or-later */
/// docs/scheme.schema.json against the reader it describes. The keys and choices must be the reader's
/// own. What the schema refuses, the reader must refuse too, so that no document is accepted that the
/// schema does not describe; the schema's verdicts come from an independent validator (schema.mjs).
#include "core/field.h"
#include "core/level.h"
#include "file/document.h"
#include "harness.h"
#include "scheme/keys.h"
#include "scheme/rule_param.h"
#include "scheme_text.h"
#include <ctype.h>
#include <jansson.h>
#include <math.h>

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

/// What a file in yards says when it leaves the number out.
static double usual(const bw_rule_param *param, bw_rule_param_id id) {
    bw_rule rule = bw_rule_default();
    const double value = *bw_rule_param_in(&rule, id);
    return param->length ? round(value / BW_METRES_PER_YARD * 1e4) / 1e4 : value;
}

/// The limits are the wider of yards and metres; the words and the usual value are the table's.
static void the_rules_numbers_are_the_tables(void) {
    const json_t *rule = json_object_get(json_object_get(schema, "$defs"), "rule");
    const json_t *properties = json_object_get(rule, "properties");
    for (int i = 0; i < BW_RULE_PARAM_COUNT; i++) {
        const bw_rule_param_id id = (bw_rule_param_id)i;
        const bw_rule_param *param = bw_rule_param_at(id);
        if (!param->whole) continue;
        const json_t *described = json_object_get(properties, param->key);
        char words[200];
        snprintf(words, sizeof words, "%c%s", toupper(param->meaning[0]), param->meaning + 1);
        if (param->length) {
            snprintf(words + strlen(words), sizeof words - strlen(words),
                     ": %g to %g yd, usually %g.", param->low, param->high, usual(param, id));
            const json_t *low = json_object_get(described, "minimum");
            CHECK_NEAR(json_number_value(low), param->low * BW_METRES_PER_YARD, 1e-9);
            CHECK_NEAR(json_number_value(json_object_get(described, "maximum")), param->high, 0);
        } else {
            strcat(words, ".");
            const json_t *share = json_object_get(described, "$ref");
            CHECK_TEXT(json_string_value(share), "#/$defs/share");
            CHECK(param->low == 0 && param->high == 1);
            const json_t *standard = json_object_get(described, "default");
            CHECK_NEAR(json_number_value(standard), usual(param, id), 0);
        }
        CHECK_TEXT(json_string_value(json_object_get(described, "description")), words);
    }
}

/// docs/scheme.md has a line for each: | `key` | meaning | low, high | usual |
static void the_manual_tells_the_same_of_them(void) {
    size_t length = 0;
    char *manual = text_of_file("docs/scheme.md", &length);
    for (int i = 0; i < BW_RULE_PARAM_COUNT; i++) {
        const bw_rule_param_id id = (bw_rule_param_id)i;
        const bw_rule_param *param = bw_rule_param_at(id);
        const char *unit = param->length ? " yd" : "";
        char line[300];
        snprintf(line, sizeof line, "\n| `%s` | %s | %g, %g%s | %g%s |\n", param->key,
                 param->meaning, param->low, param->high, unit, usual(param, id), unit);
        if (param->whole && !strstr(manual, line)) fprintf(stderr, "docs/scheme.md lacks%s", line);
        CHECK(!param->whole || strstr(manual, line));
    }
    free(manual);
}

/// "[3, 1.5] yd", in both.
static void its_places_are_the_tables(void) {
    const double yd = BW_METRES_PER_YARD;
    const json_t *rule = json_object_get(json_object_get(schema, "$defs"), "rule");
    const json_t *properties = json_object_get(rule, "properties");
    const bw_rule usual = bw_rule_default();
    const struct {
        const char *key;
        bw_vec at;
    } places[] = {{"hold_at", usual.hold_at}, {"crease_at", usual.crease_at}};
    size_t length = 0;
    char *manual = text_of_file("docs/scheme.md", &length);
    for (int i = 0; i < BW_COUNT(places); i++) {
        char words[40], row[20];
        snprintf(words, sizeof words, "[%g, %g] yd", places[i].at.x / yd, places[i].at.y / yd);
        const json_t *described = json_object_get(properties, places[i].key);
        CHECK(strstr(json_string_value(json_object_get(described, "description")), words));
        snprintf(row, sizeof row, "\n| `%s` |", places[i].key);
        char *line = strstr(manual, row);
        CHECK(line != NULL);
        if (!line) continue;
        line[1 + strcspn(line + 1, "\n")] = '\0';
        CHECK(strstr(line, words));
        line[strlen(line)] = '\n';
    }
    free(manual);
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
    RUN(the_rules_numbers_are_the_tables);
    RUN(the_manual_tells_the_same_of_them);
    RUN(its_places_are_the_tables);
    RUN(what_it_refuses_the_reader_refuses);
    json_decref(schema);
    return test_report(argc, argv);
}
