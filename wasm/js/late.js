/** What comes right after the first picture; published as a module of its own. */

export { standIns } from "./contrast.js";
export { Sheet } from "./controls/sheet.js";
