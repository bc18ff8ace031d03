/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The tree of parse events: its links and pointers, and each limit met exactly and passed by one.
#include "core/text.h"
#include "harness.h"
#include "scheme/path.h"
#include "scheme/tree_build.h"

static bw_tree tree;

static void key(const char *text) {
    bw_tree_key(&tree, text, strlen(text));
}

static void string(const char *text) {
    bw_tree_string(&tree, text, strlen(text));
}

static void expect_refusal(bw_status status, const char *pointer, const char *words) {
    CHECK(!bw_tree_finish(&tree));
    CHECK_INT(tree.error.status, status);
    CHECK_TEXT(tree.error.pointer, pointer);
    if (!strstr(tree.error.message, words)) CHECK_TEXT(tree.error.message, words);
}

static void expect_pointer(int32_t node, const char *wanted) {
    char room[BW_POINTER_SIZE];
    bw_text t = bw_text_in(room, sizeof room);
    bw_put_pointer(&tree, node, &t);
    CHECK_TEXT(room, wanted);
}

/// {"a": [1, true, null], "b/c~d": {"e": "text"}}
static void links_values_in_document_order(void) {
    bw_tree_begin(&tree);
    bw_tree_object(&tree);
    key("a");
    bw_tree_array(&tree);
    bw_tree_number(&tree, 1);
    bw_tree_bool(&tree, true);
    bw_tree_null(&tree);
    bw_tree_end(&tree);
    key("b/c~d");
    bw_tree_object(&tree);
    key("e");
    string("text");
    bw_tree_end(&tree);
    bw_tree_end(&tree);
    CHECK(bw_tree_finish(&tree));
    CHECK_INT(tree.node_count, 7);
    CHECK_INT(tree.nodes[0].count, 2);
    const int32_t a = bw_node_member(&tree, 0, "a"), b = bw_node_member(&tree, 0, "b/c~d");
    CHECK_INT(tree.nodes[a].kind, BW_NODE_ARRAY);
    CHECK_INT(tree.nodes[a].count, 3);
    CHECK_INT(tree.nodes[a].next, b);
    const int32_t one = tree.nodes[a].first;
    CHECK_SAME(tree.nodes[one].number, 1);
    CHECK_INT(tree.nodes[tree.nodes[one].next].kind, BW_NODE_BOOL);
    const int32_t e = bw_node_member(&tree, b, "e");
    CHECK(bw_node_text_is(&tree, e, "text"));
    CHECK(!bw_node_text_is(&tree, e, "tex"));
    CHECK(!bw_node_text_is(&tree, one, "1"));
    CHECK_INT(bw_node_member(&tree, b, "a"), 0);
    CHECK_INT(bw_node_member(&tree, a, "a"), 0);
    expect_pointer(0, "");
    expect_pointer(tree.nodes[tree.nodes[one].next].next, "/a/2");
    expect_pointer(e, "/b~1c~0d/e"); // escapes: RFC 6901, section 3
}

static void a_document_is_one_whole_value(void) {
    bw_tree_begin(&tree);
    expect_refusal(BW_BAD_INPUT, "", "before it is whole");
    bw_tree_begin(&tree);
    bw_tree_array(&tree);
    expect_refusal(BW_BAD_INPUT, "/0", "before it is whole");
    bw_tree_begin(&tree);
    bw_tree_null(&tree);
    bw_tree_null(&tree);
    expect_refusal(BW_BAD_INPUT, "", "something follows");
    bw_tree_begin(&tree);
    bw_tree_null(&tree);
    CHECK(bw_tree_finish(&tree));
}

static void a_key_is_said_once(void) {
    bw_tree_begin(&tree);
    bw_tree_array(&tree);
    bw_tree_object(&tree);
    key("shape");
    bw_tree_null(&tree);
    key("shap");
    bw_tree_null(&tree);
    key("shape");
    expect_refusal(BW_BAD_INPUT, "/0/shape", "\"shape\" is said twice");
}

static void the_first_refusal_stays(void) {
    bw_tree_begin(&tree);
    bw_tree_object(&tree);
    key("a");
    bw_tree_number(&tree, HUGE_VAL);
    const int32_t count = tree.node_count;
    key("a");
    string("more");
    bw_tree_object(&tree);
    bw_tree_end(&tree);
    bw_tree_end(&tree);
    bw_tree_end(&tree);
    CHECK_INT(tree.node_count, count);
    expect_refusal(BW_BAD_INPUT, "/a", "not finite");
}

static void numbers_are_finite(void) {
    const double bad[] = {HUGE_VAL, -HUGE_VAL, (double)NAN};
    for (int i = 0; i < BW_COUNT(bad); i++) {
        bw_tree_begin(&tree);
        bw_tree_array(&tree);
        bw_tree_number(&tree, 1e308);
        bw_tree_number(&tree, bad[i]);
        expect_refusal(BW_BAD_INPUT, "/1", "not finite");
    }
}

static void text_has_no_nul_and_keys_no_controls(void) {
    bw_tree_begin(&tree);
    bw_tree_array(&tree);
    bw_tree_string(&tree, "a\0b", 3);
    expect_refusal(BW_BAD_INPUT, "/0", "NUL");
    const char *const keys[] = {"a\nb", "\x1b[31m", "\x7f", "caf\xc2\x85"};
    for (int i = 0; i < BW_COUNT(keys); i++) {
        bw_tree_begin(&tree);
        bw_tree_object(&tree);
        key(keys[i]);
        expect_refusal(BW_BAD_INPUT, "", "control character");
    }
    bw_tree_begin(&tree);
    bw_tree_object(&tree);
    key("caf\xc3\xa9");
    bw_tree_null(&tree);
    bw_tree_end(&tree);
    CHECK(bw_tree_finish(&tree));
}

static void depth_is_limited(void) {
    for (int deep = BW_TREE_DEPTH; deep <= BW_TREE_DEPTH + 1; deep++) {
        bw_tree_begin(&tree);
        for (int i = 0; i < deep; i++)
            bw_tree_array(&tree);
        for (int i = 0; i < deep; i++)
            bw_tree_end(&tree);
        CHECK_INT(bw_tree_finish(&tree), deep == BW_TREE_DEPTH);
    }
    expect_refusal(BW_LIMIT, "/0/0/0/0/0/0/0/0/0/0/0/0", "nested more than 12 deep");
}

static void values_are_limited(void) {
    bw_tree_begin(&tree);
    bw_tree_array(&tree);
    for (int i = 1; i < BW_TREE_NODES; i++)
        bw_tree_null(&tree);
    CHECK_INT(tree.error.status, BW_OK);
    bw_tree_null(&tree);
    expect_refusal(BW_LIMIT, "/8191", "8192");
}

static void text_is_limited(void) {
    static char block[1024];
    memset(block, 'a', sizeof block);
    bw_tree_begin(&tree);
    bw_tree_array(&tree);
    for (int i = 0; i < BW_TREE_TEXT / (int)sizeof block; i++)
        bw_tree_string(&tree, block, sizeof block);
    CHECK_INT(tree.error.status, BW_OK);
    bw_tree_string(&tree, block, 0);
    CHECK_INT(tree.error.status, BW_OK);
    bw_tree_string(&tree, block, 1);
    expect_refusal(BW_LIMIT, "/193", "192 kB");
}

static void keys_are_limited(void) {
    char word[BW_TREE_KEY_BYTES + 2] = "";
    bw_tree_begin(&tree);
    bw_tree_object(&tree);
    for (int i = 0; i < BW_TREE_KEYS; i++) {
        snprintf(word, sizeof word, "key%d", i);
        key(word);
        bw_tree_null(&tree);
    }
    CHECK_INT(tree.error.status, BW_OK);
    key("one more");
    expect_refusal(BW_LIMIT, "", "64 keys");

    memset(word, 'k', sizeof word - 1);
    bw_tree_begin(&tree);
    bw_tree_object(&tree);
    bw_tree_key(&tree, word, BW_TREE_KEY_BYTES);
    bw_tree_null(&tree);
    CHECK_INT(tree.error.status, BW_OK);
    bw_tree_key(&tree, word, BW_TREE_KEY_BYTES + 1);
    expect_refusal(BW_LIMIT, "", "63 bytes");
}

/// Each event by its character does what its function does: {"a": [1.5, true, false, null, "b", {}]}
static void events_come_by_their_characters_too(void) {
    static const struct {
        int event;
        const char *text;
        double value;
    } events[] = {{0, "", 0},   {'{', "", 0}, {':', "a", 1}, {'[', "", 0},   {'0', "", 1.5},
                  {'t', "", 0}, {'f', "", 0}, {'n', "", 0},  {'"', "bc", 1}, {'{', "", 0},
                  {'}', "", 0}, {']', "", 0}, {'}', "", 0}};
    for (int i = 0; i < BW_COUNT(events); i++)
        bw_tree_feed(&tree, events[i].event, events[i].text, 2, events[i].value);
    CHECK(bw_tree_finish(&tree));
    static const bw_node_kind kinds[] = {BW_NODE_NUMBER, BW_NODE_BOOL,   BW_NODE_BOOL,
                                         BW_NODE_NULL,   BW_NODE_STRING, BW_NODE_OBJECT};
    const double numbers[] = {1.5, 1, 0};
    const int32_t a = bw_node_member(&tree, 0, "a");
    CHECK_INT(tree.nodes[a].count, BW_COUNT(kinds));
    int32_t node = tree.nodes[a].first;
    for (int i = 0; i < BW_COUNT(kinds); i++, node = tree.nodes[node].next) {
        CHECK_INT(tree.nodes[node].kind, kinds[i]);
        if (i < BW_COUNT(numbers)) CHECK_SAME(tree.nodes[node].number, numbers[i]);
        if (kinds[i] == BW_NODE_STRING) CHECK(bw_node_text_is(&tree, node, "b"));
    }
}

int main(int argc, char **argv) {
    RUN(links_values_in_document_order);
    RUN(a_document_is_one_whole_value);
    RUN(a_key_is_said_once);
    RUN(the_first_refusal_stays);
    RUN(numbers_are_finite);
    RUN(text_has_no_nul_and_keys_no_controls);
    RUN(depth_is_limited);
    RUN(values_are_limited);
    RUN(text_is_limited);
    RUN(keys_are_limited);
    RUN(events_come_by_their_characters_too);
    return test_report(argc, argv);
}
