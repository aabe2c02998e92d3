/** Answers to choose among. */

import { button, make } from "../../build.js";

export class Choices {
  #legend = make("legend", { class: "unseen" });
  #list = make("div", { class: "choices" });
  #answer;
  #take;
  node;

  /** @param {string} word on its button @param {(choice: number) => void} answer counted from 0 */
  constructor(word, answer) {
    this.#take = () => {
      const chosen = this.#inputs.findIndex((input) => input.checked);
      if (chosen >= 0) answer(chosen);
    };
    this.#answer = button({ class: "play", disabled: "" }, this.#take, word);
    this.node = make("fieldset", { hidden: "" }, this.#legend, this.#list, this.#answer);
    this.#list.addEventListener("change", () => {
      this.#answer.disabled = false;
    });
  }

  /** Answers with what is chosen, if anything is. */
  take() {
    this.#take();
  }

  get #inputs() {
    return [...this.#list.querySelectorAll("input")];
  }

  /** @param {string} question @param {readonly string[]} choices none: it stays away */
  show(question, choices) {
    this.#legend.textContent = question;
    const short = choices.every((choice) => choice.length < 3);
    this.#list.toggleAttribute("data-short", short);
    this.#list.replaceChildren(
      ...choices.map((choice) =>
        make("label", {}, make("input", { type: "radio", name: "choice" }), choice),
      ),
    );
    this.#answer.hidden = false;
    this.#answer.disabled = true;
    this.node.hidden = choices.length === 0;
    this.node.disabled = false;
  }

  /** Marks the right one; nothing can be chosen any more. @param {number | undefined} right counted from 0 */
  tell(right) {
    this.node.hidden = right === undefined;
    this.node.disabled = true;
    this.#answer.hidden = true;
    [...this.#list.children].forEach((label, i) =>
      label.toggleAttribute("data-right", i === right),
    );
  }
}
