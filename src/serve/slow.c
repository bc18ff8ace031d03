/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/slow.h"

#include <string.h>
#include <sys/socket.h>

void bw_slow_open(bw_slow *slow) {
    memset(slow, 0, sizeof *slow);
    pthread_mutex_init(&slow->lock, NULL);
}

void bw_slow_close(bw_slow *slow) {
    pthread_mutex_destroy(&slow->lock);
}

/// The place of a socket, a free one for a new socket, or -1.
static int place_of(const bw_slow *slow, int file) {
    int spare = -1;
    for (int i = 0; i < BW_CONNECTIONS; i++) {
        if (slow->file[i] == file) return i;
        if (slow->file[i] == 0) spare = i;
    }
    return spare;
}

bool bw_slow_give(bw_slow *slow, int file, double seconds, double now) {
    pthread_mutex_lock(&slow->lock);
    const int i = place_of(slow, file);
    if (i >= 0) {
        slow->file[i] = file;
        slow->until[i] = now + seconds;
    }
    pthread_mutex_unlock(&slow->lock);
    return i >= 0;
}

void bw_slow_forget(bw_slow *slow, int file) {
    pthread_mutex_lock(&slow->lock);
    for (int i = 0; i < BW_CONNECTIONS; i++) {
        if (slow->file[i] == file) slow->file[i] = 0;
    }
    pthread_mutex_unlock(&slow->lock);
}

void bw_slow_sweep(bw_slow *slow, double now) {
    pthread_mutex_lock(&slow->lock);
    for (int i = 0; i < BW_CONNECTIONS; i++) {
        if (slow->file[i] == 0 || now < slow->until[i]) continue;
        // Only shut, not closed: closing is the listener's, which then forgets it.
        shutdown(slow->file[i], SHUT_RDWR);
    }
    pthread_mutex_unlock(&slow->lock);
}
