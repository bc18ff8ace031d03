/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The core's own elementary functions. C libraries differ in the last bit of exp, log, sin, cos and
/// atan2 (and so do native code and WebAssembly), which would break "same input, same answer". These
/// use only + - * / and bit operations, in a fixed order. Square root, floor and absolute value are
/// exact everywhere (IEEE 754), so the compiler's own are used.
#ifndef BW_CORE_MATHS_H
#define BW_CORE_MATHS_H

#define BW_PI 3.14159265358979323846

/// e^x. Relative error below 2 ulp for |x| < 708 (measured in tests/core/test_maths.c).
/// Below -745 the result is 0; above 709.78 it is +infinity; NaN stays NaN.
double bw_exp(double x);

/// Natural logarithm of x > 0, error below 2 ulp. x == 0 gives -infinity; x < 0 gives NaN.
double bw_log(double x);

/// Sine and cosine of x radians, |x| <= 1e5, absolute error below 1e-15 there; NaN beyond.
/// bw_sin(-x) == -bw_sin(x) and bw_cos(-x) == bw_cos(x) exactly: mirror symmetry leans on it.
double bw_sin(double x);
double bw_cos(double x);

/// Angle of (x, y) in radians, (-pi, pi], error below 4e-16 absolute. Zero for the zero vector.
/// bw_atan2(-y, x) == -bw_atan2(y, x) exactly, but for y == 0 behind the zero (x < 0): there it is
/// pi for either sign of zero, because a mirrored point on the axis is the same point.
double bw_atan2(double y, double x);

static inline double bw_sqrt(double x) {
    return __builtin_sqrt(x);
}
static inline double bw_floor(double x) {
    return __builtin_floor(x);
}
static inline double bw_abs(double x) {
    return __builtin_fabs(x);
}
static inline double bw_min(double a, double b) {
    return a < b ? a : b;
}
static inline double bw_max(double a, double b) {
    return a > b ? a : b;
}

/// x held within [low, high]; low <= high.
static inline double bw_clamp(double x, double low, double high) {
    return x < low ? low : (x > high ? high : x);
}

/// Nearest multiple of 1/scale, halves away from zero; odd in x, so mirrored values stay mirrored.
static inline double bw_round_to(double x, double scale) {
    double n = bw_floor(bw_abs(x) * scale + 0.5) / scale;
    return x < 0 ? -n : n;
}

#endif
