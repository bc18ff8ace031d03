/* SPDX-License-Identifier: GPL-3.0-or-later */
/// PDF: one surface for all pages, tags and an outline from the pages' headings.
#include "paint/cairo_page.h"
#include "paint/paint.h"
#include "paint/pdf_catalog.h"
#include "paint/whole_file.h"

#include <cairo-pdf.h>
#include <stdlib.h>

struct bw_pdf {
    bw_whole_file file;
    cairo_surface_t *surface;
    cairo_t *cr;
    bw_fonts *fonts;
    const bw_theme *theme;
    int pages;
    int chapter; ///< outline entry of the last main heading
    bw_status status;
};

static cairo_status_t write_bytes(void *closure, const unsigned char *data, unsigned length) {
    FILE *stream = closure;
    return fwrite(data, 1, length, stream) == length ? CAIRO_STATUS_SUCCESS
                                                     : CAIRO_STATUS_WRITE_ERROR;
}

static void set_metadata(cairo_surface_t *surface, const bw_about *about) {
    const struct {
        cairo_pdf_metadata_t key;
        const char *value;
    } entries[] = {{CAIRO_PDF_METADATA_TITLE, about->title},
                   {CAIRO_PDF_METADATA_AUTHOR, about->author},
                   {CAIRO_PDF_METADATA_SUBJECT, about->subject},
                   {CAIRO_PDF_METADATA_CREATOR, "Breakwater"}};
    for (size_t i = 0; i < sizeof entries / sizeof entries[0]; i++) {
        if (entries[i].value)
            cairo_pdf_surface_set_metadata(surface, entries[i].key, entries[i].value);
    }
    // Cairo's default is the time of day; an empty date leaves it out of the file.
    cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_CREATE_DATE,
                                   about->date ? about->date : "");
}

bw_pdf *bw_pdf_open(const char *path, const bw_about *about, bw_fonts *fonts, const bw_theme *theme,
                    bw_text *why) {
    bw_pdf *pdf = calloc(1, sizeof *pdf);
    if (!pdf) {
        bw_put(why, BW_NO_MEMORY_SENTENCE);
        return NULL;
    }
    if (bw_whole_open(&pdf->file, path, why) != BW_OK) {
        free(pdf);
        return NULL;
    }
    pdf->fonts = fonts;
    pdf->theme = theme;
    pdf->surface = cairo_pdf_surface_create_for_stream(write_bytes, pdf->file.stream, 612, 792);
    set_metadata(pdf->surface, about);
    pdf->cr = cairo_create(pdf->surface);
    cairo_tag_begin(pdf->cr, "Document", NULL);
    return pdf;
}

/// A heading also becomes an entry of the outline: second-rank ones under the last main one.
static void add_outline(bw_pdf *pdf, bw_tag tag, const char *text) {
    char target[32];
    snprintf(target, sizeof target, "page=%d", pdf->pages + 1);
    const int parent = tag == BW_TAG_H1 ? CAIRO_PDF_OUTLINE_ROOT : pdf->chapter;
    const int entry = cairo_pdf_surface_add_outline(pdf->surface, parent, text, target, 0);
    if (tag == BW_TAG_H1) pdf->chapter = entry;
}

static const char *tag_name(bw_tag tag) {
    static const char *const names[] = {"H1", "H2", "P", "Figure", NULL};
    return names[tag];
}

static void open_tag(void *self, cairo_t *cr, bw_tag tag, const char *text) {
    bw_pdf *pdf = self;
    if (tag == BW_TAG_H1 || tag == BW_TAG_H2) add_outline(pdf, tag, text);
    if (tag_name(tag)) cairo_tag_begin(cr, tag_name(tag), NULL);
}

static void shut_tag(void *self, cairo_t *cr, bw_tag tag) {
    (void)self;
    if (tag_name(tag)) cairo_tag_end(cr, tag_name(tag));
}

bw_status bw_pdf_page(bw_pdf *pdf, const bw_ink *ink, bw_text *why) {
    const bw_structure structure = {open_tag, shut_tag, pdf};
    BW_ASSERT(pdf->status == BW_OK);
    cairo_pdf_surface_set_size(pdf->surface, ink->width, ink->height);
    pdf->status = bw_cairo_page(pdf->cr, ink, pdf->fonts, pdf->theme, &structure, why);
    cairo_show_page(pdf->cr);
    pdf->pages++;
    return pdf->status;
}

bw_status bw_pdf_close(bw_pdf *pdf, bool keep, bw_text *why) {
    bw_status status = pdf->status;
    if (status == BW_OK) cairo_tag_end(pdf->cr, "Document");
    cairo_destroy(pdf->cr);
    cairo_surface_finish(pdf->surface);
    const cairo_status_t cairo = cairo_surface_status(pdf->surface);
    cairo_surface_destroy(pdf->surface);
    const bool failed = status == BW_OK && cairo != CAIRO_STATUS_SUCCESS;
    if (failed) {
        bw_put(why, "The PDF could not be finished: ");
        bw_put(why, cairo_status_to_string(cairo));
        bw_put(why, ".");
        status = BW_FILE;
    }
    if (status == BW_OK && keep) bw_pdf_mark_tagged(pdf->file.stream, "en");
    const bw_status kept = bw_whole_close(&pdf->file, keep ? status : BW_LIMIT, why);
    free(pdf);
    return keep ? kept : status;
}
