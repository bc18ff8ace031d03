/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/board_talk.h"

#include "cli/say.h"
#include "serve/qr.h"
#include <stdio.h>
#include <unistd.h>

void bw_board_greet(bool terminal) {
    bw_say("Open this address in a browser on this computer; it is good for one opening.");
    bw_say(terminal ? "Enter gives another, Ctrl-C stops." : "Ctrl-C stops.");
}

/// The picture only where it is seen.
static void show_qr(const char *link) {
    static char room[BW_QR_TEXT];
    bw_qr qr;
    if (!isatty(STDERR_FILENO) || !bw_qr_make(link, &qr)) return;
    bw_text t = bw_text_in(room, sizeof room);
    bw_qr_put(&qr, &t);
    fputs(room, stderr);
}

static void tell_code(const bw_share_view *now) {
    bw_say("The next device joins at %s with the code %s", now->base, now->code);
    show_qr(now->link);
}

void bw_board_tell(bw_server *server, bw_share_view *before) {
    bw_share_view now;
    bw_server_look(server, &now);
    if (now.open && !before->open)
        bw_say("Shared on the local network. It is plain HTTP: others on the same Wi-Fi can read "
               "what is sent.");
    if (!now.open && before->open) bw_say("No longer shared.");
    if (now.refused[0] && !bw_same(now.refused, before->refused)) bw_say("%s", now.refused);
    if (now.devices > before->devices) bw_say("A device has joined; there are %d.", now.devices);
    if (now.open && !bw_same(now.code, before->code)) tell_code(&now);
    *before = now;
}
