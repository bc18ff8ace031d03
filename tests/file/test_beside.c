/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What a killed program left beside a coach's files is swept away by the next one; what is in use, and
/// what only looks like it, stays.
#define _XOPEN_SOURCE 700
#include "file/beside.h"
#include "file/document.h"
#include "harness.h"
#include <dirent.h>
#include <fcntl.h>
#include <stdbool.h>
#include <stdlib.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

static char folder[] = "/tmp/beside-XXXXXX";

static const char *in_folder(const char *name) {
    static char paths[4][300];
    static int next;
    char *path = paths[next++ % 4];
    snprintf(path, sizeof paths[0], "%s/%s", folder, name);
    return path;
}

static int count_files(void) {
    DIR *listing = opendir(folder);
    int count = 0;
    for (const struct dirent *entry; listing && (entry = readdir(listing));)
        count += entry->d_name[0] != '.';
    if (listing) closedir(listing);
    return count;
}

static void put(const char *path, mode_t mode) {
    const int file = open(path, O_WRONLY | O_CREAT | O_TRUNC, mode);
    CHECK(file >= 0 && write(file, "x", 1) == 1 && close(file) == 0);
}

/// A program that ends in the middle of its work, as one that is killed. `name` is what it left.
static void leave(bool whole, char *name, size_t room) {
    int ends[2];
    bw_beside beside;
    CHECK(pipe(ends) == 0);
    const pid_t child = fork();
    if (child == 0) {
        const bool made =
            whole ? bw_beside_folder(&beside) : bw_beside_open(in_folder("s.json"), &beside);
        if (!made || write(ends[1], beside.path, sizeof beside.path) < 0) _exit(1);
        _exit(0);
    }
    int status = 1;
    CHECK(waitpid(child, &status, 0) == child && status == 0);
    CHECK(read(ends[0], beside.path, sizeof beside.path) > 0);
    snprintf(name, room, "%.299s", beside.path);
    close(ends[0]);
    close(ends[1]);
    CHECK(access(name, F_OK) == 0);
}

static void the_next_save_sweeps(void) {
    char left[300], log[320];
    bw_error error;
    leave(false, left, sizeof left);
    snprintf(log, sizeof log, "%s-wal", left);
    put(log, 0600);
    CHECK_INT(count_files(), 2);
    CHECK_INT(bw_file_save(in_folder("other.json"), "{}", 2, &error), BW_OK);
    CHECK(access(left, F_OK) != 0 && access(log, F_OK) != 0);
    CHECK_INT(count_files(), 1);
    unlink(in_folder("other.json"));
}

static void what_is_in_use_stays(void) {
    bw_beside beside;
    CHECK(bw_beside_open(in_folder("s.json"), &beside));
    struct stat about;
    CHECK(stat(beside.path, &about) == 0 && (about.st_mode & 0777) == 0600);
    bw_beside_sweep(folder);
    CHECK(access(beside.path, F_OK) == 0);
    const pid_t child = fork(); // another program neither
    if (child == 0) {
        close(beside.file);
        bw_beside_sweep(folder);
        _exit(access(beside.path, F_OK) == 0 ? 0 : 1);
    }
    int status = 1;
    CHECK(waitpid(child, &status, 0) == child && status == 0);
    CHECK(bw_beside_close(&beside));
    CHECK_INT(count_files(), 0);
}

/// Other names, files that others may read, links and folders: none of them is ours.
static void a_coachs_file_is_never_touched(void) {
    put(in_folder("b.team.AbCdEf"), 0600);
    put(in_folder("breakwater-AbCdEf"), 0600);
    put(in_folder("b.team.breakwater-AbCdE"), 0600);
    put(in_folder("b.team.breakwater-AbCd.f"), 0600);
    put(in_folder("b.team.breakwater-AbCdEf.team"), 0600);
    put(in_folder("mine.breakwater-season"), 0644);
    CHECK(symlink("b.team.AbCdEf", in_folder("s.json.breakwater-linked")) == 0);
    put(in_folder("two"), 0600);
    CHECK(link(in_folder("two"), in_folder("two.breakwater-linked")) == 0);
    CHECK(mkdir(in_folder("f.breakwater-folder"), 0700) == 0);
    CHECK(mkfifo(in_folder("p.breakwater-pipe00"), 0600) == 0);
    const int before = count_files();
    bw_beside_sweep(folder);
    CHECK_INT(count_files(), before);
    rmdir(in_folder("f.breakwater-folder"));
    DIR *listing = opendir(folder);
    for (const struct dirent *entry; listing && (entry = readdir(listing));)
        if (entry->d_name[0] != '.') unlink(in_folder(entry->d_name));
    if (listing) closedir(listing);
}

static void folders_are_swept_with_what_is_in_them(void) {
    char left[300], page[320];
    bw_beside beside;
    CHECK(setenv("TMPDIR", folder, 1) == 0);
    leave(true, left, sizeof left);
    snprintf(page, sizeof page, "%s/pages.pdf", left);
    put(page, 0600);
    CHECK(bw_beside_folder(&beside));
    CHECK(access(left, F_OK) != 0 && access(beside.path, F_OK) == 0);
    bw_beside_sweep(folder);
    CHECK(access(beside.path, F_OK) == 0);
    CHECK(bw_beside_close(&beside));
    CHECK_INT(count_files(), 0);
    unsetenv("TMPDIR");
}

static mode_t mode_of(const char *path) {
    struct stat about;
    CHECK(stat(path, &about) == 0);
    return about.st_mode & 0777;
}

/// A file that is there keeps its mode, unless the umask says that nobody else is to read what we write.
static void modes_are_the_owners_choice(void) {
    bw_error error;
    const char *path = in_folder("m.json");
    const mode_t usual = umask(022);
    CHECK_INT(bw_file_save(path, "{}", 2, &error), BW_OK);
    CHECK_INT(mode_of(path), 0644);
    CHECK(chmod(path, 0664) == 0);
    CHECK_INT(bw_file_save(path, "{}", 2, &error), BW_OK);
    CHECK_INT(mode_of(path), 0664);
    umask(077);
    CHECK_INT(bw_file_save(path, "{}", 2, &error), BW_OK);
    CHECK_INT(mode_of(path), 0600);
    umask(usual);
    unlink(path);
}

int main(int argc, char **argv) {
    test_name = "main";
    CHECK(mkdtemp(folder) != NULL);
    RUN(the_next_save_sweeps);
    RUN(what_is_in_use_stays);
    RUN(a_coachs_file_is_never_touched);
    RUN(folders_are_swept_with_what_is_in_them);
    RUN(modes_are_the_owners_choice);
    rmdir(folder);
    return test_report(argc, argv);
}
