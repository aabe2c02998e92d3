/** Role cards: what each player does, step by step, as time goes. */

import { button, make } from "../build.js";
import { Several } from "../controls/several.js";
import { EVENT } from "../names.js";
import { lines, printed } from "./paper.js";

/** @import { BackcutSet } from "../element.js" */
/** @import { FullPlay, RoleCard, RoleStep } from "../load.js" */
/** @import { Commands, State } from "../reader.js" */

const PLAYERS = [1, 2, 3, 4, 5];

/**
 * A card that is shown.
 *
 * @typedef {object} Shown
 * @property {RoleCard} card
 * @property {HTMLElement} node
 * @property {HTMLElement[]} steps
 */

export class Roles {
  #host;
  #ask;
  #play = /** @type {FullPlay | undefined} */ (undefined);
  #cards = /** @type {Shown[]} */ ([]);
  #list = make("div", { class: "cards" });
  /** On a phone the reader's own list takes one player only. */
  #whose;
  #several;
  #mark = () => this.#at(this.#host.currentTime);
  node;

  /** @param {BackcutSet} host @param {Commands} ask */
  constructor(host, ask) {
    this.#host = host;
    this.#ask = ask;
    const { say } = ask;
    this.#whose = PLAYERS.map((n) =>
      button(
        { class: "word", "data-word": String(n), "aria-label": say.cardOf({ player: n }) },
        (event) => this.#several.pick(n, event),
        String(n),
      ),
    );
    this.#several = new Several(ask);
    const print = button({ class: "word" }, () => this.#print(), say.print);
    this.node = make(
      "div",
      { class: "roles", role: "group", "aria-label": say.roleCards },
      make("div", { class: "line" }, make("h3", {}, say.roleCards), print),
      make(
        "div",
        { class: "narrow-only", role: "group", "aria-label": say.cardsOf },
        ...this.#whose,
        this.#several.node,
      ),
      this.#list,
    );
  }

  /** @param {FullPlay | undefined} play */
  take(play) {
    this.#play = play;
    const cards = PLAYERS.map((n) => play?.card(n)).filter((card) => card !== undefined);
    this.#cards = cards.map((card) => this.#shown(card));
    this.#list.replaceChildren(...this.#cards.map(({ node }) => node));
  }

  begin() {
    // While it plays nothing else tells the time.
    this.#host.addEventListener(EVENT.timeupdate, this.#mark);
  }

  end() {
    this.#host.removeEventListener(EVENT.timeupdate, this.#mark);
  }

  /** @param {State} state */
  update(state) {
    const { follow, players } = state;
    this.#several.update(follow);
    for (const { card, node } of this.#cards) node.hidden = !followed(card, follow);
    this.#whose.forEach((whose, i) => {
      whose.hidden = (players & (1 << i)) === 0;
      whose.setAttribute("aria-pressed", String((follow & (1 << i)) !== 0));
    });
    this.#at(state.time);
  }

  /** @param {State} state */
  instant({ time }) {
    this.#at(time);
  }

  /** Marks the step of each card that is on. @param {number} time */
  #at(time) {
    for (const { card, steps } of this.#cards) {
      const on = card.steps.findLastIndex(({ t }) => t <= time);
      steps.forEach((step, i) => {
        if (i === on) step.setAttribute("aria-current", "step");
        else step.removeAttribute("aria-current");
      });
    }
  }

  /** @param {RoleCard} card @returns {Shown} */
  #shown(card) {
    const steps = card.steps.map((step) => this.#step(step));
    const node = make(
      "article",
      { class: "card" },
      make("header", {}, make("b", {}, String(card.player)), make("h4", {}, card.part)),
      make("p", { class: "begin" }, card.begin),
      make("ol", {}, ...steps),
    );
    return { card, node, steps };
  }

  /** @param {RoleStep} step */
  #step(step) {
    const go = button(
      { class: "step" },
      () => this.#ask.seek(step.t),
      make("strong", {}, step.text),
      make("span", { class: "when" }, step.time),
    );
    return make("li", {}, go, ...lines(step));
  }

  #print() {
    const play = this.#play;
    if (!play) return;
    const shown = this.#cards.filter(({ node }) => !node.hidden);
    printed(
      this.node,
      play,
      shown.map(({ card }) => card),
    );
  }
}

/** Whether the card of a player is asked for: all of them where nobody is followed. @param {RoleCard} card @param {number} follow */
function followed({ player }, follow) {
  return follow === 0 || (follow & (1 << (player - 1))) !== 0;
}
