/* SPDX-License-Identifier: GPL-3.0-or-later */
/// JSON objects that the page sent, read by a table of their members, or one by one. Each returns false with
/// one sentence in *form->error when a member is there and is something else; a member that is not there, or
/// is null, leaves *out as it was.
#ifndef BW_SERVE_FORM_H
#define BW_SERVE_FORM_H

#include "scheme/tree.h"
#include <stddef.h>
#include <stdint.h>

typedef struct bw_form {
    const bw_tree *tree;
    int32_t at; ///< the object
    bw_error *error;
} bw_form;

typedef enum bw_member_kind {
    BW_MEMBER_TEXT,   ///< one line, into a char array of high + 1 bytes
    BW_MEMBER_WHOLE,  ///< a whole number, into an int
    BW_MEMBER_ROW,    ///< the number of a row of the team file, into an int64_t
    BW_MEMBER_NUMBER, ///< into a double
    BW_MEMBER_FLAG,   ///< true or false, into a bool
    BW_MEMBER_LIST,   ///< at most `high` texts, or objects of the table `of`
    BW_MEMBER_OBJECT, ///< of the table `of`, or the number of its row
    BW_MEMBER_TOLD    ///< the server gives it, and does not look at it when it comes back
} bw_member_kind;

/// A member of an object that is taken. The page is told the same table (on_team.c), and builds what it
/// sends from it: what one side knows, the other does.
typedef struct bw_form_member {
    const char *key;
    bw_member_kind kind;
    size_t offset;    ///< in what is filled in
    double low, high; ///< range of a number; most bytes of a text or entries of a list: high
    bool needed;      ///< cannot be left out
    const struct bw_form_table *of; ///< of an object, or of a list's entries; NULL: texts
    /// Reads it instead, whether it is there or not; NULL: as its kind says.
    bool (*take)(const bw_form *form, const struct bw_form_member *member, void *out);
} bw_form_member;

typedef struct bw_form_table {
    const char *name; ///< "break"
    const char *what; ///< in a sentence: "a break"
    const bw_form_member *members;
    int count;
} bw_form_table;

/// Reads an object of this table into *out, which holds what stands for "not said".
bool bw_form_read(const bw_form *form, const bw_form_table *table, void *out);

/// Whether the member is there and is not null.
bool bw_form_has(const bw_form *form, const char *key);

/// One line of text of at most room - 1 bytes.
bool bw_form_text(const bw_form *form, const char *key, char *out, size_t room);

bool bw_form_whole(const bw_form *form, const char *key, int low, int high, int *out);
/// An array of at most `most` entries: its node in *out.
bool bw_form_list(const bw_form *form, const char *key, int most, int32_t *out);

/// Writes a sentence about this member; always false.
bool bw_form_refuse(const bw_form *form, const char *key, const char *rest);

#endif
