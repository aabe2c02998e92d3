/** The modes that teach a set, for when somebody wants one; published as a module of its own. */

export { teaching as words } from "../pkg/words/teaching.js";
export { Loop } from "./teaching/loop.js";
export { Roles } from "./teaching/roles.js";
export { Film } from "./teaching/film.js";
export { Quiz } from "./teaching/quiz.js";
export { teachingStyles } from "./teaching/styles.js";
export { Walk } from "./teaching/walk.js";
