/* SPDX-License-Identifier: GPL-3.0-or-later */
/// libav, loaded when the first film is made: linked, its hundred libraries would make every start of
/// the program eight times slower, and without it nothing but films is missing. Private to this room.
#ifndef BW_PAINT_FILM_FILM_LIBRARY_H
#define BW_PAINT_FILM_FILM_LIBRARY_H

#include "core/text.h"

#include <libavcodec/avcodec.h>
#include <libavformat/avformat.h>
#include <libswscale/swscale.h>

/// What is used of it, by library. Their major versions are those of the headers.
#define BW_AVUTIL_MAP(X)                                                                           \
    X(av_strerror)                                                                                 \
    X(av_log_set_level)                                                                            \
    X(av_dict_parse_string)                                                                        \
    X(av_dict_count)                                                                               \
    X(av_dict_free)                                                                                \
    X(av_frame_alloc)                                                                              \
    X(av_frame_free)                                                                               \
    X(av_frame_get_buffer)                                                                         \
    X(av_frame_make_writable)
#define BW_AVCODEC_MAP(X)                                                                          \
    X(avcodec_find_encoder_by_name)                                                                \
    X(avcodec_alloc_context3)                                                                      \
    X(avcodec_free_context)                                                                        \
    X(avcodec_open2)                                                                               \
    X(avcodec_parameters_from_context)                                                             \
    X(avcodec_send_frame)                                                                          \
    X(avcodec_receive_packet)                                                                      \
    X(av_packet_alloc)                                                                             \
    X(av_packet_free)                                                                              \
    X(av_packet_rescale_ts)
#define BW_AVFORMAT_MAP(X)                                                                         \
    X(avformat_alloc_output_context2)                                                              \
    X(avformat_free_context)                                                                       \
    X(avformat_new_stream)                                                                         \
    X(avformat_write_header)                                                                       \
    X(av_interleaved_write_frame)                                                                  \
    X(av_write_trailer)                                                                            \
    X(avio_open)                                                                                   \
    X(avio_closep)
#define BW_SWSCALE_MAP(X)                                                                          \
    X(sws_getContext)                                                                              \
    X(sws_freeContext)                                                                             \
    X(sws_getCoefficients)                                                                         \
    X(sws_setColorspaceDetails)                                                                    \
    X(sws_scale)

/// Its functions under their own names.
typedef struct bw_libav {
#define BW_X(name) __typeof__(name) *(name);
    BW_AVUTIL_MAP(BW_X)
    BW_AVCODEC_MAP(BW_X)
    BW_AVFORMAT_MAP(BW_X)
    BW_SWSCALE_MAP(BW_X)
#undef BW_X
} bw_libav;

/// Loads it once, from any thread; it stays. NULL with one sentence in *why when it is not there.
const bw_libav *bw_libav_load(bw_text *why);

#endif
