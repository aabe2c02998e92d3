/**
 * Role cards on paper, alone: a frame of their own is printed, since nothing inside an element can
 * leave the page around it out.
 */

import { make } from "../build.js";
import { PAPER } from "./paper-styles.js";

/** @import { FullPlay, RoleCard, RoleStep } from "../load.js" */

/** Width at which pictures are drawn: what they have on paper, CSS pixels. */
const PICTURE = 250;

/**
 * Prints cards of `play`, and nothing else of the page.
 *
 * @param {HTMLElement} within where the frame may stand
 * @param {FullPlay} play
 * @param {RoleCard[]} cards
 */
export function printed(within, play, cards) {
  const frame = make("iframe", { class: "unseen", "aria-hidden": "true", tabindex: "-1" });
  within.append(frame);
  const { contentDocument: paper, contentWindow: window } = frame;
  if (!paper || !window) return frame.remove();
  const sheet = new /** @type {Window & typeof globalThis} */ (window).CSSStyleSheet();
  sheet.replaceSync(PAPER);
  paper.adoptedStyleSheets = [sheet];
  paper.title = play.title;
  paper.documentElement.lang = play.language;
  paper.body.append(...cards.map((card) => sheetOf(play, card)));
  window.addEventListener("afterprint", () => frame.remove(), { once: true });
  window.print();
}

/** @param {FullPlay} play @param {RoleCard} card */
function sheetOf(play, card) {
  const steps = card.steps.map((step) =>
    make(
      "li",
      {},
      make("p", { class: "do" }, make("strong", {}, step.text), make("span", {}, step.time)),
      ...lines(step),
    ),
  );
  const drawn = new DOMParser().parseFromString(
    play.cardPicture(card.player, PICTURE),
    "image/svg+xml",
  );
  return make(
    "article",
    {},
    make(
      "header",
      {},
      make("b", {}, String(card.player)),
      make("h2", {}, card.part),
      make("p", {}, play.title),
    ),
    make("div", {}, drawn.documentElement, make("p", {}, card.begin)),
    make("ol", {}, ...steps),
    ...(card.cautions.length > 0 ? [make("p", { class: "caution" }, card.cautions.join(" "))] : []),
  );
}

/** What stands below what is to be done. @param {RoleStep} step */
export function lines({ wait, look, why, reads }) {
  const told = [wait, look, why].filter((text) => text !== "");
  return [
    ...told.map((text) => make("p", {}, text)),
    ...reads.map((text) => make("p", { class: "read" }, text)),
  ];
}
