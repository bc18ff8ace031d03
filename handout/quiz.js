// SPDX-License-Identifier: GPL-3.0-or-later
// The quiz: it asks before it shows, and there is no clock. How long an answer took is kept, not scored.
import { askPlace } from './ask-place.js';
import { button, find, make, mark } from './dom.js';
import { cross, empty, man, picture, ringMan } from './pictures.js';

/** @typedef {import('./hand.js').Mark} Mark */
/** @typedef {import('./hand.js').Question} Question */

const dayLength = 24 * 60 * 60 * 1000;

/** Whole days since 1970 by the phone's own calendar. */
function today() {
  const now = new Date();
  return Math.floor((now.getTime() - now.getTimezoneOffset() * 60000) / dayLength);
}

/** "2-2, four in" as the page has it. @param {number} stage */
const stageName = (stage) => document.querySelector(`#book .stage[data-stage="${stage}"] h2`)?.textContent ?? '';

/** @param {number} right @param {number} asked */
const score = (right, asked) => `${right} of ${asked}`;

/** The answer on the chart: own tap, place, tolerance, the others faint.
 * @param {Question} question @param {Mark} mark_ */
function answered(question, mark_) {
  const svg = picture(question.stage, question.landmark);
  for (const one of svg.querySelectorAll('[data-spot]')) one.classList.add('mate');
  man(svg, question.spot)?.classList.remove('mate');
  ringMan(svg, question.spot);
  if (question.kind !== 'where') return svg;
  svg.append(
    mark('circle', { class: 'answer-ring', cx: mark_.x, cy: mark_.y, r: Math.max(mark_.tolerance, 18) }),
    mark('path', { class: 'way', d: `M${mark_.tapX} ${mark_.tapY}L${mark_.x} ${mark_.y}` }),
    ...cross(mark_.tapX, mark_.tapY));
  return svg;
}

/** @param {import('./main.js').Page} page */
export function offerQuiz(page) {
  const { hand, keep } = page, room = find('quiz', HTMLElement);
  const picks = find('picks', HTMLElement);
  let count = 0, number = 0, since = 0;
  /** @type {import('./keep.js').Taken['answers']} */
  let answers = [];

  /** The state of every card goes to what is kept. */
  const keepCards = () => {
    for (let i = 0; i < hand.call.cards(); i++) {
      const card = hand.said(hand.call.card(i));
      if (card.answers > 0) keep.data.cards[card.key] = [card.ease, card.streak, card.interval, card.due, card.answers];
    }
  };

  /** While questions are asked, the picks above are out of the way. @param {boolean} on */
  const under = (on) => { picks.hidden = on; };

  const begin = () => {
    const last = keep.data.quizzes.at(-1);
    under(false);
    count = 0;
    if (hand.call.cards() === 0) {
      room.replaceChildren(make('p', {}, 'Pick your spot above, then the quiz knows what to ask you.'));
      return;
    }
    room.replaceChildren(
      make('h2', {}, 'Eight questions'),
      make('p', {}, 'You answer first, then you are shown. No clock. What you miss comes back sooner.'),
      ...(last ? [make('p', {}, `Last time: ${score(last.right, last.asked)}.`)] : []),
      button('Start', start, 'main'));
  };

  const start = () => {
    count = hand.call.quiz(today(), Math.floor(Math.random() * 0x7fffffff));
    number = 0;
    answers = [];
    under(true);
    ask();
  };

  /** @param {Question} question @param {Mark} mark_ */
  const show = (question, mark_) => {
    answers.push({
      card: `${question.stage}.${question.spot}.${question.landmark}.${question.kind}`, right: mark_.right,
      x: mark_.errorX ?? null, y: mark_.errorY ?? null, ms: Math.round(performance.now() - since),
    });
    keepCards();
    keep.save();
    const next = button(number + 1 < count ? 'Next' : 'Result', () => {
      number++;
      if (number < count) ask();
      else end();
    }, 'main');
    const words = make('div', { class: mark_.right ? 'feedback' : 'feedback wrong', role: 'status' },
      make('b', {}, `${mark_.right ? '\u2713' : '\u2717'} ${mark_.words}`), make('p', {}, mark_.answer), make('p', {}, mark_.why));
    room.replaceChildren(make('p', { class: 'in' }, stageName(question.stage)), make('h2', { class: 'asked' }, `${number + 1} of ${count}. ${question.words}`), words,
      ...(question.landmark >= 0 ? [answered(question, mark_)] : []),
      ...(question.kind === 'where' ? [make('p', { class: 'quiet' },
        'Cross: your answer. Ring: your place. Inside the dashed ring you had full marks.')] : []), next);
    next.focus();
  };

  const ask = () => {
    /** @type {Question} */
    const question = hand.said(hand.call.ask(number));
    const head = make('h2', { class: 'asked', tabindex: -1 }, `${number + 1} of ${count}. ${question.words}`);
    room.replaceChildren(make('p', { class: 'in' }, stageName(question.stage)), head);
    since = performance.now();
    if (question.kind === 'where') {
      room.append(...askPlace(page, question, (x, y, finger) =>
        show(question, hand.said(hand.call.answer_place(x, y, finger)))));
    } else {
      if (question.landmark >= 0) room.append(empty(question.stage, question.landmark));
      room.append(make('div', { class: 'options' }, ...question.options.map((words, i) =>
        button(words, () => show(question, hand.said(hand.call.answer_option(i)))))));
    }
    room.append(button('Leave the quiz', begin));
    head.focus();
    head.scrollIntoView({ block: 'nearest' });
  };

  const end = () => {
    const last = keep.data.quizzes.at(-1), result = hand.said(hand.call.result(page.edition));
    keep.data.quizzes.push({ day: today(), asked: result.asked, right: result.right, code: result.code, answers });
    keep.save();
    under(false);
    const head = make('h2', { class: 'score', tabindex: -1 }, score(result.right, result.asked));
    room.replaceChildren(head,
      make('p', {}, last ? `Last time ${score(last.right, last.asked)}.` : 'That was your first.'),
      make('p', {}, result.words),
      make('p', {}, 'For your coach, if asked for; it has no name in it:'),
      make('code', { class: 'codeline', id: 'code', tabindex: 0, 'aria-label': 'Result code' }, result.code),
      make('p', { class: 'quiet' }, 'Come back in a day or two: remembering works better spread out.'),
      button('Once more', start, 'main'));
    head.focus();
  };

  find('forget', HTMLElement).addEventListener('click', () => {
    keep.forget();
    page.spots.forEach((spot, stage) => hand.call.pick(stage, spot));
    begin();
  });
  page.changed.push(begin);
}
