/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/reply.h"

#include "core/text.h"
#include <stdlib.h>
#include <string.h>

static const char plain[] = "text/plain; charset=utf-8";

bw_reply bw_reply_no_memory(void) {
    static const char sentence[] = BW_NO_MEMORY_SENTENCE "\n";
    return (bw_reply){
        .status = 500, .type = plain, .fixed = sentence, .length = sizeof sentence - 1};
}

bw_reply bw_reply_words(int status, const char *sentence) {
    bw_reply answer = {.status = status, .type = plain};
    const size_t n = strlen(sentence);
    const bool ended = n > 0 && strchr(".?!", sentence[n - 1]);
    answer.own.data = malloc(n + 3);
    if (!answer.own.data) return bw_reply_no_memory();
    memcpy(answer.own.data, sentence, n);
    memcpy(answer.own.data + n, ended ? "\n" : ".\n", ended ? 2 : 3);
    answer.length = answer.own.length = n + (ended ? 1 : 2);
    return answer;
}

bw_reply bw_reply_error(int status, const bw_error *error) {
    char room[BW_MESSAGE_SIZE + BW_POINTER_SIZE + 40];
    bw_text t = bw_text_in(room, sizeof room);
    if (error->line > 0) {
        bw_put(&t, "Line ");
        bw_put_int(&t, error->line);
        bw_put(&t, ", column ");
        bw_put_int(&t, error->column);
        bw_put(&t, ": ");
    }
    bw_put(&t, error->message);
    return bw_reply_words(status, room);
}

bw_reply bw_reply_bytes(const char *type, bw_bytes bytes) {
    return (bw_reply){.status = 200, .type = type, .own = bytes, .length = bytes.length};
}

bool bw_reply_json_begin(bw_reply_json *out) {
    *out = (bw_reply_json){.bytes = {NULL, 0}};
    out->stream = open_memstream(&out->bytes.data, &out->bytes.length);
    if (!out->stream) return false;
    out->json = bw_json_to(out->stream);
    bw_json_open(&out->json, '{');
    return true;
}

bw_reply bw_reply_json_end(bw_reply_json *out, int status) {
    bw_json_close(&out->json, '}');
    bw_json_end(&out->json);
    if (fclose(out->stream) != 0) {
        free(out->bytes.data);
        return bw_reply_no_memory();
    }
    bw_reply answer = bw_reply_bytes("application/json", out->bytes);
    answer.status = status;
    return answer;
}
