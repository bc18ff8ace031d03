/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Random trials of test mode, hashed to the last bit, ink and words included: the page must find what
/// the native program would. The same walk is taken natively and in WebAssembly.
#ifndef BW_WEB_AGREE_TESTS_H
#define BW_WEB_AGREE_TESTS_H

#include "web/tester.h"

/// Hash of `trials` random small breaks from `seed`, each run in pieces and against another level, with
/// its films and curves. `memory` holds a page of ink.
uint64_t bw_agree_tests(bw_tester *tester, uint32_t seed, int trials, void *memory, size_t size);

/// The same on a tester of its own, for a module in Node. Not for two threads at once.
uint64_t bw_agree_tests_alone(int seed, int trials);

#endif
