/** What is done when a reader asks for it, by button, key or pointer. */

import { FRAME, SPEEDS } from "./names.js";
import { english, learn } from "./words.js";

/** @import { BackcutSet } from "./element.js" */
/** @import { Player } from "./player.js" */
/** @import { Commands, Reader } from "./reader.js" */

/**
 * What the element keeps to itself otherwise.
 *
 * @typedef {object} Inside
 * @property {Player} player
 * @property {() => Reader} reader which is made with these commands
 * @property {(act: () => void) => void} paint guarded
 * @property {(act: () => void) => void} attempt a trap in it shows as a fault
 * @property {(on: boolean) => void} scrub whether a finger holds the time
 * @property {() => void} judge asks for what the reader wants to know
 * @property {() => Promise<void>} goFull
 * @property {() => void} reopen
 * @property {() => void} hear
 * @property {() => void} revoice
 */

/** @param {BackcutSet} element @param {Inside} inside @returns {Commands} */
export function commandsOf(
  element,
  { player, reader, paint, attempt, scrub, judge, goFull, reopen, hear, revoice },
) {
  const update = () => paint(() => reader().update());
  const fill = () => {
    reader().full = element.classList.toggle("full");
    update();
  };
  return {
    say: english,
    english,
    voice: "",
    learn,
    revoice(say) {
      this.say = say;
      revoice();
    },
    toggle: () => (player.paused ? element.play().catch(() => {}) : player.pause()),
    seek: (time) => player.ready && player.seek(Math.min(time, player.duration)),
    move: (seconds) => player.ready && player.seek(player.time + seconds),
    beat: (by) => {
      if (!player.ready) return;
      player.step(by);
      reader().announce();
    },
    frame: (by) => {
      if (!player.ready) return;
      player.pause();
      player.seek(player.time + by * FRAME);
    },
    rate: (rate) => {
      player.rate = rate;
    },
    pace: (by) => {
      const at = SPEEDS.findIndex((rate) => rate === player.rate);
      player.rate = SPEEDS[at + by] ?? player.rate;
    },
    follow: (mask) => {
      reader().follow = mask === reader().follow ? 0 : mask;
      update();
    },
    fullScreen: () => {
      // Where an element may not have the screen it fills the window.
      if (document.fullscreenElement === element) document.exitFullscreen();
      else if (element.requestFullscreen) element.requestFullscreen().catch(fill);
      else fill();
    },
    fold: () => paint(() => reader().fold()),
    large: () => paint(() => reader().enlarge()),
    captions: () => paint(() => reader().hush()),
    timing: () => {
      reader().timing = !reader().timing;
      judge();
    },
    help() {},
    pressed: [],
    key(event) {
      this.pressed.push(event);
    },
    hear,
    attempt,
    goFull,
    reopen,
    scrub,
  };
}
