/** Whom the reader follows. */

import { button, make } from "../build.js";
import { choice } from "./choice.js";
import { Several } from "./several.js";

/** @import { Commands, State } from "../reader.js" */

const PLAYERS = [1, 2, 3, 4, 5];
const SVG = "http://www.w3.org/2000/svg";

export class Follow {
  #all;
  #players;
  #several;
  #list;
  nodes;

  /** @param {Commands} ask */
  constructor(ask) {
    const { say } = ask;
    this.#all = button({ class: "word", "data-word": say.all }, () => ask.follow(0), say.all);
    this.#players = PLAYERS.map((n) =>
      button(
        { class: "who", "aria-label": say.followPlayer({ player: n }) },
        (event) => this.#several.pick(n, event),
        body(n),
      ),
    );
    this.#several = new Several(ask);
    this.#list = choice(
      say.follow,
      [
        { value: "0", word: say.followAll },
        ...PLAYERS.map((n) => ({
          value: String(1 << (n - 1)),
          word: say.followPlayer({ player: n }),
        })),
        // Never to be chosen: no set has these players.
        { value: "-1", word: say.followSeveral },
      ],
      (value) => {
        ask.follow(0);
        ask.follow(+value);
      },
    );
    this.nodes = {
      wide: make(
        "div",
        { class: "followed", role: "group", "aria-label": say.follow },
        make("span", { class: "label", "aria-hidden": "true" }, say.follow),
        this.#all,
        ...this.#players,
        this.#several.node,
      ),
      narrow: this.#list.node,
    };
  }

  /** @param {State} state */
  update({ follow, players }) {
    this.#all.setAttribute("aria-pressed", String(follow === 0));
    this.#several.update(follow);
    this.#players.forEach((player, i) => {
      player.hidden = (players & (1 << i)) === 0;
      player.setAttribute("aria-pressed", String((follow & (1 << i)) !== 0));
    });
    for (const option of this.#list.select.options) {
      const bits = Number(option.value);
      option.hidden = (players & bits) !== bits;
    }
    this.#list.select.value = String(follow);
    this.#list.select.value ||= "-1";
  }
}

/** A body from above, as on the court, looking up. @param {number} number */
function body(number) {
  const svg = document.createElementNS(SVG, "svg");
  svg.setAttribute("viewBox", "-18 -18 36 32");
  svg.setAttribute("class", "body");
  svg.setAttribute("aria-hidden", "true");
  svg.append(
    shape("ellipse", { rx: "16.5", ry: "12", class: "ring" }),
    shape("path", { d: "M-5 -8 L0 -15 L5 -8 Z" }),
    shape("ellipse", { rx: "13.5", ry: "9.2" }),
  );
  const text = shape("text", { y: "5", "text-anchor": "middle" });
  text.textContent = String(number);
  svg.append(text);
  return svg;
}

/** @param {string} tag @param {Record<string, string>} attributes */
function shape(tag, attributes) {
  const element = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  return element;
}
