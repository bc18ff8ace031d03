/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/film/film_library.h"

#include <dlfcn.h>
#include <pthread.h>
#include <string.h>

#define TEXT_OF(number) #number
#define SHARED(name, major) "lib" name ".so." TEXT_OF(major)

static bw_libav functions;
static const char *missing; ///< the library or function that is not there, NULL when all are
static pthread_once_t once = PTHREAD_ONCE_INIT;

/// The address of a function into *slot. ISO C has no cast from an object's address to a function's;
/// POSIX lets the bytes be copied.
static void find(void *library, const char *name, void *slot) {
    void *const address = library ? dlsym(library, name) : NULL;
    memcpy(slot, &address, sizeof address);
    if (!address && !missing) missing = name;
}

static void *open_library(const char *name) {
    void *const library = dlopen(name, RTLD_LAZY | RTLD_LOCAL);
    if (!library && !missing) missing = name;
    return library;
}

static void load(void) {
    void *library;
#define BW_X(name) find(library, #name, &functions.name);
    library = open_library(SHARED("avutil", LIBAVUTIL_VERSION_MAJOR));
    BW_AVUTIL_MAP(BW_X)
    library = open_library(SHARED("avcodec", LIBAVCODEC_VERSION_MAJOR));
    BW_AVCODEC_MAP(BW_X)
    library = open_library(SHARED("avformat", LIBAVFORMAT_VERSION_MAJOR));
    BW_AVFORMAT_MAP(BW_X)
    library = open_library(SHARED("swscale", LIBSWSCALE_VERSION_MAJOR));
    BW_SWSCALE_MAP(BW_X)
#undef BW_X
    if (!missing) functions.av_log_set_level(AV_LOG_QUIET); // what goes wrong is said by us
}

const bw_libav *bw_libav_load(bw_text *why) {
    pthread_once(&once, load);
    if (!missing) return &functions;
    bw_put(why, "Films need libav, and ");
    bw_put(why, missing);
    bw_put(why, " is not there; `make setup` installs it on Debian 12.");
    return NULL;
}
