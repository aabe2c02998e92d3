/** What comes right after the first picture; published as a module of its own. */

export { followLinks } from "./anchors.js";
export { standIns } from "./contrast.js";
export { followLanguage, tellLanguages } from "./language.js";
export { lateStyles } from "./late-styles.js";
export { keepTogether } from "./sync.js";
export { late as words } from "../pkg/words/late.js";
export { Extras } from "./controls/extras.js";
export { Sheet } from "./controls/sheet.js";
