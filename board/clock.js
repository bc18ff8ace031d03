// SPDX-License-Identifier: GPL-3.0-or-later
// A time of day in words.

/** "14:32", and the day when it is not today's. @param {number} when */
export function clock(when) {
  const date = new Date(when), time = date.toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' });
  if (date.toDateString() === new Date().toDateString()) return time;
  return `${date.toLocaleDateString([], { day: 'numeric', month: 'long' })}, ${time}`;
}
