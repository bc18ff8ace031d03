// SPDX-License-Identifier: GPL-3.0-or-later
// A lesson's films and captions in a real browser: they play, they can be sought, the cues parse.
import assert from 'node:assert/strict';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before } from 'node:test';
import { pathToFileURL } from 'node:url';
import { build, checks, launch, reasonToSkip, root, run } from './page.mjs';

const skip = await reasonToSkip();
if (skip) console.log(`# skipped: ${skip}`);
const check = checks(skip);
let browser, folder;

before(async () => {
  if (skip) return;
  browser = await launch();
  folder = await mkdtemp(join(tmpdir(), 'film-'));
  for (const ending of ['mp4', 'webm', 'gif', 'vtt']) {
    await run(join(build, 'breakwater'), ['draw', join(root, 'examples/terns.json'),
      '--film', 'first-man', '--width', '640', '-o', join(folder, `lesson.${ending}`)]);
  }
});
after(async () => {
  await browser?.close();
  if (folder) await rm(folder, { recursive: true });
});

/** A page with the film in it, loaded as far as its size and length. */
async function openFilm(ending) {
  const page = await browser.newPage();
  const file = join(folder, `${ending}.html`);
  await writeFile(file, `<!doctype html><title>film</title><video muted src="lesson.${ending}"></video>`);
  await page.goto(pathToFileURL(file).href);
  await page.evaluate(() => new Promise((done, fail) => {
    const video = document.querySelector('video');
    if (video.readyState >= 1) done();
    video.onloadedmetadata = done;
    video.onerror = () => fail(new Error(`media error ${video.error.code}: ${video.error.message}`));
  }));
  return page;
}

const captions = async () => (await readFile(join(folder, 'lesson.vtt'), 'utf8'));

for (const ending of ['mp4', 'webm']) {
  check(`${ending} has the lesson's length and size, is sought and plays`, async () => {
    const page = await openFilm(ending);
    const film = await page.evaluate(async () => {
      const video = document.querySelector('video');
      const reached = new Promise((done) => { video.onseeked = done; });
      video.currentTime = 9;
      await reached;
      const sought = video.currentTime;
      await video.play();
      await new Promise((done) => { video.ontimeupdate = () => { if (video.currentTime > 9.4) done(); }; });
      video.pause();
      return { sought, width: video.videoWidth, height: video.videoHeight,
        seconds: video.duration, end: video.seekable.end(0) };
    });
    assert.equal(film.width, 640);
    assert.equal(film.height, 360);
    assert.ok(Math.abs(film.sought - 9) < 0.05, `sought ${film.sought}`);
    // The cards before and after, and the lesson between them as its captions tell.
    const last = [...(await captions()).matchAll(/--> (\d+):(\d+):([\d.]+)/g)].at(-1);
    const end = Number(last[1]) * 3600 + Number(last[2]) * 60 + Number(last[3]) + 4;
    assert.ok(Math.abs(film.seconds - end) < 0.05, `${film.seconds} s, not ${end} s`);
    assert.ok(Math.abs(film.end - film.seconds) < 0.05);
    await page.close();
  });
}

check('the picture changes while the ball flies and not while it stands', async () => {
  const page = await openFilm('webm');
  const shot = async (at) => {
    await page.evaluate((time) => new Promise((done) => {
      const video = document.querySelector('video');
      video.onseeked = done;
      video.currentTime = time;
    }), at);
    return page.locator('video').screenshot();
  };
  const [first, same, other] = [await shot(0.5), await shot(1.5), await shot(7)];
  assert.ok(first.length > 1000);
  assert.ok(Math.abs(first.length - same.length) < first.length * 0.02);
  assert.notDeepEqual(first, other);
  await page.close();
});

check('every cue parses, one after the other, with its words', async () => {
  const text = await captions();
  const page = await browser.newPage();
  await page.setContent('<!doctype html><title>cues</title><video></video>');
  const cues = await page.evaluate((words) => new Promise((done, fail) => {
    const track = document.createElement('track');
    track.default = true;
    track.kind = 'captions';
    track.src = `data:text/vtt;charset=utf-8,${encodeURIComponent(words)}`;
    track.onload = () => done([...track.track.cues]
      .map(({ startTime, endTime, text: said }) => ({ startTime, endTime, said })));
    track.onerror = () => fail(new Error('the captions are refused'));
    document.querySelector('video').append(track);
    track.track.mode = 'hidden';
  }), text);
  assert.equal(cues.length, 5);
  cues.forEach((cue, i) => {
    assert.ok(cue.endTime > cue.startTime);
    if (i > 0) assert.equal(cue.startTime, cues[i - 1].endTime);
    assert.match(cue.said, /^Ball .*\.$/);
  });
  await page.close();
});

check('the GIF is a moving picture no wider than 640', async () => {
  const bytes = await readFile(join(folder, 'lesson.gif'));
  assert.equal(bytes.subarray(0, 6).toString('latin1'), 'GIF89a');
  assert.equal(bytes.readUInt16LE(6), 640);
  const page = await browser.newPage();
  const file = join(folder, 'gif.html');
  await writeFile(file, '<!doctype html><title>gif</title><img src="lesson.gif" alt="">');
  await page.goto(pathToFileURL(file).href);
  assert.equal(await page.evaluate(() => document.querySelector('img').naturalWidth), 640);
  await page.close();
});
