// SPDX-License-Identifier: GPL-3.0-or-later
// frames.mjs [FILE]: drags the ball over the built board in a real browser and takes, from the browser's
// own trace, how long its main thread worked for each frame: input, our code, layout, paint. Prints the
// share of frames in time and the slowest twentieth, and adds them to the JSON array in FILE.
import { readFile, writeFile } from 'node:fs/promises';
import { frames, launch, middle, openBoard, reasonToSkip, wholeBrowser } from '../tests/board/page.mjs';

const cases = [
  { name: 'drag_frames', what: 'dragging the ball', danger: false, slower: 1, budget: 16.7 },
  { name: 'drag_frames_danger', what: 'the same with danger drawn', danger: true, slower: 1, budget: 16.7 },
  { name: 'drag_frames_slow', what: 'on a processor four times slower', danger: false, slower: 4, budget: 33 },
  { name: 'drag_frames_slow_danger', what: 'four times slower, danger drawn', danger: true, slower: 4, budget: 33 },
];
const categories = ['devtools.timeline', 'disabled-by-default-devtools.timeline', 'toplevel'];
const moves = 160; // of the finger, one about every frame

/** Processor milliseconds of each main-thread task that drew a frame: other work on the machine does not
 * count, a throttled processor's waiting does. */
function frameTimes(events) {
  const drawn = events.filter((e) => e.name === 'FireAnimationFrame');
  const thread = drawn[0]?.tid, process = drawn[0]?.pid;
  const tasks = events.filter((e) => e.name === 'RunTask' && e.ph === 'X' && e.tid === thread
    && e.pid === process).sort((a, b) => a.ts - b.ts);
  const times = new Map();
  let at = 0;
  for (const frame of drawn.sort((a, b) => a.ts - b.ts)) {
    while (at + 1 < tasks.length && tasks[at + 1].ts <= frame.ts) at++;
    const task = tasks[at];
    if (task && frame.ts < task.ts + task.dur) times.set(task.ts, task.tdur / 1000);
  }
  return [...times.values()];
}

/** Round and round over the field, the unit always running. */
async function dragAbout(page) {
  const from = await middle(page, 'Ball');
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  for (let i = 0; i < moves; i++) {
    await page.mouse.move(from.x + 170 * Math.sin(i / 20), from.y + 190 - 190 * Math.cos(i / 26));
    await page.waitForTimeout(12);
  }
  await page.mouse.up();
}

async function measure(browser, { danger, slower }) {
  const { page, context } = await openBoard(browser, { viewport: { width: 1280, height: 800 } });
  await page.selectOption('#set', { label: '2-2-2' });
  if (danger) await page.check('#danger');
  await page.evaluate(() => scrollTo(0, 0));
  await frames(page);
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slower });
  await browser.startTracing(page, { categories });
  await dragAbout(page);
  const { traceEvents } = JSON.parse((await browser.stopTracing()).toString());
  await context.close();
  return frameTimes(traceEvents).sort((a, b) => a - b);
}

const skip = await reasonToSkip();
if (skip) {
  console.log(`drag_frames not measured: ${skip}`);
  process.exit(0);
}
const out = process.argv[2];
const results = out ? JSON.parse(await readFile(out, 'utf8')) : [];
const browser = await launch([], wholeBrowser);
for (const one of cases) {
  const times = await measure(browser, one);
  const share = times.filter((ms) => ms < one.budget).length / times.length;
  const high = times[Math.floor(0.95 * (times.length - 1))];
  const value = Math.round(1000 * share) / 10;
  console.log(`${one.name.padEnd(30)} ${String(value).padStart(10)} in 100   ${one.what}: frames under `
    + `${one.budget} ms, of ${times.length}; 95 % in ${high.toFixed(1)} ms`);
  results.push({ name: one.name, what: `${one.what}: frames whose main-thread work took under ${one.budget} ms`,
    value, unit: 'in 100', frames: times.length, high_ms: Math.round(10 * high) / 10 });
}
await browser.close();
if (out) await writeFile(out, `${JSON.stringify(results, null, 1)}\n`);
