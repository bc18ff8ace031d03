/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A program killed while it writes, a disk that is full, several programs at once. What was acknowledged
/// is there afterwards, nothing is there by halves, and the file is sound. (A killed process leaves the
/// system's cache whole: this says nothing of a power cut; synchronous=FULL is there for that.)
#define _XOPEN_SOURCE 700
#include "file/beside.h"
#include "team/backup.h"
#include "team/breaks.h"
#include "team/sql.h"

#include "harness.h"
#include "tests/team/everything.h"
#include "tests/team/scratch.h"
#include <signal.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <time.h>

enum { ROUNDS = 100, BATCH = 3 };

/// Batches of three as fast as it goes; the number of each is told through the pipe once it is stored.
static void write_batches(const char *path, int first, int pipe_end) {
    bw_error error;
    bw_team *team;
    unsigned long long seed = 1;
    const int ready = -1;
    if (bw_team_open(path, BW_TEAM_WRITE, &team, &error) != BW_OK) _exit(1);
    if (write(pipe_end, &ready, sizeof ready) != sizeof ready) _exit(3);
    for (int batch = first;; batch++) {
        bw_entry three[BATCH];
        int added;
        for (int k = 0; k < BATCH; k++)
            three[k] = random_entry(&seed, batch * BATCH + k);
        if (bw_team_add_entries(team, three, BATCH, NULL, &added, &error) != BW_OK) _exit(2);
        if (write(pipe_end, &batch, sizeof batch) != sizeof batch) _exit(3);
    }
}

/// A moment for a kill, within so many milliseconds. No check asks how far the other has come by then.
static void any_moment(unsigned long long *seed, int most_ms) {
    const struct timespec wait = {0, (long)(test_random(seed) % ((unsigned)most_ms * 1000000u))};
    nanosleep(&wait, NULL);
}

/// Which of the entries "test-0" to "test-(count - 1)" are in the file. Also that it is sound.
static void see_which(const char *path, unsigned char *there, int count) {
    bw_error error;
    bw_team *team;
    bw_entry *list = NULL;
    int entries = 0;
    memset(there, 0, (size_t)count);
    CHECK_INT(bw_team_open(path, BW_TEAM_WRITE, &team, &error), BW_OK);
    if (!team) return;
    CHECK_INT(bw_team_verify(team, &error), BW_OK);
    CHECK_INT(bw_team_entries(team, NULL, &list, &entries, &error), BW_OK);
    for (int i = 0; i < entries; i++) {
        const int number = atoi(list[i].client + 5);
        CHECK(number >= 0 && number < count && !there[number]);
        if (number >= 0 && number < count) there[number] = 1;
    }
    free(list);
    bw_team_close(team);
}

static void nothing_acknowledged_is_lost(void) {
    enum { MOST = 400000 };
    static unsigned char there[MOST];
    const char *path = fresh_team("killed.team");
    unsigned long long seed = 99;
    int next = 0, acknowledged = 0, unsaid = 0;
    static char told[MOST / BATCH];
    for (int round = 0; round < ROUNDS; round++) {
        int ends[2], batch;
        CHECK(pipe(ends) == 0);
        const pid_t child = fork();
        if (child == 0) {
            close(ends[0]);
            write_batches(path, next, ends[1]);
        }
        close(ends[1]);
        CHECK(read(ends[0], &batch, sizeof batch) == sizeof batch && batch == -1);
        // So many are stored; where in the next one the kill falls is left to chance.
        for (int k = (int)(test_random(&seed) % 4) + (round == 0); k > 0; k--) {
            CHECK(read(ends[0], &batch, sizeof batch) == sizeof batch);
            told[batch] = 1;
            acknowledged++;
            next = batch + 1;
        }
        any_moment(&seed, 10);
        kill(child, SIGKILL);
        while (read(ends[0], &batch, sizeof batch) == sizeof batch && batch < MOST / BATCH) {
            told[batch] = 1;
            acknowledged++;
            if (batch >= next) next = batch + 1;
        }
        close(ends[0]);
        int status;
        CHECK(waitpid(child, &status, 0) == child);
        CHECK(WIFSIGNALED(status));
        next++; // one may have been stored and not yet told
    }
    see_which(path, there, MOST);
    for (int batch = 0; batch < MOST / BATCH; batch++) {
        const int parts =
            there[batch * BATCH] + there[batch * BATCH + 1] + there[batch * BATCH + 2];
        CHECK(parts == 0 || parts == BATCH);
        CHECK(!told[batch] || parts == BATCH);
        unsaid += parts == BATCH && !told[batch];
    }
    CHECK(acknowledged > 0);
    CHECK(unsaid <= ROUNDS);
    printf("killed %d times: %d batches acknowledged, %d more stored, none lost\n", ROUNDS,
           acknowledged, unsaid);
}

/// Writes until the disk is full: no file of this process may grow beyond `limit` bytes. Exit code 0 when it
/// was told so in words; the number of batches stored goes through the pipe.
static void fill_the_disk(const char *path, rlim_t limit, int pipe_end) {
    bw_error error;
    bw_team *team;
    const struct rlimit most = {limit, limit};
    signal(SIGXFSZ, SIG_IGN);
    if (bw_team_open(path, BW_TEAM_WRITE, &team, &error) != BW_OK) _exit(1);
    if (setrlimit(RLIMIT_FSIZE, &most) != 0) _exit(2);
    unsigned long long seed = 7;
    for (int batch = 0; batch < 100000; batch++) {
        bw_entry three[BATCH];
        int added;
        for (int k = 0; k < BATCH; k++)
            three[k] = random_entry(&seed, batch * BATCH + k);
        const bw_status status = bw_team_add_entries(team, three, BATCH, NULL, &added, &error);
        if (status == BW_OK) {
            if (write(pipe_end, &batch, sizeof batch) != sizeof batch) _exit(3);
            continue;
        }
        // It can still be read, and says the same again.
        if (status != BW_FILE || !strstr(error.message, "full")) _exit(4);
        if (read_everything(team, &error) != BW_OK) _exit(5);
        const struct rlimit less = {50000, limit};
        if (setrlimit(RLIMIT_FSIZE, &less) != 0) _exit(2);
        if (bw_team_backup(team, scratch_path("full-copy.team"), false, &error) == BW_OK) _exit(6);
        _exit(0);
    }
    _exit(7);
}

static void a_full_disk_is_said(void) {
    enum { MOST = 60000 };
    static unsigned char there[MOST];
    for (int k = 0; k < 4; k++) {
        const char *path = fresh_team("full.team");
        int ends[2], batch, stored = 0, status = -1;
        CHECK(pipe(ends) == 0);
        const pid_t child = fork();
        if (child == 0) fill_the_disk(path, 120000 + 30000 * (rlim_t)k, ends[1]);
        close(ends[1]);
        while (read(ends[0], &batch, sizeof batch) == sizeof batch)
            stored++;
        close(ends[0]);
        CHECK(waitpid(child, &status, 0) == child);
        CHECK_INT(WIFEXITED(status) ? WEXITSTATUS(status) : -1, 0);
        see_which(path, there, MOST);
        for (int i = 0; i < MOST; i++)
            CHECK_INT(there[i], i < stored * BATCH);
        CHECK(stored > 0);
    }
    CHECK(access(scratch_path("full-copy.team"), F_OK) != 0);
    scratch_files(1);
}

/// Puts one copy and then the other back over the file, and backs it up, until killed.
static void restore_for_ever(const char *path, const char *const *copies, int pipe_end) {
    bw_error error;
    bw_team *team;
    for (int turn = 0;; turn++) {
        if (bw_team_restore(copies[turn % 2], path, true, &error) != BW_OK) _exit(1);
        if (bw_team_open(path, BW_TEAM_READ, &team, &error) != BW_OK) _exit(2);
        if (bw_team_backup(team, copies[2], true, &error) != BW_OK) _exit(3);
        bw_team_close(team);
        if (turn < 2 && write(pipe_end, &turn, sizeof turn) != sizeof turn) _exit(4);
    }
}

static int entries_in(const char *path) {
    static unsigned char there[100];
    int count = 0;
    see_which(path, there, 100);
    for (int i = 0; i < 100; i++)
        count += there[i];
    return count;
}

static void a_copy_is_put_back_whole(void) {
    static const int sizes[] = {10, 90};
    char paths[3][520];
    const char *const copies[] = {paths[0], paths[1], paths[2]};
    unsigned long long seed = 4;
    bw_error error;
    for (int k = 0; k < 3; k++)
        snprintf(paths[k], sizeof paths[k], "%s", scratch_path(k == 0 ? "a" : k == 1 ? "b" : "c"));
    for (int k = 0; k < 2; k++) {
        bw_team *team = NULL;
        CHECK_INT(bw_team_create(copies[k], &error), BW_OK);
        CHECK_INT(bw_team_open(copies[k], BW_TEAM_WRITE, &team, &error), BW_OK);
        CHECK(fill_everything(team, sizes[k]));
        bw_team_close(team);
    }
    for (int round = 0; round < 25; round++) {
        char path[520];
        int ends[2], turn, status;
        snprintf(path, sizeof path, "%s", scratch_path("restored.team"));
        CHECK(pipe(ends) == 0);
        const pid_t child = fork();
        if (child == 0) restore_for_ever(path, copies, ends[1]);
        close(ends[1]);
        CHECK(read(ends[0], &turn, sizeof turn) == sizeof turn);
        any_moment(&seed, 60);
        kill(child, SIGKILL);
        close(ends[0]);
        CHECK(waitpid(child, &status, 0) == child && WIFSIGNALED(status));
        const int now = entries_in(path), copied = entries_in(copies[2]);
        CHECK(now == sizes[0] || now == sizes[1]);
        CHECK(copied == sizes[0] || copied == sizes[1]);
        CHECK_INT(entries_in(copies[0]), sizes[0]);
    }
    // Whatever the killed ones were at work on, the next one clears away.
    bw_beside_sweep(scratch_folder);
    CHECK(!scratch_has(".breakwater-"));
    scratch_files(1);
}

enum { WRITERS = 4, EACH = 60 };

/// Entries of its own, and ten that every writer has.
static void write_mine(const char *path, int me) {
    bw_error error;
    bw_team *team;
    unsigned long long seed = (unsigned long long)me;
    if (bw_team_open(path, BW_TEAM_WRITE, &team, &error) != BW_OK) _exit(1);
    sqlite3_busy_timeout(team->db, 60000);
    for (int i = 0; i < EACH; i++) {
        const int shared = i % 6 == 0;
        bw_entry e = random_entry(&seed, shared ? i / 6 : 100 + me * EACH + i);
        int added;
        if (bw_team_add_entries(team, &e, 1, NULL, &added, &error) != BW_OK) _exit(2);
        if (e.order == 0) _exit(3);
    }
    bw_team_close(team);
    _exit(0);
}

static void writers_do_not_lose_each_other(void) {
    static unsigned char there[1000];
    const char *path = fresh_team("many.team");
    pid_t child[WRITERS];
    int count = 0;
    for (int k = 0; k < WRITERS; k++) {
        child[k] = fork();
        if (child[k] == 0) write_mine(path, k);
    }
    for (int k = 0; k < WRITERS; k++) {
        int status = -1;
        CHECK(waitpid(child[k], &status, 0) == child[k]);
        CHECK_INT(WIFEXITED(status) ? WEXITSTATUS(status) : -1, 0);
    }
    see_which(path, there, 1000);
    for (int i = 0; i < 1000; i++)
        count += there[i];
    CHECK_INT(count, 10 + WRITERS * (EACH - 10));
    CHECK_INT(scratch_count(), 1);
}

int main(int argc, char **argv) {
    scratch_begin();
    RUN(nothing_acknowledged_is_lost);
    scratch_files(1);
    RUN(a_full_disk_is_said);
    RUN(a_copy_is_put_back_whole);
    RUN(writers_do_not_lose_each_other);
    scratch_end();
    return test_report(argc, argv);
}
