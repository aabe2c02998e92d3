/** The best result of a set, kept on the device and sent nowhere. */

/** @import { FullPlay } from "../../load.js" */

const PREFIX = "backcut-quiz:";
/** Frames a second that tell one set from another. */
const FPS = 10;

/** The page's store; a browser may keep it shut. */
function store() {
  try {
    return globalThis.localStorage;
  } catch {
    return undefined;
  }
}

export class Best {
  #key = PREFIX;
  /** The best result, if one is kept. @type {number | undefined} */
  points;
  /** How many rounds were played. */
  rounds = 0;

  /** Reads what is kept of a set: of that title, with these motions. @param {FullPlay} play */
  of(play) {
    const key = `${PREFIX}${play.title}#${play.frameHash(FPS).toString(16)}`;
    if (key !== this.#key) this.rounds = 0;
    this.#key = key;
    this.points = undefined;
    try {
      const kept = JSON.parse(store()?.getItem(key) ?? "{}");
      if (Number.isFinite(kept.points)) this.points = kept.points;
      if (Number.isInteger(kept.rounds)) this.rounds = kept.rounds;
    } catch {
      // What somebody else wrote there is no result.
    }
  }

  /** Adds a round; whether it is the best so far. @param {number} points */
  add(points) {
    const better = points > (this.points ?? -1);
    this.rounds += 1;
    try {
      const kept = JSON.stringify({
        points: better ? points : this.points,
        rounds: this.rounds,
      });
      store()?.setItem(this.#key, kept);
      this.points = store() && better ? points : this.points;
    } catch {
      // Full, or not allowed: then nothing is kept.
    }
    return better;
  }

  forget() {
    this.points = undefined;
    this.rounds = 0;
    try {
      store()?.removeItem(this.#key);
    } catch {
      // Nothing was kept, then.
    }
  }
}
