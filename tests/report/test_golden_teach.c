/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A page of each kind that is handed out, against its trace in tests/golden/teach.
#include "harness.h"
#include "report/cards.h"
#include "report/packet.h"
#include "report/quiz_sheet.h"
#include "report/wall.h"
#include "tests/draw/golden.h"
#include "tests/report/pages.h"

static bw_scheme terns;
static bw_weak_list weak;
static double memory[BW_INK_PAGE_BYTES / sizeof(double)];

typedef bw_status draw_page(const bw_teach *teach, int page, int pages, bw_ink *ink);

static void check_page(const bw_teach *teach, draw_page *draw, int pages, int page,
                       const char *name) {
    char path[80];
    snprintf(path, sizeof path, "tests/golden/teach/%s.txt", name);
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    CHECK_INT(draw(teach, page, pages, ink), BW_OK);
    check_trace(path, ink);
}

static void pages_match_their_traces(void) {
    made_up_weak(&terns, &weak);
    bw_teach teach = {.scheme = &terns,
                      .weak = &weak,
                      .date = "2026-04-18",
                      .seed = 1,
                      .card_width = BW_CARD_WIDTH,
                      .card_height = BW_CARD_HEIGHT};
    const int packet = bw_packet_pages(&teach), quiz = bw_quiz_pages(&teach);
    check_page(&teach, bw_packet_page, packet, 1, "packet-idea");
    check_page(&teach, bw_packet_page, packet, 7, "packet-stage");
    check_page(&teach, bw_packet_page, packet, 8, "packet-rotations");
    check_page(&teach, bw_packet_page, packet, 9, "packet-spot");
    check_page(&teach, bw_packet_page, packet, packet - 1, "packet-weak");
    check_page(&teach, bw_cards_page, bw_cards_pages(&teach), 1, "cards-front");
    check_page(&teach, bw_cards_page, bw_cards_pages(&teach), 2, "cards-back");
    check_page(&teach, bw_quiz_page, quiz, 1, "quiz-places");
    check_page(&teach, bw_quiz_page, quiz, quiz - 1, "quiz-key");
    check_page(&teach, bw_wall_page, bw_wall_pages(&teach), 2, "wall");
    teach.large = true;
    teach.paper = BW_A4;
    check_page(&teach, bw_packet_page, bw_packet_pages(&teach), 1, "packet-idea-large");
}

int main(int argc, char **argv) {
    if (load_terns(&terns)) RUN(pages_match_their_traces);
    return test_report(argc, argv);
}
