/**
 * Loads the wasm modules, each once a page, streaming where the server's media type allows it. The
 * first has what a first frame and playing need; the full one has that and all the rest, and comes
 * when it is asked for.
 */

import {
  Palette,
  Play,
  byteLimit,
  emptyCourtHeight,
  initSync,
  paintEmptyCourt,
} from "../pkg/raw/backcut.js";
import { compile, importFull, importLate } from "./source.js";
import { learn } from "./words.js";

/** @import { BackcutSet } from "./element.js" */
/** @import { Palette as FullPalette, Play as FullSet } from "../pkg/full/backcut.js" */

/**
 * A chance against the defence on the floor; metres and seconds.
 *
 * @typedef {object} Look
 * @property {number} t when
 * @property {number} who the player's number
 * @property {"catch" | "drive" | "shot"} chance
 * @property {number} separation to the nearest defender, middle to middle
 * @property {number} open until a defender can contest
 * @property {number} needs until the shot is off
 * @property {number | undefined} lane of a pass: by how much it is past every hand; below 0 it is not
 * @property {string} openness class of the separation, as in the NBA's public shot dashboards
 * @property {boolean} contested
 * @property {string} title `2 catches`
 * @property {string} text a sentence
 */

/**
 * Something that breaks a rule, a body or the timing.
 *
 * @typedef {object} Finding
 * @property {string} code stable name of this sort of finding
 * @property {"note" | "warning" | "violation"} severity
 * @property {string | undefined} letter of its flag
 * @property {number} t when, seconds
 * @property {number[]} players
 * @property {string} text a sentence or two
 * @property {string | undefined} cure what can be done, and what that costs
 */

/**
 * A read: a line that leaves the one it stands in.
 *
 * @typedef {object} ReadLine
 * @property {string} path as the attribute `read` has it
 * @property {string} title
 * @property {number} t when its line is left, seconds
 * @property {string} condition what decides it, to follow an "if"
 * @property {string | undefined} coverage the one that it asks for, by its name, if it asks for one
 * @property {number[]} by who must see it
 */

/**
 * What five under a coverage make of a set's reads.
 *
 * @typedef {object} Decided
 * @property {string} path the line that is played; empty: as drawn
 * @property {{path: string, t: number, holds: boolean, text: string}[]} asked every read asked on
 *   the way, and what was seen
 */

/**
 * Which line answers a coverage, and what each read would end in.
 *
 * @typedef {object} Answer
 * @property {string} path
 * @property {string} title
 * @property {string} text
 * @property {{path: string, title: string, holds: boolean, text: string}[]} reads
 */

/**
 * What one player does in a set.
 *
 * @typedef {object} RoleCard
 * @property {number} player
 * @property {string} title `3: decoy`
 * @property {string} part `decoy`
 * @property {string} begin where they start, a sentence
 * @property {RoleStep[]} steps by when they begin
 * @property {string[]} cautions
 */

/**
 * One step of that. What there is nothing of is empty.
 *
 * @typedef {object} RoleStep
 * @property {number} t when it begins, seconds
 * @property {number} end
 * @property {string} time both of them, `1.1–3.4 s`
 * @property {string} text what to do
 * @property {string} wait what to wait for
 * @property {string} look where the eyes go
 * @property {string} why what it is good for
 * @property {string[]} reads what to do instead, a sentence a read
 * @property {number} beat counted from 0
 */

/**
 * Ties an instant of the set to one of a film; seconds.
 *
 * @typedef {object} FilmMark
 * @property {number} t of the set
 * @property {number} film of the film
 * @property {string} text what happens, and how late it was filmed
 */

/**
 * Where a walk through the set stops.
 *
 * @typedef {object} Stop
 * @property {number} t when, seconds
 * @property {string} text why, a sentence a reason
 * @property {number[]} players who is named
 */

/**
 * A set that is open in the full module. Its lists come over as plain objects.
 *
 * @typedef {Omit<FullSet, "looks" | "findings" | "outcome" | "reads" | "decided" | "answer" | "card" | "filmMarks" | "stops"> & {
 *   readonly looks: Look[],
 *   readonly findings: Finding[],
 *   readonly reads: ReadLine[],
 *   readonly filmMarks: FilmMark[],
 *   readonly stops: Stop[],
 *   outcome(coverage: string): Look[],
 *   decided(coverage: string): Decided,
 *   answer(coverage: string): Answer,
 *   card(player: number): RoleCard | undefined,
 *   coverageTitle(coverage: string): string,
 * }} FullPlay
 */

/** A set that is open in either module. @typedef {Play | FullPlay} OpenSet */

/**
 * A module that is there.
 *
 * @typedef {object} Module
 * @property {WebAssembly.Memory} memory
 * @property {{ open(bytes: Uint8Array, court: string | null | undefined, level: string | null | undefined, mirror: boolean, read: string, coverage: string, host: BackcutSet): OpenSet }} Play opens sets; the first module knows the main line alone
 * @property {typeof Palette | typeof FullPalette} Palette
 * @property {typeof byteLimit} byteLimit
 * @property {typeof emptyCourtHeight} emptyCourtHeight
 * @property {typeof paintEmptyCourt} paintEmptyCourt
 */

/**
 * Does `start` once; a failure is not kept: who asks next tries again.
 *
 * @template T
 * @param {() => Promise<T>} start
 */
function once(start) {
  let going = /** @type {Promise<T> | undefined} */ (undefined);
  return () =>
    (going ??= start().catch((reason) => {
      going = undefined;
      throw reason;
    }));
}

/** The module for the first frame. */
export const loadModule = once(async () => {
  const { memory } = initSync({ module: await compile(new URL(WASM_FILE, import.meta.url)) });
  return { memory, Play, Palette, byteLimit, emptyCourtHeight, paintEmptyCourt };
});

/** @typedef {typeof import("./late.js")} Late */

/** What the reader can do without until the first picture is there. */
export const loadLate = once(async () => {
  const late = await importLate();
  learn(late.words);
  return late;
});

/** The full one. */
export const loadFull = once(async () => {
  const { load } = await importFull();
  return load(compile);
});
