/* SPDX-License-Identifier: GPL-3.0-or-later */
/// How work that takes seconds is followed by who asked for it, and ended before its time.
#ifndef BW_TRIAL_WATCHER_H
#define BW_TRIAL_WATCHER_H

#include <stdatomic.h>
#include <stdbool.h>
#include <stddef.h>

/// All of it may be empty: nobody is told, and the work runs to its end.
typedef struct bw_watcher {
    /// Called now and then with pieces of the work, `done` of `of`, from the thread that asked for it.
    void (*progress)(void *self, int done, int of);
    void *self;
    const atomic_bool *cancel; ///< set it from anywhere, a signal handler too
} bw_watcher;

/// Of work that nobody follows.
#define BW_UNWATCHED ((bw_watcher){NULL, NULL, NULL})

static inline void bw_tell(const bw_watcher *watch, int done, int of) {
    if (watch->progress) watch->progress(watch->self, done, of);
}

static inline bool bw_cancelled(const bw_watcher *watch) {
    return watch->cancel && atomic_load(watch->cancel);
}

#endif
