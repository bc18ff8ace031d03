/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Saving, seen from below: a file is in its place for good only once the folder that holds its name is
/// flushed too, and whether a file could be written is known without writing it.
#include "file/document.h"
#include "harness.h"
#include <fcntl.h>
#include <stdlib.h>
#include <sys/stat.h>
#include <unistd.h>

static char folder[] = "/tmp/breakwater-XXXXXX";
static int files_synced, folders_synced;
static bool in_place; ///< the file's name was there when the folder was flushed

static const char *in_folder(const char *name) {
    static char path[2][256];
    static int next;
    next = !next;
    snprintf(path[next], sizeof path[next], "%s/%s", folder, name);
    return path[next];
}

/// Stands in for the system's: a test cannot pull the plug, but it can see what is flushed, and when.
int fsync(int file) {
    struct stat about;
    if (fstat(file, &about) != 0) return -1;
    files_synced += S_ISREG(about.st_mode);
    folders_synced += S_ISDIR(about.st_mode);
    if (S_ISDIR(about.st_mode)) in_place = access(in_folder("a.json"), F_OK) == 0;
    return 0;
}

static void the_folder_is_flushed_after_the_rename(void) {
    bw_error error;
    CHECK_INT(bw_file_save(in_folder("a.json"), "{}", 2, &error), BW_OK);
    CHECK_INT(files_synced, 1);
    CHECK_INT(folders_synced, 1);
    CHECK(in_place);
    CHECK(chdir(folder) == 0);
    CHECK_INT(bw_file_save("b.json", "{}", 2, &error), BW_OK); // a name without a folder
    CHECK_INT(folders_synced, 2);
    CHECK(chdir("/") == 0);
}

static void what_cannot_be_saved_is_known_before(void) {
    static const char *const bad[] = {"no/such/folder.json", "."};
    bw_error error;
    struct stat before, after;
    CHECK(stat(in_folder("a.json"), &before) == 0);
    CHECK_INT(bw_file_can_save(in_folder("a.json"), &error), BW_OK);
    CHECK_INT(bw_file_can_save(in_folder("new.json"), &error), BW_OK);
    CHECK_INT(bw_file_can_save("-", &error), BW_OK);
    CHECK_INT(bw_file_can_save("/dev/null", &error), BW_OK);
    for (int i = 0; i < BW_COUNT(bad); i++) {
        bw_error as_saved;
        CHECK_INT(bw_file_can_save(in_folder(bad[i]), &error), BW_FILE);
        CHECK_INT(bw_file_save(in_folder(bad[i]), "{}", 2, &as_saved), BW_FILE);
        CHECK_TEXT(error.message, as_saved.message);
    }
    CHECK(stat(in_folder("a.json"), &after) == 0);
    CHECK_INT(before.st_ino, after.st_ino);
    CHECK(access(in_folder("new.json"), F_OK) != 0);
}

int main(int argc, char **argv) {
    CHECK(mkdtemp(folder) != NULL);
    RUN(the_folder_is_flushed_after_the_rename);
    RUN(what_cannot_be_saved_is_known_before);
    unlink(in_folder("a.json"));
    unlink(in_folder("b.json"));
    CHECK(rmdir(folder) == 0); // and nothing else was left in it
    return test_report(argc, argv);
}
