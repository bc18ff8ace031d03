/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Pages to files: one PDF of all of them, or one SVG or PNG a page.
#ifndef BW_CLI_PAGES_H
#define BW_CLI_PAGES_H

#include "cli/options.h"
#include "draw/sheet.h"
#include "paint/pages.h"

/// Formats a page can be painted in; NULL past the last.
const char *bw_format_choice(int index);
const char *bw_theme_choice(int index);
const char *bw_paper_choice(int index);
const char *bw_lines_choice(int index); ///< in the order of bw_lines

/// What --lines asks for, of a verb that has it.
bw_lines bw_option_lines(const bw_args *args);

/// The paper of a verb with the option --paper.
bw_paper bw_option_paper(const bw_args *args);

/// The options of a verb that paints pages, for its table: --paper, --theme, --lines, --format, --dpi.
#define BW_PAGE_OPTIONS                                                                            \
    {.name = "paper",                                                                              \
     .value = "PAPER",                                                                             \
     .choice = bw_paper_choice,                                                                    \
     .standard = "letter",                                                                         \
     .help = "Paper size"},                                                                        \
        {.name = "theme",                                                                          \
         .value = "THEME",                                                                         \
         .choice = bw_theme_choice,                                                                \
         .standard = "chart",                                                                      \
         .help = "Colours"},                                                                       \
        {.name = "lines",                                                                          \
         .value = "HABIT",                                                                         \
         .choice = bw_lines_choice,                                                                \
         .standard = "run-solid",                                                                  \
         .help = "Runs solid and passes dashed, or the other way round"},                          \
        {.name = "format",                                                                         \
         .value = "FORMAT",                                                                        \
         .choice = bw_format_choice,                                                               \
         .help = "Kind of file, when the name of the file does not tell"},                         \
    {                                                                                              \
        .name = "dpi", .value = "N", .standard = "144", .help = "Dots per inch of a PNG"           \
    }

/// Opens what painting takes. BW_EXIT_OK, or the code after saying why not; it is to be closed in any case.
int bw_open_press(bw_press *press);

/// Paints them to --output as the options ask, and says on standard error what was written; with
/// --json the list of files is the result. Several SVG or PNG pages get "-01", "-02" ... before the
/// ending. Returns the exit code.
int bw_paint_pages(const bw_args *args, const bw_pages *pages);

/// Whether the result is to be pages: by --format, or by the ending of --output.
bool bw_wants_pages(const bw_args *args);

/// Whether the file of such a PDF can be made: its name says PDF or nothing, and it can be written.
/// `option` names it in the sentence. BW_EXIT_OK, or the code after saying why not.
int bw_check_pdf(const bw_args *args, const char *option);

/// Paints them as one PDF beside a verb's other result, and says what was written. Returns the exit code.
int bw_paint_pdf(const char *path, const bw_pages *pages);

#endif
