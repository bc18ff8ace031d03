/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/opponent.h"
#include "core/base.h"
#include "core/text.h"
#include <string.h>

enum { PART = 4, MOST_APART = 3 };

/// Letters and figures alone, small.
static void plain(const char *name, char out[BW_NAME_SIZE]) {
    bw_text t = bw_text_in(out, BW_NAME_SIZE);
    for (const char *c = name; *c; c++) {
        const unsigned char u = (unsigned char)*c;
        if (u >= 'A' && u <= 'Z')
            bw_put_char(&t, (char)(u - 'A' + 'a'));
        else if ((u >= 'a' && u <= 'z') || (u >= '0' && u <= '9') || u >= 0x80)
            bw_put_char(&t, *c);
    }
}

/// How far the shorter name is from the longer one, a part of it, or its begin but for a slip; -1 if none.
static int within(const char *shorter, char *longer) {
    const int n = (int)strlen(shorter), apart = n / 5 < MOST_APART ? n / 5 : MOST_APART;
    if (n == 0) return -1;
    if (n >= PART && strstr(longer, shorter)) return 0;
    int least = bw_edit_distance(shorter, longer, apart);
    for (int length = (int)strlen(longer) - 1; length >= n - 1 && length > 0; length--) {
        longer[length] = '\0';
        if (length > n + 1) continue;
        const int from_begin = bw_edit_distance(shorter, longer, apart);
        if (from_begin < least) least = from_begin;
    }
    return least <= apart ? least : -1;
}

int bw_opponents_apart(const char *a, const char *b) {
    char one[BW_NAME_SIZE], other[BW_NAME_SIZE];
    plain(a, one);
    plain(b, other);
    const bool first = strlen(one) <= strlen(other);
    return first ? within(one, other) : within(other, one);
}
