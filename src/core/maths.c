/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Elementary functions from + - * / and the bits of a double alone. Each reduces its argument in
/// two steps (W. J. Cody, W. Waite, "Software Manual for the Elementary Functions", 1980)
/// and sums a polynomial in a fixed order. Error bounds are measured in tests/core/test_maths.c.
#include "core/maths.h"

#include "core/exp_tail.h"
#include <stdbool.h>
#include <stdint.h>

/// Adding and taking away 1.5 * 2^52 rounds a double to the nearest whole number.
static const double rounder = 0x1.8p52;

/// ln 2 and pi/2 in two parts. The high part ends in zeros, so that a whole number of them is exact.
static const double ln2_high = 0x1.62e42feep-1;
static const double ln2_low = 0x1.a39ef35793c76p-33;
static const double half_pi_high = 0x1.921fb544p0;
static const double half_pi_low = 0x1.0b4611a626331p-34;

static uint64_t bits_of(double x) {
    union {
        double d;
        uint64_t u;
    } b = {.d = x};
    return b.u;
}

static double double_of(uint64_t bits) {
    union {
        uint64_t u;
        double d;
    } b = {.u = bits};
    return b.d;
}

/// 2^n for -1022 <= n <= 1023.
static double power_of_two(int n) {
    return double_of((uint64_t)(n + 1023) << 52);
}

double bw_exp(double x) {
    if (!(x >= -745)) return x < -745 ? 0 : x;
    if (x > 709.782712893384) return __builtin_inf();
    const double n = (x * 0x1.71547652b82fep0 + rounder) - rounder;
    const double r = (x - n * ln2_high) - n * ln2_low;
    const double y = 1 + (r + r * r * bw_exp_tail(r));
    const int k = (int)n;
    if (k >= -1022 && k <= 1023) return y * power_of_two(k);
    // At either end 2^k is no double of its own: go there in two steps.
    return y * power_of_two(k / 2) * power_of_two(k - k / 2);
}

/// log(1 + f) = f - f^2/2 + s (f^2/2 + tail), s = f / (2 + f), tail = 2 artanh(s)/s - 2: the leading
/// term stays exact (K. C. Ng's arrangement). |s| < 0.172, and the series stops below 1e-18.
double bw_log(double x) {
    if (!(x > 0)) return x == 0 ? -__builtin_inf() : __builtin_nan("");
    if (x == __builtin_inf()) return x;
    int k = 0;
    if (x < 0x1p-1022) {
        x *= 0x1p54;
        k = -54;
    }
    uint64_t bits = bits_of(x);
    k += (int)(bits >> 52) - 1023;
    double m = double_of((bits & 0x000fffffffffffffull) | 0x3ff0000000000000ull);
    if (m > 1.4142135623730951) {
        m *= 0.5;
        k++;
    }
    const double f = m - 1;
    const double s = f / (2 + f);
    const double z = s * s;
    const double z2 = z * z;
    const double z4 = z2 * z2;
    const double low = (2.0 / 3 + z * (2.0 / 5)) + z2 * (2.0 / 7 + z * (2.0 / 9));
    const double middle = (2.0 / 11 + z * (2.0 / 13)) + z2 * (2.0 / 15 + z * (2.0 / 17));
    const double high = (2.0 / 19 + z * (2.0 / 21)) + z2 * (2.0 / 23);
    const double tail = z * (low + z4 * (middle + z4 * high));
    const double half_square = 0.5 * f * f;
    return k * ln2_high - ((half_square - (s * (half_square + tail) + k * ln2_low)) - f);
}

/// A quarter turn count and what is left, |rest| a hair above pi/4 at most.
typedef struct turn {
    int quarter;
    double rest;
} turn;

static turn reduce(double x) {
    const double n = (x * 0x1.45f306dc9c883p-1 + rounder) - rounder;
    const double rest = (x - n * half_pi_high) - n * half_pi_low;
    return (turn){(int)n & 3, rest};
}

/// Taylor series to r^17; the next term is below 1e-19 within a quarter turn.
static double sine_near_zero(double r) {
    const double z = r * r;
    const double z2 = z * z;
    const double low = (-1.0 / 6 + z * (1.0 / 120)) + z2 * (-1.0 / 5040 + z * (1.0 / 362880));
    const double high = (-1.0 / 39916800 + z * (1.0 / 6227020800)) +
                        z2 * (-1.0 / 1307674368000 + z * (1.0 / 355687428096000));
    return r + r * z * (low + z2 * z2 * high);
}

/// Taylor series to r^18.
static double cosine_near_zero(double r) {
    const double z = r * r;
    const double z2 = z * z;
    const double low = (1.0 / 24 + z * (-1.0 / 720)) + z2 * (1.0 / 40320 + z * (-1.0 / 3628800));
    const double high = (1.0 / 479001600 + z * (-1.0 / 87178291200)) +
                        z2 * (1.0 / 20922789888000 + z * (-1.0 / 6402373705728000));
    return 1 - (0.5 * z - z2 * (low + z2 * z2 * high));
}

/// sin(r + quarter pi/2).
static double sine_of_turn(turn t) {
    const double y = t.quarter & 1 ? cosine_near_zero(t.rest) : sine_near_zero(t.rest);
    return t.quarter & 2 ? -y : y;
}

double bw_sin(double x) {
    const double size = bw_abs(x);
    if (!(size <= 1e5)) return __builtin_nan("");
    const double y = sine_of_turn(reduce(size));
    return x < 0 ? -y : y;
}

double bw_cos(double x) {
    const double size = bw_abs(x);
    if (!(size <= 1e5)) return __builtin_nan("");
    turn t = reduce(size);
    t.quarter++;
    return sine_of_turn(t);
}

/// arctan(t) for |t| <= tan(pi/8). The coefficients interpolate (arctan(t)/t - 1)/t^2 at the 11
/// Chebyshev points of that range in t^2; computed with 60 digits, relative error below 7e-18.
static double arctangent_near_zero(double t) {
    const double z = t * t;
    const double z2 = z * z;
    const double z4 = z2 * z2;
    const double low = (-0x1.5555555555555p-2 + z * 0x1.999999999934cp-3) +
                       z2 * (-0x1.2492492436201p-3 + z * 0x1.c71c71853d7c8p-4);
    const double middle = (-0x1.745d0b28a7649p-4 + z * 0x1.3b12630643e8ap-4) +
                          z2 * (-0x1.10fa77b104ae8p-4 + z * 0x1.dfe6497394f40p-5);
    const double high =
        (-0x1.a0999c2994d42p-5 + z * 0x1.4162bf84bf0bfp-5) + z2 * -0x1.3a31b0297d745p-6;
    return t + t * z * (low + z4 * (middle + z4 * high));
}

/// Multiples of pi/4, each in two parts.
static const double eighth_high[] = {0, 0x1.921fb54442d18p-1, 0x1.921fb54442d18p0,
                                     0x1.2d97c7f3321d2p1, 0x1.921fb54442d18p1};
static const double eighth_low[] = {0, 0x1.1a62633145c07p-55, 0x1.1a62633145c07p-54,
                                    0x1.a79394c9e8a0ap-54, 0x1.1a62633145c07p-53};

/// The first eighth of a turn is enough: the rest are reflections, each an angle in two parts plus
/// or minus the small one, rounded once.
double bw_atan2(double y, double x) {
    const double across = bw_abs(x);
    const double up = bw_abs(y);
    const bool steep = up > across;
    const double less = steep ? across : up;
    const double more = steep ? up : across;
    if (more == 0) return 0;
    // arctan(q) = pi/4 - arctan((1 - q)/(1 + q)) keeps the polynomial short.
    const bool wide = less > 0.41421356237309503 * more;
    double small = wide ? arctangent_near_zero((more - less) / (more + less))
                        : arctangent_near_zero(less / more);
    int eighths = 0; // the angle is eighths * pi/4 + small
    if (wide) {
        eighths = 1;
        small = -small;
    }
    if (steep) {
        eighths = 2 - eighths;
        small = -small;
    }
    if (x < 0) {
        eighths = 4 - eighths;
        small = -small;
    }
    const double angle = eighth_high[eighths] + (small + eighth_low[eighths]);
    return y < 0 ? -angle : angle;
}
