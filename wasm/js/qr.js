/** A text as a QR code (ISO/IEC 18004), drawn as one path. */

import { correction, generate } from "lean-qr/nano";
import { glyph, make } from "./build.js";

/** Light modules around it, so that a camera finds it; the standard asks for four. */
const QUIET = 4;

/** @param {string} text at most some 2,900 characters @param {string} label what it opens */
export function picture(text, label) {
  // The least correction makes the largest modules: on a screen nothing is smeared or torn.
  const code = generate(text, { minCorrectionLevel: correction.L });
  const side = code.size + 2 * QUIET;
  let path = "";
  for (let y = 0; y < code.size; y += 1) {
    for (let x = 0; x < code.size; x += 1) {
      let run = 0;
      while (code.get(x + run, y)) run += 1;
      if (run > 0) path += `M${x + QUIET} ${y + QUIET}h${run}v1h${-run}z`;
      x += run;
    }
  }
  const drawing = glyph(`0 0 ${side} ${side}`, path, "modules");
  return make("div", { role: "img", "aria-label": label }, drawing);
}
