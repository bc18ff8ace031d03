/* SPDX-License-Identifier: GPL-3.0-or-later */
/// JSON written piece by piece: commas, escapes, and the numbers JSON has no figure for.
#include "core/json.h"

#include "harness.h"

static char buffer[256];

static const char *number(double value) {
    bw_text t = bw_text_in(buffer, sizeof buffer);
    bw_json json = bw_json_in(&t);
    bw_json_number(&json, value);
    return buffer;
}

static const char *quoted(const char *text) {
    bw_text t = bw_text_in(buffer, sizeof buffer);
    bw_put_quoted(&t, text);
    return buffer;
}

static void commas_stand_between_values_only(void) {
    bw_text t = bw_text_in(buffer, sizeof buffer);
    bw_json json = bw_json_in(&t);
    bw_json_open(&json, '{');
    bw_json_put_open(&json, "list", '[');
    bw_json_number(&json, 1);
    bw_json_null(&json);
    bw_json_open(&json, '[');
    bw_json_close(&json, ']');
    bw_json_close(&json, ']');
    bw_json_put_text(&json, "word", "slot");
    bw_json_put_bool(&json, "true", true);
    bw_json_put_bool(&json, "false", false);
    bw_json_put_number(&json, "n", 2.5);
    bw_json_close(&json, '}');
    bw_json_end(&json);
    CHECK_TEXT(buffer, "{\"list\":[1,null,[]],\"word\":\"slot\",\"true\":true,\"false\":false,"
                       "\"n\":2.5}\n");
}

static void what_may_not_stand_in_a_text_is_escaped(void) {
    CHECK_TEXT(quoted(""), "\"\"");
    CHECK_TEXT(quoted("say \"port\" \\ now"), "\"say \\\"port\\\" \\\\ now\"");
    CHECK_TEXT(quoted("a\nb\tc\x1f\x7f"), "\"a\\nb\\u0009c\\u001f\\u007f\"");
    CHECK_TEXT(quoted("Rhône, 守"), "\"Rhône, 守\"");
}

static void keys_are_escaped_too(void) {
    bw_text t = bw_text_in(buffer, sizeof buffer);
    bw_json json = bw_json_in(&t);
    bw_json_open(&json, '{');
    bw_json_put_number(&json, "a\"b", 1);
    bw_json_close(&json, '}');
    CHECK_TEXT(buffer, "{\"a\\\"b\":1}");
}

static void numbers_have_four_decimals_at_most(void) {
    CHECK_TEXT(number(0.123456), "0.1235");
    CHECK_TEXT(number(-0.00001), "0");
    CHECK_TEXT(number(999999999), "999999999");
    CHECK_TEXT(number(-1.5), "-1.5");
}

static void a_number_json_cannot_say_is_null(void) {
    CHECK_TEXT(number(NAN), "null");
    CHECK_TEXT(number(INFINITY), "null");
    CHECK_TEXT(number(-INFINITY), "null");
    CHECK_TEXT(number(1e9), "null");
    CHECK_TEXT(number(-1e300), "null");
}

static void a_null_is_a_value_like_others(void) {
    bw_text t = bw_text_in(buffer, sizeof buffer);
    bw_json json = bw_json_in(&t);
    bw_json_open(&json, '[');
    bw_json_number(&json, NAN);
    bw_json_number(&json, 1);
    bw_json_close(&json, ']');
    CHECK_TEXT(buffer, "[null,1]");
}

int main(int argc, char **argv) {
    RUN(commas_stand_between_values_only);
    RUN(what_may_not_stand_in_a_text_is_escaped);
    RUN(keys_are_escaped_too);
    RUN(numbers_have_four_decimals_at_most);
    RUN(a_number_json_cannot_say_is_null);
    RUN(a_null_is_a_value_like_others);
    return test_report(argc, argv);
}
