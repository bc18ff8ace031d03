// SPDX-License-Identifier: GPL-3.0-or-later
// The hand-out on a phone: by touch and by keys alone, with the network off, with scripts off, with a
// storage that refuses, and two of them side by side.
import assert from 'node:assert/strict';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { after, before, test } from 'node:test';
import { build, checks, launch, plain, reasonToSkip, root, run, stopTime } from './page.mjs';

const skip = await reasonToSkip();
if (skip) console.log(`# skipped: ${skip}`);
const check = checks(skip);
const program = process.env.BREAKWATER ?? join(build, 'breakwater');
const axe = skip ? '' : createRequire(import.meta.url).resolve('axe-core/axe.min.js');
let browser, folder, scheme, file, other;

/** A hand-out of a scheme as it is in memory. */
async function made(name, document, ...more) {
  await writeFile(join(folder, `${name}.json`), JSON.stringify(document));
  await run(program, ['teach', join(folder, `${name}.json`), '--only', 'handout', '-o', join(folder, name), ...more]);
  return join(folder, name, 'handout.html');
}

before(async () => {
  if (skip) return;
  browser = await launch();
  folder = await mkdtemp(join(tmpdir(), 'breakwater-'));
  scheme = JSON.parse(await readFile(join(root, 'examples/terns.json'), 'utf8'));
  file = await made('terns', scheme);
  other = await made('other', { ...scheme, id: 'another', name: 'Another' });
});
after(async () => {
  await browser?.close();
  if (folder) await rm(folder, { recursive: true, force: true });
});

/** A phone with a hand-out on it, network off. */
async function phone(options = {}, at = file, init) {
  const context = await browser.newContext({
    viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true, offline: true, ...options, clock: undefined,
  });
  const page = await context.newPage();
  if (options.clock) await page.clock.install();
  const seen = { requests: [], errors: [] };
  page.on('request', (request) => seen.requests.push(request.url()));
  page.on('pageerror', (error) => seen.errors.push(error.message));
  page.on('console', (message) => { if (message.type() === 'error') seen.errors.push(message.text()); });
  await page.addInitScript(() => { Math.random = () => 0.4; }); // which questions come
  if (init) await page.addInitScript(init);
  await page.goto(pathToFileURL(at).href);
  if (options.javaScriptEnabled !== false) await page.waitForSelector('html[data-ready]');
  return { page, context, seen };
}

const pick = async (page, stage, code) => {
  await page.locator(`#stages label:has-text("${stage}")`).first().tap();
  await page.locator(`#spots label:has-text("${code}")`).tap();
};
const mode = (page, name) => page.locator('#nav button', { hasText: name }).click();

/** Where low left belongs for a ball place, from the static picture of the stage. */
async function place(page, stage, landmark, spot) {
  return page.evaluate(([s, l, k]) => {
    const use = document.querySelector(`#book .stage[data-stage="${s}"] article[data-landmark="${l}"] [data-spot="${k}"]`);
    return { x: Number(use.getAttribute('x')), y: Number(use.getAttribute('y')) };
  }, [stage, landmark, spot]);
}

/** What is asked now: the question's words, with the stage and ball place looked up in the page. */
async function asked(page) {
  return page.evaluate(() => {
    const words = document.querySelector('#quiz h2')?.textContent ?? '', name = document.querySelector('#quiz > p')?.textContent;
    const stage = [...document.querySelectorAll('#book .stage')].find((one) => one.querySelector('h2').textContent === name);
    const article = [...stage.querySelectorAll('article')].find((one) => words.includes(`${one.querySelector('h3').textContent}. `));
    return { words, stage: Number(stage.dataset.stage), landmark: Number(article?.dataset.landmark ?? -1), where: /Where do you stand/.test(words) };
  });
}

/** Taps the field so many yards right of a place in the picture and up-field. */
async function tapAt(page, at, right = 0, out = 0) {
  const box = await page.locator('#ask svg').boundingBox();
  await page.touchscreen.tap(box.x + (at.x + right * perYard) * box.width / 320, box.y + (at.y - out * perYard) * box.width / 320);
}
// Of the Terns' chart: 30 yards across within its border.
const perYard = (320 - 10) / 30;
const atLine = 5 + 17 * perYard; // the goal line in it, 17 yards below its upper edge

/** Goes through a quiz; `how` answers one question. Returns the words of the end. */
async function quiz(page, how) {
  await mode(page, 'Quiz');
  await page.getByRole('button', { name: /^(Start|Once more)$/ }).click();
  for (let i = 0; i < 8; i++) {
    const question = await asked(page);
    assert.match(question.words, new RegExp(`^${i + 1} of 8\\.`));
    assert.equal(await page.locator('#quiz [data-spot]').count(), 0, 'nobody is shown before the answer');
    assert.equal(await page.locator('#quiz .feedback').count(), 0);
    await how(question);
    await page.locator('#quiz .feedback').waitFor();
    await page.locator('#quiz button.main').click();
  }
  return page.locator('#quiz').textContent();
}

/** The right option of a question that is not about a place, from what the page says elsewhere. */
async function rightOption(page, question) {
  if (question.landmark < 0) {
    const call = await page.evaluate(([s, own]) => {
      const stage = document.querySelector(`#book .stage[data-stage="${s}"]`);
      const words = own ? [...stage.querySelectorAll('.calls li')].find((li) => li.dataset.spot === '0').textContent
        : stage.querySelector('.about p').textContent;
      return /“(.*)”/.exec(words)[1];
    }, [question.stage, /What do you call/.test(question.words)]);
    return page.locator('.options button', { hasText: call }).first();
  }
  const duty = await page.evaluate(([s, l]) => document.querySelector(
    `#book .stage[data-stage="${s}"] article[data-landmark="${l}"] [data-spot="0"]`).getAttribute('href').split('-')[2],
  [question.stage, question.landmark]);
  const orders = ['Take the ball', 'Be next to', 'Cover the crease', 'Stay on the backside', 'Hold your post', 'Take your man'];
  return page.locator('.options button', { hasText: orders[Number(duty)] });
}

check('asks for nothing, and shows a place of the ball for a spot', async () => {
  const { page, context, seen } = await phone();
  await pick(page, '4', 'LL');
  assert.equal(await page.locator('#shown li.you').count(), 1);
  assert.match(await page.locator('#shown li.you').textContent(), /Low left/);
  const first = await page.locator('#shown h3').textContent();
  await page.locator('#after').tap();
  assert.notEqual(await page.locator('#shown h3').textContent(), first);
  assert.deepEqual(seen.requests.filter((one) => !one.startsWith('file:') && !one.startsWith('data:')), []);
  assert.equal(seen.requests.filter((one) => one.startsWith('file:')).length, 1);
  assert.deepEqual(seen.errors, []);
  await context.close();
});

check('a quiz by touch: answers in the place are right, and the result says so', async () => {
  const { page, context, seen } = await phone();
  await pick(page, '4', 'LL');
  const words = await quiz(page, async (question) => {
    if (!question.where) return (await rightOption(page, question)).click();
    await tapAt(page, await place(page, question.stage, question.landmark, 0));
    await page.getByRole('button', { name: 'Answer', exact: true }).click();
  });
  assert.match(words, /8 of 8/);
  assert.match(words, /first/);
  assert.match(await page.locator('#code').textContent(), /^([0-9A-Z]{4}-){6}[0-9A-Z]{4}$/);
  // The same day again: the others come, and the last result stands beside.
  await mode(page, 'Quiz');
  assert.deepEqual(seen.errors, []);
  await page.reload();
  await page.waitForSelector('html[data-ready]');
  await mode(page, 'Quiz');
  assert.match(await page.locator('#quiz').textContent(), /Last time: 8 of 8/);
  await context.close();
});

check('two yards too deep every time is told as that', async () => {
  const { page, context } = await phone({ viewport: { width: 820, height: 1100 } });
  await pick(page, '4', 'LL');
  let places = 0;
  const words = await quiz(page, async (question) => {
    if (!question.where) return page.locator('.options button').first().click();
    places++;
    const at = await place(page, question.stage, question.landmark, 0);
    await tapAt(page, at, 0, -2);
    await page.getByRole('button', { name: 'Answer', exact: true }).click();
  });
  const kept = await page.evaluate(() => JSON.parse(localStorage.getItem(Object.keys(localStorage)[0])));
  const errors = kept.quizzes[0].answers.filter((one) => one.x !== null);
  assert.equal(errors.length, places);
  for (const { x, y, ms } of errors) {
    assert.ok(Math.abs(x) < 0.15 && Math.abs(y + 1.83) < 0.15, `${x} ${y}`);
    assert.ok(ms > 0);
  }
  if (places >= 3) assert.match(plain(words), new RegExp(`Over ${places} places you stand (1\\.9|2\\.0|2\\.1) yd too deep`));
  await context.close();
});

check('the same score by keys, numbers and names', async () => {
  const { page, context } = await phone({ viewport: { width: 400, height: 800 } });
  await pick(page, '4', 'LL');
  await mode(page, 'Quiz');
  await page.getByRole('button', { name: 'Start' }).press('Enter');
  for (let tries = 0; tries < 8; tries++) {
    const question = await asked(page);
    if (!question.where) {
      await page.locator('.options button').first().press('Enter');
    } else {
      const field = page.locator('#ask');
      await field.press('ArrowRight');
      await field.press('Shift+ArrowUp');
      assert.match(await page.locator('#at').textContent(), /0\.5 yd right, 7\.0 yd out/);
      await page.locator('summary', { hasText: 'Without tapping' }).click();
      const box = page.getByLabel('yards out from the goal line');
      assert.equal(await box.inputValue(), '7');
      await box.fill('3.5');
      await page.getByLabel('yards to the right, left with a minus').fill('-2.5');
      assert.match(await page.locator('#at').textContent(), /2\.5 yd left, 3\.5 yd out/);
      await page.getByLabel('A place by its name').selectOption({ label: 'Left post' });
      assert.match(await page.locator('#at').textContent(), /3\.0 yd left, 1\.5 yd out/);
      await field.press('Enter');
    }
    await page.locator('#quiz .feedback').waitFor();
    assert.equal(await page.evaluate(() => document.activeElement.textContent), tries < 7 ? 'Next' : 'Result');
    await page.keyboard.press('Enter');
  }
  assert.match(await page.locator('.score').textContent(), /^\d of 8$/);
  await context.close();
});

check('one place, said in four ways, gets one mark', async () => {
  const ways = {
    tap: (page) => tapAt(page, { x: 160 - 3 * perYard, y: atLine - 1.5 * perYard }),
    name: (page) => page.getByLabel('A place by its name').selectOption({ label: 'Left post' }),
    numbers: async (page) => {
      await page.getByLabel('yards to the right, left with a minus').fill('-3');
      await page.getByLabel('yards out from the goal line').fill('1.5');
    },
    arrows: async (page) => {
      for (let i = 0; i < 6; i++) await page.locator('#ask').press('ArrowLeft');
      await page.locator('#ask').press('Shift+ArrowDown');
      for (let i = 0; i < 3; i++) await page.locator('#ask').press('ArrowDown');
    },
  };
  const marks = {};
  for (const [name, say] of Object.entries(ways)) {
    const { page, context } = await phone();
    await pick(page, '4', 'LL');
    await mode(page, 'Quiz');
    await page.getByRole('button', { name: 'Start' }).click();
    while (!(await asked(page)).where) {
      await page.locator('.options button').first().click();
      await page.locator('#quiz button.main').click();
    }
    await page.locator('summary', { hasText: 'Without tapping' }).click();
    await say(page);
    await page.getByRole('button', { name: 'Answer', exact: true }).click();
    const words = await page.locator('.feedback').textContent();
    const kept = await page.evaluate(() => JSON.parse(Object.values(localStorage)[0]).cards);
    marks[name] = { words: name === 'tap' ? words.replace(/\d\.\d/, '') : words, kept };
    await context.close();
  }
  assert.deepEqual(marks.name, marks.numbers);
  assert.deepEqual(marks.arrows, marks.numbers);
  assert.deepEqual(marks.tap.kept, marks.numbers.kept);
});

check('a browser too old for the program says so and keeps the pictures', async () => {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 }, offline: true });
  const page = await context.newPage();
  await page.addInitScript(() => { delete globalThis.DecompressionStream; });
  await page.goto(pathToFileURL(file).href);
  await page.locator('#notice:visible').waitFor();
  assert.match(await page.locator('#notice').textContent(), /too old .* Every picture and every answer is below/);
  assert.equal(await page.locator('.stage article svg:visible').count(), scheme.stages.length * scheme.landmarks.length);
  await context.close();
});

check('a rotation runs, and with reduced motion goes in steps', async () => {
  const { page, context, seen } = await phone({ reducedMotion: 'reduce', clock: true });
  await pick(page, '4', 'LL');
  await mode(page, 'Watch');
  const where = () => page.locator('#film .ball-mark').evaluate((one) => `${one.getAttribute('x')} ${one.getAttribute('y')}`);
  const before = await where();
  await page.locator('#time').fill('3');
  assert.notEqual(await where(), before);
  await page.locator('#time').fill('0');
  assert.equal(await where(), before);
  assert.equal(await page.locator('#play').textContent(), 'Step');
  const pass = await stopTime(page);
  await page.locator('#play').tap();
  assert.equal(await page.locator('#time').inputValue(), '0.25');
  await pass(3000);
  assert.equal(await page.locator('#time').inputValue(), '0.25', 'nothing moves by itself');
  assert.match(await page.locator('#late').textContent(), /The ball is there after \d\.\d s\. You are/);
  assert.deepEqual(seen.errors, []);
  await context.close();
});

check('no fault of access in any look; wide enough to touch; nothing sideways', async () => {
  for (const width of [320, 360, 412, 820]) {
    const { page, context } = await phone({ viewport: { width, height: 760 } });
    await pick(page, '4', 'LL');
    for (const theme of ['chart', 'sun', 'dark']) {
      await page.evaluate((id) => { document.documentElement.dataset.theme = id; }, theme);
      for (const name of ['Learn', 'Watch', 'Quiz']) {
        await mode(page, name);
        if (name === 'Quiz' && await page.getByRole('button', { name: 'Start' }).count()) await page.getByRole('button', { name: 'Start' }).click();
        assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), `${width} ${theme} ${name}`);
        const small = await page.evaluate(() => [...document.querySelectorAll('button, select, summary, input, label.tick, .choices label')]
          .filter((one) => one.checkVisibility() && !one.matches('.choices input, .tick input'))
          .map((one) => ({ words: one.textContent.trim().slice(0, 20), box: one.getBoundingClientRect() }))
          .filter(({ box }) => box.width < 47.5 || box.height < 47.5).map(({ words }) => words));
        assert.deepEqual(small, [], `${width} ${theme} ${name}`);
        if (width !== 360) continue;
        await page.evaluate(await readFile(axe, 'utf8')).catch(() => {});
        const faults = await page.evaluate(() => globalThis.axe.run(document, {
          runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] }));
        assert.deepEqual(faults.violations.map((one) => `${one.id}: ${one.nodes[0].html}`), [], `${theme} ${name}`);
      }
    }
    await context.close();
  }
});

check('with scripts off every picture, key, job and answer is there', async () => {
  const { page, context } = await phone({ javaScriptEnabled: false });
  const stages = scheme.stages.length, places = scheme.landmarks.length;
  const spots = scheme.stages.reduce((sum, stage) => sum + stage.spots.length, 0);
  assert.equal(await page.locator('.stage article svg:visible').count(), stages * places);
  assert.equal(await page.locator('.stage .jobs li:visible').count(), spots * places);
  assert.equal(await page.locator('svg.key:visible').count(), 1);
  assert.equal(await page.locator('#answers summary:visible').count(), spots * places);
  assert.equal(await page.locator('#app:visible').count(), 0);
  // A picture is really drawn, its shared chart too.
  const box = await page.locator('.stage article svg').first().boundingBox();
  assert.ok(box.width > 300 && box.height > 200);
  const one = page.locator('#answers details').first();
  assert.equal(await one.locator('p:visible').count(), 0);
  await one.locator('summary').click();
  assert.match(await one.locator('p').textContent(), /^Your place: .+\./);
  await context.close();
});

check('a storage that refuses is reported, and the quiz goes on', async () => {
  const { page, context, seen } = await phone({}, file, () => {
    Object.defineProperty(globalThis, 'localStorage', { get() { throw new DOMException('no', 'SecurityError'); } });
  });
  await pick(page, '4', 'LL');
  await page.locator('summary', { hasText: 'Key and looks' }).click();
  assert.match(await page.locator('#kept').textContent(), /refuses to store/);
  const words = await quiz(page, async (question) => {
    if (!question.where) return (await rightOption(page, question)).click();
    await tapAt(page, await place(page, question.stage, question.landmark, 0));
    await page.getByRole('button', { name: 'Answer', exact: true }).click();
  });
  assert.match(words, /8 of 8/);
  assert.deepEqual(seen.errors, []);
  await context.close();
});

check('two hand-outs in one browser never see each other', async () => {
  const { page, context } = await phone();
  await pick(page, '4', 'LL');
  await quiz(page, async (question) => {
    if (!question.where) return page.locator('.options button').first().click();
    await tapAt(page, { x: 160, y: 200 });
    await page.getByRole('button', { name: 'Answer', exact: true }).click();
  });
  await page.goto(pathToFileURL(other).href);
  await page.waitForSelector('html[data-ready]');
  assert.equal(await page.locator('#spots input:checked').count(), 0);
  await pick(page, '4', 'LL');
  await mode(page, 'Quiz');
  assert.doesNotMatch(await page.locator('#quiz').textContent(), /Last time/);
  assert.equal(await page.evaluate(() => localStorage.length), 2);
  // What the other one keeps there does no harm either.
  await page.evaluate(() => { for (const key of Object.keys(localStorage)) localStorage.setItem(key, '{"version":1,"cards":[7],"spots":3}'); });
  await page.reload();
  await page.waitForSelector('html[data-ready]');
  await context.close();
});

check('a player\'s own copy comes with his spot picked', async () => {
  const own = await made('own', scheme, '--spot', 'TR');
  const { page, context } = await phone({}, own);
  assert.match(await page.locator('#spots label:has(input:checked)').textContent(), /TR/);
  await context.close();
});

check('an injected script does not run', async () => {
  const bad = join(folder, 'bad.html');
  await writeFile(bad, (await readFile(file, 'utf8')).replace('</main>', '<script>globalThis.bad = true</script></main>'));
  const { page, context } = await phone({}, bad);
  assert.equal(await page.evaluate(() => globalThis.bad), undefined);
  await context.close();
});
