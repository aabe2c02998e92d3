/** What happens later. */

/** @typedef {{ promise: Promise<void>, resolve: () => void, reject: (reason: unknown) => void }} PromiseWithResolvers */

/** A promise and its ends; nobody need listen to it. @returns {PromiseWithResolvers} */
export function withResolvers() {
  const ends = /** @type {PromiseWithResolvers} */ ({});
  ends.promise = new Promise((resolve, reject) => Object.assign(ends, { resolve, reject }));
  ends.promise.catch(() => {});
  return ends;
}

/** A browser that is never idle, or sleeps, need not be waited for longer, milliseconds. */
const LATEST_MS = 1000;

/** Acts once the browser has nothing better to do. @param {() => void} act */
export function whenIdle(act) {
  if ("requestIdleCallback" in globalThis) requestIdleCallback(act, { timeout: LATEST_MS });
  else setTimeout(act);
}
