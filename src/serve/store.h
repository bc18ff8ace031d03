/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The coach's scheme file while the board is open on it. Nothing is kept in memory: it is read when it
/// is asked for, and written only over the very text that the page began from, so that an edit made
/// elsewhere is never lost.
#ifndef BW_SERVE_STORE_H
#define BW_SERVE_STORE_H

#include "file/document.h"
#include <pthread.h>

enum { BW_TAG_SIZE = 36 };

typedef struct bw_store {
    const char *path;       ///< NULL: the board was opened without a file
    pthread_mutex_t saving; ///< held from the last look at the file until it has been replaced
} bw_store;

/// The file is not touched. The path must outlive the store.
void bw_store_open(bw_store *store, const char *path);
void bw_store_close(bw_store *store);

/// The text as it lies on the disk, to be freed, and its tag, which changes whenever a byte of it does.
/// It need not be a scheme. BW_FILE or BW_LIMIT with a sentence.
bw_status bw_store_read(const bw_store *store, char **text, size_t *length, char tag[BW_TAG_SIZE],
                        bw_error *error);

typedef enum bw_saved {
    BW_SAVED,
    BW_SAVE_WRONG,   ///< the text is no scheme
    BW_SAVE_CHANGED, ///< the file is no longer what the tag says, or is gone
    BW_SAVE_FAILED   ///< it could not be written
} bw_saved;

/// Writes the text, if it is a scheme and the file still has this tag; *tag is then the new one.
/// Otherwise *error has one sentence and the file is as it was.
bw_saved bw_store_save(bw_store *store, const char *text, size_t length, char tag[BW_TAG_SIZE],
                       bw_error *error);

/// The file's name without its folders.
const char *bw_store_name(const bw_store *store);

#endif
