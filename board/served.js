// SPDX-License-Identifier: GPL-3.0-or-later
// What the page has on top when the program serves it: the coach's file, PDFs, sharing.
import { Files } from './files.js';
import { Prints } from './prints.js';
import { Server } from './server.js';
import { ServerFile } from './server_file.js';
import { Share, join } from './share.js';
import { download } from './savers.js';
import { find } from './dom.js';

/** @typedef {import('./board.js').Board} Board */

/** Opens what there is to open, and shows what may be done with it. Gives the server, or null.
 * @param {Board} board @param {string} example */
export async function open(board, example) {
  const found = await Server.find();
  const server = found?.server ?? null;
  const files = new Files(board, server?.hello.shared);
  if (!found || !server) {
    files.begin(example);
    return null;
  }
  if (server.hello.shared) await guest(files, example, server, found.refused);
  else await host(files, example, server, found.refused);
  return server;
}

/** The coach's own computer. @param {Files} files @param {string} example @param {Server} server
 * @param {string | null} refused */
async function host(files, example, server, refused) {
  await new ServerFile(files, server).begin(example);
  if (!server.coach) {
    files.board.warn(refused ?? 'Open the address that the program printed: this page cannot save or '
      + 'share. Press Enter where the program runs for a new one.');
    return;
  }
  new Share(server);
  new Prints(server, () => files.board.history.text,
    (kind) => `${files.baseName()}-${kind}.${kind === 'film' ? 'mp4' : 'pdf'}`, download);
}

/** A player's device: it looks, and nothing it moves is kept. @param {Files} files
 * @param {string} example @param {Server} server @param {string | null} refused */
async function guest(files, example, server, refused) {
  const file = new ServerFile(files, server);
  files.begin(example);
  for (const id of ['save', 'open']) find(id, HTMLButtonElement).hidden = true;
  if (server.hello.rights === 'nobody') {
    join(server, refused).then(() => file.begin(example));
  } else {
    await file.begin(example);
  }
}
