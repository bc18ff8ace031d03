/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The bytes go into an unnamed file that libav opens by its descriptor's path, so that nothing is left
/// of a film that was not finished. One encoding thread: their number changes the bytes, and films are
/// made side by side anyway.
#include "paint/film/film_stream.h"
#include "paint/film/film_library.h"
#include "paint/whole_file.h"

#include <stdlib.h>

/// How each kind is written. Options are "name=value" pairs of libav's own.
static const struct {
    const char *muxer, *encoder, *options, *muxing;
} kinds[BW_FILM_KINDS] = {
    {"mp4", "libx264", "preset=veryfast:crf=22", "movflags=+faststart"},
    {"webm", "libvpx-vp9", "deadline=realtime:cpu-used=8:crf=30:b=0:lag-in-frames=0", ""},
    {"gif", "gif", "", "loop=0"},
};

struct bw_film_stream {
    const bw_libav *av;
    bw_film_kind kind;
    int rate;
    bw_whole_file file;
    AVFormatContext *format;
    AVCodecContext *encoder;
    AVStream *stream;
    AVPacket *packet;
    int64_t next; ///< number of the next frame
    bool begun;   ///< the header is written
};

static bw_status fail(const bw_film_stream *s, const char *what, int code, bw_text *why) {
    char reason[AV_ERROR_MAX_STRING_SIZE] = "";
    if (code < 0) s->av->av_strerror(code, reason, sizeof reason);
    bw_put(why, "Cannot make ");
    bw_put(why, s->file.path);
    bw_put(why, ": ");
    bw_put(why, what);
    if (reason[0]) {
        bw_put(why, ", ");
        bw_put(why, reason);
    }
    bw_put(why, ".");
    return BW_FILE;
}

static void set_colours(AVCodecContext *encoder) {
    encoder->color_range = AVCOL_RANGE_MPEG;
    encoder->colorspace = AVCOL_SPC_BT709;
    encoder->color_primaries = AVCOL_PRI_BT709;
    encoder->color_trc = AVCOL_TRC_BT709;
}

/// Opens the encoder; options it does not know are a mistake of ours and met as a failure.
static bw_status open_encoder(bw_film_stream *s, const AVFrame *first, bw_text *why) {
    const AVCodec *codec = s->av->avcodec_find_encoder_by_name(kinds[s->kind].encoder);
    s->encoder = codec ? s->av->avcodec_alloc_context3(codec) : NULL;
    if (!s->encoder) return fail(s, "libav has no encoder for it", 0, why);
    AVCodecContext *e = s->encoder;
    e->width = first->width;
    e->height = first->height;
    e->pix_fmt = first->format;
    e->time_base = (AVRational){1, s->rate};
    e->framerate = (AVRational){s->rate, 1};
    e->gop_size = 5 * s->rate; // a jump decodes five seconds at most
    e->thread_count = 1;
    e->flags |= AV_CODEC_FLAG_BITEXACT;
    if (s->format->oformat->flags & AVFMT_GLOBALHEADER) e->flags |= AV_CODEC_FLAG_GLOBAL_HEADER;
    if (s->kind != BW_FILM_GIF) set_colours(e);
    AVDictionary *options = NULL;
    s->av->av_dict_parse_string(&options, kinds[s->kind].options, "=", ":", 0);
    const int code = s->av->avcodec_open2(e, codec, &options);
    const bool known = s->av->av_dict_count(options) == 0;
    s->av->av_dict_free(&options);
    if (code < 0 || !known) return fail(s, "its encoder cannot be opened", code, why);
    return BW_OK;
}

static bw_status open_muxer(bw_film_stream *s, bw_text *why) {
    s->stream = s->av->avformat_new_stream(s->format, NULL);
    if (!s->stream) return fail(s, BW_NO_MEMORY, 0, why);
    s->stream->time_base = s->encoder->time_base;
    s->stream->avg_frame_rate = s->encoder->framerate;
    int code = s->av->avcodec_parameters_from_context(s->stream->codecpar, s->encoder);
    if (code >= 0) code = s->av->avio_open(&s->format->pb, s->format->url, AVIO_FLAG_WRITE);
    if (code < 0) return fail(s, "it cannot be opened", code, why);
    AVDictionary *options = NULL;
    s->av->av_dict_parse_string(&options, kinds[s->kind].muxing, "=", ":", 0);
    code = s->av->avformat_write_header(s->format, &options);
    s->av->av_dict_free(&options);
    if (code < 0) return fail(s, "its head cannot be written", code, why);
    s->begun = true;
    return BW_OK;
}

static bw_status begin(bw_film_stream *s, const AVFrame *first, bw_text *why) {
    char url[48];
    bw_text t = bw_text_in(url, sizeof url);
    bw_put(&t, "/proc/self/fd/");
    bw_put_int(&t, fileno(s->file.stream));
    const int code =
        s->av->avformat_alloc_output_context2(&s->format, NULL, kinds[s->kind].muxer, url);
    if (code < 0) return fail(s, "libav cannot write this kind of file", code, why);
    s->format->flags |= AVFMT_FLAG_BITEXACT;
    s->packet = s->av->av_packet_alloc();
    if (!s->packet) return fail(s, BW_NO_MEMORY, 0, why);
    const bw_status status = open_encoder(s, first, why);
    return status == BW_OK ? open_muxer(s, why) : status;
}

bw_film_stream *bw_film_stream_open(bw_film_kind kind, const char *path, const AVFrame *first,
                                    int rate, bw_text *why) {
    const bw_libav *av = bw_libav_load(why);
    if (!av) return NULL;
    bw_film_stream *s = calloc(1, sizeof *s);
    if (!s) {
        bw_put(why, BW_NO_MEMORY_SENTENCE);
        return NULL;
    }
    s->av = av;
    s->kind = kind;
    s->rate = rate;
    bw_status status = bw_whole_open(&s->file, path, why);
    if (status == BW_OK) status = begin(s, first, why);
    if (status == BW_OK) return s;
    bw_film_stream_close(s, status, why);
    return NULL;
}

/// Sends a frame (NULL: no more come) and writes what the encoder has ready.
static bw_status encode(bw_film_stream *s, const AVFrame *frame, bw_text *why) {
    int code = s->av->avcodec_send_frame(s->encoder, frame);
    while (code >= 0) {
        code = s->av->avcodec_receive_packet(s->encoder, s->packet);
        if (code == AVERROR(EAGAIN) || code == AVERROR_EOF) return BW_OK;
        if (code < 0) break;
        s->packet->duration = 1; // or the last frame has no length
        s->av->av_packet_rescale_ts(s->packet, s->encoder->time_base, s->stream->time_base);
        s->packet->stream_index = s->stream->index;
        code = s->av->av_interleaved_write_frame(s->format, s->packet);
    }
    return fail(s, "a frame cannot be written", code, why);
}

bw_status bw_film_stream_add(bw_film_stream *s, AVFrame *frame, bw_text *why) {
    frame->pts = s->next++;
    return encode(s, frame, why);
}

bw_status bw_film_stream_close(bw_film_stream *s, bw_status status, bw_text *why) {
    if (status == BW_OK) status = encode(s, NULL, why);
    if (s->begun) { // also of a film given up: the muxer frees what it holds
        const int code = s->av->av_write_trailer(s->format);
        if (code < 0 && status == BW_OK) status = fail(s, "its end cannot be written", code, why);
    }
    if (s->format && s->format->pb) {
        const int code = s->av->avio_closep(&s->format->pb);
        if (code < 0 && status == BW_OK) status = fail(s, "it cannot be closed", code, why);
    }
    s->av->avcodec_free_context(&s->encoder);
    s->av->avformat_free_context(s->format);
    s->av->av_packet_free(&s->packet);
    status = bw_whole_close(&s->file, status, why);
    free(s);
    return status;
}
