/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The verb `board`: the board in a browser, served to this computer and, when asked, to the network.
#include "cli/board_talk.h"
#include "cli/load.h"
#include "cli/out.h"
#include "cli/say.h"
#include "file/document.h"
#include "file/json_stream.h"
#include "serve/assets.h"
#include "serve/listen.h"
#include "team/team.h"
#include <poll.h>
#include <signal.h>
#include <stdio.h>
#include <string.h>
#include <unistd.h>

enum { TICK_MS = 200 };

/// A signal handler can reach nothing but a global.
static volatile sig_atomic_t stopped;

static void stop(int signal) {
    (void)signal;
    stopped = 1;
}

static void catch_signals(void) {
    struct sigaction end = {.sa_handler = stop}, none = {.sa_handler = SIG_IGN};
    sigemptyset(&end.sa_mask);
    sigemptyset(&none.sa_mask);
    sigaction(SIGINT, &end, NULL);
    sigaction(SIGTERM, &end, NULL);
    sigaction(SIGHUP, &end, NULL);
    sigaction(SIGPIPE, &none, NULL);
}

/// Waits one tick; true when somebody pressed Enter at the terminal.
static bool entered(bool terminal) {
    struct pollfd input = {.fd = STDIN_FILENO, .events = POLLIN};
    if (poll(&input, terminal ? 1 : 0, TICK_MS) <= 0 || !(input.revents & POLLIN)) return false;
    char line[256];
    return read(STDIN_FILENO, line, sizeof line) > 0;
}

static int give_address(const bw_args *args, bw_server *server) {
    char address[BW_ADDRESS_LINE];
    bw_text t = bw_text_in(address, sizeof address);
    if (!bw_server_launch(server, &t)) {
        bw_say_error("the system has no random numbers to give.");
        return BW_EXIT_FILE;
    }
    bw_out out;
    if (!bw_out_open(args, &out)) return BW_EXIT_FILE;
    if (bw_option_given(args, "json")) {
        bw_json json = bw_json_to(out.stream);
        bw_json_open(&json, '{');
        bw_json_put_text(&json, "address", address);
        bw_json_put_number(&json, "port", bw_server_port(server));
        bw_json_close(&json, '}');
        bw_json_end(&json);
    } else {
        fprintf(out.stream, "%s\n", address);
    }
    return bw_out_close(&out, BW_EXIT_OK);
}

static int serve(const bw_args *args, bw_server *server) {
    const bool terminal = isatty(STDIN_FILENO);
    bw_share_view before = {.open = false};
    int code = give_address(args, server);
    if (code == BW_EXIT_OK) bw_board_greet(terminal);
    while (!stopped && code == BW_EXIT_OK) {
        bw_server_tick(server);
        bw_board_tell(server, &before);
        if (entered(terminal)) code = give_address(args, server);
    }
    if (code == BW_EXIT_OK) bw_say("Stopped.");
    return code;
}

/// The self-contained page as a file.
static int save_page(const char *path) {
    const bw_asset *page = bw_asset_one_file();
    bw_error error = {.status = BW_OK};
    const size_t length = bw_asset_length(page);
    if (bw_file_save(path, page->begin, length, &error) != BW_OK)
        return bw_say_refusal(path, &error);
    if (strcmp(path, "-") != 0)
        bw_say("Wrote %s: the board as one page of %d kB; open it in any browser, also without a "
               "network.",
               path, (int)(length / 1000));
    return BW_EXIT_OK;
}

/// Host names as browsers send them: letters, digits, dots and dashes.
static bool is_host(const char *text) {
    size_t n = strspn(text, "abcdefghijklmnopqrstuvwxyz0123456789.-");
    return n > 0 && n < 64 && text[n] == '\0';
}

static int read_options(const bw_args *args, bw_server_def *def) {
    if (!bw_option_int(args, "port", BW_PORT_MIN, BW_PORT_MAX, &def->port) ||
        !bw_option_int(args, "minutes", 1, BW_SHARE_MINUTES_MAX, &def->minutes))
        return BW_EXIT_USAGE;
    def->share = bw_option_given(args, "share");
    def->host = bw_option_text(args, "host");
    def->address = bw_option_text(args, "address");
    if (def->host && !is_host(def->host))
        return bw_usage(args->verb, "--host is a name such as coach.local, not \"%s\".", def->host);
    if (def->address && !bw_is_address(def->address))
        return bw_usage(args->verb, "--address is four numbers such as 192.168.1.5, not \"%s\".",
                        def->address);
    return BW_EXIT_OK;
}

/// Opened once before anything is served, so that a wrong file is refused here and not on the page.
static int look_at_team(const char *path) {
    bw_team *team;
    bw_error error;
    if (bw_team_open(path, BW_TEAM_WRITE, &team, &error) != BW_OK)
        return bw_say_refusal(path, &error);
    bw_team_close(team);
    return BW_EXIT_OK;
}

static int run(const bw_args *args) {
    static bw_scheme scheme;
    bw_server_def def = {.minutes = BW_SHARE_MINUTES, .team = bw_option_text(args, "team")};
    const char *save = bw_option_text(args, "save");
    if (save && args->operand_count > 0)
        return bw_usage(args->verb, "--save writes the page without a scheme; leave FILE out.");
    if (save) return save_page(save);
    int code = read_options(args, &def);
    if (code == BW_EXIT_OK && args->operand_count > 0) {
        def.file = args->operands[0];
        if (strcmp(def.file, "-") == 0)
            return bw_usage(args->verb, "the board saves into its file; name one instead of -.");
        code = bw_load_scheme(args, &scheme);
    }
    if (code == BW_EXIT_OK && def.team) code = look_at_team(def.team);
    if (code != BW_EXIT_OK) return code;
    catch_signals();
    char room[200];
    bw_text why = bw_text_in(room, sizeof room);
    bw_server *server = bw_server_open(&def, &why);
    if (!server) {
        bw_say_error("%s", why.data);
        return BW_EXIT_FILE;
    }
    code = serve(args, server);
    bw_server_close(server);
    return code;
}

static const bw_option options[] = {
    {.name = "team",
     .value = "TEAM",
     .file = true,
     .help = "The team file: log breaks, keep the roster, see the review"},
    {.name = "port",
     .value = "N",
     .help = "Port on this computer; 7460 when not given, or a free one when that is taken"},
    {.name = "share", .help = "Let devices of the local network in, by a code, for a time"},
    {.name = "minutes", .value = "N", .standard = "120", .help = "How long sharing lasts"},
    {.name = "host",
     .value = "NAME",
     .help = "Name that the network knows this computer by, instead of its address"},
    {.name = "address",
     .value = "ADDRESS",
     .help = "This computer's address to share on, when it has several"},
    {.name = "save",
     .value = "PAGE",
     .file = true,
     .help = "Write the board as one HTML file, and stop"},
};

const bw_command bw_command_board = {
    .name = "board",
    .operands = "[FILE]",
    .least = 0,
    .most = 1,
    .summary = "open the board in a browser: see, move, edit, test and share a scheme",
    .text =
        "Prints an address; open it in a browser on this computer. It is good for one opening: "
        "press Enter in the terminal for another. The page's Save writes FILE, whole or not at "
        "all, and not over an edit that was made elsewhere in the meantime. Without FILE it shows "
        "the example. Ctrl-C stops the server, and the exit code is then 0.\n\n"
        "Only this computer can reach the board, until --share or the page's Share opens it to the "
        "local network. A device joins with a code of eight letters, shown here and on the page, "
        "as text and as a picture to scan. A code lets one device in and is good for ten minutes. "
        "Devices that joined can look, nothing else; the page lists them and removes them. Sharing "
        "is plain HTTP: others on the same Wi-Fi can read what is sent. Put no surnames or birth "
        "dates into what you share.\n\n"
        "With --team the page has three more tabs: Log, for the sideline, with at most three taps "
        "a "
        "break; Roster; and Review. Breaks are kept in the browser until they are in the team "
        "file, "
        "so none is lost when the program stops; what is not in the file yet is sent when the page "
        "is opened again from the same port. Players' devices see nothing of the team file.\n\n"
        "Nothing is sent anywhere else. With --json: {\"address\",\"port\"}.",
    .examples =
        "breakwater board mine.json # the board on a scheme\n"
        "breakwater board mine.json --share --minutes 45 # and for the team's devices\n"
        "breakwater board mine.json --team terns.team # and the team file: log, roster, review\n"
        "breakwater board --save board.html # one page that works without the program\n",
    .options = options,
    .option_count = BW_COUNT(options),
    .run = run,
};
