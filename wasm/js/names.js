/** Every name of the element that a page may use. */

export const TAG = "backcut-set";

/** Attributes. */
export const ATTRIBUTE = /** @type {const} */ ({
  /** Address of the set file. */
  src: "src",
  /** `lazy`: the set is asked for once it comes near the window. */
  loading: "loading",
  /** Address of a picture that stands for the court until the set is there. */
  poster: "poster",
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
  /** The defence by its name in a set file, as `chase`; without it nobody defends. */
  coverage: "coverage",
  /** The read that is made: `2`, or `2.1` for the first one within it; `defended`: as the defence plays. */
  read: "read",
  /** What was found is flagged and listed. */
  notes: "notes",
  /** Address of a film of the set, for when the reader wants it beside. */
  film: "film",
  /** Sets of the page with the same word share one clock. */
  sync: "sync",
  /** Address of a page that opens links; without it, the frame page of the package. */
  share: "share",
  /** `no-characters`: letters, digits and marks are no keys; arrows and the like still are. */
  keys: "keys",
  /** `metres` or `feet`, in place of what the court's rule book measures in. */
  units: "units",
  /** `light` or `dark`, where the page does not go by the reader's preference. */
  theme: "theme",
});

/** Events, in the media element's words. */
export const EVENT = /** @type {const} */ ({
  /** The set is there, and its duration known. */
  loadedmetadata: "loadedmetadata",
  /** It starts to play. */
  play: "play",
  /** It stops. */
  pause: "pause",
  /** Another time is asked for. */
  seeking: "seeking",
  /** That time is shown. */
  seeked: "seeked",
  /** The time changed; while it plays, ten times a second. */
  timeupdate: "timeupdate",
  /** It has another speed. */
  ratechange: "ratechange",
  /** It reached the end. */
  ended: "ended",
  /** There is no set; `detail.faults` says what is wrong with the file, if it is the file. */
  error: "error",
});

/** Parts that a page may style by `::part()`. */
export const PART = /** @type {const} */ ({
  /** All of it. */
  reader: "reader",
  /** The set's name. */
  title: "title",
  /** The court with everybody on it. */
  court: "court",
  /** What happens in the beat. */
  caption: "caption",
  /** Rows of players and ball over time. */
  strip: "strip",
  /** Buttons and lists. */
  controls: "controls",
  /** What the marks mean. */
  key: "key",
});

/** Speeds that there are buttons for; 1 is the speed of a game. */
export const SPEEDS = /** @type {const} */ ([0.25, 0.5, 1]);

/** What leaves the line to the defence, in the attribute `read`. */
export const DEFENDED = "defended";

/** The longest step of a clock, seconds: after a stall a set goes on, it does not jump. */
export const LONGEST_STEP = 0.1;

/** One film frame, seconds. */
export const FRAME = 1 / 30;

/** @typedef {keyof typeof EVENT} EventName */
