/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A product (report/product.h) made for a verb and delivered as its options ask.
#ifndef BW_CLI_PRODUCT_H
#define BW_CLI_PRODUCT_H

#include "cli/options.h"
#include "report/product.h"

/// Runs a verb's work with an order of zeroes of its own. Returns the work's exit code.
int bw_with_order(const bw_args *args, int (*work)(const bw_args *args, bw_order *order));

/// Makes the product with this id, and the ground it may need at a level (NULL: the scheme's), saying how
/// far it is on a terminal: "Testing breaks: 3 of 72". BW_EXIT_OK, 130 when interrupted, or the code after
/// saying why.
int bw_make_product(const char *id, const struct bw_level *level, const char *doing,
                    bw_order *order, bw_document *out);

/// Delivers it, as pages, JSON or text, and closes it. Returns the exit code.
int bw_deliver(const bw_args *args, bw_document *document);

/// The same as text or, with --json, as JSON, to a stream.
int bw_deliver_words(const bw_args *args, const bw_document *document, FILE *out);

#endif
