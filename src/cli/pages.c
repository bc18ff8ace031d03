/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/pages.h"
#include "cli/say.h"
#include "core/text.h"
#include "draw/sheet.h"
#include "file/beside.h"
#include "file/document.h"
#include "file/json_stream.h"
#include <errno.h>
#include <stdlib.h>
#include <string.h>
#include <strings.h>
#include <unistd.h>

enum { PATH_SIZE = 4096, WHY_SIZE = 400 };

typedef enum format { PDF, SVG, PNG } format;

const char *bw_format_choice(int index) {
    static const char *const formats[] = {"pdf", "svg", "png", NULL};
    return formats[index];
}

const char *bw_theme_choice(int index) {
    return index < BW_THEME_COUNT ? bw_theme_at((bw_theme_id)index)->id : NULL;
}

const char *bw_paper_choice(int index) {
    return index < BW_PAPER_COUNT ? bw_paper_name((bw_paper)index) : NULL;
}

const char *bw_lines_choice(int index) {
    static const char *const habits[] = {"run-solid", "pass-solid", NULL};
    return habits[index];
}

bw_lines bw_option_lines(const bw_args *args) {
    const bool pass = strcmp(bw_option_text(args, "lines"), bw_lines_choice(BW_PASS_SOLID)) == 0;
    return pass ? BW_PASS_SOLID : BW_RUN_SOLID;
}

bw_paper bw_option_paper(const bw_args *args) {
    const char *id = bw_option_text(args, "paper");
    int paper = 0;
    while (strcmp(bw_paper_name((bw_paper)paper), id) != 0)
        paper++;
    return (bw_paper)paper;
}

/// A painting under way.
typedef struct painting {
    const bw_pages *pages;
    const bw_theme *theme;
    bw_press press;
    format format;
    int dpi;
    const char *path;
    bw_text why;
    char why_room[WHY_SIZE];
} painting;

/// Where the ending of a file name begins: at its last dot, or at its end.
static size_t ending_of(const char *path) {
    const char *dot = strrchr(path, '.'), *slash = strrchr(path, '/');
    return dot && (!slash || dot > slash) ? (size_t)(dot - path) : strlen(path);
}

static bool find_format(const bw_args *args, const char *path, format *out) {
    const char *given = bw_option_text(args, "format");
    const char *ending = path + ending_of(path);
    const char *word = given ? given : (*ending ? ending + 1 : "pdf");
    for (int i = 0; bw_format_choice(i); i++) {
        *out = (format)i;
        if (strcmp(word, bw_format_choice(i)) == 0) return true;
    }
    if (strcmp(path, "-") == 0) {
        *out = PDF;
        return true;
    }
    bw_usage(args->verb, "\"%s\" tells no format; name a .pdf, .svg or .png, or give --format.",
             path);
    return false;
}

/// The file of one page among many: "book.png" becomes "book-03.png".
static bool page_path(const painting *p, int number, char *room) {
    size_t ending = ending_of(p->path);
    int length = p->pages->count == 1 ? snprintf(room, PATH_SIZE, "%s", p->path)
                                      : snprintf(room, PATH_SIZE, "%.*s-%02d%s", (int)ending,
                                                 p->path, number, p->path + ending);
    return length > 0 && length < PATH_SIZE;
}

static bw_status paint_pdf(painting *p) {
    return bw_pages_pdf(p->pages, p->path, &p->press, p->theme, &p->why);
}

static bw_status paint_each(painting *p) {
    bw_status status = BW_OK;
    for (int n = 1; n <= p->pages->count && status == BW_OK; n++) {
        char path[PATH_SIZE];
        if (!page_path(p, n, path)) {
            bw_put(&p->why, "The name of the file is too long.");
            return BW_FILE;
        }
        status = bw_pages_draw(p->pages, n, p->press.ink, &p->why);
        if (status != BW_OK) break;
        status = p->format == SVG
                     ? bw_paint_svg(path, p->press.ink, p->theme, &p->why)
                     : bw_paint_png(path, p->press.ink, p->press.fonts, p->theme, p->dpi, &p->why);
    }
    return status;
}

static void report(const bw_args *args, const painting *p) {
    bool one = p->format == PDF || p->pages->count == 1;
    char first[PATH_SIZE], last[PATH_SIZE];
    page_path(p, 1, first);
    page_path(p, p->pages->count, last);
    int pages = p->pages->count;
    if (one)
        bw_say("Wrote %s: %d page%s.", p->path, pages, pages == 1 ? "" : "s");
    else
        bw_say("Wrote %s to %s: %d pages.", first, last, pages);
    if (!bw_option_given(args, "json")) return;
    bw_json json = bw_json_to(stdout);
    bw_json_open(&json, '{');
    bw_json_put_number(&json, "pages", pages);
    bw_json_put_open(&json, "files", '[');
    for (int n = 1; n <= (one ? 1 : pages); n++) {
        page_path(p, n, first);
        bw_json_text(&json, one ? p->path : first);
    }
    bw_json_close(&json, ']');
    bw_json_close(&json, '}');
    bw_json_end(&json);
}

static int paint(const bw_args *args, painting *p) {
    bw_status status = p->format == PDF ? paint_pdf(p) : paint_each(p);
    if (status == BW_OK) {
        if (p->path == bw_option_text(args, "output")) report(args, p);
        return BW_EXIT_OK;
    }
    bw_say_error("%s", p->why.used ? p->why.data : "the page could not be painted.");
    return bw_exit_code(status);
}

/// Copies a finished file to standard output.
static int pour(const char *path) {
    FILE *in = fopen(path, "rb");
    char block[16384];
    bool good = in != NULL;
    for (size_t n; good && (n = fread(block, 1, sizeof block, in)) > 0;)
        good = fwrite(block, 1, n, stdout) == n;
    good = good && !ferror(in) && fflush(stdout) == 0;
    if (in) fclose(in);
    if (good) return BW_EXIT_OK;
    bw_say_error("standard output could not be written.");
    return BW_EXIT_FILE;
}

/// Painters need a file they can rename, so standard output is painted by way of one.
static int paint_to_standard(const bw_args *args, painting *p) {
    if (p->format != PDF && p->pages->count > 1)
        return bw_usage(args->verb, "several pages as %s need files of their own: -o FILE.",
                        bw_format_choice((int)p->format));
    bw_beside folder;
    char path[sizeof folder.path + 8];
    if (!bw_beside_folder(&folder)) {
        bw_say_error("no temporary folder could be made: %s.", strerror(errno));
        return BW_EXIT_FILE;
    }
    snprintf(path, sizeof path, "%s/page", folder.path);
    painting through = *p;
    through.path = path;
    int code = paint(args, &through);
    if (code == BW_EXIT_OK) code = pour(path);
    unlink(path);
    bw_beside_close(&folder);
    return code;
}

int bw_open_press(bw_press *press) {
    char room[WHY_SIZE];
    bw_text why = bw_text_in(room, sizeof room);
    const bw_status status = bw_press_open(press, &why);
    if (status == BW_OK) return BW_EXIT_OK;
    if (status == BW_NO_ROOM) return bw_say_no_memory();
    bw_say_error("%s", why.data);
    return bw_exit_code(status);
}

int bw_paint_pages(const bw_args *args, const bw_pages *pages) {
    painting p = {.pages = pages,
                  .theme = bw_theme_find(bw_option_text(args, "theme")),
                  .path = bw_option_text(args, "output"),
                  .dpi = BW_DPI_MIN};
    p.why = bw_text_in(p.why_room, sizeof p.why_room);
    if (!p.path) return bw_usage(args->verb, "say where the picture goes: -o FILE.");
    if (!bw_option_int(args, "dpi", BW_DPI_MIN, BW_DPI_MAX, &p.dpi)) return BW_EXIT_USAGE;
    if (!find_format(args, p.path, &p.format)) return BW_EXIT_USAGE;

    int code = bw_open_press(&p.press);
    if (code == BW_EXIT_OK) {
        p.press.ink->lines = bw_option_lines(args);
        code = strcmp(p.path, "-") == 0 ? paint_to_standard(args, &p) : paint(args, &p);
    }
    bw_press_close(&p.press);
    return code;
}

int bw_check_pdf(const bw_args *args, const char *option) {
    const char *path = bw_option_text(args, option);
    if (!path) return BW_EXIT_OK;
    if (strcmp(path, "-") == 0)
        return bw_usage(args->verb, "--%s needs a file of its own, such as why.pdf.", option);
    const char *ending = path + ending_of(path);
    if (*ending && strcasecmp(ending, ".pdf") != 0)
        return bw_usage(args->verb, "--%s is a PDF: name a file that ends in .pdf, not \"%s\".",
                        option, path);
    bw_error error = {0};
    if (bw_file_can_save(path, &error) == BW_OK) return BW_EXIT_OK;
    return bw_say_refusal(path, &error);
}

int bw_paint_pdf(const char *path, const bw_pages *pages) {
    char room[WHY_SIZE];
    bw_text why = bw_text_in(room, sizeof room);
    bw_press press = {NULL, NULL};
    const int code = bw_open_press(&press);
    bw_status status = BW_OK;
    if (code == BW_EXIT_OK)
        status = bw_pages_pdf(pages, path, &press, bw_theme_at(BW_THEME_CHART), &why);
    bw_press_close(&press);
    if (code != BW_EXIT_OK) return code;
    if (status == BW_OK) {
        bw_say("Wrote %s: %d pages.", path, pages->count);
        return BW_EXIT_OK;
    }
    bw_say_error("%s", why.data);
    return bw_exit_code(status);
}

bool bw_wants_pages(const bw_args *args) {
    if (bw_option_given(args, "format")) return true;
    const char *path = bw_option_text(args, "output");
    const char *ending = path ? strrchr(path, '.') : NULL;
    for (int i = 0; ending && bw_format_choice(i); i++) {
        if (strcmp(ending + 1, bw_format_choice(i)) == 0) return true;
    }
    return false;
}
