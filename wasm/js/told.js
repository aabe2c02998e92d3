/** What either module can say of a set; the first knows only the author's words. */

/** @import { OpenSet } from "./load.js" */
/** @import { State } from "./reader.js" */

/** What happens in a beat. @param {OpenSet} play @param {number} beat */
export function captionOf(play, beat) {
  return "caption" in play ? play.caption(beat) : play.said(beat);
}

/** The picture, for those who do not see it. @param {OpenSet} play @param {State} state */
export function inWords(play, { time, beat, beatTitle }) {
  if ("describe" in play) return play.describe(time);
  return `Beat ${beat + 1}, ${beatTitle}: ${play.said(beat)}`;
}

/** Whether every beat has words. @param {OpenSet} play */
export function isTold(play) {
  return play.beatStarts.every((_, beat) => captionOf(play, beat) !== "");
}
