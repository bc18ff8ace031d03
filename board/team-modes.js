// SPDX-License-Identifier: GPL-3.0-or-later
// The modes that a team file brings, and the page's way back to a program that was started anew.
import { Log } from './log.js';
import { Review } from './review.js';
import { Roster } from './roster.js';
import { Team } from './team.js';

/** @typedef {import('./board.js').Board} Board */
/** @typedef {import('./server.js').Server} Server */

/** A new launch address opened in this very tab changes only its fragment: the token is taken and what
 * waits goes on, unless the program is on another team's file now; then the page begins again, and what waits
 * keeps to its own file. @param {Board} board @param {Server} server @param {Log | null} log */
function followToken(board, server, log) {
  addEventListener('hashchange', async () => {
    const given = /^#start=([A-Za-z0-9-]+)$/.exec(location.hash);
    if (!given) return;
    history.replaceState(null, '', `${location.pathname}#${board.modes.now?.id ?? ''}`);
    try {
      await server.enter('start', given[1]);
      if (!log || await log.team.gone()) {
        location.reload(); // so does a page that had no rights
      } else {
        log.sync.now();
        board.say('The program is there again.');
      }
    } catch (error) {
      board.warn(/** @type {Error} */ (error).message);
    }
  });
}

/** @param {Board} board @param {Server} server */
export async function offerTeam(board, server) {
  if (server.hello.shared) return;
  /** @type {Log | null} */
  let log = null;
  if (server.coach && server.hello.team) {
    const team = new Team(server);
    try {
      await team.read();
      log = new Log(board, team);
      await log.begin();
      for (const mode of [log, new Roster(board, team), new Review(board, team)]) board.modes.register(mode);
    } catch (error) {
      board.warn(/** @type {Error} */ (error).message);
    }
  }
  followToken(board, server, log);
}
