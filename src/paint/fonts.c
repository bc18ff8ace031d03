/* SPDX-License-Identifier: GPL-3.0-or-later */
/// From bytes in the program to a pango font map. Fontconfig wants files, so each face becomes an
/// anonymous file in memory, named by its descriptor.
///
/// Cairo keeps faces in a cache for the whole process, by that name, long after the map is gone. A
/// descriptor that is closed and numbered again for the other face would be painted from the old one:
/// regular words in bold letters. And two maps with the same name would share cairo's list of a file's
/// faces, which cairo 1.16 walks without a lock. So every set has names of its own, and none is ever
/// given up: a closed set waits, whole, for the next who opens one.
///
/// Nor may cairo open the faces: all its threads share one FreeType library, which FreeType forbids
/// without a lock, and from the tenth open face on it closes one that another thread is about to use.
/// So every set opens its two faces with a library of its own and hands them to cairo, which then
/// neither opens nor closes any.
#define _GNU_SOURCE
#include "paint/fonts.h"

#include "core/base.h"
#include "paint/fonts_pango.h"

#include <fontconfig/fontconfig.h>
#include <pango/pangofc-fontmap.h>
#include <pthread.h>
#include <stdio.h>
#include <stdlib.h>
#include <sys/mman.h>
#include <unistd.h>

extern const unsigned char bw_font_regular[], bw_font_regular_end[];
extern const unsigned char bw_font_bold[], bw_font_bold_end[];

/// The sets nobody has at the moment.
static bw_fonts *idle;
static pthread_mutex_t idle_lock = PTHREAD_MUTEX_INITIALIZER;

const unsigned char *bw_font_file(int bold, size_t *size) {
    const unsigned char *start = bold ? bw_font_bold : bw_font_regular;
    *size = (size_t)((bold ? bw_font_bold_end : bw_font_regular_end) - start);
    return start;
}

/// Adds one face to the configuration as a file. Returns its descriptor, -1 on failure.
static int add_file(FcConfig *config, int bold) {
    size_t size;
    const unsigned char *bytes = bw_font_file(bold, &size);
    const int file = memfd_create("B612", MFD_CLOEXEC);
    if (file < 0) return -1;
    for (size_t done = 0; done < size;) {
        const ssize_t n = write(file, bytes + done, size - done);
        if (n <= 0) {
            close(file);
            return -1;
        }
        done += (size_t)n;
    }
    char path[48];
    snprintf(path, sizeof path, "/proc/self/fd/%d", file);
    if (!FcConfigAppFontAddFile(config, (const FcChar8 *)path)) {
        close(file);
        return -1;
    }
    return file;
}

/// Opens the face of every file in the configuration and puts it beside the file's name, where cairo
/// looks for one before it opens the file. FreeType reads from the program's own bytes.
static int open_faces(bw_fonts *fonts, FcConfig *config) {
    FcFontSet *set = FcConfigGetFonts(config, FcSetApplication);
    if (!set || set->nfont != 2 || FT_Init_FreeType(&fonts->library) != 0) return 0;
    for (int i = 0; i < 2; i++) {
        int weight = 0;
        size_t size;
        FcPatternGetInteger(set->fonts[i], FC_WEIGHT, 0, &weight);
        const unsigned char *bytes = bw_font_file(weight > FC_WEIGHT_MEDIUM, &size);
        FT_Face face;
        if (FT_New_Memory_Face(fonts->library, bytes, (FT_Long)size, 0, &face) != 0) return 0;
        const FcValue opened = {.type = FcTypeFTFace, .u.f = face};
        if (!FcPatternAdd(set->fonts[i], FC_FT_FACE, opened, FcTrue)) return 0;
    }
    return 1;
}

/// True when the map really has the family, both weights; pango would quietly take something else.
static int has_family(PangoFontMap *map) {
    PangoFontFamily **families;
    int count = 0, found = 0;
    pango_font_map_list_families(map, &families, &count);
    for (int i = 0; i < count; i++) {
        if (!bw_same(pango_font_family_get_name(families[i]), "B612")) continue;
        PangoFontFace **faces;
        int face_count = 0;
        pango_font_family_list_faces(families[i], &faces, &face_count);
        g_free(faces);
        found = face_count >= 2;
    }
    g_free(families);
    return found;
}

static bw_fonts *take_idle(void) {
    pthread_mutex_lock(&idle_lock);
    bw_fonts *fonts = idle;
    if (fonts) idle = fonts->next;
    pthread_mutex_unlock(&idle_lock);
    return fonts;
}

/// A set that could not be made. Its names may come again: nothing was painted from them.
static void discard(bw_fonts *fonts) {
    g_object_unref(fonts->map);
    for (int bold = 0; bold < 2; bold++) {
        pango_font_description_free(fonts->faces[bold]);
        if (fonts->files[bold] >= 0) close(fonts->files[bold]);
    }
    if (fonts->library) FT_Done_FreeType(fonts->library);
    free(fonts);
}

static bw_fonts *make(bw_text *why) {
    bw_fonts *fonts = calloc(1, sizeof *fonts);
    FcConfig *config = fonts ? FcConfigCreate() : NULL;
    if (!config) {
        free(fonts);
        bw_put(why, BW_NO_MEMORY_SENTENCE);
        return NULL;
    }
    for (int bold = 0; bold < 2; bold++) {
        fonts->files[bold] = add_file(config, bold);
        fonts->faces[bold] = pango_font_description_from_string(bold ? "B612 Bold" : "B612");
    }
    const int opened = fonts->files[0] >= 0 && fonts->files[1] >= 0 && open_faces(fonts, config);
    fonts->map = pango_cairo_font_map_new_for_font_type(CAIRO_FONT_TYPE_FT);
    pango_fc_font_map_set_config(PANGO_FC_FONT_MAP(fonts->map), config);
    FcConfigDestroy(config);
    if (opened && has_family(fonts->map)) return fonts;
    bw_put(why, "The bundled font B612 cannot be opened; fontconfig and pango have to be there and "
                "/proc has to be mounted.");
    discard(fonts);
    return NULL;
}

bw_fonts *bw_fonts_open(bw_text *why) {
    bw_fonts *fonts = take_idle();
    return fonts ? fonts : make(why);
}

void bw_fonts_close(bw_fonts *fonts) {
    if (!fonts) return;
    pthread_mutex_lock(&idle_lock);
    fonts->next = idle;
    idle = fonts;
    pthread_mutex_unlock(&idle_lock);
}

double bw_fonts_width(bw_fonts *fonts, const char *text, double size, int bold) {
    PangoContext *context = pango_font_map_create_context(fonts->map);
    cairo_font_options_t *options = cairo_font_options_create();
    cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
    pango_cairo_context_set_font_options(context, options);
    pango_cairo_context_set_resolution(context, 72);
    pango_context_set_round_glyph_positions(context, FALSE);
    PangoLayout *layout = pango_layout_new(context);
    pango_font_description_set_absolute_size(fonts->faces[bold != 0], size * PANGO_SCALE);
    pango_layout_set_font_description(layout, fonts->faces[bold != 0]);
    pango_layout_set_text(layout, text, -1);
    PangoRectangle logical;
    pango_layout_get_extents(layout, NULL, &logical);
    cairo_font_options_destroy(options);
    g_object_unref(layout);
    g_object_unref(context);
    return (double)logical.width / PANGO_SCALE;
}
