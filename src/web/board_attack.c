/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Attackers on the board: from a set, one by one, and kept as a set of the scheme.
#include "core/attack_set.h"
#include "core/text.h"
#include "web/board.h"

enum { BW_SET_MEN = 3 }; ///< a set has at least so many

static void renew(bw_board *board) {
    bw_board_prepare(board);
    bw_board_settle(board);
}

const char *bw_board_set_id(const bw_board *board, int index) {
    if (index < 0) return "";
    if (index < bw_attack_set_count()) return bw_attack_set_at(index)->id;
    index -= bw_attack_set_count();
    return index < board->scheme.set_count ? board->scheme.sets[index].id : "";
}

void bw_board_attack(bw_board *board, int set, int men) {
    const char *id = bw_board_set_id(board, set);
    board->attacker_count = 0;
    for (; *id && men > 0 && board->attacker_count == 0; men--) {
        if (bw_attack_set_place(&board->scheme, id, men, board->attackers) == BW_OK)
            board->attacker_count = men;
    }
    board->set = board->attacker_count > 0 ? set : BW_SET_NONE;
    renew(board);
}

static double nearest_man(const bw_board *board, bw_vec at) {
    double near = bw_distance(at, board->ball);
    for (int a = 0; a < board->attacker_count; a++)
        near = bw_min(near, bw_distance(at, board->attackers[a]));
    return near;
}

void bw_board_add_man(bw_board *board) {
    if (board->attacker_count >= BW_MAX_ATTACKERS) return;
    // Of the places that men of the built-in sets have, the one with most room round it.
    bw_vec best = board->ball;
    double room = -1;
    for (int i = 0; i < bw_attack_set_count(); i++) {
        const bw_attack_set *set = bw_attack_set_at(i);
        for (int a = 0; a < set->count; a++) {
            const double near = nearest_man(board, set->at[a]);
            if (near <= room) continue;
            room = near;
            best = set->at[a];
        }
    }
    board->attackers[board->attacker_count++] = best;
    board->set = BW_SET_OWN;
    renew(board);
}

void bw_board_remove_man(bw_board *board, int attacker) {
    if (attacker < 0 || attacker >= board->attacker_count) return;
    for (int a = attacker; a + 1 < board->attacker_count; a++)
        board->attackers[a] = board->attackers[a + 1];
    board->attacker_count--;
    board->set = board->attacker_count > 0 ? BW_SET_OWN : BW_SET_NONE;
    renew(board);
}

static bool taken(const bw_board *board, const char *id) {
    for (int i = 0; *bw_board_set_id(board, i); i++) {
        if (bw_same(bw_board_set_id(board, i), id)) return true;
    }
    return false;
}

/// An id out of a name: its small letters and figures, a dash between words; a number when it is taken.
static void name_set(const bw_board *board, const char *name, char id[BW_ID_SIZE]) {
    char plain[BW_ID_SIZE - 3];
    bw_text t = bw_text_in(plain, sizeof plain);
    for (const char *p = name; *p; p++) {
        const char c = (char)(*p >= 'A' && *p <= 'Z' ? *p + 'a' - 'A' : *p);
        const bool word = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
        if (word && t.used + 1 < sizeof plain)
            bw_put_char(&t, c);
        else if (!word && t.used > 0 && t.used + 2 < sizeof plain && plain[t.used - 1] != '-')
            bw_put_char(&t, '-');
    }
    if (t.used > 0 && plain[t.used - 1] == '-') plain[--t.used] = '\0';
    for (int n = 1; n == 1 || taken(board, id); n++) {
        bw_text out = bw_text_in(id, BW_ID_SIZE);
        bw_put(&out, t.used > 0 ? plain : "set");
        if (n == 1) continue;
        bw_put_char(&out, '-');
        bw_put_int(&out, n);
    }
}

bool bw_board_can_keep(const bw_board *board) {
    return board->set == BW_SET_OWN && board->attacker_count >= BW_SET_MEN &&
           board->scheme.set_count < BW_MAX_SETS;
}

bool bw_board_keep_set(bw_board *board, const char *name) {
    bw_scheme *scheme = &board->scheme;
    if (!bw_board_can_keep(board)) return false;
    bw_set set = {.count = board->attacker_count};
    if (!*name || !bw_copy(set.name, sizeof set.name, name)) return false;
    name_set(board, name, set.id);
    for (int a = 0; a < set.count; a++)
        set.at[a] = board->attackers[a];
    board->set = bw_attack_set_count() + scheme->set_count;
    scheme->sets[scheme->set_count++] = set;
    return true;
}

bool bw_board_drop_set(bw_board *board) {
    bw_scheme *scheme = &board->scheme;
    const int own = board->set - bw_attack_set_count();
    if (own < 0 || own >= scheme->set_count) return false;
    for (int i = own; i + 1 < scheme->set_count; i++)
        scheme->sets[i] = scheme->sets[i + 1];
    scheme->set_count--;
    board->set = BW_SET_OWN;
    return true;
}
