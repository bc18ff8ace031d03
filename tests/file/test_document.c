/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Files: what cannot be a scheme is refused soon, in words, and without being read whole; what is
/// saved is there whole or not at all.
#include "harness.h"
#include "scheme_text.h"
#include <dirent.h>
#include <errno.h>
#include <fcntl.h>
#include <signal.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <time.h>
#include <unistd.h>

/// Seconds of the processor that a refusal may take, with sanitizers on and the machine busy.
static const double soon = 0.1;

static char folder[] = "/tmp/breakwater-XXXXXX";
static bw_scheme scheme;
static bw_error error;

static const char *in_folder(const char *name) {
    static char path[256];
    snprintf(path, sizeof path, "%s/%s", folder, name);
    return path;
}

static void put_file(const char *name, const char *text, size_t length) {
    FILE *out = fopen(in_folder(name), "wb");
    CHECK(out && fwrite(text, 1, length, out) == length);
    if (out) fclose(out);
}

static int files_in_folder(void) {
    DIR *listing = opendir(folder);
    int count = 0;
    for (const struct dirent *entry; listing && (entry = readdir(listing));)
        count += entry->d_name[0] != '.';
    if (listing) closedir(listing);
    return count;
}

/// Loads three times; the quickest counts, for a test must not fail because others are busy.
static void refuses(const char *path, bw_status status, const char *words) {
    double best = 1e9;
    for (int i = 0; i < 3; i++) {
        bw_source source = {(char *)words, 1};
        const clock_t began = clock();
        CHECK_INT(bw_document_load(path, &scheme, &source, &error), status);
        const double took = (double)(clock() - began) / CLOCKS_PER_SEC;
        if (took < best) best = took;
        CHECK(source.text == NULL && source.length == 0);
    }
    CHECK(best < soon);
    CHECK_INT(error.status, status);
    CHECK(strstr(error.message, words) != NULL);
    if (!strstr(error.message, words)) fprintf(stderr, "  it says: %s\n", error.message);
}

static void what_is_no_file(void) {
    refuses(folder, BW_BAD_INPUT, "this is a folder");
    refuses(in_folder("missing.json"), BW_FILE, "it cannot be read: No such file");
    refuses("/dev/zero", BW_FILE, "this is a device");
    put_file("locked.json", "{}", 2);
    chmod(in_folder("locked.json"), 0);
    if (geteuid() != 0) refuses(in_folder("locked.json"), BW_FILE, "Permission denied");
    unlink(in_folder("locked.json"));
}

static void what_is_no_scheme(void) {
    put_file("empty.json", "", 0);
    refuses(in_folder("empty.json"), BW_BAD_INPUT, "the file is empty");
    unlink(in_folder("empty.json"));

    size_t length;
    char *terns = text_of_file("examples/terns.json", &length);
    put_file("cut.json", terns, length / 2);
    refuses(in_folder("cut.json"), BW_BAD_INPUT, "ends before it is whole");
    unlink(in_folder("cut.json"));
    free(terns);
}

/// `size` bytes of a pattern, as a file.
static void flood(const char *pattern, size_t size, bw_status status, const char *words) {
    char *text = malloc(size);
    const size_t n = pattern[0] ? strlen(pattern) : 1; // "" stands for NUL bytes
    for (size_t i = 0; text && i < size; i++)
        text[i] = pattern[i % n];
    put_file("flood.json", text, size);
    free(text);
    refuses(in_folder("flood.json"), status, words);
    unlink(in_folder("flood.json"));
}

/// By its first bytes, even where it is too large to be a scheme.
static void what_is_a_picture(void) {
    static const struct {
        const char *bytes;
        size_t length;
        const char *words;
    } files[] = {
        {"\x89PNG\r\n\x1a\n....", 12, "this is a picture (PNG), not a scheme"},
        {"\xff\xd8\xff\xe0..", 6, "this is a picture (JPEG)"},
        {"GIF89a..", 8, "this is a picture (GIF)"},
        {"RIFF....WEBPVP8 ", 16, "this is a picture (WebP)"},
        {"%PDF-1.7\n", 9, "this is a PDF"},
        {"SQLite format 3", 16, "this is a database, as a team file is"},
        {"PK\x03\x04....", 8, "this is a packed file"},
    };
    static char large[BW_DOCUMENT_BYTES + 100];
    for (int i = 0; i < BW_COUNT(files); i++) {
        for (int size = 0; size < 2; size++) {
            bw_source source;
            memcpy(large, files[i].bytes, files[i].length);
            put_file("picture", large, size ? sizeof large : files[i].length);
            CHECK_INT(bw_document_load(in_folder("picture"), &scheme, &source, &error),
                      BW_BAD_INPUT);
            CHECK(strstr(error.message, files[i].words) == error.message);
        }
    }
    put_file("picture", "RIFF....WAVE", 12);
    bw_source source;
    CHECK_INT(bw_document_load(in_folder("picture"), &scheme, &source, &error), BW_BAD_INPUT);
    CHECK(!strstr(error.message, "picture"));
    unlink(in_folder("picture"));
}

static void what_is_too_much(void) {
    const size_t twenty = (size_t)20 << 20, one = BW_DOCUMENT_BYTES;
    flood("[", twenty, BW_LIMIT, "larger than a scheme can be");
    flood("[", one, BW_LIMIT, "more values than a scheme");
    flood("[{},", one, BW_LIMIT, "more values than a scheme");
    flood("{\"a\":", one, BW_LIMIT, "more values than a scheme");
    flood(" ", one, BW_BAD_INPUT, "ends before it is whole");
    flood("\"", one, BW_BAD_INPUT, "something follows");
    flood("\\", one, BW_BAD_INPUT, "this is not JSON");
    flood("\xff", one, BW_BAD_INPUT, "not UTF-8");
    flood("", one, BW_BAD_INPUT, "a NUL byte");
    flood("[[[[[[[[[[[[1,1,1,1,1,1,1,1,1]]]]]]]]]]]]", 41, BW_BAD_INPUT, "it must be a scheme");
}

/// Standard input that never ends: the program stops listening after a megabyte.
static void no_more_than_a_megabyte_is_read(void) {
    int count[2], flow[2];
    CHECK(pipe(flow) == 0 && pipe(count) == 0);
    fflush(NULL);
    const pid_t child = fork();
    if (child == 0) {
        char block[4096];
        memset(block, '[', sizeof block);
        signal(SIGPIPE, SIG_IGN);
        close(flow[0]);
        long written = 0;
        for (ssize_t n; (n = write(flow[1], block, sizeof block)) > 0;)
            written += n;
        _exit(write(count[1], &written, sizeof written) == sizeof written ? 0 : 1);
    }
    const int usual = dup(STDIN_FILENO);
    CHECK(dup2(flow[0], STDIN_FILENO) == STDIN_FILENO);
    close(flow[0]);
    close(flow[1]);
    bw_source source;
    CHECK_INT(bw_document_load("-", &scheme, &source, &error), BW_LIMIT);
    close(STDIN_FILENO); // nobody reads on
    long written = 0;
    CHECK(read(count[0], &written, sizeof written) == sizeof written);
    waitpid(child, NULL, 0);
    if (usual >= 0) dup2(usual, STDIN_FILENO);
    close(usual);
    close(count[0]);
    close(count[1]);
    const long in_the_pipe = 128 * 1024; // what the kernel holds and was never read, generously
    CHECK(written >= BW_DOCUMENT_BYTES && written <= BW_DOCUMENT_BYTES + in_the_pipe);
}

/// Nobody writes to it, and nobody waits for that.
static void a_pipe_is_no_file(void) {
    CHECK(mkfifo(in_folder("pipe"), 0600) == 0);
    refuses(in_folder("pipe"), BW_FILE, "this is a pipe");
    unlink(in_folder("pipe"));
}

static void what_is_saved_comes_back(void) {
    size_t length;
    char *terns = text_of_file("examples/terns.json", &length);
    CHECK_INT(bw_document_parse(terns, length, &scheme, &error), BW_OK);
    CHECK_INT(bw_document_save(in_folder("terns.json"), &scheme, &error), BW_OK);
    bw_source source;
    CHECK_INT(bw_document_load(in_folder("terns.json"), &scheme, &source, &error), BW_OK);
    CHECK_INT(source.length, length);
    CHECK(source.length == length && memcmp(source.text, terns, length) == 0);
    bw_source_drop(&source);
    CHECK(source.text == NULL);
    CHECK_INT(files_in_folder(), 1);
    unlink(in_folder("terns.json"));
    free(terns);
}

static void a_failed_save_leaves_nothing(void) {
    CHECK_INT(bw_file_save(in_folder("no/such/file.json"), "x", 1, &error), BW_FILE);
    CHECK(strstr(error.message, "it cannot be written: ") != NULL);
    CHECK_INT(bw_file_save(folder, "x", 1, &error), BW_FILE);
    CHECK(strstr(error.message, "Is a directory") != NULL);
    CHECK_INT(files_in_folder(), 0);
}

/// The disk is full: the old file is as it was, and nothing lies beside it.
static void half_a_save_is_none(void) {
    char long_text[1000] = {0};
    struct rlimit before, little;
    const char *path = in_folder("old");
    CHECK_INT(bw_file_save(path, "old", 3, &error), BW_OK);
    CHECK(getrlimit(RLIMIT_FSIZE, &before) == 0);
    little = before;
    little.rlim_cur = sizeof long_text / 2;
    void (*handler)(int) = signal(SIGXFSZ, SIG_IGN);
    CHECK(setrlimit(RLIMIT_FSIZE, &little) == 0);
    CHECK_INT(bw_file_save(path, long_text, sizeof long_text, &error), BW_FILE);
    CHECK(setrlimit(RLIMIT_FSIZE, &before) == 0);
    signal(SIGXFSZ, handler);
    CHECK(strstr(error.message, "it cannot be written: ") != NULL);
    struct stat about;
    CHECK(stat(path, &about) == 0 && about.st_size == 3);
    CHECK_INT(files_in_folder(), 1);
    unlink(path);
}

static mode_t mode_of(const char *path) {
    struct stat about;
    return stat(path, &about) == 0 ? about.st_mode & 0777 : 0;
}

static void a_save_keeps_the_mode(void) {
    const mode_t before = umask(022);
    const char *path = in_folder("mode");
    CHECK_INT(bw_file_save(path, "one", 3, &error), BW_OK);
    CHECK_INT(mode_of(path), 0644);
    chmod(path, 0640);
    CHECK_INT(bw_file_save(path, "two", 3, &error), BW_OK);
    CHECK_INT(mode_of(path), 0640);
    umask(before);
    unlink(path);
}

static void a_link_goes_on_pointing(void) {
    char target[256], link[256];
    struct stat about;
    snprintf(target, sizeof target, "%s", in_folder("target"));
    snprintf(link, sizeof link, "%s", in_folder("link"));
    CHECK_INT(bw_file_save(target, "one", 3, &error), BW_OK);
    CHECK(symlink(target, link) == 0);
    CHECK_INT(bw_file_save(link, "other", 5, &error), BW_OK);
    CHECK(lstat(link, &about) == 0 && S_ISLNK(about.st_mode));
    CHECK(stat(target, &about) == 0 && about.st_size == 5);
    unlink(link);
    unlink(target);
}

static void a_pipe_is_written_through(void) {
    const char *path = in_folder("pipe");
    struct stat about;
    char got[8] = "";
    CHECK(mkfifo(path, 0600) == 0);
    const int listener = open(path, O_RDONLY | O_NONBLOCK);
    CHECK_INT(bw_file_save(path, "hello", 5, &error), BW_OK);
    CHECK(stat(path, &about) == 0 && S_ISFIFO(about.st_mode));
    CHECK_INT(read(listener, got, sizeof got - 1), 5);
    CHECK_TEXT(got, "hello");
    close(listener);
    unlink(path);
    CHECK_INT(files_in_folder(), 0);
}

int main(int argc, char **argv) {
    if (!mkdtemp(folder)) return 1;
    RUN(what_is_no_file);
    RUN(what_is_no_scheme);
    RUN(what_is_a_picture);
    RUN(what_is_too_much);
    RUN(no_more_than_a_megabyte_is_read);
    RUN(a_pipe_is_no_file);
    RUN(what_is_saved_comes_back);
    RUN(a_failed_save_leaves_nothing);
    RUN(half_a_save_is_none);
    RUN(a_save_keeps_the_mode);
    RUN(a_link_goes_on_pointing);
    RUN(a_pipe_is_written_through);
    rmdir(folder);
    return test_report(argc, argv);
}
