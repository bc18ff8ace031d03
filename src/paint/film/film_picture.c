/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Video gets BT.709 in limited range with halved colour; a GIF a smaller picture in the palette.
#include "paint/film/film_picture.h"
#include "paint/film/film_library.h"
#include "paint/film/film_palette.h"

#include <stdlib.h>

/// Every way through swscale that gives the same bits on every machine.
enum { EXACT = SWS_AREA | SWS_BITEXACT | SWS_ACCURATE_RND };

struct bw_film_picture {
    const bw_libav *av;
    int width, height;
    uint32_t *pixels;
    struct SwsContext *to_video, *to_small; ///< NULL where not wanted
    AVFrame *video, *gif;
    uint32_t *small; ///< a GIF's picture before its colours are looked up
    bw_palette *palette;
};

static AVFrame *new_frame(const bw_libav *av, int width, int height, enum AVPixelFormat format) {
    AVFrame *frame = av->av_frame_alloc();
    if (!frame) return NULL;
    frame->width = width;
    frame->height = height;
    frame->format = format;
    if (av->av_frame_get_buffer(frame, 0) < 0) av->av_frame_free(&frame);
    return frame;
}

static bool open_video(bw_film_picture *p) {
    const int *table = p->av->sws_getCoefficients(SWS_CS_ITU709);
    p->video = new_frame(p->av, p->width, p->height, AV_PIX_FMT_YUV420P);
    p->to_video = p->av->sws_getContext(p->width, p->height, AV_PIX_FMT_0RGB32, p->width, p->height,
                                        AV_PIX_FMT_YUV420P, EXACT, NULL, NULL, NULL);
    return p->video && p->to_video &&
           p->av->sws_setColorspaceDetails(p->to_video, table, 1, table, 0, 0, 1 << 16, 1 << 16) >=
               0;
}

static bool open_gif(bw_film_picture *p, const bw_theme *theme) {
    const int width = p->width < BW_FILM_GIF_WIDTH ? p->width : BW_FILM_GIF_WIDTH;
    const int height = p->height * width / p->width;
    p->gif = new_frame(p->av, width, height, AV_PIX_FMT_PAL8);
    p->to_small = p->av->sws_getContext(p->width, p->height, AV_PIX_FMT_0RGB32, width, height,
                                        AV_PIX_FMT_0RGB32, EXACT, NULL, NULL, NULL);
    p->small = malloc(sizeof *p->small * (size_t)width * (size_t)height);
    p->palette = malloc(sizeof *p->palette);
    if (p->palette) bw_palette_build(theme, p->palette);
    return p->gif && p->to_small && p->small && p->palette;
}

bw_film_picture *bw_film_picture_open(int width, int height, const bw_theme *theme,
                                      const bool wanted[BW_FILM_KINDS], bw_text *why) {
    const bw_libav *av = bw_libav_load(why);
    if (!av) return NULL;
    bw_film_picture *p = calloc(1, sizeof *p);
    bool good = p != NULL;
    if (good) {
        p->av = av;
        p->width = width;
        p->height = height;
        p->pixels = malloc(sizeof *p->pixels * (size_t)width * (size_t)height);
        good = p->pixels != NULL;
    }
    if (good && (wanted[BW_FILM_MP4] || wanted[BW_FILM_WEBM])) good = open_video(p);
    if (good && wanted[BW_FILM_GIF]) good = open_gif(p, theme);
    if (good) return p;
    bw_put(why, BW_NO_MEMORY_SENTENCE);
    bw_film_picture_close(p);
    return NULL;
}

void bw_film_picture_close(bw_film_picture *p) {
    if (!p) return;
    p->av->sws_freeContext(p->to_video);
    p->av->sws_freeContext(p->to_small);
    p->av->av_frame_free(&p->video);
    p->av->av_frame_free(&p->gif);
    free(p->small);
    free(p->palette);
    free(p->pixels);
    free(p);
}

uint32_t *bw_film_picture_pixels(bw_film_picture *p) {
    return p->pixels;
}

static void convert(const bw_film_picture *p, struct SwsContext *scale, uint8_t *const *to,
                    const int *rows) {
    const uint8_t *const from[4] = {(const uint8_t *)p->pixels};
    const int from_rows[4] = {4 * p->width};
    p->av->sws_scale(scale, from, from_rows, 0, p->height, to, rows);
}

static void look_up(bw_film_picture *p) {
    const int width = p->gif->width;
    uint8_t *const to[4] = {(uint8_t *)p->small};
    const int rows[4] = {4 * width};
    convert(p, p->to_small, to, rows);
    memcpy(p->gif->data[1], p->palette->colour, sizeof p->palette->colour);
    for (int y = 0; y < p->gif->height; y++) {
        uint8_t *row = p->gif->data[0] + (ptrdiff_t)y * p->gif->linesize[0];
        for (int x = 0; x < width; x++)
            row[x] = bw_palette_of(p->palette, p->small[y * width + x]);
    }
}

bw_status bw_film_picture_take(bw_film_picture *p, bw_text *why) {
    // An encoder may still hold the last one.
    if ((p->video && p->av->av_frame_make_writable(p->video) < 0) ||
        (p->gif && p->av->av_frame_make_writable(p->gif) < 0)) {
        bw_put(why, BW_NO_MEMORY_SENTENCE);
        return BW_NO_ROOM;
    }
    if (p->video) convert(p, p->to_video, p->video->data, p->video->linesize);
    if (p->gif) look_up(p);
    return BW_OK;
}

AVFrame *bw_film_picture_frame(bw_film_picture *p, bw_film_kind kind) {
    return kind == BW_FILM_GIF ? p->gif : p->video;
}
