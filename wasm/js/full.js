/** The full module, beside its wasm file; published as a module of its own. */

import {
  Palette,
  Play,
  byteLimit,
  emptyCourtHeight,
  initSync,
  openLink as unpack,
  paintEmptyCourt,
} from "../pkg/full/backcut.js";
import { languageAround } from "./around.js";
import { DEFENDED } from "./names.js";
import { show } from "./shown.js";

/** @import { BackcutSet } from "./element.js" */
/** @import { Module, OpenSet } from "./load.js" */
/** @import { Shown } from "./shown.js" */

const PLAYERS = [1, 2, 3, 4, 5];

/** What the module calls the units of the attribute. */
const UNITS = new Map([
  ["metres", "m"],
  ["feet", "ft"],
]);

/** The set file in a link; has `element` show what the link asks for, where it is not open yet. @param {string} link @param {BackcutSet} element */
function openLink(link, element) {
  const { bytes, view } = opened(link, languageAround(element));
  const players = PLAYERS.filter((n) => view.follow & (1 << (n - 1)));
  // On another court, or mirrored, it stays where it is.
  if (!element.readyState) {
    const [follow, read] = [players.join(" "), view.read.join(".")];
    show(element, { ...view, follow: follow || undefined, read: read || undefined });
  }
  return bytes;
}

/** @param {string} link @param {string} language */
function opened(link, language) {
  try {
    return /** @type {{ bytes: Uint8Array, view: Omit<Shown, "follow" | "read"> & { follow: number, read: number[] } }} */ (
      unpack(link, language)
    );
  } catch (thrown) {
    // A link has no lines that a reader could look for.
    if (Array.isArray(thrown)) for (const fault of thrown) fault.line = 0;
    throw thrown;
  }
}

/** Opens a set file as `host` shows it, and takes the line of `read`; throws as the module does. @type {Module["Play"]["open"]} */
function open(bytes, court, level, mirror, read, coverage, host) {
  const voice = /** @type {const} */ ([languageAround(host), UNITS.get(host.units)]);
  const play = Play.openIn(...voice, bytes, court ?? undefined, level ?? undefined, mirror);
  try {
    // Without a defence there is nothing to answer.
    const decided = read === DEFENDED && coverage ? play.decided(coverage).path : "";
    play.takeRead(read === DEFENDED ? decided : read);
    return /** @type {OpenSet} */ (/** @type {unknown} */ (play));
  } catch (reason) {
    play.free();
    throw reason;
  }
}

/** @param {(address: URL) => Promise<WebAssembly.Module>} compile */
export async function load(compile) {
  const { memory } = initSync({ module: await compile(new URL(FULL_WASM_FILE, import.meta.url)) });
  return {
    memory,
    Play: { open },
    Palette,
    byteLimit,
    emptyCourtHeight,
    paintEmptyCourt,
    openLink,
  };
}
