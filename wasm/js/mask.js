/** Players as bits: 1 is bit 0. */

/** `"1 4"` as bits, 1 is bit 0; anything else is everybody. @param {string | null} text */
export function maskOf(text) {
  const numbers = (text ?? "").match(/\b[1-5]\b/g) ?? [];
  return numbers.reduce((mask, n) => mask | (1 << (Number(n) - 1)), 0);
}
