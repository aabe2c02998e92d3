/** Style sheets that a tree adopts. */

/** @param {string} css */
export function sheetOf(css) {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(css);
  return sheet;
}
