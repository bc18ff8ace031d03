/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/store.h"

#include "core/hash.h"
#include "core/text.h"
#include "file/open.h"
#include "scheme/tree.h"
#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

void bw_store_open(bw_store *store, const char *path) {
    store->path = path;
    pthread_mutex_init(&store->saving, NULL);
}

void bw_store_close(bw_store *store) {
    pthread_mutex_destroy(&store->saving);
}

/// A tag as HTTP writes one: quoted. Length and 64 bits of hash: edits, not attackers, are told apart.
static void tag_of(const char *text, size_t length, char tag[BW_TAG_SIZE]) {
    uint64_t hash = bw_hash_u64(BW_HASH_START, length);
    for (size_t i = 0; i < length; i++)
        hash = bw_hash_u64(hash, (unsigned char)text[i]);
    snprintf(tag, BW_TAG_SIZE, "\"%zx-%016llx\"", length, (unsigned long long)hash);
}

static bw_status refuse(bw_error *error, bw_status status, const char *what, const char *why) {
    *error = (bw_error){.status = status};
    bw_text t = bw_text_in(error->message, sizeof error->message);
    bw_put(&t, what);
    bw_put(&t, why);
    return status;
}

bw_status bw_store_read(const bw_store *store, char **text, size_t *length, char tag[BW_TAG_SIZE],
                        bw_error *error) {
    bw_error said;
    FILE *file = bw_file_open(store->path, "scheme file", &said);
    if (!file) return refuse(error, BW_FILE, "The scheme file: ", said.message);
    char *bytes = malloc(BW_DOCUMENT_BYTES + 1);
    const size_t n = bytes ? fread(bytes, 1, BW_DOCUMENT_BYTES + 1, file) : 0;
    const bool failed = !bytes || ferror(file);
    fclose(file);
    if (!failed && n <= BW_DOCUMENT_BYTES) {
        *text = bytes;
        *length = n;
        tag_of(bytes, n, tag);
        return BW_OK;
    }
    free(bytes);
    if (failed) return refuse(error, BW_FILE, "The file cannot be read", "");
    return refuse(error, BW_LIMIT, "The file is larger than a scheme can be (1 MB)", "");
}

/// Whether the file is still what the page began from.
static bool unchanged(const bw_store *store, const char *tag) {
    char *text, now[BW_TAG_SIZE];
    size_t length;
    bw_error error;
    if (bw_store_read(store, &text, &length, now, &error) != BW_OK) return false;
    free(text);
    return bw_same(now, tag);
}

static bw_saved write_over(const bw_store *store, const char *text, size_t length,
                           char tag[BW_TAG_SIZE], bw_error *error) {
    if (!unchanged(store, tag)) {
        refuse(error, BW_FILE, "The file was changed or taken away since this page read it", "");
        return BW_SAVE_CHANGED;
    }
    if (bw_file_save(store->path, text, length, error) != BW_OK) return BW_SAVE_FAILED;
    tag_of(text, length, tag);
    return BW_SAVED;
}

bw_saved bw_store_save(bw_store *store, const char *text, size_t length, char tag[BW_TAG_SIZE],
                       bw_error *error) {
    bw_scheme *scheme = malloc(sizeof *scheme);
    if (!scheme) return refuse(error, BW_NO_ROOM, BW_NO_MEMORY_SENTENCE, ""), BW_SAVE_FAILED;
    const bw_status status = bw_document_parse(text, length, scheme, error);
    free(scheme);
    if (status != BW_OK) return BW_SAVE_WRONG;
    pthread_mutex_lock(&store->saving);
    const bw_saved saved = write_over(store, text, length, tag, error);
    pthread_mutex_unlock(&store->saving);
    return saved;
}

const char *bw_store_name(const bw_store *store) {
    const char *slash = strrchr(store->path, '/');
    return slash ? slash + 1 : store->path;
}
