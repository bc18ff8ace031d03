/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Members of a JSON object that the page sent, one by one. Each returns false with one sentence in
/// *form->error when the member is there and is something else; a member that is not there, or is null,
/// leaves *out as it was.
#ifndef BW_SERVE_FORM_H
#define BW_SERVE_FORM_H

#include "scheme/tree.h"
#include <stdint.h>

typedef struct bw_form {
    const bw_tree *tree;
    int32_t at; ///< the object
    bw_error *error;
} bw_form;

/// An object with no key but these, `count` of them; `what` names it, e.g. "a break".
bool bw_form_object(const bw_form *form, const char *what, const char *const *keys, int count);

/// One line of text of at most room - 1 bytes.
bool bw_form_text(const bw_form *form, const char *key, char *out, size_t room);

bool bw_form_number(const bw_form *form, const char *key, double low, double high, double *out);
bool bw_form_whole(const bw_form *form, const char *key, int low, int high, int *out);
bool bw_form_flag(const bw_form *form, const char *key, bool *out);

/// An array of at most `most` entries: its node in *out.
bool bw_form_list(const bw_form *form, const char *key, int most, int32_t *out);

/// Writes a sentence about this member; always false.
bool bw_form_refuse(const bw_form *form, const char *key, const char *rest);

#endif
