/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/quiz_code.h"

#include "core/hash.h"

enum { VERSION = 1, PAYLOAD_LETTERS = 23, MOST = 255 };

static const char alphabet[] = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

/// Bits gathered five to a letter, first come first.
typedef struct bits {
    uint8_t letter[BW_QUIZ_LETTERS];
    int used;
} bits;

static void put(bits *b, uint32_t value, int width) {
    for (int i = width - 1; i >= 0; i--, b->used++) {
        b->letter[b->used / 5] |= (uint8_t)((value >> i & 1) << (4 - b->used % 5));
    }
}

static uint32_t take(bits *b, int width) {
    uint32_t value = 0;
    for (int i = 0; i < width; i++, b->used++) {
        value = value << 1 | (b->letter[b->used / 5] >> (4 - b->used % 5) & 1u);
    }
    return value;
}

/// Over what stands before it: 117 bits, two more than 23 letters hold.
static uint32_t check_of(const bits *b) {
    uint64_t hash = BW_HASH_START;
    for (int i = 0; i < PAYLOAD_LETTERS; i++)
        hash = bw_hash_u64(hash, b->letter[i]);
    hash = bw_hash_u64(hash, b->letter[PAYLOAD_LETTERS] >> 3);
    return (uint32_t)((hash >> 40 ^ hash) & 0x7FFFFF);
}

uint32_t bw_quiz_document(const char *text, size_t length) {
    uint64_t hash = BW_HASH_START;
    for (size_t i = 0; i < length; i++)
        hash = bw_hash_u64(hash, (uint8_t)text[i]);
    return (uint32_t)(hash >> 32 ^ hash);
}

/// 0 for none, then digits, large and small letters.
static int symbol_of(char c) {
    if (c >= '0' && c <= '9') return 1 + c - '0';
    if (c >= 'A' && c <= 'Z') return 11 + c - 'A';
    if (c >= 'a' && c <= 'z') return 37 + c - 'a';
    return 0;
}

static char symbol_at(uint32_t symbol) {
    if (symbol == 0) return '\0';
    if (symbol < 11) return (char)('0' + symbol - 1);
    return (char)(symbol < 37 ? 'A' + symbol - 11 : 'a' + symbol - 37);
}

static bool spot_fits(const char *spot) {
    int length = 0;
    while (length < 4 && symbol_of(spot[length]) > 0)
        length++;
    return length >= 1 && length <= 3 && spot[length] == '\0';
}

static bool fits(const bw_quiz_said *said) {
    const double size = said->bias.x + said->bias.y + said->spread;
    return size - size == 0 && said->spread >= 0 && said->day >= 0 && said->day <= 65535 &&
           said->asked >= 0 && said->asked <= 127 && said->right >= 0 &&
           said->right <= said->asked && said->tries >= 0 && said->tries <= said->asked &&
           spot_fits(said->spot);
}

static uint32_t decimetres(double metres) {
    return (uint32_t)((int)bw_round_to(bw_clamp(metres, -25.5, 25.5) * 10, 1) + MOST);
}

bool bw_quiz_write(const bw_quiz_said *said, bw_text *out) {
    if (!fits(said)) return false;
    bits b = {0};
    put(&b, VERSION, 4);
    put(&b, said->document, 32);
    bool ended = false;
    for (int i = 0; i < 3; i++) {
        ended = ended || said->spot[i] == '\0';
        put(&b, ended ? 0 : (uint32_t)symbol_of(said->spot[i]), 6);
    }
    put(&b, (uint32_t)said->day, 16);
    put(&b, (uint32_t)said->asked, 7);
    put(&b, (uint32_t)said->right, 7);
    put(&b, (uint32_t)said->tries, 7);
    put(&b, decimetres(said->bias.x), 9);
    put(&b, decimetres(said->bias.y), 9);
    put(&b, decimetres(said->spread) - MOST, 8);
    put(&b, check_of(&b), 23);
    for (int i = 0; i < BW_QUIZ_LETTERS; i++) {
        if (i > 0 && i % 4 == 0) bw_put_char(out, '-');
        bw_put_char(out, alphabet[b.letter[i]]);
    }
    return true;
}

static int value_of(char c) {
    if (c >= 'a' && c <= 'z') c = (char)(c - 'a' + 'A');
    if (c == 'O') c = '0';
    if (c == 'I' || c == 'L') c = '1';
    for (int i = 0; i < 32; i++) {
        if (alphabet[i] == c) return i;
    }
    return -1;
}

static bw_status refuse(bw_text *why, const char *sentence) {
    if (why) bw_put(why, sentence);
    return BW_BAD_INPUT;
}

/// The letters of a text; false when it has others, or not as many as a code.
static bool gather(const char *text, size_t length, bits *b) {
    int count = 0;
    if (length > BW_QUIZ_CODE_MOST) return false;
    for (size_t i = 0; i < length; i++) {
        if (text[i] == ' ' || text[i] == '-' || text[i] == '\n' || text[i] == '\r') continue;
        const int value = value_of(text[i]);
        if (value < 0 || count == BW_QUIZ_LETTERS) return false;
        b->letter[count++] = (uint8_t)value;
    }
    return count == BW_QUIZ_LETTERS;
}

/// Whether what was read is written with the very same letters.
static bool writes_as(const bw_quiz_said *said, const bits *read) {
    char code[BW_QUIZ_CODE_BYTES];
    bw_text out = bw_text_in(code, sizeof code);
    bits again = {0};
    if (!bw_quiz_write(said, &out) || !gather(code, out.used, &again)) return false;
    for (int i = 0; i < BW_QUIZ_LETTERS; i++) {
        if (again.letter[i] != read->letter[i]) return false;
    }
    return true;
}

bw_status bw_quiz_read(const char *text, size_t length, bw_quiz_said *said, bw_text *why) {
    bits b = {0};
    if (!gather(text, length, &b))
        return refuse(why, "A result code has 28 letters and digits in seven groups of four.");
    const uint32_t version = take(&b, 4);
    bw_quiz_said s = {.document = take(&b, 32)};
    for (int i = 0; i < 3; i++)
        s.spot[i] = symbol_at(take(&b, 6));
    s.day = (int)take(&b, 16);
    s.asked = (int)take(&b, 7);
    s.right = (int)take(&b, 7);
    s.tries = (int)take(&b, 7);
    s.bias.x = ((int)take(&b, 9) - MOST) / 10.0;
    s.bias.y = ((int)take(&b, 9) - MOST) / 10.0;
    s.spread = (int)take(&b, 8) / 10.0;
    if (take(&b, 23) != check_of(&b))
        return refuse(why, "A letter of the result code is wrong; compare it once more.");
    if (version != VERSION)
        return refuse(why, "The result code is of a newer hand-out than this program knows.");
    if (!writes_as(&s, &b)) return refuse(why, "The result code says what no quiz can.");
    *said = s;
    return BW_OK;
}
