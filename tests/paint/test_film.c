/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Films read back with libav: frames, length, colours; the same bytes every time; whole or not there.
#include "core/text.h"
#include "draw/lesson/lesson_film.h"
#include "draw/path.h"
#include "harness.h"
#include "paint/film/film.h"
#include "paint/film/film_palette.h"

#include <dirent.h>
#include <libavcodec/avcodec.h>
#include <libavformat/avformat.h>
#include <libavutil/pixdesc.h>
#include <stdlib.h>
#include <unistd.h>

enum { FRAMES = 60, RATE = 25, WIDTH = 320, HEIGHT = 180 };

static bw_fonts *fonts;
static char folder[200];
static char why_data[400];
static bw_text why;
static atomic_bool cancel;
static int cancel_at; ///< frame after which the listener cancels

static const char *in_folder(const char *name) {
    static char path[4][300];
    static int turn;
    turn = (turn + 1) % 4;
    snprintf(path[turn], sizeof path[turn], "%s/%s", folder, name);
    return path[turn];
}

static int files_in_folder(void) {
    DIR *dir = opendir(folder);
    int count = 0;
    for (struct dirent *entry; dir && (entry = readdir(dir));)
        count += entry->d_name[0] != '.';
    if (dir) closedir(dir);
    return count;
}

/// A ball going across; it stands for the last ten frames.
static bw_status page(const void *self, int frame, bw_ink *ink) {
    (void)self;
    const int at = frame < FRAMES - 10 ? frame : FRAMES - 10;
    bw_ink_page(ink, 160, 90);
    bw_ink_fill(ink, BW_ROLE_PAPER);
    bw_path_rect(ink, 0, 0, 160, 90);
    bw_ink_fill(ink, BW_ROLE_BALL);
    bw_path_circle(ink, bw_v(10 + 2 * at, 45), 8);
    bw_ink_text(ink, BW_ROLE_TEXT, BW_BOLD, 12, BW_CENTRE_ALIGN, 80, 80, "Harbour");
    return (bw_status)ink->status;
}

static void listen(void *self, int done, int frames) {
    int *told = self;
    CHECK_INT(done, *told + 1);
    CHECK_INT(frames, FRAMES);
    *told = done;
    if (done == cancel_at) atomic_store(&cancel, true);
}

static bw_film some_film(void) {
    return (bw_film){.frames = FRAMES,
                     .rate = RATE,
                     .width = WIDTH,
                     .page = page,
                     .theme = bw_theme_at(BW_THEME_CHART),
                     .fonts = fonts};
}

/// What is in a file, by decoding all of it.
typedef struct contents {
    int frames;
    double seconds;
    AVCodecParameters *about;
    uint32_t middle; ///< Y, U and V in the middle of the ball of the first frame
} contents;

static void decode(AVFormatContext *format, AVCodecContext *decoder, contents *out) {
    AVPacket *packet = av_packet_alloc();
    AVFrame *frame = av_frame_alloc();
    for (int more = 1; more;) {
        more = av_read_frame(format, packet) >= 0;
        avcodec_send_packet(decoder, more ? packet : NULL);
        av_packet_unref(packet);
        while (avcodec_receive_frame(decoder, frame) >= 0) {
            const int x = 20, y = 90;
            if (out->frames++ == 0 && frame->format == AV_PIX_FMT_YUV420P)
                out->middle = (uint32_t)frame->data[0][y * frame->linesize[0] + x] << 16 |
                              (uint32_t)frame->data[1][y / 2 * frame->linesize[1] + x / 2] << 8 |
                              frame->data[2][y / 2 * frame->linesize[2] + x / 2];
        }
    }
    av_packet_free(&packet);
    av_frame_free(&frame);
}

static contents read_film(const char *path) {
    contents out = {0};
    AVFormatContext *format = NULL;
    CHECK_INT(avformat_open_input(&format, path, NULL, NULL), 0);
    if (!format) return out;
    CHECK(avformat_find_stream_info(format, NULL) >= 0);
    CHECK_INT(format->nb_streams, 1);
    const AVStream *stream = format->streams[0];
    const AVCodec *codec = avcodec_find_decoder(stream->codecpar->codec_id);
    AVCodecContext *decoder = avcodec_alloc_context3(codec);
    avcodec_parameters_to_context(decoder, stream->codecpar);
    CHECK_INT(avcodec_open2(decoder, codec, NULL), 0);
    decode(format, decoder, &out);
    out.seconds = (double)format->duration / AV_TIME_BASE;
    out.about = avcodec_parameters_alloc();
    avcodec_parameters_copy(out.about, stream->codecpar);
    avcodec_free_context(&decoder);
    avformat_close_input(&format);
    return out;
}

static int near(uint32_t a, uint32_t b, int shift, int most) {
    return abs((int)(a >> shift & 255) - (int)(b >> shift & 255)) <= most;
}

/// Limited-range BT.709 by the formula of Recommendation ITU-R BT.709, in floating point.
static uint32_t bt709(uint32_t colour) {
    const double r = (colour >> 16 & 255) / 255.0, g = (colour >> 8 & 255) / 255.0;
    const double b = (colour & 255) / 255.0, y = 0.2126 * r + 0.7152 * g + 0.0722 * b;
    const int luma = (int)(16 + 219 * y + 0.5), blue = (int)(128 + 224 * (b - y) / 1.8556 + 0.5),
              red = (int)(128 + 224 * (r - y) / 1.5748 + 0.5);
    return (uint32_t)luma << 16 | (uint32_t)blue << 8 | (uint32_t)red;
}

static void check_video(const char *path, enum AVCodecID codec) {
    contents film = read_film(path);
    CHECK_INT(film.frames, FRAMES);
    CHECK_NEAR(film.seconds, (double)FRAMES / RATE, 0.001);
    if (!film.about) return;
    CHECK_INT(film.about->codec_id, codec);
    CHECK_INT(film.about->width, WIDTH);
    CHECK_INT(film.about->height, HEIGHT);
    if (codec != AV_CODEC_ID_GIF) {
        CHECK_INT(film.about->color_space, AVCOL_SPC_BT709);
        CHECK_INT(film.about->color_primaries, AVCOL_PRI_BT709);
        CHECK_INT(film.about->color_trc, AVCOL_TRC_BT709);
        CHECK_INT(film.about->color_range, AVCOL_RANGE_MPEG);
        const uint32_t want = bt709(bw_theme_at(BW_THEME_CHART)->colour[BW_ROLE_BALL]);
        CHECK(near(film.middle, want, 16, 6));
        CHECK(near(film.middle, want, 8, 6) && near(film.middle, want, 0, 6));
    }
    avcodec_parameters_free(&film.about);
}

static void reads_back(void) {
    bw_film film = some_film();
    int told = 0;
    film.progress = listen;
    film.listener = &told;
    film.paths[BW_FILM_MP4] = in_folder("a.mp4");
    film.paths[BW_FILM_WEBM] = in_folder("a.webm");
    film.paths[BW_FILM_GIF] = in_folder("a.gif");
    CHECK_INT(bw_film_make(&film, &why), BW_OK);
    CHECK_INT(told, FRAMES);
    check_video(film.paths[BW_FILM_MP4], AV_CODEC_ID_H264);
    check_video(film.paths[BW_FILM_WEBM], AV_CODEC_ID_VP9);
    check_video(film.paths[BW_FILM_GIF], AV_CODEC_ID_GIF);
    CHECK_INT(files_in_folder(), 3);
}

static size_t read_all(const char *path, char *data, size_t room) {
    FILE *file = fopen(path, "rb");
    const size_t size = file ? fread(data, 1, room, file) : 0;
    if (file) fclose(file);
    return size;
}

/// Alone or beside others: the bytes of `reads_back`.
static void gives_the_same_bytes(void) {
    enum { ROOM = 1 << 22 };
    static const char *const names[2][BW_FILM_KINDS] = {{"a.mp4", "a.webm", "a.gif"},
                                                        {"b.mp4", "b.webm", "b.gif"}};
    char *a = malloc(ROOM), *b = malloc(ROOM);
    for (int kind = 0; kind < BW_FILM_KINDS; kind++) {
        bw_film film = some_film();
        film.paths[kind] = in_folder(names[1][kind]);
        CHECK_INT(bw_film_make(&film, &why), BW_OK);
        const size_t length = read_all(in_folder(names[0][kind]), a, ROOM);
        CHECK(length > 1000 && length < ROOM);
        CHECK_INT(read_all(film.paths[kind], b, ROOM), length);
        CHECK(memcmp(a, b, length) == 0);
        unlink(film.paths[kind]);
        unlink(in_folder(names[0][kind]));
    }
    free(a);
    free(b);
}

/// The head of the file comes before its pictures, so that it plays while it is still coming.
static void starts_fast(void) {
    char data[4096];
    bw_film film = some_film();
    film.paths[BW_FILM_MP4] = in_folder("c.mp4");
    CHECK_INT(bw_film_make(&film, &why), BW_OK);
    const size_t length = read_all(film.paths[BW_FILM_MP4], data, sizeof data);
    size_t moov = 0, mdat = 0;
    for (size_t i = 0; i + 4 <= length; i++) {
        if (memcmp(data + i, "moov", 4) == 0 && !moov) moov = i;
        if (memcmp(data + i, "mdat", 4) == 0 && !mdat) mdat = i;
    }
    CHECK(moov > 0 && (mdat == 0 || moov < mdat));
    unlink(film.paths[BW_FILM_MP4]);
}

static void cancelling_leaves_nothing(void) {
    bw_film film = some_film();
    int told = 0;
    film.progress = listen;
    film.listener = &told;
    film.cancel = &cancel;
    cancel_at = 20;
    film.paths[BW_FILM_MP4] = in_folder("d.mp4");
    film.paths[BW_FILM_WEBM] = in_folder("d.webm");
    film.paths[BW_FILM_GIF] = in_folder("d.gif");
    CHECK_INT(bw_film_make(&film, &why), BW_LIMIT);
    CHECK_INT(told, cancel_at);
    CHECK_INT(files_in_folder(), 0);
    cancel_at = 0;
    atomic_store(&cancel, false);
}

static void check_refused(bw_film film, bw_status want, const char *words) {
    why = bw_text_in(why_data, sizeof why_data);
    CHECK_INT(bw_film_make(&film, &why), want);
    CHECK(strstr(why_data, words) != NULL);
    CHECK_INT(files_in_folder(), 0);
}

static bw_status strange_letter(const void *self, int frame, bw_ink *ink) {
    const bw_status status = page(self, frame, ink);
    if (frame == 30)
        bw_ink_text(ink, BW_ROLE_TEXT, BW_BOLD, 12, BW_LEFT_ALIGN, 5, 20, "\xE6\xB5\xB7");
    return status;
}

static void refuses_in_words(void) {
    bw_film film = some_film();
    film.paths[BW_FILM_MP4] = in_folder("e.mp4");
    film.width = 321;
    check_refused(film, BW_BAD_INPUT, "even number of pixels");
    film.width = 99999;
    check_refused(film, BW_BAD_INPUT, "between 160 and 1920");
    film.width = WIDTH;
    film.rate = 30;
    check_refused(film, BW_BAD_INPUT, "10, 20, 25 or 50");
    film.rate = RATE;
    film.page = strange_letter;
    check_refused(film, BW_BAD_INPUT, "no letter");
    film.page = page;
    film.paths[BW_FILM_MP4] = in_folder("nowhere/e.mp4");
    check_refused(film, BW_FILE, "nowhere/e.mp4");
}

/// A theme's own colours come out of a GIF as they are.
static void palette_keeps_the_theme(void) {
    static bw_palette palette;
    for (int t = 0; t < BW_THEME_COUNT; t++) {
        const bw_theme *theme = bw_theme_at((bw_theme_id)t);
        bw_palette_build(theme, &palette);
        CHECK(palette.count > 1 && palette.count <= BW_PALETTE);
        for (int role = 0; role < BW_ROLE_COUNT; role++) {
            const uint32_t got = palette.colour[bw_palette_of(&palette, theme->colour[role])];
            for (int shift = 0; shift < 24; shift += 8)
                CHECK(near(got, theme->colour[role], shift, 8));
        }
    }
}

int main(int argc, char **argv) {
    why = bw_text_in(why_data, sizeof why_data);
    snprintf(folder, sizeof folder, "/tmp/bw-film-XXXXXX");
    fonts = bw_fonts_open(&why);
    CHECK(fonts != NULL && mkdtemp(folder) != NULL);
    if (fonts) {
        RUN(reads_back);
        RUN(gives_the_same_bytes);
        RUN(starts_fast);
        RUN(cancelling_leaves_nothing);
        RUN(refuses_in_words);
        RUN(palette_keeps_the_theme);
        bw_fonts_close(fonts);
    }
    rmdir(folder);
    return test_report(argc, argv);
}
