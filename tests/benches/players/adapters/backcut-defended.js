import { loader } from "./backcut.js";
export const load = loader("chase");
