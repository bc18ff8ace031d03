/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What is sent back: a part of the page, JSON, a file, or one plain sentence.
#ifndef BW_SERVE_REPLY_H
#define BW_SERVE_REPLY_H

#include "file/json_stream.h"
#include "serve/scratch.h"
#include "serve/store.h"

typedef struct bw_reply {
    int status;        ///< of HTTP
    const char *type;  ///< of the content
    const void *fixed; ///< bytes of the program itself, or NULL
    bw_bytes own;      ///< otherwise these, which the sender frees
    size_t length;
    const char *allow;     ///< the methods there are, with 405; or NULL
    char tag[BW_TAG_SIZE]; ///< ETag; "" for none
} bw_reply;

/// One sentence, ended with a full stop where it has none.
bw_reply bw_reply_words(int status, const char *sentence);

/// The same from a document's error: where in it, then the sentence.
bw_reply bw_reply_error(int status, const bw_error *error);

/// The answer for want of memory, which takes none.
bw_reply bw_reply_no_memory(void);

/// Bytes that are the answer's from now on.
bw_reply bw_reply_bytes(const char *type, bw_bytes bytes);

/// JSON: begin, write with *json, end. When memory runs out the answer is a sentence that says so.
typedef struct bw_reply_json {
    FILE *stream;
    bw_json json;
    bw_bytes bytes;
} bw_reply_json;
bool bw_reply_json_begin(bw_reply_json *out);
bw_reply bw_reply_json_end(bw_reply_json *out, int status);

#endif
