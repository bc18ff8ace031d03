/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/inbox.h"

#include <string.h>

bw_status bw_inbox_put(bw_inbox *inbox, const bw_session *from, const char *text, size_t length) {
    if (inbox->count == BW_INBOX_SIZE || length >= BW_ANSWER_SIZE) return BW_LIMIT;
    bw_inbox_entry *entry = &inbox->list[inbox->count];
    memcpy(entry->text, text, length);
    entry->text[length] = '\0';
    if (length == 0 || strlen(entry->text) != length || !bw_text_plain(entry->text))
        return BW_BAD_INPUT;
    entry->device = from->id;
    bw_copy(entry->name, sizeof entry->name, from->device);
    inbox->count++;
    return BW_OK;
}
