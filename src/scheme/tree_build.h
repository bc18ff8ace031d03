/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Building a document's tree from a stream of parse events. The native program feeds it from jansson, the
/// browser from its own parser; what follows is the same code. Limits on depth, node count and text are kept
/// here; duplicate keys, control characters in keys, NUL and numbers that are not finite are refused here too.
///
/// Events come in a parser's order: inside an object each value follows its key. Another order is a
/// mistake of the feeding code, not of the document, and is asserted against.
#ifndef BW_SCHEME_TREE_BUILD_H
#define BW_SCHEME_TREE_BUILD_H

#include "scheme/tree.h"

void bw_tree_begin(bw_tree *tree);
void bw_tree_key(bw_tree *tree, const char *text, size_t length);
void bw_tree_string(bw_tree *tree, const char *text, size_t length);
void bw_tree_number(bw_tree *tree, double value);
void bw_tree_bool(bw_tree *tree, bool value);
void bw_tree_null(bw_tree *tree);
void bw_tree_object(bw_tree *tree);
void bw_tree_array(bw_tree *tree);
void bw_tree_end(bw_tree *tree); ///< closes the innermost object or array

/// One of these by its character: '{' and '[', '}' or ']'; ':' a key and '"' a string of `value` bytes at `text`,
/// which has `room`; '0' the number `value`; 't', 'f' and 'n' the words. 0 begins.
void bw_tree_feed(bw_tree *tree, int event, const char *text, size_t room, double value);

/// True when one whole value was read and nothing was refused; else tree->error says why.
bool bw_tree_finish(bw_tree *tree);

#endif
