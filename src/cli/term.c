/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/term.h"
#include "core/base.h"
#include "core/text.h"
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

static bool forbidden; ///< --no-color was given

void bw_term_no_colour(void) {
    forbidden = true;
}

/// What is on its way to a terminal, and how much of it is there.
typedef struct screen {
    FILE *to, *stream;
    char *bytes;
    size_t length, shown;
} screen;

static screen screens[2]; ///< of stdout and stderr

/// The one a stream of ours belongs to; NULL: it is no stream of ours.
static screen *screen_of(const FILE *stream) {
    for (int i = 0; i < BW_COUNT(screens); i++) {
        if (screens[i].stream && screens[i].stream == stream) return &screens[i];
    }
    return NULL;
}

/// False: no memory for what was written last.
static bool show_so_far(screen *s) {
    if (fflush(s->stream) != 0 || ferror(s->stream)) return false;
    bw_term_put_bytes(s->to, s->bytes + s->shown, s->length - s->shown);
    s->shown = s->length;
    return true;
}

FILE *bw_term_open(FILE *to) {
    screen *s = &screens[to == stderr];
    s->to = to;
    s->shown = 0;
    return s->stream = open_memstream(&s->bytes, &s->length);
}

bool bw_term_close(FILE *stream) {
    screen *s = screen_of(stream);
    bool whole = show_so_far(s);
    whole &= fclose(s->stream) == 0;
    free(s->bytes);
    s->stream = NULL;
    return whole;
}

/// Colour only on a terminal that can, and not when NO_COLOR is set and not empty.
static bool term_colour(FILE *stream) {
    const screen *s = screen_of(stream);
    if (s) stream = s->to;
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
    if (!term_colour(stream)) return;
    screen *s = screen_of(stream);
    // A code goes round what would show it as one that was found in a text.
    if (s && !show_so_far(s)) return;
    fputs(codes[colour], s ? s->to : stream);
}

/// One character, a NUL byte too; returns its bytes.
static size_t put_one(FILE *stream, const char *text) {
    const int length = bw_plain_character(text);
    if (length == 0) {
        fprintf(stream, "\\x%02x", (unsigned char)*text);
        return 1;
    }
    const unsigned hidden = bw_hidden_character(text);
    if (hidden)
        fprintf(stream, "\\u%04x", hidden);
    else
        fwrite(text, 1, (size_t)length, stream);
    return (size_t)length;
}

void bw_term_put(FILE *stream, const char *text) {
    while (*text)
        text += put_one(stream, text);
}

void bw_term_put_bytes(FILE *stream, const char *bytes, size_t length) {
    for (size_t i = 0; i < length;) {
        char here[5] = ""; // a character cut off by the end is no character
        memcpy(here, bytes + i, length - i < 4 ? length - i : 4);
        if (here[0] == '\n' || here[0] == '\t') {
            fputc(here[0], stream);
            i++;
        } else {
            i += put_one(stream, here);
        }
    }
}
