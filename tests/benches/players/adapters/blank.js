// Nothing but the page: what every other row is measured against.
export async function load() {
  return { seek() {}, frameReady: Promise.resolve(), destroy() {} };
}
