/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/teach_parts.h"

#include "cli/say.h"
#include "cli/stop.h"
#include "cli/teach_films.h"
#include "file/document.h"
#include "report/cards.h"
#include "report/handout.h"
#include "report/packet.h"
#include "report/quiz_sheet.h"
#include "report/wall.h"
#include <stdlib.h>

static int make_packet(const bw_teach_job *job, const char *path, int *pages) {
    *pages = bw_packet_pages(&job->teach);
    const bw_teach_pages packet = {"packet", *pages, bw_packet_page};
    return bw_teach_pdf(job, path, &packet);
}

static int make_cards(const bw_teach_job *job, const char *path, int *pages) {
    *pages = bw_cards_pages(&job->teach);
    if (*pages == 0) {
        bw_say_error(
            "a card of that size does not fit on the paper, or not all ball places on it.");
        return BW_EXIT_WRONG;
    }
    const bw_teach_pages cards = {"pocket cards", *pages, bw_cards_page};
    return bw_teach_pdf(job, path, &cards);
}

static int make_quiz(const bw_teach_job *job, const char *path, int *pages) {
    *pages = bw_quiz_pages(&job->teach);
    const bw_teach_pages quiz = {"quiz", *pages, bw_quiz_page};
    return bw_teach_pdf(job, path, &quiz);
}

static int make_wall(const bw_teach_job *job, const char *path, int *pages) {
    *pages = bw_wall_pages(&job->teach);
    const bw_teach_pages wall = {"wall sheets", *pages, bw_wall_page};
    return bw_teach_pdf(job, path, &wall);
}

static int make_handout(const bw_teach_job *job, const char *path, int *pages) {
    *pages = 0; // none of paper
    char *memory = malloc(BW_HANDOUT_BYTES);
    if (!memory) return bw_say_no_memory();
    bw_text page = bw_text_in(memory, BW_HANDOUT_BYTES);
    bw_error error = {0};
    bw_status status = bw_handout(&job->teach, job->ink, &page);
    if (status == BW_NO_ROOM)
        bw_copy(error.message, sizeof error.message,
                "the hand-out has more in it than there is room for");
    if (status == BW_OK) status = bw_file_save(path, page.data, page.used, &error);
    free(memory);
    if (status == BW_OK) return BW_EXIT_OK;
    error.status = status;
    return bw_say_refusal(path, &error);
}

const bw_teach_part *bw_teach_part_at(int index) {
    static const bw_teach_part parts[] = {
        {"packet", "packet.pdf", true, make_packet},
        {"handout", "handout.html", true, make_handout},
        {"cards", "cards.pdf", false, make_cards},
        {"quiz", "quiz.pdf", true, make_quiz},
        {"wall", "wall.pdf", false, make_wall},
        {"films", "films", false, bw_teach_films},
    };
    return index < BW_COUNT(parts) ? &parts[index] : NULL;
}

static bw_status paint(const bw_teach_job *job, const bw_teach_pages *pages, bw_pdf *pdf,
                       bw_text *why) {
    for (int n = 1; n <= pages->count; n++) {
        if (atomic_load(bw_stop_flag())) return BW_LIMIT;
        bw_status status = pages->page(&job->teach, n, pages->count, job->ink);
        if (status == BW_NO_ROOM) bw_put(why, "A page has more on it than there is room for.");
        if (status == BW_OK) status = bw_pdf_page(pdf, job->ink, why);
        if (status != BW_OK) return status;
    }
    return BW_OK;
}

int bw_teach_pdf(const bw_teach_job *job, const char *path, const bw_teach_pages *pages) {
    char title[BW_NAME_SIZE + 40], words[400];
    bw_text why = bw_text_in(words, sizeof words), t = bw_text_in(title, sizeof title);
    bw_put(&t, job->scheme.name);
    bw_put(&t, ": ");
    bw_put(&t, pages->what);
    const bw_about about = {.title = title};
    bw_pdf *pdf = bw_pdf_open(path, &about, job->fonts, job->theme, &why);
    bw_status status = BW_FILE;
    if (pdf) {
        status = paint(job, pages, pdf, &why);
        const bw_status closed = bw_pdf_close(pdf, status == BW_OK, &why);
        if (status == BW_OK) status = closed;
    }
    if (status == BW_OK) return BW_EXIT_OK;
    if (atomic_load(bw_stop_flag())) return BW_EXIT_INTERRUPTED;
    bw_say_error("%s", why.used ? why.data : "the page could not be painted.");
    return bw_exit_code(status);
}
