/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The team file over real sockets: breaks sent, sent again, put right and taken out; players, sprints and
/// games; the review; and nothing of it for players or without a team file.
#include "client.h"
#include "scheme/fresh.h"
#include "serve/route.h"
#include "serve/team_form.h"
#include "team/breaks.h"
#include "team/revisions.h"
#include "team/settings.h"

static desk d;
static char folder[200], path[240];

static const char one[] =
    "{\"entries\":[{\"id\":\"a1\",\"time\":\"2026-04-11T18:05:00Z\",\"game\":{\"date\":"
    "\"2026-04-11\",\"opponent\":\"Saltreach\"},\"offence\":6,\"defence\":4,\"outcome\":\"goal\","
    "\"seconds\":4.5,\"passes\":3,\"shot_x_m\":-2.5,\"shot_y_m\":7,\"out\":[\"TL\",\"12\"],"
    "\"note\":\"slow \\u00e9 shift\"}]}";

static int ask(const char *method, const char *target, const char *body) {
    return test_ask(d.port, d.host, method, target, strcmp(method, "GET") == 0 ? d.secret : d.both,
                    body);
}

/// The breaks in the file itself, past the server. The caller frees them.
static bw_entry *in_file(int *count) {
    bw_team *team;
    bw_entry *list = NULL;
    bw_error error;
    *count = -1;
    CHECK(bw_team_open(path, BW_TEAM_READ, &team, &error) == BW_OK);
    CHECK(bw_team_entries(team, NULL, &list, count, &error) == BW_OK);
    bw_team_close(team);
    return list;
}

static void a_break_is_kept_once_however_often_it_comes(void) {
    int count;
    CHECK_INT(ask("POST", "/api/team/entries", one), 200);
    CHECK(strstr(got.body, "{\"id\":\"a1\",\"number\":1,\"fresh\":true}"));
    CHECK_INT(ask("POST", "/api/team/entries", one), 200);
    CHECK(strstr(got.body, "{\"id\":\"a1\",\"number\":1,\"fresh\":false}"));
    bw_entry *list = in_file(&count);
    CHECK_INT(count, 1);
    CHECK(list[0].game == 1 && list[0].offence == 6 && list[0].defence == 4);
    CHECK(list[0].outcome == BW_OUTCOME_GOAL && list[0].seconds == 4.5 && list[0].passes == 3);
    CHECK(list[0].shot_known && list[0].shot.x == -2.5 && list[0].shot.y == 7);
    CHECK(list[0].out_count == 2 && strcmp(list[0].note, "slow \xc3\xa9 shift") == 0);
    free(list);
    CHECK_INT(ask("GET", "/api/team/entries", NULL), 200);
    CHECK(strstr(got.body, "\"id\":\"a1\"") && strstr(got.body, "\"shot_x_m\":-2.5"));
    CHECK_INT(ask("GET", "/api/team/entries?game=2", NULL), 200);
    CHECK(!strstr(got.body, "a1"));
}

static void a_break_is_put_right_and_taken_out_for_good(void) {
    int count;
    CHECK_INT(ask("POST", "/api/team/entries", one), 200);
    const char *other =
        "{\"id\":\"a1\",\"game\":1,\"offence\":5,\"defence\":4,\"outcome\":\"save\"}";
    CHECK_INT(ask("PUT", "/api/team/entries/1", other), 200);
    bw_entry *list = in_file(&count);
    CHECK(count == 1 && list[0].offence == 5 && list[0].outcome == BW_OUTCOME_SAVE);
    CHECK(list[0].seconds < 0 && !list[0].shot_known && list[0].out_count == 0);
    CHECK(strcmp(list[0].client, "a1") == 0);
    free(list);
    CHECK_INT(ask("PUT", "/api/team/entries/7", other), 404);
    CHECK(test_in_words());
    CHECK_INT(ask("DELETE", "/api/team/entries/1", NULL), 200);
    CHECK_INT(ask("DELETE", "/api/team/entries/1", NULL), 404);
    CHECK_INT(ask("POST", "/api/team/entries", one), 200); // sent once more by a slow phone
    CHECK(strstr(got.body, "\"number\":0,\"fresh\":false"));
    list = in_file(&count);
    CHECK_INT(count, 0);
    free(list);
}

/// All or none, in words.
static void what_is_no_break_is_refused_in_words(void) {
    static const char *const wrong[] = {
        "",
        "{}",
        "[]",
        "{\"entries\":{}}",
        "{\"entries\":[1]}",
        "{\"entries\":[],\"more\":1}",
        "{\"entries\":[{\"id\":\"x\",\"outcome\":\"goal\",\"offence\":9}]}",
        "{\"entries\":[{\"id\":\"x\",\"outcome\":\"goal\",\"offence\":4,\"defence\":5}]}",
        "{\"entries\":[{\"id\":\"x\",\"outcome\":\"touchdown\"}]}",
        "{\"entries\":[{\"id\":\"x\"}]}",
        "{\"entries\":[{\"outcome\":\"goal\"}]}",
        "{\"entries\":[{\"id\":\"x y\",\"outcome\":\"goal\"}]}",
        "{\"entries\":[{\"id\":\"x\",\"outcome\":\"goal\",\"shot_x_m\":1}]}",
        "{\"entries\":[{\"id\":\"x\",\"outcome\":\"goal\",\"passes\":1.5}]}",
        "{\"entries\":[{\"id\":\"x\",\"outcome\":\"goal\",\"note\":\"two\\nlines\"}]}",
        "{\"entries\":[{\"id\":\"x\",\"outcome\":\"goal\",\"birthday\":\"2010-01-01\"}]}",
        "{\"entries\":[{\"id\":\"x\",\"outcome\":\"goal\",\"out\":[1]}]}",
        "{\"entries\":[{\"id\":\"x\",\"outcome\":\"goal\",\"time\":\"yesterday\"}]}",
        ("{\"entries\":[{\"id\":\"x\",\"outcome\":\"goal\",\"game\":{\"date\":\"2026-02-30\","
         "\"opponent\":\"Saltreach\"}}]}"),
        "{\"entries\":[{\"id\":\"x\",\"outcome\":\"goal\",\"game\":99}]}",
        "{\"entries\":[{\"id\":\"good\",\"outcome\":\"goal\"},{\"id\":\"x\",\"outcome\":\"no\"}]}",
        "{\"entries\":[{\"id\":\"x\",\"outcome\":\"goal\"}",
        "\xff\xfe",
    };
    int count;
    for (int i = 0; i < BW_COUNT(wrong); i++) {
        const int status = ask("POST", "/api/team/entries", wrong[i]);
        CHECK_INT(status, 422);
        CHECK(test_in_words());
    }
    free(in_file(&count));
    CHECK_INT(count, 0);
    static char many[8000] = "{\"entries\":[";
    for (int i = 0; i <= BW_SENT_MAX; i++)
        snprintf(many + strlen(many), 80, "%s{\"id\":\"m%d\",\"outcome\":\"goal\"}", i ? "," : "",
                 i);
    strcat(many, "]}");
    CHECK_INT(ask("POST", "/api/team/entries", many), 422);
    CHECK(test_in_words());
}

static void players_sprints_and_games_are_kept(void) {
    CHECK_INT(ask("POST", "/api/team/players",
                  "{\"jersey\":0,\"initials\":\"A.B.\",\"spots\":[{\"spot\":\"TL\",\"fixed\":true},"
                  "{\"spot\":\"M\"}]}"),
              200);
    CHECK_INT(ask("POST", "/api/team/splits",
                  "{\"jersey\":0,\"date\":\"2026-03-02\",\"distance_m\":10,\"seconds\":1.9,"
                  "\"clock\":\"move\"}"),
              200);
    CHECK_INT(ask("POST", "/api/team/games",
                  "{\"date\":\"2026-04-18\",\"opponent\":\"Gull Bay\",\"field\":\"away\"}"),
              200);
    // What is hardly meant is kept when it is said so; a break from the sideline is kept and told of.
    static const char rocket[] = "{\"jersey\":0,\"date\":\"2026-03-02\",\"distance_m\":18.288,"
                                 "\"seconds\":0.9,\"clock\":\"move\"}";
    CHECK_INT(ask("POST", "/api/team/splits", rocket), 409);
    CHECK(strstr(got.body, "faster than anybody has run") && test_in_words());
    CHECK_INT(ask("POST", "/api/team/games",
                  "{\"date\":\"2026-04-19\",\"opponent\":\"Gul Bay\",\"field\":\"\"}"),
              409);
    CHECK_INT(ask("GET", "/api/team", NULL), 200);
    CHECK(!strstr(got.body, "\"seconds\":0.9") && !strstr(got.body, "Gul Bay"));
    CHECK_INT(ask("POST", "/api/team/splits?odd=keep", rocket), 200);
    CHECK_INT(ask("POST", "/api/team/entries",
                  "{\"entries\":[{\"id\":\"odd-1\",\"outcome\":\"goal\",\"stage\":6},"
                  "{\"id\":\"odd-2\",\"outcome\":\"goal\",\"stage\":4}]}"),
              200);
    CHECK(strstr(got.body, "\"fresh\":true,\"odd\":\"the stage for 6 defenders was called"));
    CHECK(strstr(got.body, "\"fresh\":true}"));
    // Put right, a break is looked at likewise.
    const char *at = strstr(got.body, "\"odd-2\",\"number\":");
    char target[60];
    snprintf(target, sizeof target, "/api/team/entries/%d", at ? atoi(at + 17) : 0);
    CHECK_INT(ask("PUT", target, "{\"id\":\"x\",\"outcome\":\"goal\",\"stage\":6}"), 200);
    CHECK(strstr(got.body, "{\"entries\":[{\"id\":\"odd-2\"") &&
          strstr(got.body, "\"fresh\":false,\"odd\":\"the stage for 6 defenders was called"));
    CHECK_INT(ask("PUT", target, "{\"id\":\"x\",\"outcome\":\"goal\",\"stage\":4}"), 200);
    CHECK(!strstr(got.body, "\"odd\""));
    CHECK_INT(ask("GET", "/api/team", NULL), 200);
    CHECK(strstr(got.body, "\"jersey\":0,\"initials\":\"A.B.\""));
    CHECK(strstr(got.body, "{\"spot\":\"TL\",\"fixed\":true}"));
    CHECK(strstr(got.body, "\"distance_m\":10,\"seconds\":1.9,\"clock\":\"move\""));
    CHECK(strstr(got.body, "\"opponent\":\"Gull Bay\",\"field\":\"away\""));
    CHECK(strstr(got.body, "\"full_names\":false"));
    char mark[40], again[40];
    test_member("mark", mark, sizeof mark);
    CHECK_INT(strlen(mark), 32);
    CHECK_INT(ask("GET", "/api/team", NULL), 200);
    test_member("mark", again, sizeof again);
    CHECK(strcmp(mark, again) == 0); // the file's own, for good
    static const char *const wrong[][2] = {
        {"/api/team/players", "{\"initials\":\"A.B.\"}"},
        {"/api/team/players", "{\"jersey\":1000}"},
        {"/api/team/players", "{\"jersey\":5,\"name\":\"Somebody Whole\"}"}, // names are off
        {"/api/team/players", "{\"jersey\":5,\"spots\":[{\"spot\":\"TOOLONG\"}]}"},
        {"/api/team/splits", "{\"jersey\":0,\"date\":\"2026-03-02\"}"},
        {"/api/team/splits",
         "{\"jersey\":77,\"date\":\"2026-03-02\",\"distance_m\":10,\"seconds\":2,"
         "\"clock\":\"move\"}"},
        {"/api/team/games", "{\"date\":\"2026-04-18\"}"},
        {"/api/team/games", "{\"date\":\"18.4.2026\",\"opponent\":\"Gull Bay\"}"},
    };
    for (int i = 0; i < BW_COUNT(wrong); i++) {
        const int status = ask("POST", wrong[i][0], wrong[i][1]);
        CHECK(status == 422 || status == 404);
        CHECK(test_in_words());
    }
}

/// A thing of each table with every member there is, where it is sent, and what stands round it.
static const struct whole {
    const char *table, *target, *before, *body, *after;
} wholes[] = {
    {"break", "/api/team/entries", "{\"entries\":[",
     "{\"number\":1,\"id\":\"w1\",\"time\":\"2026-04-11T18:05:00Z\",\"game\":{\"id\":9,\"date\":"
     "\"2026-04-11\",\"opponent\":\"Saltreach\",\"field\":\"home\"},\"offence\":6,\"defence\":4,"
     "\"outcome\":\"goal\",\"seconds\":4.5,\"passes\":3,\"shot_x_m\":-2.5,\"shot_y_m\":7,"
     "\"out\":[\"TL\",\"12\"],\"stage\":4,\"revision\":1,\"note\":\"slow\"}",
     "]}"},
    {"game", "/api/team/games", "",
     "{\"id\":9,\"date\":\"2026-04-11\",\"opponent\":\"Saltreach\",\"field\":\"home\"}", ""},
    {"player", "/api/team/players", "",
     "{\"jersey\":0,\"initials\":\"A.B.\",\"name\":\"\",\"spots\":[{\"spot\":\"TL\",\"fixed\":true}"
     "]}",
     ""},
    {"spot", "/api/team/players", "{\"jersey\":0,\"spots\":[", "{\"spot\":\"TL\",\"fixed\":true}",
     "]}"},
    {"sprint", "/api/team/splits", "",
     "{\"jersey\":0,\"date\":\"2026-03-02\",\"distance_m\":10,\"seconds\":1.9,\"clock\":\"move\"}",
     ""},
    {"forget", "/api/team/places", "",
     "{\"jersey\":0,\"name\":\"A. B.\",\"seen\":\"99aa1fc0\",\"places\":1,\"strike\":[1]}", ""},
};

static void put_revision(void) {
    bw_team *team;
    bw_error error;
    static bw_scheme scheme;
    int64_t revision;
    bw_scheme_fresh(0, 3, &scheme);
    CHECK(bw_team_open(path, BW_TEAM_WRITE, &team, &error) == BW_OK);
    CHECK(bw_team_save_scheme(team, &scheme, 50, "", &revision, NULL, &error) == BW_OK);
    bw_team_close(team);
}

/// Every member of every table is told to the page and taken from it, and no other is.
static void what_is_told_is_what_is_taken(void) {
    char body[900], told[300];
    put_revision();
    for (int i = 0; bw_team_form_at(i); i++) {
        const bw_form_table *table = bw_team_form_at(i);
        const struct whole *w = &wholes[i];
        CHECK(i < BW_COUNT(wholes) && strcmp(w->table, table->name) == 0);
        CHECK_INT(ask("GET", "/api/team", NULL), 200);
        snprintf(told, sizeof told, "\"%s\":{\"%s\":{\"is\":", table->name, table->members[0].key);
        CHECK(strstr(got.body, told));
        for (int k = 0; k < table->count; k++) {
            snprintf(told, sizeof told, "\"%s\":", table->members[k].key);
            CHECK(strstr(w->body, told));
            CHECK(strstr(strstr(got.body, "\"takes\""), told));
        }
        snprintf(body, sizeof body, "%s%s%s", w->before, w->body, w->after);
        CHECK_INT(ask("POST", w->target, body), 200);
        snprintf(body, sizeof body, "%s%.*s,\"birthday\":1}%s", w->before, (int)strlen(w->body) - 1,
                 w->body, w->after);
        CHECK_INT(ask("POST", w->target, body), 422);
        CHECK(strstr(got.body, "a key that is not known here"));
    }
}

/// The object number `index` of a list in the last answer, braces and all.
static bool object_in(const char *list, int index, char *out, size_t room) {
    char key[40];
    snprintf(key, sizeof key, "\"%s\":[", list);
    const char *at = strstr(got.body, key), *begin = NULL;
    if (!at) return false;
    int depth = 0, seen = -1;
    for (at += strlen(key); *at && (depth > 0 || *at != ']'); at++) {
        if (*at == '{' && depth++ == 0) {
            begin = at;
            seen++;
        }
        if (*at == '}' && --depth == 0 && seen == index)
            return (size_t)snprintf(out, room, "%.*s", (int)(at + 1 - begin), begin) < room;
    }
    return false;
}

/// A page may send back what it was given: a break into a game that it knows from here, above all.
static void what_is_given_is_taken(void) {
    static const char *const lists[][2] = {{"games", "/api/team/games"},
                                           {"players", "/api/team/players"},
                                           {"splits", "/api/team/splits"}};
    char given[600], body[900], target[64], id[40];
    int count, number;
    what_is_told_is_what_is_taken();
    for (int i = 0; i < BW_COUNT(lists); i++) {
        CHECK_INT(ask("GET", "/api/team", NULL), 200);
        CHECK(object_in(lists[i][0], 0, given, sizeof given));
        CHECK_INT(ask("POST", lists[i][1], given), 200);
    }
    CHECK_INT(ask("GET", "/api/team/entries", NULL), 200);
    CHECK(object_in("entries", 0, given, sizeof given));
    CHECK(sscanf(given, "{\"number\":%d,\"id\":\"%39[^\"]", &number, id) == 2);
    snprintf(target, sizeof target, "/api/team/entries/%d", number);
    CHECK_INT(ask("PUT", target, given), 200);
    snprintf(body, sizeof body, "{\"entries\":[%s]}", given);
    CHECK_INT(ask("POST", "/api/team/entries", body), 200);
    CHECK_INT(ask("GET", "/api/team", NULL), 200);
    CHECK(object_in("games", 0, given, sizeof given));
    snprintf(body, sizeof body,
             "{\"entries\":[{\"id\":\"next\",\"outcome\":\"goal\",\"game\":%s}]}", given);
    CHECK_INT(ask("POST", "/api/team/entries", body), 200);
    bw_entry *list = in_file(&count);
    CHECK(count == 2 && list[0].game == list[1].game && list[1].game > 0);
    free(list);
}

/// A break that names what is not in the file is refused, for it would wait for ever; one that is gone is
/// not there.
static void a_break_of_nothing_is_refused(void) {
    CHECK_INT(ask("POST", "/api/team/entries", one), 200);
    CHECK_INT(ask("PUT", "/api/team/entries/1", "{\"id\":\"a1\",\"outcome\":\"goal\",\"game\":99}"),
              422);
    CHECK_INT(ask("PUT", "/api/team/entries/9", "{\"id\":\"a1\",\"outcome\":\"goal\",\"game\":99}"),
              404);
    CHECK_INT(ask("POST", "/api/team/entries",
                  "{\"entries\":[{\"id\":\"x\",\"outcome\":\"goal\",\"revision\":77}]}"),
              422);
    CHECK(test_in_words());
}

static void another_team_s_page_is_refused(void) {
    char mark[40], target[100];
    CHECK_INT(ask("GET", "/api/team", NULL), 200);
    test_member("mark", mark, sizeof mark);
    snprintf(target, sizeof target, "/api/team/entries?mark=%s", mark);
    CHECK_INT(ask("POST", target, one), 200);
    mark[0] = mark[0] == '0' ? '1' : '0';
    snprintf(target, sizeof target, "/api/team/entries?mark=%s", mark);
    CHECK_INT(ask("POST", target, one), 410);
    CHECK(test_in_words());
    snprintf(target, sizeof target, "/api/team/entries/1?mark=%s", mark);
    CHECK_INT(ask("DELETE", target, NULL), 410);
    CHECK_INT(ask("GET", "/api/team/entries", NULL), 200);
    CHECK(strstr(got.body, "\"a1\""));
}

static void a_player_is_forgotten_as_chosen(void) {
    char seen[16], body[160];
    CHECK_INT(ask("POST", "/api/team/players", "{\"jersey\":12,\"initials\":\"Q.Z.\"}"), 200);
    CHECK_INT(
        ask("POST", "/api/team/entries",
            "{\"entries\":[{\"id\":\"f1\",\"outcome\":\"goal\",\"note\":\"Zimmer; no 12; Q.Z.; "
            "Zimmer, Quillon\"}]}"),
        200);
    CHECK_INT(ask("POST", "/api/team/places", "{\"jersey\":12,\"name\":\"Quillon Zimmer\"}"), 200);
    CHECK(strstr(got.body, "\"said\":\"Zimmer, Quillon\""));
    CHECK(strstr(got.body, "\"number\":4") && !strstr(got.body, "\"number\":5"));
    test_member("seen", seen, sizeof seen);
    static const char *const wrong[] = {"{}",
                                        "{\"jersey\":12,\"seen\":\"xyz\"}",
                                        "{\"jersey\":12,\"places\":4,\"strike\":[5]}",
                                        "{\"jersey\":12,\"places\":4,\"strike\":[1.5]}",
                                        "{\"jersey\":12,\"places\":4,\"strike\":[\"1\"]}",
                                        "{\"jersey\":12,\"places\":4,\"seen\":\"00000000\"}",
                                        "{\"jersey\":99}"};
    for (int i = 0; i < BW_COUNT(wrong); i++) {
        const int status = ask("POST", "/api/team/forget", wrong[i]);
        CHECK(status == 422 || status == 404);
        CHECK(test_in_words());
    }
    snprintf(body, sizeof body,
             "{\"jersey\":12,\"name\":\"Quillon "
             "Zimmer\",\"seen\":\"%s\",\"places\":4,\"strike\":[1,3,4]}",
             seen);
    CHECK_INT(ask("POST", "/api/team/forget", body), 200);
    CHECK(strstr(got.body, "\"texts\":1,\"left\":1"));
    CHECK_INT(ask("GET", "/api/team/entries", NULL), 200);
    CHECK(strstr(got.body, "\"note\":\"_; no 12; _; _\""));
    CHECK_INT(ask("POST", "/api/team/places", "{\"jersey\":12}"), 404);
}

static void the_review_counts_what_is_there(void) {
    CHECK_INT(ask("GET", "/api/team/review", NULL), 200);
    CHECK(strstr(got.body, "\"breaks\":0"));
    CHECK_INT(ask("POST", "/api/team/entries", one), 200);
    CHECK_INT(ask("GET", "/api/team/review", NULL), 200);
    CHECK(strstr(got.body, "\"hits\":1,\"n\":1,\"too_few\":true"));
    CHECK_INT(ask("GET", "/api/team/review?as=page&width=300", NULL), 200);
    CHECK(strstr(got.body, "1 of 1, too few to say") && strstr(got.body, "<svg"));
    CHECK_INT(ask("GET", "/api/team/review?as=poem", NULL), 400);
    CHECK_INT(ask("GET", "/api/team/review?width=9000", NULL), 400);
    CHECK(test_in_words());
}

/// Waits for run number `id` and leaves its file in `got`.
static int finished(int id) {
    char target[60];
    snprintf(target, sizeof target, "/api/jobs/%d", id);
    do {
        test_wait();
        atomic_store(&test_now, test_now + 1);
        if (ask("GET", target, NULL) != 200) return got.status;
    } while (strstr(got.body, "\"running\""));
    strcat(target, "/file");
    return ask("GET", target, NULL);
}

static void the_review_is_made_as_a_run_too(void) {
    CHECK_INT(ask("POST", "/api/team/entries", one), 200);
    CHECK_INT(ask("POST", "/api/jobs?kind=review&seen=1", ""), 202);
    CHECK_INT(finished(1), 200);
    CHECK(strstr(got.body, "\"parts\":["));
    CHECK_INT(ask("POST", "/api/jobs?kind=review-pages", ""), 202);
    CHECK_INT(finished(2), 200);
    CHECK(memcmp(got.body, "%PDF-", 5) == 0);
    CHECK_INT(ask("POST", "/api/jobs?kind=review&width=1", ""), 422);
    CHECK(test_in_words());
}

/// Devices that joined see nothing of the team file, at either door.
static void players_have_none_of_it(void) {
    bw_share_view view;
    char host[60], origin[100], secret[40], heads[300], target[64];
    bw_server_look(d.server, &view);
    snprintf(host, sizeof host, "%.*s", (int)strcspn(view.base + 7, "/"), view.base + 7);
    snprintf(origin, sizeof origin, "Origin: http://%s\r\n", host);
    const int port = atoi(strrchr(host, ':') + 1);
    CHECK_INT(test_ask(port, host, "POST", "/api/join?name=17", origin, view.code), 200);
    test_member("secret", secret, sizeof secret);
    snprintf(heads, sizeof heads, "%sBreakwater-Secret: %s\r\n", origin, secret);
    CHECK_INT(test_ask(port, host, "GET", "/api/scheme", heads, NULL), 200);
    CHECK_INT(test_ask(port, host, "GET", "/api/hello", heads, NULL), 200);
    CHECK(strstr(got.body, "\"team\":false"));
    int tried = 0;
    for (int i = 0; bw_route_at(i); i++) {
        const bw_route *r = bw_route_at(i);
        if (strncmp(r->path, "/api/team", 9) != 0) continue;
        CHECK(r->rights == BW_COACH);
        const char *hash = strchr(r->path, '#');
        snprintf(target, sizeof target, "%.*s%s", (int)(hash ? hash - r->path : 60), r->path,
                 hash ? "1" : "");
        CHECK_INT(test_ask(port, host, r->method, target, heads, r->room ? "{}" : NULL), 403);
        CHECK(test_in_words());
        CHECK(test_ask(d.port, d.host, r->method, target, heads, r->room ? "{}" : NULL) == 403);
        tried++;
    }
    CHECK_INT(tried, 11);
}

static void without_a_team_file_there_is_none(void) {
    desk_close(&d);
    CHECK(desk_open(&d, NULL, false));
    CHECK_INT(ask("GET", "/api/team", NULL), 503);
    CHECK(test_in_words());
    CHECK_INT(ask("POST", "/api/team/entries", one), 503);
    CHECK_INT(ask("POST", "/api/jobs?kind=review", ""), 422);
    CHECK(test_in_words());
}

static void a_file_that_is_gone_is_said_and_comes_back(void) {
    char away[260];
    snprintf(away, sizeof away, "%s.away", path);
    CHECK(rename(path, away) == 0);
    CHECK_INT(ask("POST", "/api/team/entries", one), 503);
    CHECK(test_in_words());
    CHECK(rename(away, path) == 0);
    CHECK_INT(ask("POST", "/api/team/entries", one), 200);
}

static void clean(void) {
    char command[300];
    snprintf(command, sizeof command, "%s-wal", path);
    unlink(command);
    snprintf(command, sizeof command, "%s-shm", path);
    unlink(command);
    unlink(path);
}

static void run_at_a_desk(void (*test)(void)) {
    bw_error error;
    clean();
    CHECK(bw_team_create(path, &error) == BW_OK);
    char file[300];
    const char *root = getenv("BW_ROOT");
    snprintf(file, sizeof file, "%s/examples/terns.json", root ? root : ".");
    CHECK(desk_open_team(&d, file, path, true));
    test();
    desk_close(&d);
}

#define RUN_AT_A_DESK(test) RUN_AS(#test, run_at_a_desk(test))

int main(int argc, char **argv) {
    snprintf(folder, sizeof folder, "%s/breakwater-XXXXXX",
             getenv("TMPDIR") ? getenv("TMPDIR") : "/tmp");
    CHECK(mkdtemp(folder) != NULL);
    snprintf(path, sizeof path, "%s/terns.team", folder);
    RUN_AT_A_DESK(a_break_is_kept_once_however_often_it_comes);
    RUN_AT_A_DESK(a_break_is_put_right_and_taken_out_for_good);
    RUN_AT_A_DESK(what_is_no_break_is_refused_in_words);
    RUN_AT_A_DESK(players_sprints_and_games_are_kept);
    RUN_AT_A_DESK(what_is_told_is_what_is_taken);
    RUN_AT_A_DESK(what_is_given_is_taken);
    RUN_AT_A_DESK(a_break_of_nothing_is_refused);
    RUN_AT_A_DESK(another_team_s_page_is_refused);
    RUN_AT_A_DESK(a_player_is_forgotten_as_chosen);
    RUN_AT_A_DESK(the_review_counts_what_is_there);
    RUN_AT_A_DESK(the_review_is_made_as_a_run_too);
    RUN_AT_A_DESK(players_have_none_of_it);
    RUN_AT_A_DESK(without_a_team_file_there_is_none);
    RUN_AT_A_DESK(a_file_that_is_gone_is_said_and_comes_back);
    clean();
    rmdir(folder);
    return test_report(argc, argv);
}
