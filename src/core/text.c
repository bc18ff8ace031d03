/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Text built in memory of the caller's. Numbers are formatted by integer arithmetic on the exact
/// binary value, so the digits are the same everywhere. A number that does not fit is left out
/// whole: half a number is a wrong number.
#include "core/text.h"

#include "core/base.h"
#include "core/maths.h"

enum {
    DIGITS = 24,    ///< room for any 64-bit integer with sign, and for 10 + 1 + 9 digits
    LIMB_BITS = 60, ///< of a fixed-point fraction: four bits are left over for times ten
    LONGEST_WORD = 63
};

bw_text bw_text_in(char *data, size_t room) {
    BW_ASSERT(room > 0);
    data[0] = '\0';
    return (bw_text){.data = data, .room = room};
}

size_t bw_text_length(const char *s) {
    size_t n = 0;
    while (s[n] != '\0')
        n++;
    return n;
}

bool bw_same(const char *a, const char *b) {
    while (*a != '\0' && *a == *b) {
        a++;
        b++;
    }
    return *a == *b;
}

/// How many of the n bytes at s fit into `space` without cutting a UTF-8 character in two.
static size_t whole_characters(const char *s, size_t n, size_t space) {
    if (n <= space) return n;
    size_t cut = space;
    while (cut > 0 && ((unsigned char)s[cut] & 0xc0) == 0x80)
        cut--;
    return cut;
}

/// Once something was left out nothing more is added: text after a hole would say something else.
void bw_put_n(bw_text *t, const char *s, size_t n) {
    if (t->full) return;
    const size_t fits = whole_characters(s, n, t->room - 1 - t->used);
    for (size_t i = 0; i < fits; i++)
        t->data[t->used + i] = s[i];
    t->used += fits;
    t->data[t->used] = '\0';
    t->full = fits < n;
}

void bw_put(bw_text *t, const char *s) {
    bw_put_n(t, s, bw_text_length(s));
}

void bw_put_char(bw_text *t, char c) {
    bw_put_n(t, &c, 1);
}

/// Adds all of a number or none of it.
static void put_whole(bw_text *t, const char *s, size_t n) {
    if (n > t->room - 1 - t->used)
        t->full = true;
    else
        bw_put_n(t, s, n);
}

/// Writes the digits of n so that the last one stands before `end`; returns the first.
static char *digits_before(char *end, unsigned long long n) {
    do {
        *--end = (char)('0' + n % 10);
        n /= 10;
    } while (n != 0);
    return end;
}

void bw_put_int(bw_text *t, long long n) {
    char buffer[DIGITS];
    char *const end = buffer + DIGITS;
    // Negated as unsigned, for the most negative number has no positive twin.
    char *s = digits_before(end, n < 0 ? 0ull - (unsigned long long)n : (unsigned long long)n);
    if (n < 0) *--s = '-';
    put_whole(t, s, (size_t)(end - s));
}

/// A number cut to `decimals` places: sign, digits before and after the point as integers.
typedef struct decimal {
    bool negative;
    uint64_t whole;
    uint64_t places;
} decimal;

/// Exact: the fraction is held in two limbs of 60 bits, and whatever lies below them is too small
/// to move the ninth place. Half rounds away from zero.
static decimal decimal_of(double x, int decimals) {
    const double size = bw_abs(x);
    BW_ASSERT(size < 1e9 && decimals >= 0 && decimals <= 9);
    const uint64_t mask = (1ull << LIMB_BITS) - 1;
    decimal d = {.whole = (uint64_t)size};
    const double shifted = (size - (double)d.whole) * 0x1p60;
    uint64_t high = (uint64_t)shifted;
    uint64_t low = (uint64_t)((shifted - (double)high) * 0x1p60);
    uint64_t unit = 1;
    for (int i = 0; i < decimals; i++) {
        low *= 10;
        high = high * 10 + (low >> LIMB_BITS);
        d.places = d.places * 10 + (high >> LIMB_BITS);
        low &= mask;
        high &= mask;
        unit *= 10;
    }
    if (high >> (LIMB_BITS - 1)) d.places++;
    if (d.places == unit) {
        d.whole++;
        d.places = 0;
    }
    d.negative = x < 0 && (d.whole != 0 || d.places != 0);
    return d;
}

static void put_decimal(bw_text *t, decimal d, int decimals) {
    char buffer[DIGITS];
    char *const end = buffer + DIGITS;
    char *s = end;
    for (int i = 0; i < decimals; i++) {
        *--s = (char)('0' + d.places % 10);
        d.places /= 10;
    }
    if (decimals > 0) *--s = '.';
    s = digits_before(s, d.whole);
    if (d.negative) *--s = '-';
    put_whole(t, s, (size_t)(end - s));
}

void bw_put_fixed(bw_text *t, double x, int decimals) {
    put_decimal(t, decimal_of(x, decimals), decimals);
}

void bw_put_number(bw_text *t, double x, int decimals) {
    decimal d = decimal_of(x, decimals);
    if (d.places == 0) decimals = 0;
    while (decimals > 0 && d.places % 10 == 0) {
        d.places /= 10;
        decimals--;
    }
    put_decimal(t, d, decimals);
}

void bw_capital(char *c) {
    if (*c >= 'a' && *c <= 'z') *c = (char)(*c - 'a' + 'A');
}

bool bw_copy(char *to, size_t room, const char *s) {
    bw_text t = bw_text_in(to, room);
    bw_put(&t, s);
    return !t.full;
}

/// Bytes of the character at s when it is well formed and no control character, otherwise 0. The least
/// second byte rules out overlong forms, the most rules out surrogates and all beyond U+10FFFF.
static int plain_character(const unsigned char *s) {
    if (s[0] < 0x80) return s[0] >= 0x20 && s[0] != 0x7f;
    const int length = s[0] >= 0xc2 && s[0] < 0xe0   ? 2
                       : s[0] >= 0xe0 && s[0] < 0xf0 ? 3
                       : s[0] >= 0xf0 && s[0] < 0xf5 ? 4
                                                     : 0;
    if (length == 0) return 0;
    const int lowest = s[0] == 0xc2 || s[0] == 0xe0 ? 0xa0 : s[0] == 0xf0 ? 0x90 : 0x80;
    const int highest = s[0] == 0xed ? 0x9f : s[0] == 0xf4 ? 0x8f : 0xbf;
    if (s[1] < lowest || s[1] > highest) return 0;
    for (int i = 2; i < length; i++) {
        if (s[i] < 0x80 || s[i] > 0xbf) return 0;
    }
    return length;
}

int bw_plain_character(const char *s) {
    return *s ? plain_character((const unsigned char *)s) : 0;
}

bool bw_text_plain(const char *text) {
    const unsigned char *s = (const unsigned char *)text;
    while (*s) {
        const int length = plain_character(s);
        if (length == 0) return false;
        s += length;
    }
    return true;
}

static int least(int a, int b) {
    return a < b ? a : b;
}

/// The code point of the character at *at, which is moved past it.
static unsigned take_point(const unsigned char **at) {
    const unsigned char *c = *at;
    const int more = *c < 0xc0 ? 0 : *c < 0xe0 ? 1 : *c < 0xf0 ? 2 : 3;
    unsigned point = more ? *c & (0x3fu >> more) : *c;
    c++;
    for (int i = 0; i < more && *c; i++)
        point = point << 6 | (*c++ & 0x3fu);
    *at = c;
    return point;
}

static bool is_hidden(unsigned point) {
    static const unsigned ranges[][2] = {{0x61c, 0x61c},   {0x180e, 0x180e},  {0x200b, 0x200b},
                                         {0x200e, 0x200f}, {0x2028, 0x202e},  {0x2060, 0x206f},
                                         {0xfeff, 0xfeff}, {0xe0000, 0xe007f}};
    enum { COUNT = sizeof ranges / sizeof *ranges };
    for (int i = 0; i < COUNT; i++) {
        if (point >= ranges[i][0] && point <= ranges[i][1]) return true;
    }
    return false;
}

unsigned bw_hidden_character(const char *s) {
    const unsigned char *c = (const unsigned char *)s;
    const unsigned point = take_point(&c);
    return is_hidden(point) ? point : 0;
}

bool bw_text_hidden(const char *s) {
    for (const unsigned char *c = (const unsigned char *)s; *c;) {
        if (is_hidden(take_point(&c))) return true;
    }
    return false;
}

/// Optimal string alignment: the table of distances between prefixes, three rows of it at a time.
int bw_edit_distance(const char *a, const char *b, int limit) {
    const size_t length_a = bw_text_length(a);
    const size_t length_b = bw_text_length(b);
    if (length_a > LONGEST_WORD || length_b > LONGEST_WORD) return limit + 1;
    const int n = (int)length_a;
    const int m = (int)length_b;
    int rows[3][LONGEST_WORD + 1];
    for (int j = 0; j <= m; j++)
        rows[0][j] = j;
    for (int i = 1; i <= n; i++) {
        int *const row = rows[i % 3];
        const int *const above = rows[(i + 2) % 3];
        const int *const above2 = rows[(i + 1) % 3];
        row[0] = i;
        for (int j = 1; j <= m; j++) {
            const int change = above[j - 1] + (a[i - 1] != b[j - 1]);
            row[j] = least(change, least(above[j], row[j - 1]) + 1);
            const bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
            if (swapped) row[j] = least(row[j], above2[j - 2] + 1);
        }
    }
    return least(rows[n % 3][m], limit + 1);
}
