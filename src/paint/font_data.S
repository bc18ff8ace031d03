/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The two faces of B612, as files inside the program. The paths are looked up from the root of the tree,
   as cmake/Rooms.cmake says. */
    .section .rodata
    .global bw_font_regular, bw_font_regular_end, bw_font_bold, bw_font_bold_end
    .balign 16
bw_font_regular:
    .incbin "assets/fonts/B612-Regular.otf"
bw_font_regular_end:
    .balign 16
bw_font_bold:
    .incbin "assets/fonts/B612-Bold.otf"
bw_font_bold_end:
    .section .note.GNU-stack, "", %progbits
