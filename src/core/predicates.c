/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The sign is first computed plainly, with a bound on what rounding may have done. When the bound
/// does not settle it, the determinant is computed again without rounding, as an expansion: a sum of
/// doubles that do not overlap, smallest first, so that the last one has the sign of the whole.
/// On a grid every difference is one double and every tail is zero, so even the exact way is short.
///
/// Exact as long as nothing leaves the range of a double: coordinates below 2^250, and no
/// coordinate's last bit below 2^-250. Needs every operation rounded to a double by itself: no
/// fused multiply-add, no wider registers.
#include "core/predicates.h"
#include <stdbool.h>

/// Error bounds relative to the sum of the terms' sizes, e = 2^-53 (Shewchuk 1997, from memory):
/// (3 + 16 e) e and (10 + 96 e) e.
static const double orient_bound = 3.3306690738754716e-16;
static const double in_circle_bound = 1.1102230246251577e-15;

/// 2^27 + 1 cuts a double into two halves whose products are exact.
static const double splitter = 134217729;

/// Components of the largest expansions below, worst case.
enum {
    DIFFERENCE = 2,
    PRODUCT = 2 * DIFFERENCE * DIFFERENCE,
    MINOR = 2 * PRODUCT,
    TERM = 2 * MINOR * MINOR,
    DETERMINANT = 3 * TERM
};

typedef struct pair {
    double high, low;
} pair;

/// a + b exactly (Knuth).
static inline pair exact_sum(double a, double b) {
    const double sum = a + b;
    const double b_part = sum - a, a_part = sum - b_part;
    return (pair){sum, (a - a_part) + (b - b_part)};
}

static inline pair halves(double a) {
    const double c = splitter * a;
    const double high = c - (c - a);
    return (pair){high, a - high};
}

/// a b exactly (Dekker, Veltkamp).
static inline pair exact_product(double a, double b) {
    const double product = a * b;
    const pair p = halves(a), q = halves(b);
    const double rest =
        ((p.high * q.high - product) + p.high * q.low + p.low * q.high) + p.low * q.low;
    return (pair){product, rest};
}

static inline int put(double *out, int n, double component) {
    out[n] = component;
    return component != 0 ? n + 1 : n;
}

/// out = a - b, at most DIFFERENCE components. All of these return the number written.
static int difference(double a, double b, double *out) {
    const pair d = exact_sum(a, -b);
    const int n = put(out, 0, d.low);
    return put(out, n, d.high);
}

/// out = a + sign b, at most na + nb components (and one more is touched); sign is 1 or -1.
static int sum(const double *a, int na, const double *b, int nb, double sign, double *out) {
    double carry = 0;
    int n = 0;
    for (int i = 0, j = 0; i < na || j < nb;) {
        const bool from_a = j == nb || (i < na && bw_abs(a[i]) < bw_abs(b[j]));
        const pair s = exact_sum(carry, from_a ? a[i] : sign * b[j]);
        if (from_a)
            i++;
        else
            j++;
        n = put(out, n, s.low);
        carry = s.high;
    }
    return put(out, n, carry);
}

/// out = a k, at most 2 na components (and one more is touched).
static int scaled(const double *a, int na, double k, double *out) {
    double carry = 0;
    int n = 0;
    for (int i = 0; i < na; i++) {
        const pair p = exact_product(a[i], k);
        const pair s = exact_sum(carry, p.low);
        const pair t = exact_sum(p.high, s.high);
        n = put(out, n, s.low);
        n = put(out, n, t.low);
        carry = t.high;
    }
    return put(out, n, carry);
}

/// out = a b, at most 2 na nb components; neither factor has more than MINOR.
static int product(const double *a, int na, const double *b, int nb, double *out) {
    double row[2 * MINOR + 1], next[TERM + 1];
    int n = 0;
    for (int j = 0; j < nb; j++) {
        const int m = scaled(a, na, b[j], row);
        const int total = sum(out, n, row, m, 1, next);
        for (n = 0; n < total; n++)
            out[n] = next[n];
    }
    return n;
}

static int sign_of(const double *a, int n) {
    if (n == 0) return 0;
    return a[n - 1] > 0 ? 1 : -1;
}

static int sign(double a) {
    return (a > 0) - (a < 0);
}

/// A vector between two points, without rounding.
typedef struct arrow {
    double x[DIFFERENCE], y[DIFFERENCE];
    int nx, ny;
} arrow;

static arrow arrow_from(bw_vec from, bw_vec to) {
    arrow a;
    a.nx = difference(to.x, from.x, a.x);
    a.ny = difference(to.y, from.y, a.y);
    return a;
}

/// out = a.x b.y - a.y b.x, at most MINOR components.
static int cross(const arrow *a, const arrow *b, double *out) {
    double left[PRODUCT], right[PRODUCT];
    const int nl = product(a->x, a->nx, b->y, b->ny, left);
    const int nr = product(a->y, a->ny, b->x, b->nx, right);
    return sum(left, nl, right, nr, -1, out);
}

/// out = a.x^2 + a.y^2, at most MINOR components.
static int square(const arrow *a, double *out) {
    double x[PRODUCT], y[PRODUCT];
    const int nx = product(a->x, a->nx, a->x, a->nx, x);
    const int ny = product(a->y, a->ny, a->y, a->ny, y);
    return sum(x, nx, y, ny, 1, out);
}

/// out = |a|^2 (b x c), at most TERM components.
static int term(const arrow *a, const arrow *b, const arrow *c, double *out) {
    double lift[MINOR + 1], minor[MINOR + 1];
    const int nl = square(a, lift);
    const int nm = cross(b, c, minor);
    return product(lift, nl, minor, nm, out);
}

static int orient_exactly(bw_vec a, bw_vec b, bw_vec c) {
    const arrow ca = arrow_from(c, a), cb = arrow_from(c, b);
    double determinant[MINOR + 1];
    return sign_of(determinant, cross(&ca, &cb, determinant));
}

static int in_circle_exactly(bw_vec a, bw_vec b, bw_vec c, bw_vec d) {
    const arrow da = arrow_from(d, a), db = arrow_from(d, b), dc = arrow_from(d, c);
    double one[TERM], two[2 * TERM + 1], whole[DETERMINANT + 1], next[TERM];
    const int n1 = term(&da, &db, &dc, one);
    const int m1 = term(&db, &dc, &da, next);
    const int n2 = sum(one, n1, next, m1, 1, two);
    const int m2 = term(&dc, &da, &db, next);
    return sign_of(whole, sum(two, n2, next, m2, 1, whole));
}

int bw_orient(bw_vec a, bw_vec b, bw_vec c) {
    const double left = (a.x - c.x) * (b.y - c.y);
    const double right = (a.y - c.y) * (b.x - c.x);
    const double determinant = left - right;
    if (bw_abs(determinant) > orient_bound * (bw_abs(left) + bw_abs(right)))
        return sign(determinant);
    return orient_exactly(a, b, c);
}

int bw_in_circle(bw_vec a, bw_vec b, bw_vec c, bw_vec d) {
    const bw_vec da = bw_sub(a, d), db = bw_sub(b, d), dc = bw_sub(c, d);
    const double a2 = bw_length2(da), b2 = bw_length2(db), c2 = bw_length2(dc);
    const double bc = db.x * dc.y, cb = dc.x * db.y;
    const double ca = dc.x * da.y, ac = da.x * dc.y;
    const double ab = da.x * db.y, ba = db.x * da.y;
    const double determinant = a2 * (bc - cb) + b2 * (ca - ac) + c2 * (ab - ba);
    const double size = a2 * (bw_abs(bc) + bw_abs(cb)) + b2 * (bw_abs(ca) + bw_abs(ac)) +
                        c2 * (bw_abs(ab) + bw_abs(ba));
    if (bw_abs(determinant) > in_circle_bound * size) return sign(determinant);
    return in_circle_exactly(a, b, c, d);
}
