/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The packet: the idea on a page; each stage, who calls what when, and its rotations; each spot's own
/// page in the second person; what to rehearse.
#ifndef BW_REPORT_PACKET_H
#define BW_REPORT_PACKET_H

#include "report/teach.h"

/// Pages it has. With teach->spot it is that player's own copy: the idea, his pages, what he is late
/// for.
int bw_packet_pages(const bw_teach *teach);

/// Draws page 1 to `pages`, which is bw_packet_pages(), into `ink`. BW_NOT_FOUND: no such page;
/// BW_NO_ROOM: ink->need tells how many bytes it takes. Uses about 30 kB of stack.
bw_status bw_packet_page(const bw_teach *teach, int page, int pages, bw_ink *ink);

#endif
