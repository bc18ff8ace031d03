/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Opening a file that someone named, to read it.
#ifndef BW_FILE_OPEN_H
#define BW_FILE_OPEN_H

#include "scheme/error.h"
#include <stdio.h>

/// A regular file, or a link to one; NULL with BW_FILE and one sentence (BW_BAD_INPUT: a folder, which is
/// there but no file). A pipe, a device or a folder is
/// refused at once: whoever opens a pipe waits for the other end, which may never come. `what` says what
/// should have been named, "scheme file".
FILE *bw_file_open(const char *path, const char *what, bw_error *error);

#endif
