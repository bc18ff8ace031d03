/* SPDX-License-Identifier: GPL-3.0-or-later */
/// How each product is opened. Private to product*.c.
#ifndef BW_REPORT_PRODUCT_PART_H
#define BW_REPORT_PRODUCT_PART_H

#include "report/document.h"
#include "report/order.h"

bw_status bw_open_test(bw_order *order, bw_document *out, bw_text *why);
bw_status bw_open_strip(bw_order *order, bw_document *out, bw_text *why);
bw_status bw_open_book(bw_order *order, bw_document *out, bw_text *why);
bw_status bw_open_handed_out(bw_order *order, bw_document *out, bw_text *why);
bw_status bw_open_handout(bw_order *order, bw_document *out, bw_text *why);
bw_status bw_open_rehearsal(bw_order *order, bw_document *out, bw_text *why);
bw_status bw_open_tuning(bw_order *order, bw_document *out, bw_text *why);
bw_status bw_open_review(bw_order *order, bw_document *out, bw_text *why);

/// Runs so many of order->trials on all cores.
bw_status bw_order_run(bw_order *order, int count);

#endif
