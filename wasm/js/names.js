/** Every name of the element that a page may use. */

export const TAG = "backcut-set";

/** Attributes. */
export const ATTRIBUTE = /** @type {const} */ ({
  /** Address of the set file. */
  src: "src",
  /** Plays by itself once half of it is seen. */
  autoplay: "autoplay",
  /** Starts again at the end. */
  loop: "loop",
  /** Rule set to show it on, in place of the file's. */
  court: "court",
  /** Level of the athletes, in place of the file's. */
  level: "level",
  /** Left and right change places. */
  mirrored: "mirrored",
  /** The followed players: `3`, `1 4`, or `all`. */
  follow: "follow",
  /** `light` or `dark`, where the page does not go by the reader's preference. */
  theme: "theme",
});

/** Events, in the media element's words. */
export const EVENT = /** @type {const} */ ({
  loadedmetadata: "loadedmetadata",
  play: "play",
  pause: "pause",
  seeking: "seeking",
  seeked: "seeked",
  timeupdate: "timeupdate",
  ratechange: "ratechange",
  ended: "ended",
  /** `detail.faults` says what is wrong with the file, if it is the file. */
  error: "error",
});

/** Parts that a page may style by `::part()`. */
export const PART = /** @type {const} */ ({
  reader: "reader",
  title: "title",
  court: "court",
  caption: "caption",
  strip: "strip",
  controls: "controls",
  key: "key",
});

/** Speeds by the words on their buttons; 1 is the speed of a game. */
export const SPEED = /** @type {const} */ ([
  { rate: 0.25, word: "Slow", phrase: "Slow" },
  { rate: 0.5, word: "Half", phrase: "Half speed" },
  { rate: 1, word: "Game speed", phrase: "Game speed" },
]);

/** One film frame, seconds. */
export const FRAME = 1 / 30;

/** @typedef {keyof typeof EVENT} EventName */
