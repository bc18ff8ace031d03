/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The lists that the page can ask for.
#ifndef BW_WEB_PAGE_LIST_H
#define BW_WEB_PAGE_LIST_H

/// Lists that can be asked for one by one; "" ends each.
typedef enum bw_page_list {
    BW_LIST_STAGES,    ///< "4 in"
    BW_LIST_LANDMARKS, ///< names
    BW_LIST_SETS,      ///< attack sets
    BW_LIST_ROLES,     ///< of colours, in the order of bw_role
    BW_LIST_SHAPES,    ///< of the stages: "2-2"
    BW_LIST_SCHEME     ///< bw_page_about
} bw_page_list;

typedef enum bw_page_about {
    BW_ABOUT_ID,
    BW_ABOUT_NAME,
    BW_ABOUT_TEAM,
    BW_ABOUT_LEVEL ///< its name
} bw_page_about;

#endif
