// SPDX-License-Identifier: GPL-3.0-or-later
// Design beyond dragging: the rule's sliders, attackers of one's own, the field larger.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { boardTests, drag, frames, middle, root, row, saved } from './page.mjs';

const { check, withBoard } = await boardTests();

check('a slider of the rule moves the unit while it slides, and is one step of undo', () =>
  withBoard(async (page) => {
    await page.locator('#rule summary').click();
    const was = (await row(page, 'top right'))[2];
    const track = await page.locator('#knob-0').boundingBox();
    const y = track.y + track.height / 2;
    await page.mouse.move(track.x + track.width * 0.43, y);
    await page.mouse.down();
    const seen = new Set([was]);
    for (const share of [0.4, 0.35, 0.3, 0.25, 0.2]) {
      await page.mouse.move(track.x + track.width * share, y);
      await frames(page);
      seen.add((await row(page, 'top right'))[2]);
    }
    assert.ok(seen.size >= 5, [...seen].join(' | '));
    await page.mouse.up();
    await frames(page);
    const { rule } = (await saved(page)).stages[1];
    assert.ok(rule.pickup > 4 && rule.pickup < 10, `pickup ${rule.pickup}`);
    await page.click('#undo');
    await frames(page);
    assert.equal((await row(page, 'top right'))[2], was);
    assert.ok(await page.locator('#undo').isDisabled());
    assert.equal(await page.inputValue('#knob-0'), '13');
  }));

check('every number of the rule is a native slider with its unit, turned by keys and by typing', () =>
  withBoard(async (page) => {
    await page.locator('#rule summary').click();
    const knobs = await page.locator('.knob').count();
    assert.equal(knobs, 9);
    for (let i = 0; i < knobs; i++) {
      const slider = page.locator(`#knob-${i}`);
      assert.equal(await slider.getAttribute('type'), 'range');
      assert.match(await slider.getAttribute('aria-valuetext'), / (yd|in 100)$/);
      const before = Number(await slider.inputValue());
      for (const [key, test] of [['ArrowRight', (v) => v > before], ['Home', (v) => v < before],
        ['PageUp', (v, last) => v > last], ['End', (v, last) => v > last]]) {
        const last = Number(await slider.inputValue());
        await slider.press(key);
        await frames(page);
        assert.ok(test(Number(await slider.inputValue()), last), `knob ${i}, ${key}`);
      }
      const box = page.locator('.knob').nth(i).locator('input[type=number]');
      await box.fill('0.61');
      await box.press('Tab');
      await frames(page);
      const low = Number(await slider.getAttribute('min'));
      assert.equal(Number(await box.inputValue()), Math.max(0.61, low));
    }
    await page.selectOption('#crease', { label: 'nobody' });
    await page.locator('label:has(#hold)').click();
    const { rule } = (await saved(page)).stages[1];
    assert.equal(rule.crease, 'none');
    assert.equal(rule.hold_behind, false);
  }));

check('the rule\'s panel is of the stage on the field, whoever chose it, and edits that one alone', () =>
  withBoard(async (page) => {
    const file = await saved(page), crease = { farthest: '-1', none: '-2' };
    const panel = async (stage) => {
      const { defenders, shape, rule, spots } = file.stages.find((one) => one.defenders === stage);
      await frames(page);
      assert.equal(await page.locator('#rule-stage').textContent(), `${defenders} in ${shape}`);
      assert.equal(Number(await page.inputValue('#knob-0')), rule.pickup);
      assert.equal(Number(await page.locator('.knob').first().locator('input[type=number]').inputValue()), rule.pickup);
      assert.equal(await page.inputValue('#crease'), crease[rule.crease] ?? String(spots.findIndex(({ id }) => id === rule.crease)));
      assert.equal(await page.locator('#crease option').count(), 2 + defenders);
    };
    const choose = (name) => page.locator('#stages label', { hasText: name }).click();
    await page.locator('#rule summary').click();
    await panel(4);
    await choose('5 in');
    await panel(5);
    await page.keyboard.press('ArrowLeft'); // the choice of stages by keys
    await page.keyboard.press('ArrowRight');
    await panel(5);
    await page.locator('#knob-0').press('ArrowRight');
    await frames(page);
    const edited = await saved(page);
    assert.ok(edited.stages[2].rule.pickup > file.stages[2].rule.pickup);
    assert.deepEqual([edited.stages[0], edited.stages[1], edited.stages[3]],
      [file.stages[0], file.stages[1], file.stages[3]]);
    await choose('4 in');
    await panel(4); // as it was
    await choose('5 in');
    await frames(page);
    assert.equal(Number(await page.inputValue('#knob-0')), edited.stages[2].rule.pickup);
    await page.click('#undo');
    await panel(5);
    await page.click('#nav a[href="#lessons"]'); // a lesson of 4 in
    await page.selectOption('#lesson', '0');
    await page.click('#nav a[href="#design"]');
    await panel(4);
    await choose('6 in');
    await panel(6);
    await page.setInputFiles('#file', { name: 'other.json', mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(file)) });
    await panel(4);
  }));

check('attackers of one\'s own are added, dragged, kept as a set of the scheme, and taken away', () =>
  withBoard(async (page) => {
    assert.ok(await page.locator('#remove-man').isDisabled());
    for (let n = 0; n < 3; n++) await page.click('#add-man');
    await frames(page);
    const from = await middle(page, 'Attacker 2');
    await drag(page, from, { x: from.x - 20, y: from.y - 60 });
    await frames(page);
    const stood = (await row(page, 'attacker 2'))[2];
    await page.fill('#set-name', 'Our overload');
    await page.press('#set-name', 'Enter');
    await frames(page);
    assert.equal(await page.locator('#set option:checked').textContent(), 'our-overload');
    const { sets } = await saved(page);
    assert.equal(sets.length, 1);
    assert.equal(sets[0].name, 'Our overload');
    assert.equal(sets[0].at.length, 3);
    await page.selectOption('#set', { label: '1-4-1' });
    await page.selectOption('#set', { label: 'our-overload' });
    await frames(page);
    assert.equal((await row(page, 'attacker 2'))[2], stood);
    await page.locator('#tokens button[aria-label^="Attacker 1"]').focus();
    await page.keyboard.press('ArrowUp');
    await page.click('#remove-man');
    await frames(page);
    assert.equal(await page.locator('#tokens button[aria-label^="Attacker"]').count(), 2);
    await page.selectOption('#set', { label: 'our-overload' });
    await page.click('#drop-set');
    await frames(page);
    assert.equal((await saved(page)).sets?.length ?? 0, 0);
    await page.click('#undo');
    assert.equal((await saved(page)).sets.length, 1);
  }));

const across = async (page) => {
  const a = await middle(page, 'Top left'), b = await middle(page, 'Top right');
  return Math.hypot(a.x - b.x, a.y - b.y);
};

check('the field gets larger by buttons, wheel, keys and two fingers, and is dragged about', () =>
  withBoard(async (page) => {
    const whole = await across(page);
    await page.locator('#tokens button[aria-label^="Top left"]').focus();
    await page.keyboard.press('+');
    await frames(page);
    assert.ok(Math.abs(await across(page) / whole - 1.5) < 0.01);
    await page.keyboard.press('0');
    await frames(page);
    assert.ok(Math.abs(await across(page) - whole) < 0.01);
    await page.click('#zoom-in');
    await frames(page);
    assert.ok(Math.abs(await across(page) / whole - 1.5) < 0.01);
    await page.click('#zoom-all');
    await page.evaluate(() => scrollTo(0, 0));
    const ball = await middle(page, 'Ball');
    await page.mouse.move(ball.x, ball.y + 40);
    const under = await middle(page, 'Top right');
    await page.mouse.wheel(0, -400);
    await frames(page);
    const zoomed = await across(page);
    assert.ok(zoomed / whole > 1.6);
    const near = await middle(page, 'Top right');
    assert.ok(Math.abs(near.x - under.x) < 60);
    const field = await page.locator('#field').boundingBox();
    const empty = { x: field.x + field.width * 0.3, y: field.y + field.height * 0.75 };
    await drag(page, empty, { x: empty.x + 60, y: empty.y - 90 });
    await frames(page);
    const moved = await middle(page, 'Top right');
    assert.ok(Math.abs(moved.y - near.y + 90) < 2 || moved.y < field.y + 40, `${moved.y - near.y}`);
    assert.equal((await row(page, 'ball'))[2], 'in the middle, 15.0 yd out'); // nothing was thrown
    await page.click('#zoom-all');
    await frames(page);
    assert.ok(Math.abs(await across(page) - whole) < 0.01);
    assert.ok(await page.locator('#zoom-all').isDisabled());
  }));

check('two fingers spread make the field larger between them, and drag no mark', () =>
  withBoard(async (page) => {
    const touch = await page.context().newCDPSession(page);
    const send = (type, touchPoints) => touch.send('Input.dispatchTouchEvent', { type, touchPoints });
    const ball = await middle(page, 'Ball'), whole = await across(page);
    const was = (await row(page, 'ball'))[2];
    const pair = (apart) => [{ x: ball.x - apart, y: ball.y + 60, id: 1 }, { x: ball.x + apart, y: ball.y + 60, id: 2 }];
    await send('touchStart', [pair(30)[0]]);
    await send('touchStart', pair(30));
    for (let apart = 35; apart <= 60; apart += 5) await send('touchMove', pair(apart));
    await frames(page);
    await send('touchEnd', []);
    await frames(page);
    assert.ok(Math.abs(await across(page) / whole - 2) < 0.1, `${await across(page) / whole}`);
    assert.equal((await row(page, 'ball'))[2], was);
  }, { hasTouch: true, viewport: { width: 820, height: 1100 } }));

check('a mark out of the picture still gets the focus, and the field follows it', () =>
  withBoard(async (page) => {
    for (let n = 0; n < 3; n++) await page.click('#zoom-in');
    await frames(page);
    const low = page.locator('#tokens button[aria-label^="Low right"]');
    assert.match(await low.getAttribute('class'), /away/);
    await low.focus();
    await frames(page);
    assert.doesNotMatch(await low.getAttribute('class'), /away/);
    const field = await page.locator('#field').boundingBox(), at = await middle(page, 'Low right');
    assert.ok(at.x > field.x && at.x < field.x + field.width && at.y > field.y
      && at.y < field.y + field.height);
  }));

check('a finding about the rule leads to its control', async () => {
  const document = JSON.parse(await readFile(join(root, 'examples/terns.json'), 'utf8'));
  for (const stage of document.stages) stage.rule.crease = 'none';
  await withBoard(async (page) => {
    await page.setInputFiles('#file', { name: 'open.json', mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(document)) });
    await frames(page);
    const findings = page.locator('#findings button', { hasText: 'crease' });
    assert.ok(await findings.count() > 0);
    await findings.first().click();
    await frames(page);
    assert.equal(await page.evaluate(() => document.activeElement.id), 'crease');
  });
});
