/** The modes that teach a set, for when somebody wants one; published as a module of its own. */

export { teachingStyles } from "./teaching/styles.js";
