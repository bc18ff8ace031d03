/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/secret.h"

#include <errno.h>
#include <stddef.h>
#include <string.h>
#include <sys/random.h>

static bool draw(unsigned char *bytes, size_t count) {
    while (count > 0) {
        const ssize_t n = getrandom(bytes, count, 0);
        if (n < 0 && errno == EINTR) continue;
        if (n <= 0) return false;
        bytes += n;
        count -= (size_t)n;
    }
    return true;
}

bool bw_secret_make(char out[BW_SECRET_SIZE]) {
    unsigned char bytes[(BW_SECRET_SIZE - 1) / 2];
    out[0] = '\0';
    if (!draw(bytes, sizeof bytes)) return false;
    for (size_t i = 0; i < sizeof bytes; i++) {
        out[2 * i] = "0123456789abcdef"[bytes[i] >> 4];
        out[2 * i + 1] = "0123456789abcdef"[bytes[i] & 15];
    }
    out[BW_SECRET_SIZE - 1] = '\0';
    return true;
}

bool bw_secret_same(const char *a, const char *b) {
    if (strlen(a) != BW_SECRET_SIZE - 1 || strlen(b) != BW_SECRET_SIZE - 1) return false;
    unsigned char differs = 0;
    for (int i = 0; i < BW_SECRET_SIZE - 1; i++)
        differs = (unsigned char)(differs | (a[i] ^ b[i]));
    return differs == 0;
}

bool bw_secret_letters(const char *alphabet, int count, char *out) {
    const int letters = (int)strlen(alphabet);
    const int fair = 256 - 256 % letters; // a byte from here on would favour the first letters
    for (int i = 0; i < count;) {
        unsigned char byte;
        out[i] = '\0';
        if (!draw(&byte, 1)) return false;
        if (byte < fair) out[i++] = alphabet[byte % letters];
    }
    out[count] = '\0';
    return true;
}
