/** What is done when a reader asks for it, by button, key or pointer. */

import { isInSpanish } from "./around.js";
import { FRAME } from "./names.js";
import { importSpanish } from "./source.js";
import { english, learn } from "./words.js";

/** @import { BackcutSet } from "./element.js" */
/** @import { Player } from "./player.js" */
/** @import { Reader } from "./reader.js" */
/** @import { Say, Words } from "../pkg/words/say.js" */

/**
 * What a reader can ask for.
 *
 * @typedef {object} Commands
 * @property {Say} say all words, in the language of the page around
 * @property {Say} english as far as it is there
 * @property {string | undefined} heard language and units around the element, once it was looked
 * @property {string} voice the language and units asked for, where those are not English and the court's
 * @property {(words: Words) => void} learn takes the English that a module brings
 * @property {() => void} hear looks which language and units are asked for
 * @property {(say: Say) => void} revoice makes what is seen anew in these words
 * @property {() => void} toggle plays or pauses
 * @property {(time: number) => void} seek
 * @property {(by: number) => void} beat
 * @property {(by: number) => void} frame
 * @property {(rate: number) => void} rate
 * @property {(mask: number) => void} follow bit 0 is player 1: these too, or no longer; 0: all
 * @property {() => void} fullScreen
 * @property {() => void} fold
 * @property {() => void} large fills the court with the close-up, or shows all of it again
 * @property {() => void} captions shows or hides what the captions say
 * @property {(on: boolean) => void} scrub
 * @property {() => Promise<void>} goFull goes on with the full module, if that comes
 * @property {() => void} layout lays all out anew, for another width of the court
 * @property {(clock: (pace: number) => number | undefined) => void} lead has that tell the time while it plays, from how many times the chosen speed is due; where it does not, the reader's own clock does
 * @property {(act: () => void) => void} attempt asks the module; a trap shows as a fault
 * @property {(event: Event) => void} key does what a key asks for
 * @property {[Event, EventTarget | undefined][]} pressed keys and where, of which nobody knew yet: what they do comes after the first picture
 * @property {() => void} help lists the keys; the list comes after the first picture
 * @property {(pace: (time: number) => number) => void} stretch has it play at that times the chosen speed
 * @property {() => void} timing shows what holds the set up, or no longer
 */

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
 * @property {() => void} revoice makes what is seen anew
 */

/** @param {BackcutSet} element @param {Inside} inside @returns {Commands} */
export function commandsOf(
  element,
  { player, reader, paint, attempt, scrub, judge, goFull, revoice },
) {
  const update = () => paint(() => reader().update());
  const fill = () => {
    reader().full = element.classList.toggle("full");
    update();
  };
  return {
    say: english,
    english,
    heard: undefined,
    voice: "",
    learn,
    revoice(say) {
      this.say = say;
      revoice();
    },
    toggle: () => (player.paused ? element.play().catch(() => {}) : player.pause()),
    seek: (time) => player.ready && player.seek(Math.min(time, player.duration)),
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
    follow: (mask) => {
      reader().follow = mask && reader().follow ^ mask;
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
    layout: () => paint(() => reader().layout()),
    lead: (clock) => {
      player.lead = clock;
    },
    help() {},
    pressed: [],
    key(event) {
      this.pressed.push([event, event.composedPath()[0]]);
    },
    async hear() {
      if (!isInSpanish(element)) return;
      // Nobody is to read English first.
      const { dataset } = reader().node;
      dataset.mute = "";
      const module = await importSpanish().catch(() => undefined);
      delete dataset.mute;
      module?.speak(element, this, module.spanish);
    },
    stretch: (pace) => {
      player.pace = pace;
    },
    attempt,
    goFull,
    scrub,
  };
}
