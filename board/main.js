// SPDX-License-Identifier: GPL-3.0-or-later
// Starts the board. Core, fonts and example are inside the self-contained page, and beside a served one.
import bold from 'embedded:bold';
import core from 'embedded:core';
import demo from 'embedded:demo';
import regular from 'embedded:regular';
import { Board } from './board.js';
import { Design } from './design.js';
import { Lessons } from './lessons.js';
import { family } from './paint.js';
import { loadCore } from './core.js';
import { TestMode } from './test.js';
import { offerTeam } from './team-modes.js';
import { offerLooks } from './look.js';
import { offerPictures } from './pictures.js';
import { open } from './served.js';

/** The chart is lettered in the font whose widths the core knows. Without it, a system font. */
async function loadFonts() {
  const faces = [
    new FontFace(family, await regular()), new FontFace(family, await bold(), { weight: 'bold' }),
  ];
  for (const face of faces) document.fonts.add(await face.load());
}

async function start() {
  await loadFonts().catch(() => {});
  const board = new Board(await loadCore(await core()));
  offerLooks(board);
  offerPictures(board, { regular, bold });
  const server = await open(board, await demo());
  board.modes.register(new Design(board, server));
  board.modes.register(new TestMode(board));
  board.modes.register(new Lessons(board));
  if (server) await offerTeam(board, server);
  document.documentElement.dataset.ready = 'true';
}

start().catch((error) => {
  const notice = document.getElementById('notice');
  if (!notice) return;
  notice.hidden = false;
  notice.textContent = `The board cannot run in this browser: ${error.message}. `
    + 'A browser of the last four years can.';
});
