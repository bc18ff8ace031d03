/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/landmark_order.h"

int bw_landmark_order(const bw_scheme *scheme, int order[2 * BW_MAX_LANDMARKS]) {
    int count = 0, waiting = -1; // place of a row with its right half free
    for (int i = 0; i < scheme->landmark_count; i++) {
        const int twin = scheme->landmarks[i].twin;
        if (twin >= 0 && twin != i) {
            if (twin < i) continue;
            const bool left = scheme->landmarks[i].at.x < scheme->landmarks[twin].at.x;
            order[count++] = left ? i : twin;
            order[count++] = left ? twin : i;
        } else if (waiting >= 0) {
            order[waiting] = i;
            waiting = -1;
        } else {
            order[count++] = i;
            waiting = count;
            order[count++] = -1;
        }
    }
    if (waiting < 0) return count;
    const int single = order[waiting - 1]; // no partner came: he goes to the end
    for (int k = waiting + 1; k < count; k++) {
        order[k - 2] = order[k];
    }
    order[count - 2] = single;
    return count - 1;
}
