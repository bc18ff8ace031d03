/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Feeds every file of a corpus folder to a fuzz target, so that what a fuzzer once found stays found
/// with any compiler. Usage: fuzz_NAME FOLDER...
#include <dirent.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

/// An exact-size block on the heap, so that AddressSanitizer sees a read past the end.
static int run_file(const char *path, size_t size) {
    FILE *file = fopen(path, "rb");
    uint8_t *data = malloc(size ? size : 1);
    const int ok = file && data && fread(data, 1, size, file) == size;
    if (ok) LLVMFuzzerTestOneInput(data, size);
    if (file) fclose(file);
    free(data);
    if (!ok) fprintf(stderr, "%s: cannot be read\n", path);
    return ok;
}

/// Number of files run, or -1.
static int run_folder(const char *folder) {
    DIR *listing = opendir(folder);
    if (!listing) {
        fprintf(stderr, "%s: no such folder\n", folder);
        return -1;
    }
    int files = 0;
    for (const struct dirent *entry; files >= 0 && (entry = readdir(listing));) {
        char path[4096];
        const int length = snprintf(path, sizeof path, "%s/%s", folder, entry->d_name);
        struct stat info;
        if (length >= (int)sizeof path || stat(path, &info) != 0 || !S_ISREG(info.st_mode))
            continue;
        files = run_file(path, (size_t)info.st_size) ? files + 1 : -1;
    }
    closedir(listing);
    return files;
}

int main(int argc, char **argv) {
    int files = 0;
    for (int i = 1; i < argc; i++) {
        const int found = run_folder(argv[i]);
        if (found < 0) return 1;
        files += found;
    }
    printf("%d files\n", files);
    return files > 0 ? 0 : 1;
}
