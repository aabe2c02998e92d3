/** What comes right after the first picture; published as a module of its own. */

import { followLinks } from "./anchors.js";
import { followLanguage } from "./language.js";
import { lateStyles } from "./late-styles.js";
import { keepTogether } from "./sync.js";

/** @import { BackcutSet } from "./element.js" */
/** @import { Commands } from "./reader.js" */

export { standIns } from "./contrast.js";
export { tellLanguages } from "./language.js";
export { late as words } from "../pkg/words/late.js";
export { Extras } from "./controls/extras.js";
export { Sheet } from "./controls/sheet.js";

/**
 * Has an open set look and listen as its page wants; asked again, it does nothing more.
 *
 * @param {BackcutSet} element
 * @param {Commands} ask
 * @param {AbortSignal | undefined} leaving ends what listens for this one; none where it has left
 */
export function attend(element, ask, leaving) {
  if (element.shadowRoot) lateStyles(element.shadowRoot);
  followLinks();
  keepTogether();
  if (leaving) followLanguage(element, ask, leaving);
}
