/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Natural-neighbour weights (Laplace, non-Sibsonian): how much each site counts at a point. Weights
/// sum to 1, reproduce linear functions, equal 1 at a site, and involve no choice of diagonal in
/// co-circular cells, so left and right come out as exact mirror images.
/// Source: V. V. Belikov et al., 1997; K. Sugihara, "Surface interpolation based on new local
/// coordinates", Comput. Aided Des. 31, 1999 (bibliography from memory).
#ifndef BW_CORE_NEIGHBOUR_H
#define BW_CORE_NEIGHBOUR_H

#include "core/base.h"
#include "core/vec.h"

enum { BW_MAX_SITES = 40 };

/// Sites, all different. The caller sees to it that their hull contains every point asked for.
typedef struct bw_sites {
    int count;
    bw_vec at[BW_MAX_SITES];
} bw_sites;

/// Weights of all sites at p, into weight[0 .. count-1]. Exactly mirror symmetric whatever the order
/// of the sites. On or outside the hull the weights of the nearest hull edge. O(sites x cell corners).
void bw_neighbour_weights(const bw_sites *sites, bw_vec p, double *weight);

#endif
