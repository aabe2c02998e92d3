/** What happens later. */

/** @typedef {{ promise: Promise<void>, resolve: () => void, reject: (reason: unknown) => void }} PromiseWithResolvers */

/** A promise and its ends; nobody need listen to it. @returns {PromiseWithResolvers} */
export function withResolvers() {
  let resolve = () => {};
  let reject = (/** @type {unknown} */ _reason) => {};
  const promise = /** @type {Promise<void>} */ (
    new Promise((yes, no) => {
      resolve = () => yes(undefined);
      reject = no;
    })
  );
  promise.catch(() => {});
  return { promise, resolve, reject };
}

/** A browser that is never idle, or sleeps, need not be waited for longer, milliseconds. */
const LATEST_MS = 1000;

/** Acts once the browser has nothing better to do. @param {() => void} act */
export function whenIdle(act) {
  if ("requestIdleCallback" in globalThis) requestIdleCallback(act, { timeout: LATEST_MS });
  else setTimeout(act);
}
