// SPDX-License-Identifier: GPL-3.0-or-later
// make-season.mjs [FOLDER]: writes the Port Merrow Terns' invented season into FOLDER (examples): roster,
// sprints, breaks, and the scheme as it was until mid-season. Everybody and everything in it is
// invented. The same bytes every time: seeded, and rounded far above the last bits.
import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const folder = process.argv[2] ?? join(root, 'examples');

// SplitMix-like 32-bit steps: enough for a season.
let state = 20260214;
function random() {
  state = (state + 0x6d2b79f5) | 0;
  let z = Math.imul(state ^ (state >>> 15), 1 | state);
  z = (z + Math.imul(z ^ (z >>> 7), 61 | z)) ^ z;
  return ((z ^ (z >>> 14)) >>> 0) / 4294967296;
}
const below = (n) => Math.floor(random() * n);
const between = (low, high) => low + (high - low) * random();
// Sum of three: bell enough, and bounded.
const bell = (mean, spread) => mean + spread * 2 * (random() + random() + random() - 1.5);

/** As the program writes it: no zero behind the point. */
const tenths = (x) => String(Number(x.toFixed(1)) + 0);

/** One of the keys of an object, by its weight. */
function weighted(weights) {
  let left = random() * Object.values(weights).reduce((a, b) => a + b, 0);
  for (const [key, weight] of Object.entries(weights)) {
    left -= weight;
    if (left < 0) return key;
  }
  return Object.keys(weights).at(-1);
}

function cell(text) {
  return /[",]/.test(text) ? `"${text.replace(/"/g, '""')}"` : text;
}
function sheet(name, header, rows) {
  const lines = [header.split(','), ...rows].map((row) => row.map((c) => cell(String(c))).join(','));
  writeFileSync(join(folder, name), lines.join('\r\n') + '\r\n');
}

// Roster: jersey, initials, spots, fixed. Low men are close defenders, tops are midfielders who stay.
const players = [
  [1, 'K.O.', '', ''], [2, 'B.W.', 'LL BL', 'LL'], [3, 'T.A.', 'LR BR', 'LR'], [4, 'M.E.', 'M P', ''],
  [5, 'J.R.', 'TL', ''], [6, 'O.D.', 'TR TL', ''], [7, 'S.F.', 'LL LR', ''], [8, 'D.N.', 'TL TR', ''],
  [9, 'W.H.', 'TR', ''], [10, 'L.P.', '', ''], [11, 'C.G.', 'M TL', ''], [12, 'A.V.', 'TL P', 'TL'],
  [14, 'R.S.', 'TR M', ''], [15, 'F.B.', 'LR BR', ''], [17, 'E.K.', 'LL BL', ''], [18, 'N.J.', '', ''],
  [19, 'P.U.', 'M', 'M'], [21, 'G.L.', 'TR P', 'TR'], [22, 'H.Y.', 'TL TR M', ''], [24, 'V.C.', '', ''],
  [27, 'I.Z.', 'LL LR', ''], [30, 'Q.M.', '', ''], [33, 'X.T.', 'M P', ''], [44, 'Y.I.', 'TL TR', ''],
];
sheet('terns-roster.csv', 'jersey,initials,spots,fixed', players);

// Sprints by a light gate at the line, in yards: drag-limited runners, a quarter of a second saved by
// tripping the gate on the move, and a hundredth of noise.
function runTime(distance, vmax, tau) {
  let low = 0, high = 20;
  for (let i = 0; i < 60; i++) {
    const t = (low + high) / 2;
    if (vmax * (t - tau * (1 - Math.exp(-t / tau))) < distance) low = t;
    else high = t;
  }
  return low;
}
const splits = [];
for (const [jersey] of players.filter(([number]) => number !== 1 && number !== 30)) {
  const vmax = bell(8.1, 0.25), tau = bell(1.2, 0.06);
  for (const yards of [5, 10, 15, 20, 30, 40]) {
    const seconds = runTime(yards * 0.9144, vmax, tau) - 0.25 + bell(0, 0.01);
    splits.push([jersey, '2026-02-16', yards, seconds.toFixed(2), 'gate']);
  }
}
sheet('terns-splits.csv', 'jersey,date,distance_yd,seconds,clock', splits);

// The scheme until mid-season: met wide as far out as in front, and shifting more with the ball.
const early = readFileSync(join(root, 'examples/terns.json'), 'utf8')
  .replaceAll('"pickup": 13', '"pickup": 14').replaceAll('"soft": 0.7', '"soft": 0.3')
  .replaceAll('"shift": 0.25', '"shift": 0.35');
writeFileSync(join(folder, 'terns-early.json'), early);

const rivals = ['Gullhaven Petrels', 'Skerry Point Herons', 'Saltmarsh Otters', 'Tarn Head Plovers',
  'Long Strand Curlews', 'Cape Lorn Cormorants', 'Windle Quay Rovers'];
const days = ['2026-03-07', '2026-03-11', '2026-03-14', '2026-03-21', '2026-03-25', '2026-03-28',
  '2026-04-04', '2026-04-11', '2026-04-15', '2026-04-18', '2026-04-25', '2026-04-29', '2026-05-02',
  '2026-05-09'];
const change = 7; // games before the new revision

const before = { goal: 31, save: 17, wide: 12, forced: 12, unforced: 8, 'ground-ball': 7, 'matched-up': 8, whistle: 5 };
const after = { goal: 20, save: 18, wide: 14, forced: 17, unforced: 8, 'ground-ball': 7, 'matched-up': 12, whistle: 4 };
const sizes = { '6v4': 34, '5v4': 22, '6v5': 20, '4v3': 14, '5v3': 10 };
const spots = { 3: ['BL', 'BR', 'P'], 4: ['LL', 'LR', 'TL', 'TR'], 5: ['LL', 'LR', 'M', 'TL', 'TR'] };
const notes = ['slow to the wing', 'skip pass over the top', 'nobody called it', 'late man too deep',
  'good talk', 'ball behind twice', 'fast break after a clear', 'screen in front'];

/** Where a shot came from, yards: near the goal when it went in, wider when the wings were met softly. */
function shot(outcome, revision) {
  const reach = outcome === 'goal' ? between(4, 10) : between(6, 14);
  const wide = revision === 1 && random() < 0.45;
  const across = wide ? between(0.5, 0.9) : between(0, 0.6);
  const side = random() < 0.5 ? -1 : 1;
  return [tenths(side * across * reach), tenths(Math.sqrt(1 - across * across) * reach)];
}

function outOfPlace(defence, outcome) {
  if (random() > (outcome === 'goal' ? 0.7 : 0.25)) return '';
  const names = [spots[defence][below(spots[defence].length)]];
  if (random() < 0.2) names.push(players[1 + below(players.length - 1)][0]);
  return names.join(' ');
}

const breaks = [];
days.forEach((day, game) => {
  const revision = game < change ? 1 : 2;
  const count = 7 + below(4);
  let minutes = 0;
  for (let k = 0; k < count; k++) {
    minutes += 4 + below(10);
    const size = weighted(sizes), outcome = weighted(revision === 1 ? before : after);
    const [offence, defence] = size.split('v').map(Number);
    const seconds = Math.max(1.5, bell(outcome === 'matched-up' ? 7.5 : 5.5, 1.4));
    const taken = ['goal', 'save', 'wide'].includes(outcome);
    const [x, y] = taken ? shot(outcome, revision) : ['', ''];
    const hour = 15 + Math.floor(minutes / 60), minute = String(minutes % 60).padStart(2, '0');
    breaks.push([`s26-g${String(game + 1).padStart(2, '0')}-b${String(k + 1).padStart(2, '0')}`, day,
      rivals[game % rivals.length], game < 7 === (game % 2 === 0) ? 'home' : 'away',
      `${day}T${hour}:${minute}:00Z`, offence, defence, outcome, tenths(seconds),
      Math.max(0, Math.min(8, Math.round(seconds / 2 - 0.7 + bell(0, 0.5)))), x, y,
      outOfPlace(defence, outcome), defence, revision, random() < 0.2 ? notes[below(notes.length)] : '']);
  }
});
sheet('terns-season.csv', 'id,date,opponent,field,time,offence,defence,outcome,seconds,passes,' +
  'shot_x_yd,shot_y_yd,out,stage,revision,note', breaks);
