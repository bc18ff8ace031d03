/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/term.h"
#include "core/text.h"
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

static bool forbidden; ///< --no-color was given

void bw_term_no_colour(void) {
    forbidden = true;
}

/// Colour only on a terminal that can, and not when NO_COLOR is set and not empty.
static bool term_colour(FILE *stream) {
    if (forbidden) return false;
    const char *no_color = getenv("NO_COLOR");
    if (no_color && no_color[0]) return false;
    const char *term = getenv("TERM");
    if (!term || strcmp(term, "dumb") == 0) return false;
    int descriptor = fileno(stream);
    return descriptor >= 0 && isatty(descriptor);
}

void bw_term_set(FILE *stream, bw_ink_colour colour) {
    static const char *const codes[] = {"\033[0m", "\033[1m", "\033[1;31m", "\033[1;33m",
                                        "\033[36m"};
    if (term_colour(stream)) fputs(codes[colour], stream);
}

void bw_term_put(FILE *stream, const char *text) {
    while (*text) {
        const int length = bw_plain_character(text);
        if (length > 0)
            fwrite(text, 1, (size_t)length, stream);
        else
            fprintf(stream, "\\x%02x", (unsigned char)*text);
        text += length > 0 ? length : 1;
    }
}
