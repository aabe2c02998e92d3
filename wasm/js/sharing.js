/** What sharing needs once somebody shares; published as a module of its own. */

export { sharing as words } from "../pkg/words/sharing.js";
export { Sharing } from "./controls/sharing.js";
