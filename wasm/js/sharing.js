/** What sharing needs once somebody shares; published as a module of its own. */

export { Sharing } from "./controls/sharing.js";
