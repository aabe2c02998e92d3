/**
 * How a reader gets into a window that is lower than it would stand: first the key goes, then the
 * strip folds, then the court shrinks.
 */

/** No court shrinks below this, CSS pixels. */
const LEAST_COURT = 420;

/**
 * Heights of the parts, CSS pixels.
 *
 * @typedef {object} Heights
 * @property {number} room what there is
 * @property {number} rest what neither folds nor shrinks
 * @property {number} court as wide as the reader
 * @property {number} strip
 * @property {number} folded the strip, folded
 * @property {number} key
 */

/**
 * @param {number} width of the reader, CSS pixels
 * @param {boolean} narrow whether key and strip are folded anyway
 * @param {Heights} heights
 */
export function fit(width, narrow, { room, rest, court, strip, folded, key }) {
  const least = rest + court + folded - room;
  return {
    key: narrow || least - folded + strip + key > 0,
    strip: narrow || least - folded + strip > 0,
    court: Math.min(width, Math.max(LEAST_COURT, width * (1 - Math.max(0, least) / court))),
  };
}
