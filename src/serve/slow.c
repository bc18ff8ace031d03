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

/// The place of a socket, a free one for a new socket, or NULL.
static bw_slow_place *place_of(bw_slow *slow, int file) {
    bw_slow_place *spare = NULL;
    for (int i = 0; i < BW_CONNECTIONS; i++) {
        bw_slow_place *p = &slow->places[i];
        if (p->file == file) return p;
        if (p->file == 0) spare = p;
    }
    return spare;
}

bool bw_slow_note(bw_slow *slow, int file, const void *door, bool asking, double now) {
    pthread_mutex_lock(&slow->lock);
    bw_slow_place *p = place_of(slow, file);
    if (p) *p = (bw_slow_place){file, door, asking, now};
    pthread_mutex_unlock(&slow->lock);
    return p != NULL;
}

void bw_slow_forget(bw_slow *slow, int file) {
    pthread_mutex_lock(&slow->lock);
    bw_slow_place *p = place_of(slow, file);
    if (p) p->file = 0;
    pthread_mutex_unlock(&slow->lock);
}

void bw_slow_sweep(bw_slow *slow, const void *door, int most, double now) {
    int count = 0;
    pthread_mutex_lock(&slow->lock);
    for (int i = 0; i < BW_CONNECTIONS; i++)
        count += slow->places[i].file != 0 && slow->places[i].door == door;
    const double head = count >= most ? BW_FULL_SECONDS : BW_HEAD_SECONDS;
    for (int i = 0; i < BW_CONNECTIONS; i++) {
        const bw_slow_place *p = &slow->places[i];
        if (p->file == 0 || p->door != door) continue;
        // Only shut, not closed: closing is the listener's, which then forgets it.
        if (now >= p->since + (p->asking ? BW_REST_SECONDS : head)) shutdown(p->file, SHUT_RDWR);
    }
    pthread_mutex_unlock(&slow->lock);
}
