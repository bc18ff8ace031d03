/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/date.h"
#include "core/entry.h"
#include <stdlib.h>
#include <time.h>

enum { DAY = 86400 };

static bool leap(int year) {
    return year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
}

static int days_in(int year, int month) {
    static const int days[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    return days[month - 1] + (month == 2 && leap(year));
}

/// `digits` digits at *text, which moves past them, then `mark` (0: none). -1 when they are not there.
static int number(const char **text, int digits, char mark) {
    int value = 0;
    for (; digits > 0; digits--, ++*text) {
        if (**text < '0' || **text > '9') return -1;
        value = value * 10 + (**text - '0');
    }
    if (mark) {
        if (**text != mark) return -1;
        ++*text;
    }
    return value;
}

/// Days from 1970-01-01 to the day at *text; -1 when it is none.
static int64_t read_day(const char **text) {
    const int year = number(text, 4, '-');
    const int month = year < 1970 ? -1 : number(text, 2, '-');
    const int day = month < 1 || month > 12 ? -1 : number(text, 2, '\0');
    if (day < 1 || day > days_in(year, month)) return -1;
    int64_t days = day - 1;
    for (int y = 1970; y < year; y++)
        days += leap(y) ? 366 : 365;
    for (int m = 1; m < month; m++)
        days += days_in(year, m);
    return days;
}

bool bw_date_good(const char *text) {
    return read_day(&text) >= 0 && *text == '\0';
}

int64_t bw_date_days(const char *text) {
    const int64_t days = read_day(&text);
    return *text == '\0' ? days : -1;
}

void bw_today(char day[BW_DATE_SIZE]) {
    const char *fixed = getenv("SOURCE_DATE_EPOCH");
    char *end = NULL;
    const long long second = fixed ? strtoll(fixed, &end, 10) : 0;
    const bool given = fixed && end != fixed && *end == '\0';
    const time_t now = given ? (time_t)second : time(NULL);
    struct tm parts;
    if (!(given ? gmtime_r(&now, &parts) : localtime_r(&now, &parts)) ||
        strftime(day, BW_DATE_SIZE, "%Y-%m-%d", &parts) == 0)
        day[0] = '\0';
}

static void put_padded(bw_text *out, int value, int digits) {
    for (int unit = digits == 4 ? 1000 : 10; unit > 0; unit /= 10)
        bw_put_char(out, (char)('0' + value / unit % 10));
}

void bw_put_time(bw_text *out, int64_t seconds) {
    if (seconds < 0 || seconds > BW_LAST_TIME) return;
    int64_t days = seconds / DAY;
    int year = 1970, month = 1;
    for (; days >= (leap(year) ? 366 : 365); year++)
        days -= leap(year) ? 366 : 365;
    for (; days >= days_in(year, month); month++)
        days -= days_in(year, month);
    const int of_day = (int)(seconds % DAY);
    const struct {
        int value, digits;
        char mark;
    } part[] = {{year, 4, '-'},
                {month, 2, '-'},
                {(int)days + 1, 2, 'T'},
                {of_day / 3600, 2, ':'},
                {of_day / 60 % 60, 2, ':'},
                {of_day % 60, 2, 'Z'}};
    for (int i = 0; i < (int)(sizeof part / sizeof *part); i++) {
        put_padded(out, part[i].value, part[i].digits);
        bw_put_char(out, part[i].mark);
    }
}

bool bw_time_read(const char *text, int64_t *seconds) {
    const int64_t days = read_day(&text);
    if (days < 0 || *text++ != 'T') return false;
    const int hour = number(&text, 2, ':');
    const int minute = hour < 0 ? -1 : number(&text, 2, '\0');
    int second = 0;
    if (minute >= 0 && *text == ':') {
        text++;
        second = number(&text, 2, '\0');
    }
    if (hour > 23 || minute < 0 || minute > 59 || second < 0 || second > 59) return false;
    if (text[0] != 'Z' || text[1] != '\0') return false;
    *seconds = days * DAY + hour * 3600 + minute * 60 + second;
    return true;
}
