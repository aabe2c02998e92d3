/** What comes right after the first picture; published as a module of its own. */

export { standIns } from "./contrast.js";
export { lateStyles } from "./late-styles.js";
export { Judge } from "./controls/judge.js";
export { Sheet } from "./controls/sheet.js";
