/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Temporary files and folders of our own. They bear a name that nothing else has ("b.team.breakwater-"
/// and six letters), are readable by their owner only, and are locked for as long as they are in use: what
/// has such a name and no lock was left by a program that was killed, and is swept away by the next one
/// that works in the same folder. A coach's own file is never touched.
#ifndef BW_FILE_BESIDE_H
#define BW_FILE_BESIDE_H

#include <stdbool.h>

enum { BW_BESIDE_SIZE = 4096 };

/// A file beside the one whose place it will take, or a folder in the place for temporary files.
typedef struct bw_beside {
    char path[BW_BESIDE_SIZE];
    int file; ///< open, locked; for writing if it is a file
} bw_beside;

/// Makes an empty file beside `path`, after sweeping its folder. False with errno.
bool bw_beside_open(const char *path, bw_beside *beside);

/// Makes a folder of our own in $TMPDIR, or /tmp, after sweeping there. False with errno.
bool bw_beside_folder(bw_beside *beside);

/// Lets go of it. The file is removed unless it was renamed; a folder must be empty by then. False when
/// the last of what was written could not be.
bool bw_beside_close(bw_beside *beside);

/// Removes what killed programs left in a folder.
void bw_beside_sweep(const char *folder);

/// The same in the folder of a file.
void bw_beside_sweep_of(const char *path);

#endif
