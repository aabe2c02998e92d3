/**
 * How a reader gets into a window that is lower than it would stand: first the key goes, then the
 * court gives what it can spare, then the strip folds, then the court shrinks for good.
 */

/** A court gives width down to this before anything folds, CSS pixels: 40 a metre. */
const COMFORTABLE = 640;
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
  const shrunk = (/** @type {number} */ over) => width * (1 - Math.max(0, over) / court);
  const whole = rest + court + strip - room;
  if (!narrow && shrunk(whole) >= Math.min(width, COMFORTABLE)) {
    return { key: whole + key > 0, strip: false, court: shrunk(whole) };
  }
  const least = Math.min(width, LEAST_COURT);
  return { key: true, strip: true, court: Math.max(least, shrunk(whole - strip + folded)) };
}
