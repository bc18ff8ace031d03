// SPDX-License-Identifier: GPL-3.0-or-later
// How often the board draws while a finger drags: counted, not timed (bench/frames.mjs measures).
import assert from 'node:assert/strict';
import { boardTests, middle, rest } from './page.mjs';

const { check, withBoard } = await boardTests();

/** Runs in the page before it: keeps in which frame the core was asked to draw, and what for. */
function countDraws() {
  globalThis.frame = 0; // 0 between frames
  globalThis.draws = [];
  const ask = globalThis.requestAnimationFrame.bind(globalThis);
  globalThis.requestAnimationFrame = (act) => ask((now) => {
    globalThis.frame = now;
    act(now);
    globalThis.frame = 0;
  });
  const load = WebAssembly.instantiate;
  WebAssembly.instantiate = async (...given) => {
    const { instance, module } = await load(...given);
    const { bw_page_draw_part: draw, bw_page_drag: drag } = instance.exports;
    const exports = { ...instance.exports,
      bw_page_draw_part(width, height, parts) {
        globalThis.draws.push({ frame: globalThis.frame, parts });
        draw(width, height, parts);
      },
      bw_page_drag(token, x, y) {
        globalThis.draws.push({ frame: globalThis.frame, parts: 0 });
        drag(token, x, y);
      } };
    return { instance: { exports }, module };
  };
}

check('rule 16: a drag draws at most once a frame, from the newest point, and the ground not at all', async () => {
  for (const danger of [false, true]) {
    await withBoard(async (page) => {
      if (danger) await page.check('#danger');
      await page.evaluate(() => scrollTo(0, 0));
      await rest(page);
      const from = await middle(page, 'Ball');
      await page.mouse.move(from.x, from.y);
      await page.mouse.down();
      const { draws, off } = await page.evaluate(async ({ x, y }) => {
        const field = document.getElementById('field'), [ball] = document.getElementById('tokens').children;
        const next = () => new Promise((done) => { requestAnimationFrame(() => setTimeout(done)); });
        const off = [];
        globalThis.draws.length = 0;
        for (let round = 1; round <= 30; round++) {
          let clientX, clientY;
          for (let i = 5; i >= 0; i--) { // far from the newest, then nearer
            [clientX, clientY] = [x + 5 * round - 8 * i, y + 6 * round - 8 * i];
            field.dispatchEvent(new PointerEvent('pointermove', { pointerId: 1, clientX, clientY, bubbles: true }));
          }
          await next();
          const box = ball.getBoundingClientRect();
          off.push(Math.hypot(box.x + box.width / 2 - clientX, box.y + box.height / 2 - clientY));
        }
        return { draws: globalThis.draws, off };
      }, from);
      await page.mouse.up();
      assert.ok(Math.max(...off) < 2, `${Math.max(...off)} px from the finger`); // a tenth of a yard is 1.6 px
      const times = (asked) => draws.filter(({ parts }) => asked(parts)).map(({ frame }) => frame);
      for (const each of [times((parts) => parts === 0), times((parts) => parts & 2)]) {
        assert.ok(each.length >= 30);
        assert.ok(!each.includes(0), 'drawn between two frames');
        assert.equal(new Set(each).size, each.length, 'drawn twice in a frame');
      }
      assert.equal(times((parts) => parts & 1).length, 0);
    }, { before: countDraws });
  }
});
