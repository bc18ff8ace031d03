/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Something finished that can be handed over: on paper, as text or for programs, whoever asked for it and
/// wherever it goes.
#ifndef BW_REPORT_DOCUMENT_H
#define BW_REPORT_DOCUMENT_H

#include "core/text.h"
#include "paint/pages.h"
#include <stdio.h>

typedef struct bw_document {
    bw_pages pages; ///< with the title; a count of 0: it is none of paper
    size_t room;    ///< bytes its text takes at most
    /// Appends its text. NULL: it has none.
    bw_status (*text)(const void *self, bw_text *out);
    /// Writes its JSON. NULL: it has none. False when there is no memory.
    bool (*json)(const void *self, FILE *out);
    /// Frees what opening took. NULL: nothing.
    void (*close)(void *self);
    void *self; ///< of these; and of the pages
} bw_document;

static inline void bw_document_close(bw_document *document) {
    if (document->close) document->close(document->self);
    *document = (bw_document){.room = 0};
}

#endif
