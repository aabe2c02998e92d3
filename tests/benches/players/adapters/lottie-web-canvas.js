import { loader } from "./lottie-web.js";
export const load = loader("canvas");
