/** Stretches that the set has shown slowly. */

/**
 * Times which speed it plays at a time: the slowest of the stretches that are on.
 *
 * @param {Float64Array | undefined} slow from when, until when and how slowly, over and over
 * @returns {(time: number) => number}
 */
export function paceOf(slow) {
  return (time) => {
    let pace = 1;
    for (let i = 0; slow && i < slow.length; i += 3) {
      const [from = 0, until = 0, rate = 1] = slow.subarray(i);
      if (time >= from && time < until) pace = Math.min(pace, rate);
    }
    return pace;
  };
}
