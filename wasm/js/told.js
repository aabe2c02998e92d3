/** What either module can say of a set; the first knows only the author's words. */

/** @import { OpenSet } from "./load.js" */
/** @import { State } from "./reader.js" */
/** @import { Say } from "../pkg/words/say.js" */

/** What happens in a beat. @param {OpenSet} play @param {number} beat */
export function captionOf(play, beat) {
  return "caption" in play ? play.caption(beat) : play.said(beat);
}

/** The picture, for those who do not see it. @param {OpenSet} play @param {Say} say @param {State} state */
export function inWords(play, say, { time, beat, beatTitle }) {
  if ("describe" in play) return play.describe(time);
  return say.beatPictured({ beat: beat + 1, title: beatTitle, caption: play.said(beat) });
}

/** Whether every beat has words, and all of it is shown at one speed. @param {OpenSet} play */
export function isTold(play) {
  return !play.slowed && play.beatStarts.every((_, beat) => captionOf(play, beat) !== "");
}
