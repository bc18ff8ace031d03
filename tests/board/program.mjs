// SPDX-License-Identifier: GPL-3.0-or-later
// The program's `board` for a browser test: started, heard, ended with the test.
import { spawn } from 'node:child_process';
import { createServer } from 'node:net';
import { createInterface } from 'node:readline';
import { join } from 'node:path';
import { build } from './page.mjs';

/** Whether a server may listen there. @param {number} port @returns {Promise<boolean>} */
const listens = (port) => new Promise((done) => {
  const server = createServer().once('error', () => done(false));
  server.listen(port, '127.0.0.1', () => server.close(() => done(true)));
});

/** A port that stays free while a program is away and comes back to it: below those that systems hand out
 * to whoever asks for any, one of which could be another's by then. */
export async function lastingPort() {
  for (;;) {
    const port = 20000 + Math.floor(Math.random() * 12000);
    if (await listens(port)) return port;
  }
}

/** `breakwater board` with --json on `words`. Fails with what it said when it ends before it serves.
 * `stop` ends it, as Ctrl-C or as a crash would, and gives its exit code; the test's end does so too. */
export async function serveBoard(t, ...words) {
  const child = spawn(join(build, 'breakwater'), ['board', ...words, '--json']);
  let said = '';
  child.stderr.on('data', (data) => { said += data; });
  const gone = new Promise((done) => child.once('exit', done));
  const stop = async (signal = 'SIGINT') => {
    child.kill(signal);
    return gone;
  };
  t.after(() => stop());
  const line = await new Promise((done, fail) => {
    createInterface(child.stdout).once('line', done);
    gone.then((code) => fail(new Error(`the program ended with ${code}: ${said}`)));
  });
  return { ...JSON.parse(line), stop, said: () => said };
}
